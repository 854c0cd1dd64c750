package org.honorsdue.insignia.display;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.insignia.Found;
import org.honorsdue.reference.insignia.Inches;
import org.honorsdue.reference.insignia.InsigniaTables;
import org.honorsdue.service.fact.Device;

@Label("The plan of a case, whatever is asked of it")
class CasePlanPropertyTest {
    private static final List<String> AWARDS = List.of(
            "medal-of-honor",
            "silver-star",
            "legion-of-merit",
            "bronze-star-medal",
            "purple-heart",
            "air-medal",
            "prisoner-of-war-medal",
            "army-good-conduct-medal",
            "american-defense-service-medal",
            "american-campaign-medal",
            "asiatic-pacific-campaign-medal",
            "eame-campaign-medal",
            "ww2-victory-medal",
            "army-of-occupation-medal",
            "french-croix-de-guerre",
            "philippine-liberation-ribbon",
            "distinguished-unit-citation",
            "meritorious-unit-commendation",
            "combat-infantryman-badge",
            "parachutist-badge",
            "glider-badge",
            "aviation-badge",
            "marksmanship-badge",
            "overseas-service-bars",
            "service-stripes",
            "honorable-service-lapel-button",
            "french-fourragere");

    @Provide
    Arbitrary<Findings> soldiers() {
        var finding = Combinators.combine(
                        Arbitraries.of(AWARDS),
                        Arbitraries.of(Standing.values()),
                        Arbitraries.integers().between(0, 6))
                .as((award, standing, stars) -> stars == 0
                        ? Found.standing(standing, award)
                        : Found.standing(standing, award, Found.worn(stars, Device.BRONZE_SERVICE_STAR)));
        return finding.list()
                .uniqueElements(Finding::award)
                .ofMaxSize(22)
                .map(list -> Found.findings(list.toArray(Finding[]::new)));
    }

    @Provide
    Arbitrary<CaseWish> wishes() {
        var frame = Combinators.combine(
                        Arbitraries.integers().between(5 * 4, 30 * 4),
                        Arbitraries.integers().between(5 * 4, 36 * 4))
                .as((width, height) -> CaseWish.of(Inches.of(width, 4), Inches.of(height, 4)));
        var additions = Arbitraries.<Addition>of(
                        new Addition.DogTags(),
                        new Addition.Nameplate(List.of("A name", "A unit")),
                        new Addition.Photograph(Inches.of(4), Inches.of(5), "A photograph"),
                        new Addition.Paper(Inches.of(4), Inches.of(5), "A paper"),
                        new Addition.Flag(Inches.of(10)))
                .list()
                .ofMaxSize(4);
        var places = Combinators.combine(
                        Arbitraries.of(
                                "silver-star", "eame-campaign-medal", "ribbon-rack", "photograph-1", "dog-tags-1"),
                        Arbitraries.integers().between(-16, 30 * 16),
                        Arbitraries.integers().between(-16, 30 * 16))
                .as((piece, x, y) -> new CaseWish.Fixed(piece, Inches.of(x, 16), Inches.of(y, 16)))
                .list()
                .ofMaxSize(4);
        var patches = Arbitraries.of("infantry-division-1", "armored-division-2", "airborne-division-82")
                .list()
                .uniqueElements()
                .ofMaxSize(2);
        return Combinators.combine(frame, additions, places, patches).as((wish, added, fixed, units) -> {
            for (Addition addition : added) {
                wish = wish.adding(addition);
            }
            for (CaseWish.Fixed place : fixed) {
                wish = wish.moving(place.piece(), place.x(), place.y());
            }
            return units.isEmpty() ? wish : wish.withPatches(units.get(0), units.subList(1, units.size()));
        });
    }

    @Property(tries = 250)
    void no_two_pieces_overlap_none_leaves_the_frame_and_none_is_lost(
            @ForAll("soldiers") Findings findings, @ForAll("wishes") CaseWish wish) {
        CasePlan plan = CasePlan.of(findings, wish);
        var opening = new Box(Inches.ZERO, Inches.ZERO, wish.width(), wish.height());
        List<Placed> placed = plan.placed();
        for (int i = 0; i < placed.size(); i++) {
            assertThat(placed.get(i).box().liesWithin(opening))
                    .as("%s within %s", placed.get(i).piece().name(), plan.frame())
                    .isTrue();
            assertThat(placed.get(i).number()).isEqualTo(i + 1);
            for (int j = i + 1; j < placed.size(); j++) {
                assertThat(placed.get(i).box().overlaps(placed.get(j).box()))
                        .as(
                                "%s over %s",
                                placed.get(i).piece().name(),
                                placed.get(j).piece().name())
                        .isFalse();
            }
        }
        var all = new ArrayList<String>();
        CaseContents.of(findings, wish, InsigniaTables.published()).forEach(piece -> all.add(piece.id()));
        var found = new ArrayList<String>();
        placed.forEach(one -> found.add(one.piece().id()));
        plan.unplaced().forEach(piece -> found.add(piece.id()));
        assertThat(found).containsExactlyInAnyOrderElementsOf(all);
    }

    @Property(tries = 25)
    void the_same_wish_gives_the_same_drawing(@ForAll("soldiers") Findings findings, @ForAll("wishes") CaseWish wish) {
        assertThat(CasePlan.of(findings, wish).benchSvg().text())
                .isEqualTo(CasePlan.of(findings, wish).benchSvg().text());
    }
}
