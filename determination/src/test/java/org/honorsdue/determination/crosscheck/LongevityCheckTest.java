package org.honorsdue.determination.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.honorsdue.determination.crosscheck.Soldier.enlisted;
import static org.honorsdue.determination.crosscheck.Soldier.undated;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.AGREES;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.CANNOT_TELL;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.DISAGREES;

import java.util.List;
import org.honorsdue.determination.finding.Crosscheck;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("Longevity against active service")
@DisplayNameGeneration(ReplaceUnderscores.class)
class LongevityCheckTest {
    private final Check check = new LongevityCheck();

    private List<Crosscheck> on(Soldier soldier) {
        return check.compare(soldier.facts());
    }

    @Test
    void longevity_may_be_longer_than_active_service_but_not_shorter() {
        assertThat(on(enlisted("1943-02-03", "1945-11-11").longevity(3, 0, 0))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
        assertThat(on(enlisted("1943-02-03", "1945-11-11").longevity(2, 9, 1))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
        var result = on(enlisted("1943-02-03", "1945-11-11").longevity(1, 9, 9)).get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.says()).contains("shorter than the active service");
    }

    @Test
    void lost_time_may_be_taken_off() {
        assertThat(on(enlisted("1943-02-03", "1945-11-11").lostDays(40).longevity(2, 8, 0))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
    }

    @Test
    void without_the_dates_one_cannot_tell() {
        assertThat(on(undated().longevity(1, 9, 9))).isNotEmpty();
        assertThat(on(undated().longevity(1, 9, 9)).get(0).outcome()).isEqualTo(CANNOT_TELL);
    }
}
