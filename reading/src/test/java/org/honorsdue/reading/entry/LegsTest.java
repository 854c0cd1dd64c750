package org.honorsdue.reading.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.honorsdue.reading.ReadAs;
import org.honorsdue.reference.Theater;
import org.honorsdue.service.fact.Basis.Certainty;
import org.honorsdue.service.fact.OverseasStay;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Expected readings: by hand; theatres as in the table of places. */
@DisplayName("Service outside the continental United States")
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LegsTest {
    private static List<OverseasStay> stays(String text) {
        return ReadAs.facts(ReadAs.entry(Entry.SERVICE_OUTSIDE_US, text), OverseasStay.class);
    }

    private static String date(Optional<PartialDate> date) {
        return date.map(PartialDate::toString).orElse("-");
    }

    private static String said(String text) {
        return stays(text).stream()
                .map(stay -> "%s %s %s..%s %s"
                        .formatted(
                                date(stay.departed()),
                                stay.destination(),
                                date(stay.arrived()),
                                date(stay.left()),
                                date(stay.returned())))
                .collect(Collectors.joining("; "));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "22 AUG 44 ETO 29 AUG 44 1 NOV 45 USA 9 NOV 45",
                "22AUG44 ETO 29AUG44 1NOV45 USA 9NOV45",
                "22 Aug 44 ETO 29 Aug 44\n1 Nov 45 USA 9 Nov 45",
                "22 Aug 44 - ETO - 29 Aug 44 / 1 Nov 45 - USA - 9 Nov 45",
                "22 AUG 44 1 NOV 45 ETO USA 29 AUG 44 9 NOV 45",
                "Departed 22 Aug 44 ETO arrived 29 Aug 44. Departed 1 Nov 45 USA arrived 9 Nov 45",
                "22 Aug 44 to ETO, arr 29 Aug 44; left ETO 1 Nov 45, arr USA 9 Nov 45",
                "8/22/44 ETO 8/29/44 11/1/45 USA 11/9/45"
            })
    void two_crossings_make_one_stay_however_they_are_typed(String text) {
        assertThat(said(text)).isEqualTo("1944-08-22 ETO 1944-08-29..1945-11-01 1945-11-09");
    }

    @Test
    void each_theater_after_another_is_a_stay_of_its_own() {
        assertThat(said("5 APR 42 NORTHERN IRELAND 12 APR 42 3 DEC 42 NORTH AFRICA 9 DEC 42 2 JUN 45 US 11 JUN 45"))
                .isEqualTo("1942-04-05 NORTHERN IRELAND 1942-04-12..1942-12-03 -;"
                        + " 1942-12-03 NORTH AFRICA 1942-12-09..1945-06-02 1945-06-11");
    }

    @Test
    void going_out_twice_makes_two_stays() {
        assertThat(
                        stays(
                                "14 Jan 42 APT 2 Feb 42 15 Sep 44 USA 6 Oct 44 8 Feb 45 EAMET 19 Feb 45 2 Nov 45 USA 11 Nov 45"))
                .extracting(OverseasStay::theaters)
                .containsExactly(java.util.Set.of(Theater.ASIATIC_PACIFIC), java.util.Set.of(Theater.EAME));
    }

    @Test
    void who_never_came_home_on_this_paper_has_no_return() {
        assertThat(said("28 May 42 Australia 21 Jun 42")).isEqualTo("1942-05-28 Australia 1942-06-21..- -");
    }

    @Test
    void a_date_that_is_typed_as_unknown_is_no_part_of_the_destination() {
        assertThat(said("UNKNOWN ETO 3 FEB 45 12 MAY 45 USA 20 MAY 45"))
                .isEqualTo("- ETO 1945-02-03..1945-05-12 1945-05-20");
        assertThat(said("3 FEB 45 ETO UNK 12 MAY 45 USA 20 MAY 45"))
                .isEqualTo("1945-02-03 ETO -..1945-05-12 1945-05-20");
        assertThat(said("3 FEB 45 UNKNOWN 11 FEB 45")).isEqualTo("1945-02-03 UNKNOWN 1945-02-11..- -");
    }

    @Test
    void NATO_is_the_North_African_theater() {
        assertThat(stays("14 FEB 44 NATO 3 MAR 44").get(0).theaters()).containsExactly(Theater.EAME);
    }

    @Test
    void Aust_in_1943_is_Australia() {
        var stay = stays("4 MAY 43 AUST 2 JUN 43").get(0);
        assertThat(stay.theaters()).containsExactly(Theater.ASIATIC_PACIFIC);
        assertThat(stay.basis().certainty()).isEqualTo(Certainty.PLAIN);
    }

    @Test
    void Aust_in_the_summer_of_1945_may_be_Austria() {
        var stay = stays("4 MAY 45 AUST 2 JUN 45").get(0);
        assertThat(stay.theaters()).containsExactlyInAnyOrder(Theater.ASIATIC_PACIFIC, Theater.EAME);
        assertThat(stay.basis().certainty()).isEqualTo(Certainty.DOUBTFUL);
    }

    @Test
    void a_destination_that_is_in_no_table_is_kept_as_typed_without_a_theater() {
        var reading = ReadAs.entry(Entry.SERVICE_OUTSIDE_US, "4 MAY 43 QRXZT 2 JUN 43");
        var stay = ReadAs.facts(reading, OverseasStay.class).get(0);
        assertThat(stay.destination()).isEqualTo("QRXZT");
        assertThat(stay.theaters()).isEmpty();
        assertThat(reading.tokens().get(1).certainty()).isEqualTo(Certainty.DOUBTFUL);
    }
}
