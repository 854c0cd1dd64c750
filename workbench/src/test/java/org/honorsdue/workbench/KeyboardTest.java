package org.honorsdue.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

@DisplayName("Somebody who does this weekly never needs the mouse")
@DisplayNameGeneration(ReplaceUnderscores.class)
class KeyboardTest {
    @Test
    void a_paper_is_typed_from_box_to_box_and_its_leaves_turned_by_single_keys() {
        try (var room = Room.open()) {
            room.keys("n");
            room.see("#name");
            assertThat(room.focused()).isEqualTo("name");
            room.keys("Fernhill, Casper D", Keys.ENTER);
            room.see("h1", "Fernhill");
            // The first box of an empty paper waits for typing.
            assertThat(room.focused()).isEqualTo("t-1-name");
            room.keys("FERNHILL CASPER D", Keys.ENTER);
            assertThat(room.focused()).isEqualTo("t-1-serial_number");
            room.keys(Keys.ENTER, "Sgt", Keys.ENTER, "FA", Keys.ENTER, "AUS", Keys.ENTER);
            assertThat(room.focused()).isEqualTo("t-1-organization");
            room.keys("Btry A 999th FA Bn", Keys.TAB);
            assertThat(room.focused()).isEqualTo("t-1-separated");
            room.alt(Keys.ARROW_UP);
            assertThat(room.focused()).isEqualTo("t-1-organization");
            room.alt(Keys.ARROW_DOWN);
            room.keys("11 Nov 45", Keys.ENTER);
            // The clerk left a box blank; in another something cannot be made out.
            room.alt("b");
            assertThat(room.see("#e-1-date_of_birth [data-nothing='blank']").getDomAttribute("aria-pressed"))
                    .isEqualTo("true");
            room.keys(Keys.ENTER);
            room.alt("i");
            assertThat(room.see("#e-1-dependents [data-nothing='illegible']").getDomAttribute("aria-pressed"))
                    .isEqualTo("true");
            room.keys(Keys.ENTER, "20 Jan 43", Keys.ENTER, Keys.ENTER, "3 Feb 43");
            room.see("#margin", "World War II Victory Medal");
            room.saved();
            room.keys(Keys.ESCAPE, "2");
            room.see("#left-out", "World War II Victory Medal");
            room.keys("j");
            room.keys(Keys.ENTER);
            room.see("details.finding[open] .ground");
            room.keys("7");
            room.see("#notes");
            room.keys(Keys.TAB);
            room.keys("8");
            room.see(".history", "typed on the desk");
            room.keys("c");
            room.see("#cases", "Fernhill");
            room.keys("/");
            assertThat(room.focused()).isEqualTo("words");
            room.keys("fernhill", Keys.ARROW_DOWN, Keys.ENTER);
            room.see("h1", "Fernhill");
            assertThat(room.textOf("#e-1-date_of_birth .nothing")).contains("blank");
        }
    }

    @Test
    void the_sheet_of_keys_opens_by_its_key_and_single_keys_can_be_switched_off() {
        try (var room = Room.open()) {
            room.keys("?");
            room.see("dialog[open]");
            room.click("#single-keys");
            room.keys(Keys.ESCAPE);
            room.keys("n");
            assertThat(room.path()).isEqualTo("/");
            room.click("#ask-keys").click("#single-keys").keys(Keys.ESCAPE);
            room.keys("n");
            room.see("#name");
        }
    }

    @Test
    void the_last_change_is_taken_back_by_one_key_and_stays_in_the_history() {
        try (var room = Room.open()) {
            String folder = room.tour("Pettigrew");
            room.go(folder).type("#t-1-grade", "Sgt").saved();
            room.keys(Keys.ESCAPE, "u");
            room.see("#saved");
            assertThat(room.see("#t-1-grade").getDomProperty("value")).isEqualTo("Cpl");
            room.go(folder + "/history");
            assertThat(room.textOf(".history")).contains("Sgt").contains("went back to revision");
        }
    }
}
