package org.honorsdue.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Base64;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.print.PrintOptions;

@DisplayName("The look of the room, kept as pictures")
@DisplayNameGeneration(ReplaceUnderscores.class)
class LooksTest {
    @Test
    void in_both_lights_on_a_phone_and_on_paper() {
        try (var room = Room.open()) {
            String folder = room.tour("Fairweather");
            room.post(folder + "/letters", "application/x-www-form-urlencoded", "paper=all");
            var pages = Map.ofEntries(
                    Map.entry("casebook", "/"),
                    Map.entry("desk", folder),
                    Map.entry("findings", folder + "/findings#silver-star"),
                    Map.entry("line", folder + "/line"),
                    Map.entry("rack", folder + "/rack"),
                    Map.entry("steps", folder + "/steps"),
                    Map.entry("letters", folder + "/letters"),
                    Map.entry("units", "/units?words=Btry+B+391st+AFA+Bn"),
                    Map.entry("rule", "/law/purple-heart"),
                    Map.entry("tour", "/tour"));
            for (var lamp : List.of("on", "off")) {
                room.go("/").script("localStorage.setItem('lamp', arguments[0])", lamp);
                pages.forEach((name, path) -> room.go(path).picture(name + (lamp.equals("on") ? "-light" : "-dark")));
            }
            room.script("localStorage.setItem('lamp', 'on')");
            room.size(390, 844);
            for (var name : List.of("casebook", "desk", "findings", "line", "rack", "tour")) {
                room.go(pages.get(name)).picture(name + "-phone");
                long wider = (Long) room.script(
                        "return document.documentElement.scrollWidth - document.documentElement.clientWidth");
                assertThat(wider).as(name + " is no wider than the phone").isZero();
            }
            room.size(1366, 900);
            for (var name : List.of("desk", "findings", "rack")) {
                room.go(pages.get(name));
                var sheets = room.browserItself().print(new PrintOptions());
                Room.keep(name + "-print.pdf", Base64.getDecoder().decode(sheets.getContent()));
            }
        }
    }

    @Test
    void the_lamp_is_remembered() {
        try (var room = Room.open()) {
            String before = String.valueOf(room.script("return getComputedStyle(document.body).backgroundColor"));
            room.click("#lamp");
            String after = String.valueOf(room.script("return getComputedStyle(document.body).backgroundColor"));
            assertThat(after).isNotEqualTo(before);
            room.go("/law");
            assertThat(String.valueOf(room.script("return getComputedStyle(document.body).backgroundColor")))
                    .isEqualTo(after);
        }
    }
}
