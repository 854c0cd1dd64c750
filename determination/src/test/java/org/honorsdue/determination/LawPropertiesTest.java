package org.honorsdue.determination;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.Theater;
import org.honorsdue.service.evidence.Evidence;
import org.honorsdue.service.fact.Assignment;
import org.honorsdue.service.fact.AwardOrder;
import org.honorsdue.service.fact.Basis;
import org.honorsdue.service.fact.Captivity;
import org.honorsdue.service.fact.Conduct;
import org.honorsdue.service.fact.HospitalAdmission;
import org.honorsdue.service.fact.Origin;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.Station;
import org.honorsdue.service.fact.UnitCredit;
import org.honorsdue.service.fact.Wound;

@Label("What holds for any soldier")
class LawPropertiesTest {
    private static final LawExaminer EXAMINER = Case.examiner();
    private static final List<String> AWARDS = new LawBook(Reference.published())
            .rules().stream().map(rule -> rule.award().id()).toList();
    private static final Set<String> ALL = Set.copyOf(AWARDS);

    private static Findings examine(AnySoldier soldier, List<ServiceFact> facts) {
        return EXAMINER.examine(soldier.with(facts), Case.TODAY, ALL);
    }

    @Property(tries = 800)
    @Label("no facts crash it, on any day, and every word can be written")
    void nothing_crashes(@ForAll long seed, @ForAll @IntRange(max = 40_000) int day) {
        var findings = EXAMINER.examine(
                AnySoldier.of(seed).facts(), LocalDate.of(1930, 1, 1).plusDays(day), ALL);
        assertThat(findings.findings())
                .extracting(Finding::award)
                .doesNotHaveDuplicates()
                .containsAll(AWARDS);
        for (var finding : findings.findings()) {
            boolean due = finding.standing() == Standing.AUTHORIZED || finding.standing() == Standing.PRESUMED;
            assertThat(finding.count() > 0).as(finding.award()).isEqualTo(due);
            finding.grounds().forEach(ground -> assertThat(ground.says()).isNotBlank());
            finding.cautions().forEach(caution -> assertThat(caution).isNotBlank());
            finding.needs().forEach(need -> {
                assertThat(need.question()).startsWith("Can it be shown that ").endsWith("?");
                assertThat(need.wanted()).isNotEmpty();
            });
            if (finding.standing() == Standing.PRESUMED || finding.standing() == Standing.UNSETTLED) {
                assertThat(finding.needs()).as(finding.award() + " is open").isNotEmpty();
            }
        }
    }

    @Property(tries = 300)
    @Label("the order in which facts were read does not matter")
    void order_does_not_matter(@ForAll long seed) {
        var soldier = AnySoldier.of(seed);
        var shuffled = new ArrayList<>(soldier.list());
        Collections.shuffle(shuffled, new Random(seed + 1));
        var read = examine(soldier, soldier.list()).findings();
        var otherwise = examine(soldier, shuffled).findings();
        assertThat(otherwise).hasSameSizeAs(read);
        for (int i = 0; i < read.size(); i++) {
            assertThat(otherwise.get(i)).isEqualTo(read.get(i));
        }
    }

    @Property(tries = 300)
    @Label("a presumed award lacks exactly one fact on its best route")
    void presumed_lacks_one_fact(@ForAll long seed) {
        for (var finding :
                examine(AnySoldier.of(seed), AnySoldier.of(seed).list()).findings()) {
            if (finding.standing() == Standing.PRESUMED) {
                assertThat(finding.needs())
                        .as(finding.award())
                        .anySatisfy(need -> assertThat(need.wanted()).hasSize(1));
            }
        }
    }

    @Property(tries = 400)
    @Label("an order for an award never lowers its standing")
    void an_order_never_lowers(@ForAll long seed, @ForAll @IntRange(max = 1000) int which) {
        String award = AWARDS.get(which % AWARDS.size());
        neverLowers(
                seed,
                award,
                new AwardOrder(award, Optional.of("GO 40 HQ 999th Inf Div"), day("1944-12-03"), false, seen()));
    }

    @Property(tries = 400)
    @Label("a wound, a battle admission, captivity and duty in a theatre never lower theirs")
    void evidence_never_lowers(@ForAll long seed) {
        neverLowers(
                seed,
                "purple-heart",
                new Wound(day("1944-12-20"), Optional.of("Belgium"), "Belgium 20 Dec 44", seen()));
        neverLowers(
                seed,
                "purple-heart",
                new HospitalAdmission(
                        Evidence.HospitalAdmission.Cause.BATTLE, day("1944-12-20"), Optional.of("wound"), seen()));
        neverLowers(
                seed,
                "prisoner-of-war-medal",
                new Captivity(day("1944-12-19"), day("1945-04-29"), Optional.of("Germany"), false, seen()));
        neverLowers(seed, "ww2-victory-medal", station("Germany", Theater.EAME));
        neverLowers(seed, "eame-campaign-medal", station("Germany", Theater.EAME));
        neverLowers(seed, "army-of-occupation-medal", station("Germany", Theater.EAME));
        neverLowers(seed, "asiatic-pacific-campaign-medal", station("Japan", Theater.ASIATIC_PACIFIC));
        neverLowers(seed, "american-campaign-medal", station("Panama", Theater.AMERICAN));
        neverLowers(
                seed,
                "army-good-conduct-medal",
                new Conduct(
                        Optional.of("excellent"),
                        Optional.of("excellent"),
                        OptionalInt.of(0),
                        OptionalInt.of(0),
                        seen()));
    }

    @Property(tries = 300)
    @Label("a unit's order together with his membership never lowers the citation")
    void credit_with_membership_never_lowers(@ForAll long seed) {
        for (var award : List.of("distinguished-unit-citation", "meritorious-unit-commendation")) {
            neverLowers(
                    seed,
                    award,
                    new UnitCredit(
                            "997th Infantry",
                            List.of(),
                            award,
                            Optional.of("GO 9"),
                            day("1944-11-16"),
                            day("1944-11-20"),
                            seen()),
                    new Assignment("997th Infantry", List.of(), day("1944-09-01"), day("1945-09-01"), false, seen()));
        }
    }

    private static void neverLowers(long seed, String award, ServiceFact... evidence) {
        var soldier = AnySoldier.of(seed);
        var more = new ArrayList<>(soldier.list());
        more.addAll(List.of(evidence));
        var before = standing(examine(soldier, soldier.list()), award);
        var after = standing(examine(soldier, more), award);
        assertThat(after.compareTo(before))
                .as(
                        "%s: %s before, %s after %s; facts:%n%s",
                        award,
                        before,
                        after,
                        List.of(evidence),
                        soldier.list().stream()
                                .map(ServiceFact::toString)
                                .collect(Collectors.joining(System.lineSeparator())))
                .isLessThanOrEqualTo(0);
    }

    private static Standing standing(Findings findings, String award) {
        return LawExaminer.on(findings, award).orElseThrow().standing();
    }

    private static Station station(String place, Theater theater) {
        return new Station(place, Optional.of(place), Set.of(theater), day("1945-09-10"), day("1945-11-01"), seen());
    }

    private static Optional<PartialDate> day(String day) {
        return Optional.of(PartialDate.day(LocalDate.parse(day)));
    }

    private static Basis seen() {
        return Basis.plain(new Origin.InEvidence(999, "evidence", "seen", Optional.empty()));
    }
}
