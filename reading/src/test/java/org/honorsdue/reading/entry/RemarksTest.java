package org.honorsdue.reading.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.honorsdue.reading.ReadAs;
import org.honorsdue.service.fact.AwardClaim;
import org.honorsdue.service.fact.Basis.Certainty;
import org.honorsdue.service.fact.CampaignClaim;
import org.honorsdue.service.fact.Captivity;
import org.honorsdue.service.fact.Conduct;
import org.honorsdue.service.fact.LapelButton;
import org.honorsdue.service.fact.PointsScore;
import org.honorsdue.service.fact.PriorService;
import org.honorsdue.service.fact.Qualification;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expected readings: common practice, no published source. */
@DisplayName("Remarks")
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RemarksTest {
    private static <T extends ServiceFact> List<T> facts(String text, Class<T> kind) {
        return ReadAs.facts(ReadAs.entry(Entry.REMARKS, text), kind);
    }

    @ParameterizedTest
    @CsvSource({
        "LAPEL BUTTON ISSUED, true",
        "Lapel Btn Iss., true",
        "ISSUED LAPEL BUTTON, true",
        "NO LAPEL BUTTON, false",
        "LAPEL BUTTON NOT ISSUED, false",
        "LAPEL BUTTON DENIED, false"
    })
    void the_lapel_button_is_issued_or_not(String typed, boolean issued) {
        assertThat(facts(typed, LapelButton.class))
                .extracting(LapelButton::issued)
                .containsExactly(issued);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            ASR score (2 Sept 45) 60                              | 60 1945-09-02
            ASR SCORE 79 (2 SEP 45)                               | 79 1945-09-02
            Adjusted Service Rating Score 12 May 45: 92           | 92 1945-05-12
            ADJUSTED SERVICE RATING SCORE AS OF 2 SEPTEMBER 1945 - 56 | 56 1945-09-02
            66 POINTS ASR 2 SEPT 1945                             | 66 1945-09-02
            ASR 85                                                | 85 -
            """)
    void the_score_is_read_with_its_day(String typed, String expected) {
        assertThat(facts(typed, PointsScore.class))
                .extracting(score -> score.points() + " "
                        + score.asOf().map(Object::toString).orElse("-"))
                .containsExactly(expected);
    }

    @Test
    void two_scores_are_both_kept() {
        assertThat(facts("ASR SCORE (12 MAY 45) 85 (2 SEP 45) 93", PointsScore.class))
                .extracting(PointsScore::points)
                .containsExactly(85, 93);
    }

    @ParameterizedTest
    @CsvSource({
        "No days lost under AW 107, 0",
        "NO TIME LOST UNDER AW 107, 0",
        "Time lost under A.W. 107: 6 days, 6",
        "3 days lost under AW 107, 3",
        "LOST 12 DAYS UNDER AW 107, 12",
        "Days lost under AW 107: None, 0",
        "N0 DAYS L0ST UNDER AW lO7, 0"
    })
    void days_lost_are_counted(String typed, int days) {
        assertThat(facts(typed, Conduct.class)).extracting(Conduct::lostDays).containsExactly(OptionalInt.of(days));
    }

    @Test
    void captivity_is_read_with_its_dates_and_place() {
        var captivity =
                facts("POW GERMANY 16 DEC 44 TO 2 MAY 45", Captivity.class).get(0);
        assertThat(captivity.from()).map(Object::toString).contains("1944-12-16");
        assertThat(captivity.to()).map(Object::toString).contains("1945-05-02");
        assertThat(captivity.place()).contains("GERMANY");
        assertThat(captivity.internedByNeutral()).isFalse();
    }

    @Test
    void internment_in_Switzerland_is_not_captivity_by_the_enemy() {
        assertThat(facts("INTERNED SWITZERLAND 16 MAR 44 TO 28 DEC 44", Captivity.class))
                .singleElement()
                .satisfies(
                        captivity -> assertThat(captivity.internedByNeutral()).isTrue());
    }

    @Test
    void the_place_of_captivity_is_no_campaign() {
        assertThat(facts("POW 6 MAY 42 TO 20 SEP 45 PHILIPPINE IS & JAPAN", CampaignClaim.class))
                .isEmpty();
    }

    @Test
    void reserve_time_is_inactive() {
        var reserve = facts("INACTIVE SERV ERC 10 NOV 42 TO 25 JAN 43 LAPEL BUTTON ISSUED", PriorService.class)
                .get(0);
        assertThat(reserve.duty()).isEqualTo(PriorService.Duty.INACTIVE);
        assertThat(reserve.component()).isEqualTo(Optional.of("Enlisted Reserve Corps"));
        assertThat(reserve.to()).map(Object::toString).contains("1943-01-25");
    }

    @Test
    void what_a_narrow_box_had_no_room_for_is_read_here() {
        assertThat(facts("ITEM 33 CONT: GOOD CONDUCT MEDAL, PURPLE HEART W/1 OLC", AwardClaim.class))
                .extracting(AwardClaim::award)
                .containsExactly("army-good-conduct-medal", "purple-heart");
        assertThat(facts("ITEM 32 CONT CENTRAL EUROPE", CampaignClaim.class)).hasSize(1);
        assertThat(facts("ITEM 31 (CONT) EXPERT RIFLE", Qualification.class)).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({"TRIED BY GCM", "ACQUITTED BY GCM 14 MAR 44", "CONVICTED BY GCM"})
    void a_general_court_martial_is_no_good_conduct_medal(String typed) {
        assertThat(facts(typed, AwardClaim.class)).isEmpty();
    }

    @Test
    void GCM_with_nothing_beside_it_is_doubtful() {
        assertThat(facts("GCM", AwardClaim.class))
                .singleElement()
                .satisfies(claim -> assertThat(claim.basis().certainty()).isEqualTo(Certainty.DOUBTFUL));
    }

    @ParameterizedTest
    @CsvSource({"EM NOT ELIGIBLE FOR GOOD CONDUCT MEDAL", "GOOD CONDUCT MEDAL NOT AUTHORIZED"})
    void an_award_that_is_said_not_to_be_due_is_not_claimed(String typed) {
        assertThat(facts(typed, AwardClaim.class)).isEmpty();
        assertThat(ReadAs.entry(Entry.REMARKS, typed).tokens())
                .anySatisfy(token -> assertThat(token.certainty()).isEqualTo(Certainty.DOUBTFUL));
    }

    @Test
    void months_are_no_movement_orders() {
        assertThat(ReadAs.entry(Entry.REMARKS, "SSN 745 3 MO 844 12 MO").orders())
                .isEmpty();
    }
}
