package org.honorsdue.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

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
            assertThat(room.script("return location.search").toString()).contains("frame=11x14");
            String template = String.valueOf(room.see(".case figcaption a").getDomAttribute("href"));
            assertThat(room.get(template).body()).startsWith("%PDF");
            room.picture("case");
            assertThat(room.get(folder + "/rack?frame=huge").body()).contains("is no frame size");
        }
    }
}
