package org.honorsdue.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.interactions.Actions;

@DisplayName("The rack and the display case")
@DisplayNameGeneration(ReplaceUnderscores.class)
class CaseTest {
    @Test
    void a_frame_is_chosen_a_piece_moved_and_the_template_printed() {
        try (var room = Room.open()) {
            String folder = room.tour("Fairweather");
            room.go(folder + "/rack");
            room.see(".rack svg");
            room.see(".case svg");
            assertThat(room.textOf(".rows")).contains("Silver Star").contains("3 bronze service stars");
            room.type("#frame", "11x14").click(".tools button.first");
            room.see(".case svg title", "11x14");
            room.type("input[aria-label='Silver Star, inches from the left']", "1");
            room.type("input[aria-label='Silver Star, inches from the top']", "1");
            room.click(".case-side button");
            room.seeValue("input[aria-label='Silver Star, inches from the top']", "1");
            room.see(".case svg");
            String template = String.valueOf(room.see(".case figcaption a").getDomAttribute("href"));
            assertThat(room.get(template).body()).startsWith("%PDF");
            room.picture("case");
            room.go(folder + "/rack");
            assertThat(room.see("#frame").getDomProperty("value")).isEqualTo("11x14");
            room.go(folder + "/history");
            assertThat(room.textOf(".history")).contains("rack and case laid out");
            room.go(folder + "/rack").type("#frame", "huge").click(".tools button.first");
            room.see("main", "is no frame size");
        }
    }

    @Test
    void a_piece_is_pushed_by_keys_dragged_by_the_pointer_and_left_out_and_taken_back() {
        try (var room = Room.open()) {
            String folder = room.tour("Fairweather");
            room.go(folder + "/rack");
            room.see(".grip[aria-label^='Silver Star']")
                    .sendKeys(Keys.ARROW_DOWN, Keys.chord(Keys.SHIFT, Keys.ARROW_RIGHT));
            String pushed = value(room, "Silver Star", "left");
            room.see(".grip.moved").sendKeys(Keys.ENTER);
            room.see(".grip:focus:not(.moved)");
            assertThat(value(room, "Silver Star", "left")).isEqualTo(pushed).isNotEmpty();
            var grip = room.see(".grip[aria-label^='Silver Star']");
            new Actions(room.browserItself()).dragAndDropBy(grip, -60, 40).perform();
            room.see(".grip:focus:not(.moved)");
            assertThat(value(room, "Silver Star", "left")).isNotEqualTo(pushed);
            room.click("input[aria-label='Leave out Silver Star']").click(".case-side button");
            room.see(".pieces .left-out", "Silver Star");
            assertThat(room.has(".grip[aria-label^='Silver Star']")).isFalse();
            room.click("input[aria-label='Leave out Silver Star']").click(".case-side button");
            room.see(".grip[aria-label^='Silver Star']");
        }
    }

    private static String value(Room room, String piece, String side) {
        return String.valueOf(room.see("input[aria-label='%s, inches from the %s']".formatted(piece, side))
                .getDomProperty("value"));
    }
}
