package org.honorsdue.determination.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.honorsdue.determination.crosscheck.Soldier.enlisted;
import static org.honorsdue.determination.crosscheck.Soldier.undated;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.AGREES;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.DISAGREES;

import java.util.List;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("Age and dates")
@DisplayNameGeneration(ReplaceUnderscores.class)
class AgeCheckTest {
    private final Check check = new AgeCheck();

    private List<Crosscheck> on(Soldier soldier) {
        return check.compare(soldier.facts());
    }

    @Test
    void seventeen_on_the_day_of_entry_is_old_enough_and_a_day_less_is_not() {
        assertThat(on(enlisted("1943-02-03", "1945-11-11").born("1926-02-03"))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
        var result = on(enlisted("1943-02-03", "1945-11-11").born("1926-02-04")).get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.says()).contains("aged 16 on entry");
        assertThat(result.entries()).contains(Entry.DATE_OF_BIRTH, Entry.ENTERED_ACTIVE_SERVICE);
    }

    @Test
    void a_man_of_forty_five_was_not_inducted() {
        assertThat(on(enlisted("1943-02-03", "1945-11-11")
                                .inducted("1943-02-03")
                                .born("1898-02-04"))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
        assertThat(on(enlisted("1943-02-03", "1945-11-11")
                                .inducted("1943-02-03")
                                .born("1898-02-03"))
                        .get(0)
                        .outcome())
                .isEqualTo(DISAGREES);
    }

    @Test
    void an_old_soldier_who_was_not_inducted_may_be_older() {
        assertThat(on(enlisted("1943-02-03", "1945-11-11").born("1890-02-03"))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
    }

    @Test
    void a_woman_was_at_least_twenty() {
        assertThat(on(enlisted("1943-02-03", "1945-11-11").woman().born("1923-02-04"))
                        .get(0)
                        .outcome())
                .isEqualTo(DISAGREES);
        assertThat(on(enlisted("1943-02-03", "1945-11-11").woman().born("1923-02-03"))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
    }

    @Test
    void a_year_of_birth_alone_is_read_in_his_favour() {
        assertThat(on(enlisted("1943-02-03", "1945-11-11").born("1926")).get(0).outcome())
                .isEqualTo(AGREES);
    }

    @Test
    void without_a_date_of_entry_nothing_is_said() {
        assertThat(on(undated().born("1940-01-01"))).isEmpty();
    }
}
