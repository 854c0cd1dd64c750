package org.honorsdue.reference.insignia;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("Lengths in inches")
@DisplayNameGeneration(ReplaceUnderscores.class)
class InchesTest {
    @Test
    void are_read_and_written_as_on_a_rule() {
        assertThat(Inches.parse("1 3/8")).isEqualTo(new Inches(11, 8));
        assertThat(Inches.parse("3/8").text()).isEqualTo("3/8");
        assertThat(Inches.parse("2").text()).isEqualTo("2");
        assertThat(Inches.parse("6/16").text()).isEqualTo("3/8");
        assertThat(Inches.parse("-1/4").plus(Inches.of(1)).text()).isEqualTo("3/4");
        assertThat(Inches.ZERO.minus(Inches.parse("1 1/2")).text()).isEqualTo("-1 1/2");
    }

    @Test
    void add_up_without_loss() {
        Inches third = Inches.of(1, 24);
        assertThat(third.plus(third).plus(third)).isEqualTo(Inches.of(1, 8));
        assertThat(Inches.of(5, 104).times(13)).isEqualTo(Inches.of(5, 8));
    }

    @Test
    void are_25_4_millimetres_and_72_points_each() {
        assertThat(Inches.parse("1 3/8").millimetres()).isCloseTo(34.925, within(1e-12));
        assertThat(Inches.parse("1 3/8").points()).isEqualTo(99.0);
        assertThat(Inches.ofMillimetres(100).millimetres()).isEqualTo(100.0);
    }

    @Test
    void come_to_the_nearest_mark_of_a_rule_with_halves_upwards() {
        assertThat(Inches.of(11, 32).nearest(Inches.of(1, 16))).isEqualTo(Inches.of(3, 8));
        assertThat(Inches.of(21, 64).nearest(Inches.of(1, 16))).isEqualTo(Inches.of(5, 16));
    }

    @Test
    void that_are_none_are_refused_with_what_to_write() {
        for (String written : new String[] {"", "1.5", "1/0x", "one", "1 3", "3/"}) {
            assertThatThrownBy(() -> Inches.parse(written))
                    .as(written)
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("Write 2, 3/8 or 1 3/8");
        }
        assertThatThrownBy(() -> Inches.parse("1/0")).isInstanceOf(IllegalArgumentException.class);
    }
}
