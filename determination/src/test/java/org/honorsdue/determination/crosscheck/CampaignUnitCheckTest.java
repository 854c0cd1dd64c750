package org.honorsdue.determination.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.AGREES;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.CANNOT_TELL;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.DISAGREES;
import static org.honorsdue.reference.Theater.EAME;

import java.util.List;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.unit.UnitTables;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/** Real regiments, because the history of units is the subject; their lists of campaigns are those of the table. */
@DisplayName("Campaigns against the unit's credit")
@DisplayNameGeneration(ReplaceUnderscores.class)
class CampaignUnitCheckTest {
    private static final List<String> REGIMENT_OF_THE_83RD = List.of("infantry-regiment-331", "infantry-division-83");

    private final Check check = new CampaignUnitCheck(Reference.published(), UnitTables::published);

    private List<Crosscheck> on(Soldier soldier) {
        return check.compare(soldier.facts());
    }

    private static Soldier abroad() {
        return Soldier.enlisted("1943-01-19", "1945-12-06")
                .abroad("1944-04-08", "1944-04-19", "EAME", EAME, "1945-11-12", "1945-11-24");
    }

    @Test
    void a_campaign_on_the_unit_s_list_agrees() {
        assertThat(on(abroad().organization("Co B 331st Inf", REGIMENT_OF_THE_83RD)
                                .campaigns("EA-NOR"))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
    }

    @Test
    void a_campaign_it_lacks_does_not_fit_a_man_who_was_with_it_throughout() {
        var result = on(abroad().organization("Co B 331st Inf", REGIMENT_OF_THE_83RD)
                        .assigned("Co B 331st Inf", REGIMENT_OF_THE_83RD, "1944-04-20", "1945-11-01")
                        .campaigns("EA-NOR", "EA-ROM"))
                .get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.says()).contains("Rome-Arno is named", "Co B 331st Inf");
        assertThat(result.entries()).contains(Entry.BATTLES_AND_CAMPAIGNS, Entry.ORGANIZATION);
        assertThat(result.awards()).containsExactly("eame-campaign-medal");
    }

    @Test
    void the_unit_he_came_home_with_proves_nothing_against_him() {
        assertThat(on(abroad().organization("Co B 331st Inf", REGIMENT_OF_THE_83RD)
                                .campaigns("EA-ROM"))
                        .get(0)
                        .outcome())
                .isEqualTo(CANNOT_TELL);
    }

    /** Rome-Arno ran to 9 September 1944: 4 May is fifteen days after his arrival, 3 May fourteen. */
    @Test
    void fifteen_days_without_a_known_unit_leave_it_open() {
        var fourteen = abroad().assigned("Co B 331st Inf", REGIMENT_OF_THE_83RD, "1944-05-03", "1945-11-01")
                .campaigns("EA-ROM");
        assertThat(on(fourteen).get(0).outcome()).isEqualTo(DISAGREES);
        var fifteen = abroad().assigned("Co B 331st Inf", REGIMENT_OF_THE_83RD, "1944-05-04", "1945-11-01")
                .campaigns("EA-ROM");
        assertThat(on(fifteen).get(0).outcome()).isEqualTo(CANNOT_TELL);
    }

    @Test
    void a_unit_that_no_table_knows_says_nothing() {
        assertThat(on(abroad().organization("Co F 999th Inf", List.of()).campaigns("EA-ROM")))
                .isEmpty();
    }
}
