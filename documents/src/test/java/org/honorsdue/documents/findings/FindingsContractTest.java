package org.honorsdue.documents.findings;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.documents.Desk;
import org.honorsdue.documents.Frozen;
import org.honorsdue.documents.Golden;
import org.honorsdue.documents.InventedSoldier;
import org.honorsdue.documents.InventedSoldiers;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The JSON that other people's scripts depend on: the keys, their order and their words (the contract, section 2). */
@DisplayNameGeneration(ReplaceUnderscores.class)
class FindingsContractTest {
    private final FindingsJson json = new FindingsJson(Desk.reference());

    static Stream<String> soldiers() {
        return InventedSoldiers.all().stream().map(InventedSoldier::id);
    }

    private JsonNode tree(String id) throws Exception {
        return new ObjectMapper()
                .readTree(json.write(Frozen.dossier(InventedSoldiers.ofId(id)).findings()));
    }

    private static List<String> keys(JsonNode node) {
        var keys = new ArrayList<String>();
        node.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    @ParameterizedTest
    @MethodSource("soldiers")
    void the_object_has_the_keys_of_the_contract(String id) throws Exception {
        var root = tree(id);
        assertThat(keys(root)).contains("as_of", "findings", "crosschecks", "unread", "summary");
        assertThat(root.get("as_of").asText()).isEqualTo("2026-11-25");
        assertThat(keys(root.get("summary"))).startsWith("on_paper", "authorized", "presumed", "unsettled");
        for (var finding : root.get("findings")) {
            assertThat(keys(finding))
                    .startsWith(
                            "award",
                            "name",
                            "standing",
                            "on_paper",
                            "count",
                            "devices",
                            "grounds",
                            "needs",
                            "cautions");
            assertThat(finding.get("standing").asText()).isIn("authorized", "presumed", "unsettled", "not-authorized");
            assertThat(finding.get("on_paper").asText()).isIn("yes", "no", "incomplete");
            for (var device : finding.get("devices")) {
                assertThat(keys(device)).containsExactly("device", "count", "for");
            }
            for (var ground : finding.get("grounds")) {
                assertThat(keys(ground)).contains("clause", "authority", "verdict", "evidence");
                assertThat(ground.get("verdict").asText()).isIn("met", "not-met", "unknown");
                for (var evidence : ground.get("evidence")) {
                    assertThat(keys(evidence)).contains("text");
                    if (evidence.has("paper")) {
                        assertThat(keys(evidence)).contains("paper", "entry", "text");
                    }
                }
            }
            for (var need : finding.get("needs")) {
                assertThat(keys(need)).contains("question", "settled_by");
                need.get("settled_by").forEach(set -> assertThat(set.isArray()).isTrue());
            }
        }
        for (var check : root.get("crosschecks")) {
            assertThat(keys(check)).startsWith("check", "outcome", "says", "entries");
            assertThat(check.get("outcome").asText()).isIn("agrees", "disagrees", "cannot-tell");
        }
        for (var unread : root.get("unread")) {
            assertThat(keys(unread)).containsExactly("paper", "entry", "text");
        }
    }

    @ParameterizedTest
    @MethodSource("soldiers")
    void the_summary_counts_the_findings(String id) throws Exception {
        var root = tree(id);
        for (var standing : Standing.values()) {
            long counted = 0;
            for (var finding : root.get("findings")) {
                counted += finding.get("standing").asText().equals(standing.id()) ? 1 : 0;
            }
            assertThat(root.get("summary").get(standing.id().replace('-', '_')).asLong())
                    .as(standing.id())
                    .isEqualTo(counted);
        }
    }

    @ParameterizedTest
    @MethodSource("soldiers")
    void the_same_casefile_gives_the_same_bytes(String id) {
        var soldier = InventedSoldiers.ofId(id);
        var once = Desk.examiner().examine(soldier.facts(), Desk.TODAY, Set.of());
        var again = Desk.examiner().examine(InventedSoldiers.ofId(id).facts(), Desk.TODAY, Set.of());
        assertThat(json.write(again))
                .isEqualTo(json.write(once))
                .endsWith("}\n")
                .doesNotContain("\r");
        assertThat(json.line(again)).isEqualTo(json.line(once)).doesNotContain("\n");
    }

    @Test
    void one_line_says_the_same_as_many() throws Exception {
        var findings = Frozen.dossier(InventedSoldiers.ofId("artilleryman")).findings();
        var reader = new ObjectMapper();
        assertThat(reader.readTree(json.line(findings))).isEqualTo(reader.readTree(json.write(findings)));
    }

    @ParameterizedTest
    @ValueSource(ints = {60, 80, 100})
    void the_text_of_findings_reads_as_it_was_found_good(int width) {
        var text = new StringBuilder();
        for (String id : List.of("artilleryman", "officer", "two-papers", "never-abroad", "crowded")) {
            var findings = Frozen.dossier(InventedSoldiers.ofId(id)).findings();
            text.append(new FindingsText(Desk.reference(), Ink.PLAIN, width, id.equals("officer"))
                            .write(id, findings, List.of()))
                    .append('\n');
        }
        Golden.assertSame("findings-" + width + ".txt", text.toString());
        assertThat(text.toString().lines()).allMatch(line -> line.length() <= width);
    }
}
