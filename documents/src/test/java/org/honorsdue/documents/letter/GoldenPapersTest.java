package org.honorsdue.documents.letter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.stream.Stream;
import org.honorsdue.determination.finding.OnPaper;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.documents.Frozen;
import org.honorsdue.documents.Golden;
import org.honorsdue.documents.InventedSoldier;
import org.honorsdue.documents.InventedSoldiers;
import org.honorsdue.documents.findings.FindingsJson;
import org.honorsdue.documents.page.TextPage;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The papers of twelve invented soldiers, word for word. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class GoldenPapersTest {
    static Stream<String> soldiers() {
        return InventedSoldiers.all().stream().map(InventedSoldier::id);
    }

    /** Each writes in another relation, so that every answer of the three is read somewhere. */
    static Dossier dossier(String id) {
        var ids = soldiers().toList();
        var relations = List.of(Relation.values());
        return Frozen.dossier(InventedSoldiers.ofId(id)).from(relations.get(ids.indexOf(id) % relations.size()));
    }

    @ParameterizedTest
    @MethodSource("soldiers")
    void the_papers_read_as_they_were_found_good(String id) {
        var text = new StringBuilder();
        for (var page : Correspondence.all(dossier(id))) {
            text.append("=== ")
                    .append(page.name())
                    .append(" ===\n")
                    .append(new TextPage().write(page))
                    .append('\n');
        }
        Golden.assertSame("papers/" + id + ".txt", text.toString());
    }

    @ParameterizedTest
    @MethodSource("soldiers")
    void the_advice_stands_once_on_every_paper(String id) {
        for (var page : Correspondence.all(dossier(id))) {
            String text = new TextPage().write(page).replaceAll("\\s+", " ");
            assertThat(text.split(java.util.regex.Pattern.quote(FindingsJson.ADVICE), -1))
                    .as(page.name())
                    .hasSize(2);
        }
    }

    @Test
    void the_soldiers_show_every_kind_of_finding() {
        var findings = InventedSoldiers.all().stream()
                .flatMap(soldier -> Frozen.dossier(soldier).findings().findings().stream())
                .toList();
        assertThat(findings).extracting(finding -> finding.standing()).containsAll(EnumSet.allOf(Standing.class));
        assertThat(findings).extracting(finding -> finding.onPaper()).containsAll(EnumSet.allOf(OnPaper.class));
        assertThat(InventedSoldiers.all()).hasSizeGreaterThanOrEqualTo(10);
        assertThat(InventedSoldiers.all().stream()
                        .map(soldier -> Frozen.dossier(soldier).findings()))
                .anyMatch(all -> !all.conflicts().isEmpty())
                .anyMatch(all -> !all.unread().isEmpty())
                .anyMatch(all -> !all.crosschecks().isEmpty());
    }
}
