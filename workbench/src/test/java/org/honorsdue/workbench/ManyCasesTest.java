package org.honorsdue.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("A casebook of three hundred soldiers")
@DisplayNameGeneration(ReplaceUnderscores.class)
class ManyCasesTest {
    @Test
    void is_searched_while_one_types_and_turned_page_by_page() {
        try (var room = Room.open()) {
            var json = new com.fasterxml.jackson.databind.ObjectMapper();
            for (int i = 1; i <= 300; i++) {
                String casefile =
                        "soldier: { name: \"Invented, Soldier %03d\" }\npapers:\n  - form: WD AGO 53-55\n".formatted(i)
                                + "    entries: { organization: \"Co %s 999th Inf\", separated: 6 Dec 45, entered_active_service: 19 Jan 43 }\n"
                                        .formatted((char) ('A' + i % 12));
                var answer = room.post(
                        "/api/cases",
                        "application/json",
                        json.createObjectNode().put("casefile", casefile).toString());
                assertThat(answer.statusCode()).isEqualTo(201);
            }
            room.go("/");
            assertThat(room.textOf("#cases")).contains("300 cases, 1 to 100 shown");
            room.click("#cases a[rel='next']");
            room.see("#cases", "101 to 200");
            room.go("/").type("#words", "soldier 217");
            room.see("#cases", "1 case");
            assertThat(room.textOf("#cases")).contains("Invented, Soldier 217");
            room.type("#words", "victory medal");
            room.see("#cases", "300 cases");
            room.type("#words", "\"Co C 999th Inf\" %_!");
            room.see("#cases", "No case answers");
            room.go("/units?words=Co+C+999th+Inf");
            room.see("main", "In this casebook");
        }
    }
}
