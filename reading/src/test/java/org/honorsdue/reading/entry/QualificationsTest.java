package org.honorsdue.reading.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import org.honorsdue.reading.ReadAs;
import org.honorsdue.service.fact.AwardClaim;
import org.honorsdue.service.fact.Qualification;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expected readings: common practice; names of the bars as in the table of badges. */
@DisplayName("Military qualification and date")
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class QualificationsTest {
    private static String said(String text) {
        return ReadAs.facts(ReadAs.entry(Entry.QUALIFICATIONS, text), Qualification.class).stream()
                .map(shot -> shot.level().name().charAt(0)
                        + " " + shot.weapon().orElse("-")
                        + shot.date().map(date -> " " + date).orElse(""))
                .collect(Collectors.joining("; "));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            MM M1 Dec 43                                   | M Rifle 1943-12
            SS Carbine                                     | S Carbine
            Exp Rifle M1                                   | E Rifle
            RIFLE M1 SS 12 JUN 44                          | S Rifle 1944-06-12
            MM-M1-12/43                                    | M Rifle 1943-12
            Rifle SS Carbine MM                            | S Rifle; M Carbine
            MM Rifle SS Carbine                            | M Rifle; S Carbine
            Rifle-MM-Dec 43/Carbine-SS-Jan 44              | M Rifle 1943-12; S Carbine 1944-01
            MM Rifle Dec 43 Carbine Jan 44                 | M Rifle 1943-12; M Carbine 1944-01
            SS Rifle & Carbine                             | S Rifle; S Carbine
            Expert Bayonet Rifle M1 SS 12 Jun 44           | E Bayonet; S Rifle 1944-06-12
            PISTOL 45 CAL MM 12 DEC 43 EXP 60MM MORTAR     | M Pistol 1943-12-12; E Mortar
            SS BAR; MM LMG; EX TSMG                        | S Auto Rifle; M Machine Gun; E Submachine Gun
            Rifle SS; MG MM 43                             | S Rifle; M Machine Gun 1943
            RIFLE SS 185 CARBINE MM 155                    | S Rifle; M Carbine
            MM Ml Rifle                                    | M Rifle
            EXPERT                                         | E -
            """)
    void class_and_weapon_are_put_together_whichever_stands_first(String typed, String expected) {
        assertThat(said(typed)).isEqualTo(expected);
    }

    @Test
    void SS_is_a_class_here_and_not_the_silver_star() {
        var reading = ReadAs.entry(Entry.QUALIFICATIONS, "SS");
        assertThat(said("SS")).isEqualTo("S -");
        assertThat(ReadAs.facts(reading, AwardClaim.class)).isEmpty();
    }

    @Test
    void a_mortar_of_60_mm_is_no_marksman() {
        assertThat(said("60MM MORTAR")).isEmpty();
    }

    @Test
    void a_gunners_class_is_none_of_the_three() {
        assertThat(said("Expert Gunner 105 mm How 16 Aug 43")).isEmpty();
    }

    @Test
    void badges_stand_beside_the_classes_with_their_own_orders_and_dates() {
        var reading = ReadAs.entry(
                Entry.QUALIFICATIONS, "CMBT INF BDG GO 14 HQ 999TH INF 44 PRCHT BADGE 17 JUL 43 SS RIFLE OCT 43");
        var badges = ReadAs.facts(reading, AwardClaim.class);
        assertThat(badges)
                .extracting(AwardClaim::award)
                .containsExactly("combat-infantryman-badge", "parachutist-badge");
        assertThat(badges.get(0).orders()).hasSize(1);
        assertThat(badges.get(1).date()).map(Object::toString).contains("1943-07-17");
        assertThat(said(reading.text())).isEqualTo("S Rifle 1943-10");
    }
}
