package org.honorsdue.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/** The checks that a machine can make of the Web Content Accessibility Guidelines 2.2, levels A and AA, by axe-core. */
@DisplayName("Every page, in both lights")
@DisplayNameGeneration(ReplaceUnderscores.class)
class AccessibilityTest {
    private static final String RUN = "const done = arguments[arguments.length - 1];"
            + "axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] })"
            + ".then(found => done(found.violations.map(each => each.id + ': ' + each.help + ' '"
            + " + each.nodes.slice(0, 3).map(node => node.target.join(' ') + ' ' + (node.any[0]?.message || '')).join(' | '))),"
            + " fault => done(['axe: ' + fault]))";

    @Test
    void passes_the_checks_of_axe() throws IOException {
        String axe;
        try (var stream = AccessibilityTest.class.getResourceAsStream("axe/axe.min.js")) {
            axe = new String(java.util.Objects.requireNonNull(stream).readAllBytes(), StandardCharsets.UTF_8);
        }
        try (var room = Room.open()) {
            var faults = new ArrayList<String>();
            faults.addAll(look(room, axe, "/", "empty casebook"));
            String folder = room.tour("Fairweather");
            room.post(folder + "/letters", "application/x-www-form-urlencoded", "paper=all");
            var pages = new ArrayList<>(List.of(
                    "/",
                    "/new",
                    "/tour",
                    "/units?words=Btry+B+391st+AFA+Bn",
                    "/law",
                    "/law/purple-heart",
                    "/nothing",
                    folder));
            for (var leaf : List.of("findings", "line", "rack", "steps", "letters", "notes", "history", "text")) {
                pages.add(folder + "/" + leaf);
            }
            pages.add(room.tour("Okonsky"));
            pages.add(room.tour("Lindgate") + "/findings");
            for (var lamp : List.of("on", "off")) {
                room.go("/");
                room.script("localStorage.setItem('lamp', arguments[0])", lamp);
                for (var page : pages) {
                    faults.addAll(look(room, axe, page, page.replace(folder, "folder") + ", lamp " + lamp));
                }
            }
            room.go(folder).click("#ask-keys");
            faults.addAll(run(room, axe, "sheet of keys"));
            assertThat(faults).isEmpty();
        }
    }

    private static List<String> look(Room room, String axe, String path, String name) {
        room.go(path);
        room.see("main");
        room.script("document.querySelectorAll('details').forEach(each => each.open = true)");
        return run(room, axe, name);
    }

    private static List<String> run(Room room, String axe, String name) {
        room.script(axe);
        @SuppressWarnings("unchecked") // the script returns a list of texts
        var found = (List<String>) room.scriptAsync(RUN);
        return found.stream().map(fault -> name + ": " + fault).toList();
    }
}
