package org.honorsdue.documents;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.determination.finding.FactWanted;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.determination.finding.Ground;
import org.honorsdue.determination.finding.Need;
import org.honorsdue.determination.finding.OnPaper;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.determination.finding.Verdict;
import org.honorsdue.determination.finding.WornDevice;
import org.honorsdue.determination.nextsteps.NextSteps;
import org.honorsdue.determination.nextsteps.OpenQuestion;
import org.honorsdue.determination.nextsteps.Step;
import org.honorsdue.documents.findings.FindingsJson;
import org.honorsdue.documents.letter.Dossier;
import org.honorsdue.documents.letter.Masking;
import org.honorsdue.documents.letter.Relation;
import org.honorsdue.reference.Citation;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;
import org.honorsdue.service.fact.Conflict;
import org.honorsdue.service.fact.Device;
import org.honorsdue.service.fact.Origin;
import org.honorsdue.service.fact.Unread;
import org.honorsdue.service.paper.Entry;

/**
 * What was once decided about the invented soldiers, kept as files, so that the words of the documents are tested and
 * not the law: a rule that learns something new changes no golden text here.
 *
 * <p>{@code -Dhonors.freeze=true} decides anew and writes the files.
 */
public final class Frozen {
    private static final Path FOLDER = Path.of("src/test/resources/org/honorsdue/documents/frozen");
    private static final ObjectMapper JSON = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    private Frozen() {}

    /** The soldier's case as it was decided when the files were written. Entries are glossed by no reader. */
    public static Dossier dossier(InventedSoldier soldier) {
        if (Boolean.getBoolean("honors.freeze")) {
            write(soldier);
        }
        try {
            var root = JSON.readTree(FOLDER.resolve(soldier.id() + ".json").toFile());
            return new Dossier(
                    soldier.casefile(),
                    soldier.facts(),
                    findings(root.get("findings")),
                    root.has("then") ? Optional.of(findings(root.get("then"))) : Optional.empty(),
                    steps(root.get("steps")),
                    List.of(),
                    Desk.reference(),
                    Relation.NOT_STATED,
                    Masking.SHARED,
                    Optional.empty());
        } catch (IOException e) {
            throw new UncheckedIOException("Run the tests once with -Dhonors.freeze=true to write it.", e);
        }
    }

    private static void write(InventedSoldier soldier) {
        var decided = Desk.dossier(soldier);
        var json = new FindingsJson(Desk.reference());
        try {
            var root = JSON.createObjectNode();
            root.set("findings", JSON.readTree(json.write(decided.findings())));
            if (decided.thenFindings().isPresent()) {
                root.set("then", JSON.readTree(json.write(decided.thenFindings().get())));
            }
            root.set("steps", JSON.valueToTree(tree(decided.steps())));
            Files.createDirectories(FOLDER);
            Files.writeString(FOLDER.resolve(soldier.id() + ".json"), JSON.writeValueAsString(root) + "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Map<String, Object> tree(NextSteps steps) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put(
                "steps",
                steps.steps().stream()
                        .map(step -> {
                            var one = new LinkedHashMap<String, Object>();
                            one.put("document", step.document().id());
                            one.put("subject", step.subject());
                            one.put("settles", questions(step.settles()));
                            one.put("bears_on", questions(step.bearsOn()));
                            one.put("because", step.because());
                            one.put("otherwise", step.otherwise());
                            one.put("cautions", step.cautions());
                            return one;
                        })
                        .toList());
        tree.put("beyond", questions(steps.beyond()));
        tree.put("questions", steps.questions());
        tree.put("effort", steps.effort());
        tree.put("reasoning", steps.reasoning());
        return tree;
    }

    private static List<List<String>> questions(List<OpenQuestion> questions) {
        return questions.stream()
                .map(question -> List.of(question.about(), question.name(), question.question()))
                .toList();
    }

    private static NextSteps steps(JsonNode node) {
        return new NextSteps(
                each(
                        node.get("steps"),
                        step -> new Step(
                                Desk.reference()
                                        .document(text(step, "document"))
                                        .orElseThrow(),
                                text(step, "subject"),
                                Optional.empty(),
                                each(step.get("settles"), Frozen::question),
                                each(step.get("bears_on"), Frozen::question),
                                text(step, "because"),
                                each(step.get("otherwise"), JsonNode::asText),
                                each(step.get("cautions"), JsonNode::asText))),
                each(node.get("beyond"), Frozen::question),
                node.get("questions").asInt(),
                node.get("effort").asInt(),
                true,
                text(node, "reasoning"));
    }

    private static OpenQuestion question(JsonNode node) {
        return new OpenQuestion(
                node.get(0).asText(), node.get(1).asText(), node.get(2).asText());
    }

    static Findings findings(JsonNode node) {
        return new Findings(
                LocalDate.parse(text(node, "as_of")),
                each(node.get("findings"), Frozen::finding),
                each(
                        node.get("crosschecks"),
                        check -> new Crosscheck(
                                text(check, "check"),
                                of(Crosscheck.Outcome.class, Crosscheck.Outcome::id, text(check, "outcome")),
                                text(check, "says"),
                                each(
                                        check.get("entries"),
                                        key -> Entry.ofKey(key.asText()).orElseThrow()),
                                each(check.get("evidence"), Frozen::origin),
                                new HashSet<>(each(check.get("awards"), JsonNode::asText)),
                                new Provenance(text(check, "rule"), grade(check)))),
                each(
                        node.get("conflicts"),
                        conflict ->
                                new Conflict(text(conflict, "says"), each(conflict.get("evidence"), Frozen::origin))),
                each(
                        node.get("unread"),
                        unread -> new Unread(
                                unread.get("paper").asInt(),
                                Entry.ofKey(text(unread, "entry")).orElseThrow(),
                                0,
                                text(unread, "text").length(),
                                text(unread, "text"))));
    }

    private static Finding finding(JsonNode node) {
        return new Finding(
                text(node, "award"),
                text(node, "name"),
                of(Standing.class, Standing::id, text(node, "standing")),
                of(OnPaper.class, OnPaper::id, text(node, "on_paper")),
                node.get("count").asInt(),
                each(
                        node.get("devices"),
                        worn -> new WornDevice(
                                Device.ofId(text(worn, "device")).orElseThrow(),
                                worn.get("count").asInt(),
                                each(worn.get("for"), JsonNode::asText))),
                each(
                        node.get("grounds"),
                        ground -> new Ground(
                                text(ground, "id"),
                                text(ground, "clause"),
                                new Citation(text(ground, "authority"), "", "", grade(ground)),
                                of(Verdict.class, Verdict::id, text(ground, "verdict")),
                                each(ground.get("evidence"), Frozen::origin))),
                each(
                        node.get("needs"),
                        need -> new Need(
                                text(need, "question"),
                                new HashSet<>(each(
                                        need.get("wanted"),
                                        fact -> new FactWanted(text(fact, "kind"), text(fact, "about")))),
                                each(need.get("settled_by"), set ->
                                        (Set<String>) new HashSet<>(each(set, JsonNode::asText))))),
                each(node.get("cautions"), JsonNode::asText),
                text(node, "why_not_on_paper"));
    }

    private static Origin origin(JsonNode node) {
        if (node.has("paper")) {
            return new Origin.OnPaper(
                    node.get("paper").asInt(),
                    Entry.ofKey(text(node, "entry")).orElseThrow(),
                    node.get("start").asInt(),
                    node.get("end").asInt(),
                    text(node, "text"));
        }
        if (node.has("evidence")) {
            return new Origin.InEvidence(
                    node.get("evidence").asInt(),
                    text(node, "kind"),
                    text(node, "text"),
                    node.has("source") ? Optional.of(text(node, "source")) : Optional.empty());
        }
        return new Origin.Stated(text(node, "text"));
    }

    private static Grade grade(JsonNode node) {
        return of(Grade.class, grade -> grade.name().toLowerCase(java.util.Locale.ROOT), text(node, "grade"));
    }

    private static <E extends Enum<E>> E of(Class<E> kind, Function<E, String> id, String wanted) {
        return EnumSet.allOf(kind).stream()
                .filter(one -> id.apply(one).equals(wanted))
                .findFirst()
                .orElseThrow();
    }

    private static String text(JsonNode node, String field) {
        return node.get(field).asText();
    }

    private static <T> List<T> each(JsonNode array, Function<JsonNode, T> read) {
        var all = new ArrayList<T>();
        array.forEach(item -> all.add(read.apply(item)));
        return all;
    }
}
