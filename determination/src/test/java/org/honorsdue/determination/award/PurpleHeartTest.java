package org.honorsdue.determination.award;

import static org.honorsdue.determination.Case.enlisted;
import static org.honorsdue.determination.Case.ofNoPaper;
import static org.honorsdue.determination.FindingAssert.assertThat;

import org.honorsdue.determination.Case;
import org.honorsdue.determination.finding.Verdict;
import org.honorsdue.service.evidence.Evidence;
import org.honorsdue.service.fact.Device;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("Purple Heart: AR 600-8-22 (25 February 1995) 2-8; AR 600-45 (22 September 1943)")
@DisplayNameGeneration(ReplaceUnderscores.class)
class PurpleHeartTest {
    private static final String HEART = "purple-heart";

    private static Case soldier() {
        return enlisted("1943-02-03", "1945-11-11")
                .overseas("ETO", "1944-08-22", "1944-08-29", "1945-10-01", "1945-10-09");
    }

    @Test
    void a_wound_in_its_entry_alone_is_presumed_and_the_treatment_asked_for() {
        assertThat(soldier().wounded("1944-12-20", "Belgium").on(HEART))
                .isPresumed()
                .isNotOnPaper()
                .counts(1)
                .wants("medical-treatment")
                .settledBy("hospital-admission-cards");
    }

    @Test
    void a_wound_and_a_battle_admission_are_the_whole_proof() {
        assertThat(soldier()
                        .wounded("1944-12-20", "Belgium")
                        .hospital(Evidence.HospitalAdmission.Cause.BATTLE, "1944-12-21", "fragment wound, left arm")
                        .on(HEART))
                .isAuthorized()
                .counts(1)
                .wantsNothing();
    }

    @Test
    void the_award_beside_the_wound_is_the_whole_proof() {
        assertThat(soldier().wounded("1944-12-20", "Belgium").claims(HEART).on(HEART))
                .isAuthorized()
                .isOnPaper();
    }

    @Test
    void the_award_with_a_blank_entry_of_wounds_is_presumed() {
        assertThat(soldier().claims(HEART).on(HEART))
                .isPresumed()
                .wants("wound-by-enemy")
                .saying("ask for the day and the place");
    }

    @Test
    void an_order_is_enough() {
        assertThat(soldier()
                        .order(HEART, "GO 3 HQ 999th Gen Hosp", "1945-01-10")
                        .on(HEART))
                .isAuthorized();
    }

    @Test
    void killed_in_action_and_dead_of_wounds_are_enough_by_themselves() {
        assertThat(enlisted("1943-02-23", "")
                        .died(Evidence.Death.Manner.KILLED_IN_ACTION, "1944-11-25")
                        .on(HEART))
                .isAuthorized()
                .counts(1);
        assertThat(enlisted("1943-02-23", "")
                        .died(Evidence.Death.Manner.DIED_OF_WOUNDS, "1944-11-25")
                        .on(HEART))
                .isAuthorized()
                .counts(1);
    }

    @Test
    void dead_of_the_wound_that_is_listed_is_one_award_and_killed_on_another_day_a_second() {
        assertThat(enlisted("1943-02-23", "")
                        .wounded("1944-11-20", "Germany")
                        .died(Evidence.Death.Manner.DIED_OF_WOUNDS, "1944-11-25")
                        .on(HEART))
                .counts(1);
        assertThat(enlisted("1943-02-23", "")
                        .wounded("1944-08-20", "France")
                        .died(Evidence.Death.Manner.KILLED_IN_ACTION, "1944-11-25")
                        .on(HEART))
                .counts(2)
                .wears(Device.BRONZE_OAK_LEAF_CLUSTER, 1)
                .rests("one-award-an-occasion", Verdict.MET);
    }

    @Test
    void a_finding_of_death_is_presumed() {
        assertThat(ofNoPaper()
                        .died(Evidence.Death.Manner.FINDING_OF_DEATH, "1945-01-15")
                        .on(HEART))
                .isPresumed()
                .wants("death", "medical-treatment", "wound-by-enemy");
    }

    @Test
    void a_death_that_was_no_battle_death_is_a_no() {
        assertThat(enlisted("1943-02-23", "")
                        .died(Evidence.Death.Manner.NON_BATTLE, "1944-11-25")
                        .on(HEART))
                .isNotAuthorized();
    }

    @Test
    void died_in_captivity_is_presumed_by_the_law_itself_since_2008() {
        var soldier = ofNoPaper()
                .captive("1942-05-07", "1942-12-26", "Philippine Islands")
                .died(Evidence.Death.Manner.DIED_IN_CAPTIVITY, "1942-12-26");
        assertThat(soldier.on(HEART)).isAuthorized().rests("died-in-captivity", Verdict.MET);
        assertThat(soldier.asOf("2008-10-05").on(HEART)).isNotAuthorized().saying("it dates from 6 October 2008");
    }

    @Test
    void wounds_on_two_days_are_two_awards_and_the_paper_with_one_is_short() {
        assertThat(soldier()
                        .wounded("1944-10-02", "Germany")
                        .wounded("1944-12-20", "Belgium")
                        .claims(HEART)
                        .on(HEART))
                .isAuthorized()
                .counts(2)
                .isShortOnPaper()
                .wears(Device.BRONZE_OAK_LEAF_CLUSTER, 1)
                .wants("medical-treatment");
    }

    @Test
    void two_wounds_of_one_moment_count_once() {
        assertThat(soldier()
                        .wounded("1944-12-20", "Belgium")
                        .woundEntry("both legs Belgium 20 Dec 44", "1944-12-20", "Belgium")
                        .claims(HEART)
                        .on(HEART))
                .counts(1);
    }

    @Test
    void six_awards_are_a_silver_cluster() {
        assertThat(soldier().claims(HEART, 6).on(HEART))
                .counts(6)
                .wears(Device.SILVER_OAK_LEAF_CLUSTER, 1)
                .wears(Device.BRONZE_OAK_LEAF_CLUSTER, 0)
                .saying("claims 6 awards");
    }

    @Test
    void trench_foot_is_refused_with_its_reason() {
        assertThat(soldier()
                        .woundEntry("Trench Foot Belgium Dec 44", "1944-12", "Belgium")
                        .on(HEART))
                .isNotAuthorized()
                .rests("trench-foot", Verdict.NOT_MET);
        assertThat(soldier()
                        .hospital(Evidence.HospitalAdmission.Cause.NON_BATTLE, "1944-12-12", "trench foot, bilateral")
                        .on(HEART))
                .isNotAuthorized()
                .rests("trench-foot", Verdict.NOT_MET);
    }

    @Test
    void severe_frostbite_in_combat_is_open_until_the_fight_is_shown() {
        assertThat(soldier()
                        .hospital(
                                Evidence.HospitalAdmission.Cause.NON_BATTLE,
                                "1944-12-24",
                                "frostbite, severe, both feet")
                        .on(HEART))
                .isUnsettled()
                .rests("severe-frostbite", Verdict.UNKNOWN);
    }

    @Test
    void an_accident_and_a_disease_are_refused() {
        assertThat(soldier()
                        .hospital(Evidence.HospitalAdmission.Cause.NON_BATTLE, "1944-12-12", "fracture, truck accident")
                        .on(HEART))
                .isNotAuthorized()
                .rests("accident", Verdict.NOT_MET);
        assertThat(soldier()
                        .hospital(Evidence.HospitalAdmission.Cause.NOT_STATED, "1944-12-12", "malaria")
                        .on(HEART))
                .isNotAuthorized();
    }

    @Test
    void a_disease_beside_a_wound_takes_nothing_away() {
        assertThat(soldier()
                        .wounded("1944-12-20", "Belgium")
                        .claims(HEART)
                        .hospital(Evidence.HospitalAdmission.Cause.NON_BATTLE, "1945-02-12", "jaundice")
                        .on(HEART))
                .isAuthorized();
    }

    @Test
    void an_injury_whose_cause_the_record_does_not_state_is_open() {
        assertThat(soldier()
                        .without(Entry.WOUNDS)
                        .hospital(Evidence.HospitalAdmission.Cause.NOT_STATED, "1944-12-12", "fracture, left leg")
                        .on(HEART))
                .isUnsettled()
                .wants("wound-by-enemy");
    }

    @Test
    void a_wound_as_a_prisoner_counts_since_1996() {
        var prisoner = soldier()
                .captive("1944-12-19", "1945-04-29", "Germany")
                .wounded("1945-02-10", "Germany")
                .hospital(Evidence.HospitalAdmission.Cause.BATTLE, "1945-05-10", "old shell wound");
        assertThat(prisoner.on(HEART)).isAuthorized();
        assertThat(soldier()
                        .captive("1944-12-19", "1945-04-29", "Germany")
                        .wounded("1945-02-10", "Germany")
                        .on(HEART))
                .isPresumed()
                .rests("prisoner-wounded", Verdict.MET);
    }

    @Test
    void a_merit_award_of_1942_stays_valid_without_a_wound() {
        assertThat(enlisted("1940-02-03", "1945-11-11")
                        .order(HEART, "GO 9 HQ 999th Pursuit Gp", "1942-09-19")
                        .on(HEART))
                .isAuthorized()
                .rests("merit-awards-stand", Verdict.MET);
    }

    @Test
    void the_heart_against_a_none_in_the_entry_of_wounds_is_open() {
        assertThat(soldier().claims(HEART).noneTyped(Entry.WOUNDS).on(HEART)).isUnsettled();
    }
}
