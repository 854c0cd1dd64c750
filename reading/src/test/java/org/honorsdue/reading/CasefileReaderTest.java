package org.honorsdue.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.honorsdue.reference.Theater;
import org.honorsdue.service.Sex;
import org.honorsdue.service.evidence.Evidence;
import org.honorsdue.service.fact.Assault;
import org.honorsdue.service.fact.Assignment;
import org.honorsdue.service.fact.AwardClaim;
import org.honorsdue.service.fact.AwardOrder;
import org.honorsdue.service.fact.Captivity;
import org.honorsdue.service.fact.Conflict;
import org.honorsdue.service.fact.Death;
import org.honorsdue.service.fact.HospitalAdmission;
import org.honorsdue.service.fact.Origin;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.SexFact;
import org.honorsdue.service.fact.Station;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.fact.UnitCredit;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Expected facts: by hand from the casefile beside them. */
@DisplayName("A whole casefile")
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CasefileReaderTest {
    private static ServiceFacts read(String yaml) {
        return ReadAs.reader().read(ReadAs.casefile(yaml));
    }

    @Test
    void of_a_man_who_was_enlisted_and_then_an_officer_has_two_tours() {
        var facts = read("""
                papers:
                  - { form: 53-55, entries: { grade: S Sgt, entered_active_service: 3 Feb 42, separated: 11 Nov 43 } }
                  - { form: 53-98, entries: { grade: 1st Lt, entered_active_service: 12 Nov 43, separated: 4 Jan 46 } }
                """);
        assertThat(facts.every(Tour.class))
                .extracting(Tour::category)
                .containsExactly(Tour.Category.ENLISTED, Tour.Category.OFFICER);
        assertThat(facts.conflicts()).isEmpty();
        assertThat(facts.papers()).isEqualTo(2);
    }

    @Test
    void of_a_warrant_officer_is_neither_whatever_the_form() {
        var facts = read("papers: [{ form: 53-98, entries: { grade: WOJG, separated: 4 Jan 46 } }]");
        assertThat(facts.every(Tour.class)).extracting(Tour::category).containsExactly(Tour.Category.WARRANT_OFFICER);
    }

    @Test
    void whose_tours_overlap_brings_a_conflict() {
        assertThat(read("""
                                papers:
                                  - { form: 53-55, entries: { entered_active_service: 3 Feb 42, separated: 11 Nov 44 } }
                                  - { form: 53-55, entries: { entered_active_service: 1 Jan 44, separated: 4 Jan 46 } }
                                """).conflicts())
                .extracting(Conflict::says)
                .containsExactly(
                        "Two papers overlap: active service to 1944-11-11 on one, from 1944-01-01 on the other.");
    }

    @Test
    void whose_separation_lies_before_the_entry_brings_a_conflict_that_points_to_both() {
        var conflicts =
                read("papers: [{ form: 53-55, entries: { entered_active_service: 3 Feb 43, separated: 11 Nov 42 } }]")
                        .conflicts();
        assertThat(conflicts).hasSize(1);
        assertThat(conflicts.get(0).says())
                .isEqualTo(
                        "Date of separation (1942-11-11) lies before Date of entry into active service (1943-02-03).");
        assertThat(conflicts.get(0).origins())
                .extracting(Origin::text)
                .containsExactlyInAnyOrder("3 Feb 43", "11 Nov 42");
    }

    @Test
    void whose_papers_differ_on_birth_and_name_brings_both_conflicts() {
        assertThat(read("""
                                soldier: { name: "Fairweather, Orrin T" }
                                papers:
                                  - { form: 53-55, entries: { name: FAIRWEATHER ORRIN T, date_of_birth: 12 MAR 21 } }
                                  - { form: 53-55, entries: { name: FARWEATHER ORRIN T, date_of_birth: 12 MAR 22 } }
                                """).conflicts())
                .extracting(Conflict::says)
                .containsExactly(
                        "The dates of birth differ: 1921-03-12, 1922-03-12.",
                        "The sources differ on the soldier's surname: FAIRWEATHER, FARWEATHER.");
    }

    @Test
    void takes_the_sex_from_the_head_and_from_a_womens_corps() {
        var facts = read("{ soldier: { sex: male }, papers: [{ form: 53-55, entries: { component: WAC } }] }");
        assertThat(facts.every(SexFact.class)).extracting(SexFact::sex).containsExactly(Sex.MALE, Sex.FEMALE);
        assertThat(facts.conflicts()).hasSize(1);
    }

    @Test
    void of_evidence_alone_is_read_without_a_paper() {
        var facts = read("""
                evidence:
                  - { kind: order, award: silver-star, reference: "GO 40 HQ 999th Inf Div", date: 1944-12-03, heroism: true }
                  - { kind: unit-assignment, unit: "Co B 331st Inf", from: 1944-01-02, to: 1945-11-01 }
                  - { kind: station, place: Germany, from: 1945-05-09, to: 1945-09-30 }
                  - { kind: hospital-admission, cause: battle, date: 1944-12-20, diagnosis: fragment wound }
                  - { kind: captivity, from: 1944-03-16, to: 1944-12-28, place: Switzerland }
                  - { kind: unit-credit, unit: "331st Inf", award: distinguished-unit-citation }
                  - { kind: assault, campaign: Normandy, means: amphibious, date: 1944-06-06 }
                  - { kind: death, date: 1944-12-20, manner: died-of-wounds, source: report of death }
                """);
        assertThat(facts.first(AwardOrder.class)).map(AwardOrder::heroism).contains(true);
        assertThat(facts.first(Assignment.class).orElseThrow().units()).isNotEmpty();
        assertThat(facts.first(Assignment.class)).map(Assignment::atSeparation).contains(false);
        assertThat(facts.first(Station.class).orElseThrow().theaters()).containsExactly(Theater.EAME);
        assertThat(facts.first(HospitalAdmission.class))
                .map(HospitalAdmission::cause)
                .contains(Evidence.HospitalAdmission.Cause.BATTLE);
        assertThat(facts.first(Captivity.class))
                .map(Captivity::internedByNeutral)
                .contains(true);
        assertThat(facts.first(UnitCredit.class)).map(UnitCredit::award).contains("distinguished-unit-citation");
        assertThat(facts.first(Assault.class)).map(Assault::campaign).contains("EA-NOR");
        var death = facts.first(Death.class).orElseThrow();
        assertThat(death.manner()).isEqualTo(Evidence.Death.Manner.DIED_OF_WOUNDS);
        assertThat(death.basis().origins())
                .singleElement()
                .satisfies(origin ->
                        assertThat(((Origin.InEvidence) origin).source()).contains("report of death"));
        assertThat(facts.papers()).isZero();
    }

    @Test
    void of_a_report_of_death_gives_the_death_with_its_manner() {
        var facts = read("""
                papers:
                  - form: Report of Death
                    entries: { grade: Pfc, separated: 20 Dec 44, remarks: KIA Belgium }
                """);
        var death = facts.first(Death.class).orElseThrow();
        assertThat(death.date()).map(Object::toString).contains("1944-12-20");
        assertThat(death.manner()).isEqualTo(Evidence.Death.Manner.KILLED_IN_ACTION);
    }

    @Test
    void knows_which_boxes_were_shown_even_if_blank_or_illegible() {
        var facts = read(
                "papers: [{ form: 53-55, entries: { wounds: , remarks: [illegible], decorations_and_citations: GCMdl } }]");
        assertThat(facts.supplied(1, Entry.WOUNDS)).isTrue();
        assertThat(facts.supplied(1, Entry.REMARKS)).isTrue();
        assertThat(facts.supplied(1, Entry.QUALIFICATIONS)).isFalse();
        assertThat(facts.every(AwardClaim.class)).hasSize(1);
    }

    @Test
    void lists_what_stayed_unread_with_its_paper_and_entry() {
        var unread = read("papers: [{ form: 53-55, entries: { decorations_and_citations: GCMdl XQZ 7714 } }]")
                .unread();
        assertThat(unread).singleElement().satisfies(part -> {
            assertThat(part.text()).isEqualTo("XQZ 7714");
            assertThat(part.paper()).isEqualTo(1);
            assertThat(part.entry()).isEqualTo(Entry.DECORATIONS_AND_CITATIONS);
        });
    }

    @Test
    void can_be_shown_entry_by_entry() {
        var readings = ReadAs.reader()
                .readings(ReadAs.casefile("papers: [{ form: 53-55, entries: { grade: Tec 5, arm: FA, wounds: } }]"), 1);
        assertThat(readings.keySet()).isEqualTo(java.util.Set.copyOf(List.of(Entry.GRADE, Entry.ARM)));
    }
}
