package org.honorsdue.determination.award;

import static org.honorsdue.determination.Case.enlisted;
import static org.honorsdue.determination.Case.with;
import static org.honorsdue.determination.FindingAssert.assertThat;

import org.honorsdue.determination.Case;
import org.honorsdue.determination.finding.Verdict;
import org.honorsdue.service.fact.Device;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Service stars and arrowhead: 32 CFR 578.48(c) and (d), 2006 revision")
@DisplayNameGeneration(ReplaceUnderscores.class)
class CampaignStarsTest {
    private static final String EUROPEAN = "eame-campaign-medal";
    private static final String PACIFIC = "asiatic-pacific-campaign-medal";

    private static Case inEurope(String arrived, String left) {
        return enlisted("1942-10-02", "1945-11-11").arm("Infantry").overseas("ETO", "1942-11-01", arrived, left, "");
    }

    @ParameterizedTest(name = "there from {0} to {1}: {2} stars")
    @CsvSource({
        "1944-07-01, 1944-09-14, 0", // the day before Rhineland begins
        "1944-07-01, 1944-09-15, 1", // its first day
        "1945-03-21, 1945-10-01, 1", // its last day
        "1945-03-22, 1945-10-01, 0", // the day after
    })
    void a_star_needs_a_day_in_the_theatre_while_the_campaign_ran(String arrived, String left, int stars) {
        // Rhineland 15 September 1944 to 21 March 1945: published campaign list, table campaigns.csv
        assertThat(inEurope(arrived, left).campaigns("EA-RHI").on(EUROPEAN))
                .isAuthorized()
                .wears(Device.BRONZE_SERVICE_STAR, stars);
    }

    @Test
    void air_and_ground_dates_differ_and_the_mans_arm_decides() {
        // Tunisia: ground from 17 November 1942, air from 12 November 1942
        var ground = enlisted("1942-01-02", "1945-11-11")
                .arm("Infantry")
                .overseas("North Africa", "1942-10-20", "1942-11-08", "1942-11-14", "");
        var air = enlisted("1942-01-02", "1945-11-11")
                .arm("Air Corps")
                .overseas("North Africa", "1942-10-20", "1942-11-08", "1942-11-14", "");
        assertThat(ground.campaigns("EA-TUN").on(EUROPEAN)).wears(Device.BRONZE_SERVICE_STAR, 0);
        assertThat(air.campaigns("EA-TUN").on(EUROPEAN)).wears(Device.BRONZE_SERVICE_STAR, 1);
    }

    @Test
    void four_campaigns_are_four_bronze_stars() {
        assertThat(inEurope("1943-06-01", "1945-10-01")
                        .campaigns("EA-NOR", "EA-NFR", "EA-RHI", "EA-CEN")
                        .on(EUROPEAN))
                .wears(Device.BRONZE_SERVICE_STAR, 4)
                .wears(Device.SILVER_SERVICE_STAR, 0);
    }

    @Test
    void five_campaigns_are_one_silver_star() {
        assertThat(inEurope("1943-06-01", "1945-10-01")
                        .campaigns("EA-NOR", "EA-NFR", "EA-RHI", "EA-ARD", "EA-CEN")
                        .on(EUROPEAN))
                .wears(Device.SILVER_SERVICE_STAR, 1)
                .wears(Device.BRONZE_SERVICE_STAR, 0)
                .rests("silver-star", Verdict.MET);
    }

    @Test
    void six_campaigns_are_one_silver_and_one_bronze() {
        assertThat(inEurope("1942-11-08", "1945-10-01")
                        .campaigns("EA-TUN", "EA-SIC", "EA-NAF", "EA-ROM", "EA-SFR", "EA-RHI")
                        .on(EUROPEAN))
                .wears(Device.SILVER_SERVICE_STAR, 1)
                .wearsFor(Device.BRONZE_SERVICE_STAR, "Rhineland");
    }

    @Test
    void five_bronze_on_the_paper_say_as_much_as_one_silver() {
        assertThat(inEurope("1943-06-01", "1945-10-01")
                        .campaigns("EA-NOR", "EA-NFR", "EA-RHI", "EA-ARD", "EA-CEN")
                        .claims(EUROPEAN, 1, with(Device.BRONZE_SERVICE_STAR, 5))
                        .on(EUROPEAN))
                .isOnPaper();
    }

    @Test
    void fewer_stars_typed_than_campaigns_is_short() {
        assertThat(inEurope("1943-06-01", "1945-10-01")
                        .campaigns("EA-NOR", "EA-NFR", "EA-RHI")
                        .claims(EUROPEAN, 1, with(Device.BRONZE_SERVICE_STAR, 1))
                        .on(EUROPEAN))
                .isAuthorized()
                .isShortOnPaper()
                .wears(Device.BRONZE_SERVICE_STAR, 3);
    }

    @Test
    void more_stars_typed_than_campaigns_are_not_worn() {
        assertThat(inEurope("1943-06-01", "1945-10-01")
                        .campaigns("EA-NOR", "EA-NFR", "EA-RHI")
                        .claims(EUROPEAN, 1, with(Device.BRONZE_SERVICE_STAR, 5))
                        .on(EUROPEAN))
                .isOnPaper()
                .wears(Device.BRONZE_SERVICE_STAR, 3)
                .saying("types 5 on the ribbon; the campaigns bear out 3");
    }

    @Test
    void stars_on_a_ribbon_whose_campaigns_nobody_showed_are_told_as_typed() {
        assertThat(inEurope("1943-06-01", "1945-10-01")
                        .without(Entry.BATTLES_AND_CAMPAIGNS)
                        .claims(EUROPEAN, 1, with(Device.BRONZE_SERVICE_STAR, 2))
                        .on(EUROPEAN))
                .wears(Device.BRONZE_SERVICE_STAR, 2)
                .wants("unit-credit")
                .saying("the entry with the campaigns was not shown");
    }

    @Test
    void days_in_captivity_earn_no_star() {
        var soldier = inEurope("1944-06-20", "1945-10-01")
                .captive("1944-12-19", "1945-04-29", "Germany")
                .campaigns("EA-RHI", "EA-CEN");
        assertThat(soldier.on(EUROPEAN)).wearsFor(Device.BRONZE_SERVICE_STAR, "Rhineland", "Central Europe");
        // taken before the campaign began and free after it ended
        assertThat(inEurope("1944-06-20", "1945-10-01")
                        .captive("1944-12-10", "1945-01-26", "Germany")
                        .campaigns("EA-ARD")
                        .on(EUROPEAN))
                .wears(Device.BRONZE_SERVICE_STAR, 0)
                .rests("no-star-in-captivity", Verdict.NOT_MET);
    }

    @Test
    void the_credit_of_his_unit_adds_a_star_the_paper_lacks() {
        assertThat(inEurope("1944-06-20", "1945-10-01")
                        .campaigns("EA-RHI")
                        .claims(EUROPEAN, 1, with(Device.BRONZE_SERVICE_STAR, 1))
                        .assigned("999th Infantry", "1944-07-01", "1945-09-01")
                        .credited("999th Infantry", "EA-ARD", "1944-12-16", "1945-01-25")
                        .on(EUROPEAN))
                .wearsFor(Device.BRONZE_SERVICE_STAR, "Rhineland", "Ardennes-Alsace")
                .isShortOnPaper();
    }

    @Test
    void the_credit_of_a_unit_he_had_not_joined_adds_none() {
        assertThat(inEurope("1944-06-20", "1945-10-01")
                        .campaigns("EA-RHI")
                        .assigned("999th Infantry", "1945-01-26", "1945-09-01")
                        .credited("999th Infantry", "EA-ARD", "1944-12-16", "1945-01-25")
                        .on(EUROPEAN))
                .wearsFor(Device.BRONZE_SERVICE_STAR, "Rhineland");
    }

    @Test
    void a_campaign_read_with_doubt_counts_when_a_typed_star_bears_it_out_and_not_otherwise() {
        var doubtful = inEurope("1943-06-01", "1945-10-01")
                .doubtfully()
                .campaigns("EA-RHI")
                .plainly();
        assertThat(doubtful.on(EUROPEAN)).wearsNothing().wants("clear-reading");
        assertThat(inEurope("1943-06-01", "1945-10-01")
                        .doubtfully()
                        .campaigns("EA-RHI")
                        .plainly()
                        .claims(EUROPEAN, 1, with(Device.BRONZE_SERVICE_STAR, 1))
                        .on(EUROPEAN))
                .wearsFor(Device.BRONZE_SERVICE_STAR, "Rhineland")
                .isOnPaper();
    }

    @Test
    void a_credit_of_the_whole_theatre_is_told_and_not_counted() {
        assertThat(inEurope("1943-06-01", "1945-10-01").campaigns("EA-AIR").on(EUROPEAN))
                .wearsNothing()
                .saying("a credit of the whole theatre");
    }

    @Test
    void an_arrowhead_for_the_landing_on_the_day_it_happened() {
        assertThat(inEurope("1944-01-20", "1945-10-01")
                        .campaigns("EA-NOR")
                        .landed("EA-NOR", "amphibious", "1944-06-06")
                        .on(EUROPEAN))
                .wears(Device.ARROWHEAD, 1)
                .rests("arrowhead", Verdict.MET);
        assertThat(inEurope("1944-01-20", "1945-10-01")
                        .campaigns("EA-NOR")
                        .landed("EA-NOR", "amphibious", "1944-06-20")
                        .on(EUROPEAN))
                .wears(Device.ARROWHEAD, 0)
                .wants("assault");
    }

    @Test
    void an_arrowhead_tells_its_landing_by_name_and_not_by_the_id_of_the_table() {
        assertThat(inEurope("1943-01-20", "1945-10-01")
                        .campaigns("EA-ANZ")
                        .landed("EA-ANZ", "amphibious", "1944-01-22")
                        .on(EUROPEAN))
                .wearsFor(Device.ARROWHEAD, "Anzio-Nettuno");
    }

    @Test
    void two_assaults_are_one_arrowhead() {
        assertThat(inEurope("1943-01-20", "1945-10-01")
                        .campaigns("EA-SIC", "EA-NOR")
                        .landed("EA-SIC", "amphibious", "1943-07-10")
                        .landed("Normandy", "amphibious", "1944-06-06")
                        .on(EUROPEAN))
                .wears(Device.ARROWHEAD, 1)
                .rests("one-arrowhead", Verdict.MET);
    }

    @Test
    void a_jump_for_which_credit_was_refused_is_no_arrowhead() {
        // Nadzab, 5 September 1943: refused (table assaults.csv)
        assertThat(enlisted("1942-10-02", "1945-11-11")
                        .overseas("Australia", "1942-11-01", "1942-11-20", "1945-10-01", "")
                        .campaigns("AP-NGU")
                        .landed("AP-NGU", "parachute", "1943-09-05")
                        .on(PACIFIC))
                .wears(Device.ARROWHEAD, 0)
                .rests("arrowhead", Verdict.NOT_MET);
    }

    @Test
    void a_typed_arrowhead_that_fits_a_landing_is_worn_and_its_listing_asked_after() {
        assertThat(inEurope("1944-01-20", "1945-10-01")
                        .campaigns("EA-NOR")
                        .claims(EUROPEAN, 1, with(Device.BRONZE_SERVICE_STAR, 1), with(Device.ARROWHEAD, 1))
                        .on(EUROPEAN))
                .wears(Device.ARROWHEAD, 1)
                .isOnPaper()
                .saying("the listing was not seen");
    }

    @Test
    void a_typed_arrowhead_of_a_man_who_landed_in_July_is_not_worn() {
        assertThat(inEurope("1944-07-13", "1945-10-01")
                        .campaigns("EA-NFR", "EA-RHI")
                        .claims(EUROPEAN, 1, with(Device.BRONZE_SERVICE_STAR, 2), with(Device.ARROWHEAD, 1))
                        .on(EUROPEAN))
                .wears(Device.ARROWHEAD, 0)
                .rests("arrowhead", Verdict.UNKNOWN)
                .wants("assault");
    }
}
