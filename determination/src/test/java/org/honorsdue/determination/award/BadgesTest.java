package org.honorsdue.determination.award;

import static org.honorsdue.determination.Case.enlisted;
import static org.honorsdue.determination.Case.with;
import static org.honorsdue.determination.FindingAssert.assertThat;

import org.assertj.core.api.Assertions;
import org.honorsdue.determination.Case;
import org.honorsdue.determination.finding.Verdict;
import org.honorsdue.service.fact.Device;
import org.honorsdue.service.fact.Qualification;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("Badges: WD Circular 269 (1943), WD Circular 66 (1945) and the entries of the paper")
@DisplayNameGeneration(ReplaceUnderscores.class)
class BadgesTest {
    private static final String INFANTRYMAN = "combat-infantryman-badge";
    private static final String MEDICAL = "combat-medical-badge";

    private static Case rifleman() {
        return enlisted("1943-02-03", "1945-11-11")
                .arm("Infantry")
                .specialty("745")
                .campaigns("EA-RHI")
                .overseas("ETO", "1944-08-22", "1944-08-29", "1945-10-01", "1945-10-09");
    }

    @Test
    void the_entry_of_the_badge_is_the_record_of_its_order() {
        assertThat(rifleman().badge(INFANTRYMAN, "").on(INFANTRYMAN))
                .isAuthorized()
                .isOnPaper()
                .rests("infantryman", Verdict.MET)
                .rests("infantry-unit-in-combat", Verdict.MET)
                .rests("in-orders", Verdict.MET);
    }

    @Test
    void a_specialty_and_a_campaign_star_are_not_the_badge() {
        assertThat(rifleman().on(INFANTRYMAN)).isUnsettled().isNotOnPaper().wants("award-order", "combat-duty");
    }

    @Test
    void a_cook_of_an_infantry_company_is_asked_for_the_specialty_he_fought_in() {
        assertThat(enlisted("1943-02-03", "1945-11-11")
                        .arm("Infantry")
                        .specialty("060")
                        .campaigns("EA-RHI")
                        .overseas("ETO", "1944-08-22", "1944-08-29", "1945-10-01", "1945-10-09")
                        .on(INFANTRYMAN))
                .isUnsettled()
                .wants("award-order", "combat-duty", "specialty");
    }

    @Test
    void a_gunner_with_the_badge_is_cautioned_and_without_it_not_listed() {
        var gunner = enlisted("1943-02-03", "1945-11-11")
                .arm("Field Artillery")
                .campaigns("EA-RHI")
                .overseas("ETO", "1944-08-22", "1944-08-29", "1945-10-01", "1945-10-09");
        Assertions.assertThat(gunner.find(INFANTRYMAN)).isEmpty();
        assertThat(gunner.badge(INFANTRYMAN, "").on(INFANTRYMAN)).isAuthorized().saying("may have changed both");
    }

    @Test
    void a_badge_of_a_man_who_reached_Europe_after_the_fight_is_refused() {
        assertThat(enlisted("1945-02-03", "1946-11-11")
                        .arm("Infantry")
                        .overseas("Germany", "1945-06-01", "1945-06-12", "1946-10-01", "1946-10-12")
                        .badge(INFANTRYMAN, "")
                        .on(INFANTRYMAN))
                .isNotAuthorized()
                .isOnPaper()
                .rests("infantry-unit-in-combat", Verdict.NOT_MET);
    }

    @Test
    void a_medical_mans_infantry_badge_was_withdrawn() {
        assertThat(enlisted("1943-02-03", "1945-11-11")
                        .arm("Medical Department")
                        .campaigns("EA-RHI")
                        .badge(INFANTRYMAN, "")
                        .on(INFANTRYMAN))
                .isUnsettled()
                .rests("medical-men", Verdict.UNKNOWN);
        assertThat(enlisted("1943-02-03", "1945-11-11")
                        .arm("Medical Department")
                        .on(INFANTRYMAN))
                .isNotAuthorized()
                .rests("medical-men", Verdict.NOT_MET);
    }

    @Test
    void the_Medical_Badge_on_the_paper_is_confirmed_and_a_hospital_man_without_it_is_not_listed() {
        assertThat(enlisted("1943-02-03", "1945-11-11")
                        .arm("Medical Department")
                        .badge(MEDICAL, "")
                        .on(MEDICAL))
                .isAuthorized()
                .rests("medical-man", Verdict.MET)
                .rests("infantry-medical-detachment", Verdict.MET);
        var hospital = enlisted("1943-02-03", "1945-11-11")
                .arm("Medical Department")
                .campaigns("EA-RHI")
                .organization("999th General Hospital");
        Assertions.assertThat(hospital.find(MEDICAL)).isEmpty();
        assertThat(hospital.on(MEDICAL)).isUnsettled();
    }

    @Test
    void a_badge_named_twice_is_worn_once() {
        assertThat(rifleman().claims(INFANTRYMAN, 2).on(INFANTRYMAN)).rests("one-award", Verdict.NOT_MET);
        assertThat(enlisted("1943-02-03", "1945-11-11")
                        .arm("Medical Department")
                        .claims(MEDICAL, 2)
                        .on(MEDICAL))
                .rests("one-award", Verdict.NOT_MET);
    }

    @Test
    void the_expert_badge_stands_below_the_combat_badge() {
        assertThat(rifleman()
                        .badge(INFANTRYMAN, "")
                        .badge("expert-infantryman-badge", "")
                        .on("expert-infantryman-badge"))
                .isAuthorized()
                .rests("in-orders", Verdict.MET)
                .rests("not-with-combat-badge", Verdict.MET);
    }

    @Test
    void a_combat_jump_is_a_star_on_the_wings_since_1983_and_earns_the_badge_by_itself() {
        var jumper = rifleman().landed("EA-NOR", "parachute", "1944-06-06");
        assertThat(jumper.badge("parachutist-badge", "").on("parachutist-badge"))
                .isAuthorized()
                .isShortOnPaper()
                .wears(Device.BRONZE_STAR_ON_PARACHUTIST_BADGE, 1)
                .rests("combat-jump-star", Verdict.MET);
        assertThat(rifleman().landed("EA-NOR", "parachute", "1944-06-06").on("parachutist-badge"))
                .isAuthorized()
                .rests("combat-jump", Verdict.MET);
        assertThat(rifleman().school("Parachute School, Ft Benning").on("parachutist-badge"))
                .isPresumed()
                .rests("course", Verdict.UNKNOWN);
    }

    @Test
    void the_glider_badge_by_course_or_by_landing() {
        assertThat(rifleman().badge("glider-badge", "").on("glider-badge")).isAuthorized();
        assertThat(rifleman().landed("EA-NOR", "glider", "1944-06-07").on("glider-badge"))
                .isAuthorized()
                .rests("combat-landing", Verdict.MET);
        assertThat(rifleman()
                        .claims("glider-badge", 1, with(Device.BRONZE_SERVICE_STAR, 1))
                        .on("glider-badge"))
                .wearsNothing()
                .rests("no-official-star", Verdict.NOT_MET);
    }

    @Test
    void the_aviation_badge_is_named_by_its_kind() {
        var finding = enlisted("1943-02-03", "1945-11-11")
                .arm("Air Corps")
                .typed("aviation-badge", "Avn Bdg Aer Gnr", "", Entry.QUALIFICATIONS)
                .on("aviation-badge");
        assertThat(finding).isAuthorized().rests("rating", Verdict.MET);
        Assertions.assertThat(finding.name()).isEqualTo("Aviation badge: aerial gunner");
        assertThat(enlisted("1943-02-03", "1945-11-11")
                        .arm("Air Corps")
                        .typed("aviation-badge", "Avn Bdg", "", Entry.QUALIFICATIONS)
                        .on("aviation-badge"))
                .isAuthorized()
                .wants("qualification");
    }

    @Test
    void the_drivers_bars_are_those_the_paper_names() {
        assertThat(rifleman()
                        .typed("driver-and-mechanic-badge", "Driver & Mech Bdg", "", Entry.QUALIFICATIONS)
                        .on("driver-and-mechanic-badge"))
                .isAuthorized()
                .rests("in-records", Verdict.MET)
                .rests("bars", Verdict.MET)
                .wears(Device.QUALIFICATION_BAR, 2);
    }

    @Test
    void marksmanship_is_one_badge_a_grade_with_a_bar_a_weapon() {
        var finding = rifleman()
                .qualified(Qualification.Level.EXPERT, "Rifle", "1943-12")
                .qualified(Qualification.Level.MARKSMAN, "Carbine", "1944-02")
                .qualified(Qualification.Level.EXPERT, "Bayonet", "1944-02")
                .on("marksmanship-badge");
        assertThat(finding)
                .isAuthorized()
                .isOnPaper()
                .counts(2)
                .wearsFor(Device.QUALIFICATION_BAR, "Expert: Bayonet", "Expert: Rifle", "Marksman: Carbine");
        Assertions.assertThat(finding.name()).isEqualTo("Marksmanship badge: Expert, Marksman");
    }

    @Test
    void a_later_qualification_with_the_weapon_takes_the_place_of_the_earlier() {
        assertThat(rifleman()
                        .qualified(Qualification.Level.EXPERT, "Rifle", "1943-06-01")
                        .qualified(Qualification.Level.MARKSMAN, "Rifle", "1944-06-01")
                        .on("marksmanship-badge"))
                .wearsFor(Device.QUALIFICATION_BAR, "Marksman: Rifle")
                .rests("latest-qualification", Verdict.MET);
    }

    @Test
    void a_grade_without_a_weapon_asks_for_the_weapon() {
        assertThat(rifleman()
                        .qualified(Qualification.Level.SHARPSHOOTER, "", "")
                        .on("marksmanship-badge"))
                .wearsNothing()
                .wants("qualification");
    }
}
