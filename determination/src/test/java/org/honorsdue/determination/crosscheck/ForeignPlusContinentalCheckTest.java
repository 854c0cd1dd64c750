package org.honorsdue.determination.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.honorsdue.determination.crosscheck.Soldier.enlisted;
import static org.honorsdue.determination.crosscheck.Soldier.undated;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.AGREES;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.CANNOT_TELL;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.DISAGREES;

import java.util.List;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("Foreign plus continental service against the whole")
@DisplayNameGeneration(ReplaceUnderscores.class)
class ForeignPlusContinentalCheckTest {
    private final Check check = new ForeignPlusContinentalCheck();

    private List<Crosscheck> on(Soldier soldier) {
        return check.compare(soldier.facts());
    }

    @Test
    void the_two_totals_add_up_to_the_service() {
        assertThat(on(enlisted("1943-02-03", "1945-11-11").foreign(1, 2, 18).continental(1, 6, 17))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
    }

    @Test
    void a_month_too_many_is_told_without_any_crossing() {
        var soldier = enlisted("1943-02-03", "1945-11-11")
                .without(Entry.SERVICE_OUTSIDE_US)
                .foreign(1, 2, 18)
                .continental(1, 7, 21);
        var result = on(soldier).get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.says()).contains("longer");
        assertThat(result.entries())
                .contains(Entry.FOREIGN_SERVICE, Entry.CONTINENTAL_SERVICE, Entry.ENTERED_ACTIVE_SERVICE);
    }

    @Test
    void one_total_alone_cannot_be_added_up() {
        assertThat(on(enlisted("1943-02-03", "1945-11-11").foreign(1, 2, 18))
                        .get(0)
                        .outcome())
                .isEqualTo(CANNOT_TELL);
    }

    @Test
    void without_the_dates_of_service_one_cannot_tell() {
        assertThat(on(undated().foreign(1, 2, 18).continental(1, 6, 17)).get(0).outcome())
                .isEqualTo(CANNOT_TELL);
    }
}
