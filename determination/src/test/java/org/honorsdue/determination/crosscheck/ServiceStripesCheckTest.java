package org.honorsdue.determination.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.honorsdue.determination.crosscheck.Soldier.enlisted;
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

@DisplayName("Service stripes against years of service")
@DisplayNameGeneration(ReplaceUnderscores.class)
class ServiceStripesCheckTest {
    private final Check check = new ServiceStripesCheck();

    private List<Crosscheck> on(Soldier soldier) {
        return check.compare(soldier.facts());
    }

    @Test
    void one_stripe_for_three_years_and_none_before() {
        assertThat(on(enlisted("1942-11-12", "1945-11-11").award("service-stripes", 1))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
        var result = on(enlisted("1943-01-12", "1945-11-11").award("service-stripes", 1))
                .get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        // 1096 days make three years; 12 Jan 1943 to 11 Nov 1945 is 1035 days with both ends.
        assertThat(result.says()).contains("61 days short");
    }

    @Test
    void too_few_stripes_are_told_as_well() {
        assertThat(on(enlisted("1939-01-12", "1945-11-11").award("service-stripes", 1))
                        .get(0)
                        .outcome())
                .isEqualTo(DISAGREES);
    }

    @Test
    void earlier_service_would_explain_more_stripes() {
        assertThat(on(enlisted("1943-01-12", "1945-11-11")
                                .without(Entry.PRIOR_SERVICE)
                                .award("service-stripes", 2))
                        .get(0)
                        .outcome())
                .isEqualTo(CANNOT_TELL);
    }

    @Test
    void longevity_that_is_too_short_as_well_decides() {
        assertThat(on(enlisted("1943-01-12", "1945-11-11")
                                .without(Entry.PRIOR_SERVICE)
                                .longevity(3, 1, 0)
                                .award("service-stripes", 2))
                        .get(0)
                        .outcome())
                .isEqualTo(DISAGREES);
    }

    @Test
    void lost_time_is_taken_off() {
        assertThat(on(enlisted("1942-11-12", "1945-11-11").lostDays(60).award("service-stripes", 1))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
    }

    @Test
    void None_typed_for_prior_service_rules_it_out() {
        assertThat(on(enlisted("1943-01-12", "1945-11-11")
                                .none(Entry.PRIOR_SERVICE)
                                .award("service-stripes", 2))
                        .get(0)
                        .outcome())
                .isEqualTo(DISAGREES);
    }
}
