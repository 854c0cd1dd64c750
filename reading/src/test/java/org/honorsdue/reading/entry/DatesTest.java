package org.honorsdue.reading.entry;

import static org.assertj.core.api.Assertions.assertThat;

import org.honorsdue.reading.ReadAs;
import org.honorsdue.service.fact.Basis.Certainty;
import org.honorsdue.service.fact.BirthDate;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expected readings: the calendar. */
@DisplayName("Dates as typed")
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class DatesTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            15 DEC 1944              | 1944-12-15            | PLAIN
            6 Mar 45                 | 1945-03-06            | PLAIN
            15DEC44                  | 1944-12-15            | PLAIN
            15 Dec44                 | 1944-12-15            | PLAIN
            15-Dec-44                | 1944-12-15            | PLAIN
            Dec 15, 1944             | 1944-12-15            | PLAIN
            15th of December 1944    | 1944-12-15            | PLAIN
            6 Mar '45                | 1945-03-06            | PLAIN
            12/15/44                 | 1944-12-15            | PLAIN
            15-12-44                 | 1944-12-15            | PLAIN
            1944-12-15               | 1944-12-15            | PLAIN
            5/5/45                   | 1945-05-05            | PLAIN
            Mar 44                   | 1944-03               | PLAIN
            12/43                    | 1943-12               | PLAIN
            1945                     | 1945                  | PLAIN
            6/3/45                   | 1945-03-06/1945-06-03 | DOUBTFUL
            l5 Dec 44                | 1944-12-15            | CORRECTED
            2O Nov 45                | 1945-11-20            | CORRECTED
            lO Oct 45                | 1945-10-10            | CORRECTED
            4 0CT 45                 | 1945-10-04            | CORRECTED
            15 Dec 4S                | 1945-12-15            | CORRECTED
            2 APRIL l946             | 1946-04-02            | CORRECTED
            15 Decmber 45            | 1945-12-15            | CORRECTED
            15 DFC 45                | 1945-12-15            | CORRECTED
            31 Nov 45                | 1945-11               | DOUBTFUL
            """)
    void are_read_in_every_style(String typed, String expected, Certainty certainty) {
        var reading = ReadAs.entry(Entry.SEPARATED, typed);
        assertThat(reading.dates()).map(Object::toString).containsExactly(expected);
        assertThat(reading.tokens()).hasSize(1);
        assertThat(reading.tokens().get(0).certainty()).isEqualTo(certainty);
    }

    @Test
    void a_day_that_may_be_read_both_ways_gives_both() {
        assertThat(ReadAs.entry(Entry.SEPARATED, "6/3/45").tokens().get(0).alternatives())
                .containsExactly("3 June 1945", "6 March 1945");
    }

    @Test
    void a_day_and_month_without_a_year_give_no_date() {
        var reading = ReadAs.entry(Entry.SEPARATED, "15 DEC");
        assertThat(reading.dates()).isEmpty();
        assertThat(reading.tokens().get(0).certainty()).isEqualTo(Certainty.DOUBTFUL);
    }

    @Test
    void a_birth_in_99_was_in_the_century_before() {
        var born = ReadAs.facts(ReadAs.entry(Entry.DATE_OF_BIRTH, "4 JUL 99"), BirthDate.class);
        assertThat(born.get(0).born()).hasToString("1899-07-04");
    }

    @Test
    void a_month_whose_letters_fit_two_is_not_guessed() {
        assertThat(ReadAs.entry(Entry.SEPARATED, "15 JUX 45").dates()).isEmpty();
        assertThat(ReadAs.entry(Entry.SEPARATED, "15 JUX 45").unread()).isNotEmpty();
    }
}
