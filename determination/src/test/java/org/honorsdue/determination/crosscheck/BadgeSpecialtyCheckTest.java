package org.honorsdue.determination.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.honorsdue.determination.crosscheck.Soldier.enlisted;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.AGREES;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.CANNOT_TELL;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.DISAGREES;
import static org.honorsdue.reference.Theater.EAME;

import java.util.List;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.reference.Reference;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("Badges against specialty, arm and dates")
@DisplayNameGeneration(ReplaceUnderscores.class)
class BadgeSpecialtyCheckTest {
    private final Check check = new BadgeSpecialtyCheck(Reference.published());

    private List<Crosscheck> on(Soldier soldier) {
        return check.compare(soldier.facts());
    }

    private static Soldier soldier() {
        return enlisted("1942-06-01", "1945-11-10")
                .abroad("1944-01-10", "1944-01-20", "ETO", EAME, "1945-10-10", "1945-10-20");
    }

    @Test
    void a_rifleman_of_the_infantry_may_hold_the_badge() {
        assertThat(on(soldier().arm("Infantry").specialty("745", "Rifleman").award("combat-infantryman-badge"))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
    }

    @Test
    void one_of_arm_and_specialty_is_enough() {
        assertThat(on(soldier().arm("Infantry").specialty("405", "Clerk-typist").award("combat-infantryman-badge"))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
    }

    @Test
    void a_gunner_of_the_field_artillery_may_not() {
        var result = on(soldier()
                        .arm("Field Artillery")
                        .specialty("844", "Gun crewman, light artillery")
                        .award("combat-infantryman-badge"))
                .get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.says()).contains("Field Artillery", "Gun crewman, light artillery");
        assertThat(result.entries()).contains(Entry.ARM, Entry.MILITARY_SPECIALTY);
    }

    @Test
    void without_the_specialty_one_cannot_tell() {
        assertThat(on(soldier().arm("Field Artillery").award("combat-infantryman-badge"))
                        .get(0)
                        .outcome())
                .isEqualTo(CANNOT_TELL);
    }

    /** War Department Circular 269 created the badge on 27 October 1943. */
    @Test
    void a_badge_dated_the_day_before_it_was_created_does_not_fit() {
        var early = soldier().arm("Infantry").award("combat-infantryman-badge", Entry.QUALIFICATIONS, "1943-10-26");
        assertThat(on(early)).extracting(Crosscheck::outcome).containsExactly(DISAGREES);
        var due = soldier().arm("Infantry").award("combat-infantryman-badge", Entry.QUALIFICATIONS, "1943-10-27");
        assertThat(on(due)).extracting(Crosscheck::outcome).containsExactly(AGREES);
    }

    @Test
    void a_combat_badge_without_service_abroad_does_not_fit() {
        var home = enlisted("1942-06-01", "1945-11-10").arm("Infantry").award("combat-infantryman-badge");
        assertThat(on(home)).extracting(Crosscheck::outcome).containsExactly(DISAGREES);
    }

    @Test
    void a_litter_bearer_may_hold_the_Medical_Badge_and_a_clerk_may_not() {
        assertThat(on(soldier()
                                .arm("Medical Department")
                                .specialty("657", "Litter bearer")
                                .award("combat-medical-badge"))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
        assertThat(on(soldier()
                                .arm("Signal Corps")
                                .specialty("405", "Clerk-typist")
                                .award("combat-medical-badge"))
                        .get(0)
                        .outcome())
                .isEqualTo(DISAGREES);
    }

    @Test
    void wings_do_not_go_with_the_infantry() {
        assertThat(on(soldier().arm("Infantry").specialty("745", "Rifleman").award("aviation-badge"))
                        .get(0)
                        .outcome())
                .isEqualTo(DISAGREES);
        assertThat(on(soldier()
                                .arm("Air Corps")
                                .specialty("747", "Airplane mechanic")
                                .award("aviation-badge"))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
    }
}
