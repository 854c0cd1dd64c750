package org.honorsdue.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A case handed over")
@DisplayNameGeneration(ReplaceUnderscores.class)
class HandingOverTest {
    @Test
    void comes_out_as_one_file_and_is_taken_in_again_with_its_history(@TempDir Path folder) throws IOException {
        try (var room = Room.open()) {
            String address = room.tour("Okonsky");
            room.go(address).type("#t-1-grade", "T/4").saved();
            var exported = room.get(address + "/export");
            assertThat(exported.headers().firstValue("Content-Disposition").orElse(""))
                    .contains("okonsky-walter-p.honors-case.json");
            Path file = Files.writeString(folder.resolve("case.json"), exported.body());
            room.go("/new");
            room.see("#files").sendKeys(file.toString());
            room.click("#bring button");
            room.see("h1", "Okonsky");
            assertThat(room.path()).isNotEqualTo(address);
            assertThat(room.see("#t-1-grade").getDomProperty("value")).isEqualTo("T/4");
            room.click(".leaves a[href$='/history']");
            assertThat(room.textOf(".history"))
                    .contains("brought in from a file")
                    .contains("typed on the desk");
            // Found by its words like any other.
            room.go("/?words=okonsky");
            assertThat(room.textOf("#cases")).contains("2 cases");
        }
    }

    @Test
    void is_refused_when_a_character_was_changed_on_the_way(@TempDir Path folder) throws IOException {
        try (var room = Room.open()) {
            String exported = room.get(room.tour("Okonsky") + "/export").body();
            Path file = Files.writeString(folder.resolve("case.json"), exported.replace("SWPA", "CPA"));
            room.go("/new");
            room.see("#files").sendKeys(file.toString());
            room.click("#bring button");
            assertThat(room.textOf("main")).contains("checksum").contains("Nothing was kept");
        }
    }

    @Test
    void is_taken_in_from_a_casefile_and_every_fault_of_a_bad_one_is_told_at_once(@TempDir Path folder)
            throws IOException {
        Path good = Files.writeString(
                folder.resolve("good.yaml"),
                "soldier: { name: \"Fernhill, Casper D\" }\npapers:\n  - form: WD AGO 53-55\n    entries: { grade: Pfc }\n");
        Path bad = Files.writeString(
                folder.resolve("bad.yaml"),
                "soldier: { name: \"Fernhill\", colour: blue }\npapers:\n  - form: WD AGO 53-55\n    entries: { grad: Pfc }\n");
        try (var room = Room.open()) {
            room.go("/new");
            room.see("#files").sendKeys(good.toString());
            room.click("#bring button");
            room.see("h1", "Fernhill, Casper D");
            room.go("/new");
            room.see("#files").sendKeys(bad.toString());
            room.click("#bring button");
            room.see(".faults", "colour");
            room.see(".faults", "grad");
            assertThat(room.textOf(".faults")).contains("line 1").contains("line 4");
            room.picture("faults");
        }
    }

    @Test
    void is_taken_off_the_casebook_and_put_back() {
        try (var room = Room.open()) {
            String address = room.tour("Okonsky");
            room.go(address + "/notes").click("form[action$='/take-off'] button");
            room.see("#cases");
            assertThat(room.textOf("#cases")).doesNotContain("Okonsky");
            room.go("/?removed=yes");
            room.see("#cases", "Okonsky");
            room.go(address).click("form[action$='/put-back'] button");
            room.gone("form[action$='/put-back']").go("/");
            room.see("#cases", "Okonsky");
        }
    }
}
