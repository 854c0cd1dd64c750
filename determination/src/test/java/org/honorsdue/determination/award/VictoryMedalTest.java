package org.honorsdue.determination.award;

import static org.honorsdue.determination.Case.enlisted;
import static org.honorsdue.determination.Case.ofNoPaper;
import static org.honorsdue.determination.Case.with;
import static org.honorsdue.determination.FindingAssert.assertThat;

import org.honorsdue.determination.Case;
import org.honorsdue.determination.finding.Verdict;
import org.honorsdue.service.evidence.Evidence;
import org.honorsdue.service.fact.Device;
import org.honorsdue.service.fact.Tour;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("World War II Victory Medal: 32 CFR 578.47(a), 2006 revision; 7 December 1941 to 31 December 1946")
@DisplayNameGeneration(ReplaceUnderscores.class)
class VictoryMedalTest {
    private static final String MEDAL = "ww2-victory-medal";

    @Test
    void a_man_who_left_the_day_before_the_war_does_not_have_it() {
        assertThat(enlisted("1940-11-01", "1941-12-06").on(MEDAL))
                .isNotAuthorized()
                .rests("active-duty", Verdict.NOT_MET);
    }

    @Test
    void one_day_on_the_first_day_is_enough() {
        assertThat(enlisted("1940-11-01", "1941-12-07").on(MEDAL))
                .isAuthorized()
                .counts(1);
    }

    @Test
    void one_day_on_the_last_day_is_enough() {
        assertThat(enlisted("1946-12-31", "1948-06-30").on(MEDAL)).isAuthorized();
    }

    @Test
    void a_man_who_entered_the_day_after_does_not_have_it() {
        assertThat(enlisted("1947-01-01", "1948-06-30").on(MEDAL)).isNotAuthorized();
    }

    @Test
    void a_man_discharged_before_it_existed_has_it_and_the_paper_could_not_say_so() {
        assertThat(enlisted("1942-02-01", "1943-04-09").on(MEDAL))
                .isAuthorized()
                .isNotOnPaper()
                .saying("Created on 6 July 1945, after he left the service on 9 April 1943");
    }

    @Test
    void a_man_discharged_after_it_existed_was_left_off_by_the_clerk() {
        assertThat(enlisted("1943-02-03", "1945-11-11").on(MEDAL))
                .isNotOnPaper()
                .saying("Left off by the clerk");
    }

    @Test
    void before_6_July_1945_it_was_not_law() {
        var soldier = enlisted("1942-02-01", "1945-07-01");
        assertThat(soldier.asOf("1945-07-05").on(MEDAL))
                .isNotAuthorized()
                .saying("Not law on 5 July 1945: created on 6 July 1945");
        assertThat(soldier.asOf("1945-07-06").on(MEDAL)).isAuthorized();
    }

    @Test
    void a_star_on_it_is_refused() {
        assertThat(enlisted("1943-02-03", "1945-11-11")
                        .claims(MEDAL, 1, with(Device.BRONZE_SERVICE_STAR, 3))
                        .on(MEDAL))
                .isAuthorized()
                .isOnPaper()
                .wearsNothing()
                .rests("no-device", Verdict.NOT_MET);
    }

    @Test
    void captivity_or_a_campaign_shows_service_where_no_paper_gives_dates() {
        assertThat(ofNoPaper()
                        .captive("1942-05-07", "1942-12-26", "Philippine Islands")
                        .on(MEDAL))
                .isAuthorized();
        assertThat(ofNoPaper()
                        .died(Evidence.Death.Manner.KILLED_IN_ACTION, "1944-11-25")
                        .on(MEDAL))
                .isAuthorized();
    }

    @Test
    void without_any_date_the_ribbon_on_the_paper_is_only_presumed() {
        assertThat(enlisted("", "").claims(MEDAL).on(MEDAL)).isUnsettled().wants("service-dates");
        assertThat(ofNoPaper().on(MEDAL)).isUnsettled().wants("service-dates").settledBy("final-pay-voucher");
    }

    @Test
    void a_date_of_entry_read_with_doubt_does_not_settle_it() {
        assertThat(enlistedDoubtfully().on(MEDAL))
                .isPresumed()
                .wants("clear-reading")
                .settledBy("separation-paper");
    }

    private static Case enlistedDoubtfully() {
        return ofNoPaper()
                .doubtfully()
                .paper(Tour.Category.ENLISTED, "1943-02-03", "1945-11-11")
                .plainly();
    }
}
