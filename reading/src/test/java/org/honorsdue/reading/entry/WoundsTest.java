package org.honorsdue.reading.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import org.honorsdue.reading.ReadAs;
import org.honorsdue.service.fact.AwardClaim;
import org.honorsdue.service.fact.Wound;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expected readings: by hand. */
@DisplayName("Wounds received in action")
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WoundsTest {
    private static String said(String text) {
        return ReadAs.facts(ReadAs.entry(Entry.WOUNDS, text), Wound.class).stream()
                .map(wound -> wound.place().orElse("-") + " "
                        + wound.date().map(Object::toString).orElse("-"))
                .collect(Collectors.joining("; "));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Germany 12 Dec 44                                | Germany 1944-12-12
            12 DEC 44 GERMANY                                | GERMANY 1944-12-12
            FRANCE 12 JUL 44 GERMANY 3 MAR 45                | FRANCE 1944-07-12; GERMANY 1945-03-03
            GERMANY 1 MAR 45 & 7 APR 45                      | GERMANY 1945-03-01; GERMANY 1945-04-07
            St Lo France 17 July 1944 (shell fragments rt leg) | St Lo France 1944-07-17
            SHRAPNEL LEFT ARM FRANCE 30 JUL 44               | FRANCE 1944-07-30
            Bougainville, S.I. 24 March 1944                 | Bougainville, S.I. 1944-03-24
            WIA LEYTE 25 OCT 44                              | LEYTE 1944-10-25
            Belgium Jan 45                                   | Belgium 1945-01
            TUNISIA 8APR43                                   | TUNISIA 1943-04-08
            France                                           | France -
            """)
    void are_read_with_place_and_date_in_either_order(String typed, String expected) {
        assertThat(said(typed)).isEqualTo(expected);
    }

    @Test
    void None_is_no_wound() {
        assertThat(said("NONE")).isEmpty();
    }

    @Test
    void a_purple_heart_typed_here_is_an_award() {
        var reading = ReadAs.entry(Entry.WOUNDS, "Purple Heart GO 12 HQ 999 Gen Hosp 44 Germany 12 Dec 44");
        assertThat(ReadAs.facts(reading, AwardClaim.class))
                .singleElement()
                .satisfies(claim -> assertThat(claim.orders()).hasSize(1));
        assertThat(said(reading.text())).isEqualTo("Germany 1944-12-12");
    }
}
