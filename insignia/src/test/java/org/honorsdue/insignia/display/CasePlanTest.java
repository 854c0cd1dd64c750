package org.honorsdue.insignia.display;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.honorsdue.insignia.Found.authorized;
import static org.honorsdue.insignia.Found.findings;
import static org.honorsdue.insignia.Found.standing;
import static org.honorsdue.insignia.Found.worn;

import java.util.List;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.insignia.badge.EnlistedGrade;
import org.honorsdue.insignia.display.Breach.Rule;
import org.honorsdue.reference.insignia.Inches;
import org.honorsdue.service.fact.Device;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/** Rules of the trade: common practice, no source. Order: DA Pam 670-1, 26 January 2021, para 22-5. */
@DisplayName("The plan of a case")
@DisplayNameGeneration(ReplaceUnderscores.class)
class CasePlanTest {
    private static final Findings RIFLEMAN = findings(
            authorized("ww2-victory-medal"),
            authorized("eame-campaign-medal", worn(3, Device.BRONZE_SERVICE_STAR)),
            authorized("army-good-conduct-medal"),
            authorized("bronze-star-medal"),
            authorized("purple-heart"),
            authorized("distinguished-unit-citation"),
            authorized("combat-infantryman-badge"));

    private static final CaseWish PLATE =
            CaseWish.ofSize("16x20").adding(new Addition.Nameplate(List.of("Tec 5 Orrin T. Fairweather")));

    private static Placed piece(CasePlan plan, String id) {
        return plan.placed().stream()
                .filter(one -> one.piece().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void lays_medals_in_the_order_of_wear_and_breaks_no_rule_when_there_is_room() {
        var plan = CasePlan.of(RIFLEMAN, PLATE);
        assertThat(plan.placed())
                .filteredOn(one -> one.piece().kind() == Kind.MEDAL)
                .extracting(one -> one.piece().id())
                .containsExactly(
                        "bronze-star-medal",
                        "purple-heart",
                        "army-good-conduct-medal",
                        "eame-campaign-medal",
                        "ww2-victory-medal");
        assertThat(plan.breaches()).isEmpty();
        assertThat(plan.unplaced()).isEmpty();
    }

    @Test
    void stands_on_sixteenths_of_an_inch() {
        assertThat(CasePlan.of(RIFLEMAN, PLATE).placed()).allSatisfy(one -> {
            assertThat(one.x().times(16).denominator()).isEqualTo(1);
            assertThat(one.y().times(16).denominator()).isEqualTo(1);
            assertThat(one.piece().width().times(16).denominator()).isEqualTo(1);
        });
    }

    @Test
    void has_the_nameplate_at_the_foot_and_the_badge_above_the_medals() {
        var plan = CasePlan.of(RIFLEMAN, PLATE);
        assertThat(piece(plan, "nameplate-1").number()).isEqualTo(plan.placed().size());
        assertThat(piece(plan, "combat-infantryman-badge").y())
                .isLessThan(piece(plan, "bronze-star-medal").y());
        assertThat(piece(plan, "nameplate-1").box().middle()).isEqualTo(Inches.of(8));
    }

    @Test
    void keeps_unit_emblems_at_the_viewers_left_of_the_ribbons() {
        var plan = CasePlan.of(RIFLEMAN, PLATE);
        assertThat(piece(plan, "unit-emblems").x())
                .isLessThan(piece(plan, "ribbon-rack").x());
        var moved = CasePlan.of(RIFLEMAN, PLATE.moving("unit-emblems", Inches.of(13), Inches.of(1)));
        assertThat(moved.breaches()).extracting(Breach::rule).contains(Rule.SIDE);
    }

    @Test
    void keeps_a_marked_place_for_what_is_presumed_and_none_for_what_is_denied() {
        var plan = CasePlan.of(
                findings(
                        authorized("ww2-victory-medal"),
                        standing(Standing.PRESUMED, "purple-heart"),
                        standing(Standing.NOT_AUTHORIZED, "silver-star")),
                CaseWish.ofSize("11x14"));
        assertThat(piece(plan, "purple-heart").piece().pending()).isTrue();
        assertThat(plan.placed()).noneMatch(one -> one.piece().id().equals("silver-star"));
        assertThat(plan.description()).contains("Purple Heart (not settled: place kept)");
    }

    @Test
    void puts_a_piece_where_the_user_wants_it_and_lays_the_rest_round_it() {
        var plan = CasePlan.of(RIFLEMAN, PLATE.moving("nameplate-1", Inches.of(6), Inches.of(8)));
        assertThat(piece(plan, "nameplate-1").x()).isEqualTo(Inches.of(6));
        assertThat(piece(plan, "nameplate-1").y()).isEqualTo(Inches.of(8));
        assertThat(piece(plan, "nameplate-1").fixed()).isTrue();
        assertThat(plan.unplaced()).isEmpty();
        assertThat(plan.placed()).hasSize(CasePlan.of(RIFLEMAN, PLATE).placed().size());
    }

    @Test
    void says_when_medals_were_moved_out_of_order() {
        var plan = CasePlan.of(
                RIFLEMAN,
                PLATE.moving("ww2-victory-medal", Inches.of(2), Inches.of(2))
                        .moving("bronze-star-medal", Inches.of(12), Inches.of(14)));
        assertThat(plan.breaches())
                .filteredOn(breach -> breach.rule() == Rule.ORDER)
                .anyMatch(breach -> breach.says().startsWith("Bronze Star Medal is worn before"));
    }

    @Test
    void refuses_a_place_that_is_taken_or_outside_and_lays_the_piece_elsewhere() {
        var plan = CasePlan.of(
                RIFLEMAN,
                PLATE.moving("bronze-star-medal", Inches.of(7), Inches.of(7))
                        .moving("purple-heart", Inches.of(7), Inches.of(8))
                        .moving("combat-infantryman-badge", Inches.of(15), Inches.of(2)));
        assertThat(plan.breaches())
                .filteredOn(breach -> breach.rule() == Rule.PLACE_TAKEN)
                .extracting(breach -> breach.pieces().get(0))
                .containsExactly("purple-heart", "combat-infantryman-badge");
        assertThat(plan.unplaced()).isEmpty();
        assertThat(piece(plan, "purple-heart").fixed()).isFalse();
    }

    @Test
    void says_that_a_named_piece_is_not_there() {
        assertThat(CasePlan.of(RIFLEMAN, PLATE.moving("silver-star", Inches.of(1), Inches.of(1)))
                        .breaches())
                .extracting(Breach::rule)
                .containsExactly(Rule.UNKNOWN_PIECE);
    }

    @Test
    void says_what_does_not_fit_and_which_frame_would_hold_everything() {
        var plan = CasePlan.of(RIFLEMAN, PLATE.withFrame(Inches.of(8), Inches.of(10)));
        assertThat(plan.unplaced()).isNotEmpty();
        assertThat(plan.breaches())
                .filteredOn(breach -> breach.rule() == Rule.ROOM)
                .hasSameSizeAs(plan.unplaced())
                .allMatch(breach -> breach.says().contains("in holds everything"));
        var larger = plan.largerFrame().orElseThrow();
        var there = CasePlan.of(RIFLEMAN, PLATE.withFrame(larger.width(), larger.height()));
        assertThat(there.unplaced()).isEmpty();
        assertThat(there.breaches()).isEmpty();
    }

    @Test
    void says_when_a_smaller_frame_would_do() {
        var plan = CasePlan.of(findings(authorized("ww2-victory-medal")), CaseWish.ofSize("20x24"));
        assertThat(plan.smallerFrame().orElseThrow().id()).isEqualTo("8x10");
        assertThat(plan.largerFrame()).isEmpty();
    }

    @Test
    void says_when_the_case_is_not_deep_enough() {
        var plan = CasePlan.of(RIFLEMAN, PLATE.withDepth(Inches.of(1, 2)));
        assertThat(plan.breaches())
                .filteredOn(breach -> breach.rule() == Rule.DEPTH)
                .singleElement()
                .satisfies(breach -> assertThat(breach.says()).contains("with play 1 1/8 in; the case has 1/2 in"));
    }

    @Test
    void holds_what_the_family_adds() {
        var plan = CasePlan.of(
                RIFLEMAN,
                CaseWish.ofSize("20x24")
                        .adding(new Addition.Photograph(Inches.of(4), Inches.of(5), "At home, 1943"))
                        .adding(new Addition.Paper(Inches.of(4), Inches.parse("5 1/4"), "Discharge"))
                        .adding(new Addition.DogTags())
                        .adding(new Addition.Chevrons(EnlistedGrade.TECHNICIAN_FIFTH_GRADE))
                        .adding(new Addition.Nameplate(List.of("O. T. Fairweather", "1943 - 1945"))));
        assertThat(plan.placed())
                .extracting(one -> one.piece().kind())
                .contains(Kind.PHOTOGRAPH, Kind.PAPER, Kind.DOG_TAGS, Kind.SLEEVE_BARS, Kind.NAMEPLATE);
        assertThat(plan.unplaced()).isEmpty();
    }

    @Test
    void leaves_out_what_is_not_wanted() {
        var plan = CasePlan.of(RIFLEMAN, PLATE.without("ribbon-rack").withRibbons(true));
        assertThat(plan.placed()).noneMatch(one -> one.piece().id().equals("ribbon-rack"));
    }

    @Test
    void wears_one_of_the_two_infantry_badges() {
        var plan = CasePlan.of(
                findings(authorized("expert-infantryman-badge"), authorized("combat-infantryman-badge")), PLATE);
        assertThat(plan.placed())
                .filteredOn(one -> one.piece().kind() == Kind.BADGE)
                .extracting(one -> one.piece().id())
                .containsExactly("combat-infantryman-badge");
    }

    @Test
    void is_the_same_to_the_byte() {
        assertThat(CasePlan.of(RIFLEMAN, PLATE).svg().text())
                .isEqualTo(CasePlan.of(RIFLEMAN, PLATE).svg().text());
    }

    @Test
    void reads_a_frame_as_people_write_it() {
        assertThat(CaseWish.ofSize("16x20").width()).isEqualTo(Inches.of(16));
        assertThat(CaseWish.ofSize(" 8 1/2 X 11").width()).isEqualTo(Inches.of(17, 2));
        for (String size : List.of("16", "16x", "axb", "16x20x2", "1x2", "16.5x20")) {
            assertThatThrownBy(() -> CaseWish.ofSize(size)).as(size).isInstanceOf(IllegalArgumentException.class);
        }
    }
}
