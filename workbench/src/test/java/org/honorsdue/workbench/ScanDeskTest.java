package org.honorsdue.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import org.honorsdue.scanning.recognition.LanguageData;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/** The picture is one that the project drew and typed itself; what it says is known. */
@DisplayName("A picture of a paper brought to the desk")
@DisplayNameGeneration(ReplaceUnderscores.class)
class ScanDeskTest {
    private static final Path PICTURE =
            Path.of("..", "demo", "norbeckson.jpg").toAbsolutePath().normalize();

    @Test
    void is_read_while_a_bar_shows_how_far_and_the_doubtful_entries_are_gone_through_by_keys() {
        assumeTrue(LanguageData.find().isPresent(), LanguageData.HOW_TO_GET_IT);
        try (var room = Room.open()) {
            room.go("/new");
            room.see("#files").sendKeys(PICTURE.toString());
            room.click("#bring button");
            room.see("progress#scanning");
            room.see("#just-read", "entries read");
            assertThat(room.see("#t-1-grade").getDomProperty("value")).isEqualTo("SGT");
            assertThat(room.see("#t-1-separated").getDomProperty("value")).isEqualTo("26 JAN 46");
            room.see("#margin", "World War II Victory Medal");
            String first = room.focused();
            long waiting = waiting(room);
            assertThat(waiting).isPositive();
            assertThat(room.has(".unseen-yet #" + first)).isTrue();
            room.see(".picture .spot");
            room.view("scanned");
            room.alt("y");
            room.see("#to-see-count", String.valueOf(waiting - 1));
            assertThat(room.focused()).isNotEqualTo(first);
            room.alt("j");
            String skipped = room.focused();
            room.keys("X");
            room.see("#to-see-count", String.valueOf(waiting - 2));
            assertThat(room.has(".unseen-yet #" + skipped)).isFalse();
            room.saved();
            // What was found right stays so.
            room.go(room.path());
            room.see("#to-see-count", String.valueOf(waiting - 2));
            assertThat(room.has(".unseen-yet #" + first)).isFalse();
            room.keys(Keys.ESCAPE);
        }
    }

    private static long waiting(Room room) {
        return (Long) room.script("return document.querySelectorAll('.unseen-yet').length");
    }

    @Test
    void that_is_no_paper_is_kept_and_said_to_be_none() throws Exception {
        assumeTrue(LanguageData.find().isPresent(), LanguageData.HOW_TO_GET_IT);
        var blank = new java.awt.image.BufferedImage(900, 1200, java.awt.image.BufferedImage.TYPE_BYTE_GRAY);
        var file = java.nio.file.Files.createTempFile("blank", ".png");
        try (var room = Room.open()) {
            java.nio.file.Files.write(file, ScanDesk.png(blank));
            room.go("/new");
            room.see("#files").sendKeys(file.toString());
            room.click("#bring button");
            assertThat(room.textOf("#just-read")).contains("hardly a printed or typed word");
            assertThat(room.has(".picture img")).isTrue();
        } finally {
            java.nio.file.Files.delete(file);
        }
    }
}
