package org.honorsdue.documents.letter;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.honorsdue.determination.finding.FactWanted;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.determination.nextsteps.OpenQuestion;
import org.honorsdue.determination.nextsteps.Step;
import org.honorsdue.documents.page.Block;
import org.honorsdue.documents.page.Page;

/** What to look for, the most for the least work first, and for each open question every way to settle it. */
final class EvidenceChecklist {
    private static final int WAYS_SHOWN = 6;

    private EvidenceChecklist() {}

    static Page of(Dossier dossier) {
        var page = Page.of(
                "evidence-checklist", Page.Kind.SHEET, "Evidence to look for", dossier.soldier(), dossier.dated());
        var open = dossier.standing(Standing.PRESUMED, Standing.UNSETTLED);
        if (open.isEmpty()) {
            page.say("Nothing is open: every award is settled one way or the other by what is at hand.");
            return page.page();
        }
        steps(dossier, page);
        beyond(dossier, page);
        questions(dossier, open, page);
        return page.page();
    }

    private static void steps(Dossier dossier, Page.Builder page) {
        if (dossier.steps().steps().isEmpty()) {
            return;
        }
        page.part("The shortest way");
        page.say("Begin at the top. Each line names one thing to ask for, who keeps it, and what it would settle.");
        int number = 0;
        for (var step : dossier.steps().steps()) {
            number++;
            page.section(number + ". " + what(step));
            page.add(new Block.Checks(
                    List.of("Asked for on ____________", "Answer came on ____________", "Copy filed with the case")));
            page.say("Kept by: " + step.document().keptBy() + ".");
            settles(page, "It settles: ", step.settles());
            settles(page, "Together with another it bears on: ", step.bearsOn());
            if (!step.otherwise().isEmpty()) {
                page.say("If it is not to be had: " + String.join("; ", step.otherwise()) + ".");
            }
            step.cautions().forEach(page::fine);
        }
    }

    /** {@code Morning reports of the company: Co B 331st Inf, December 1944}. */
    static String what(Step step) {
        return step.document().name() + (step.subject().isBlank() ? "" : ": " + step.subject());
    }

    private static void settles(Page.Builder page, String lead, List<OpenQuestion> questions) {
        if (!questions.isEmpty()) {
            page.say(lead
                    + questions.stream().map(OpenQuestion::name).distinct().collect(Collectors.joining(", "))
                    + ".");
        }
    }

    private static void beyond(Dossier dossier, Page.Builder page) {
        if (!dossier.steps().beyond().isEmpty()) {
            page.part("What no document known here would settle");
            page.points(dossier.steps().beyond().stream()
                    .map(question -> question.name() + ": " + question.question())
                    .distinct()
                    .toList());
        }
    }

    private static void questions(Dossier dossier, List<Finding> open, Page.Builder page) {
        page.part("Question by question");
        for (var finding : open) {
            page.section(Wording.awardInShort(finding) + (finding.standing() == Standing.PRESUMED ? " (likely)" : ""));
            for (var need : finding.needs()) {
                page.say(need.question());
                var about = need.wanted().stream()
                        .map(FactWanted::about)
                        .filter(words -> !words.isBlank())
                        .sorted()
                        .distinct()
                        .toList();
                if (!about.isEmpty()) {
                    page.fine("To be shown: " + String.join("; ", about) + ".");
                }
                var ways = new ArrayList<String>();
                need.settledBy().stream()
                        .limit(WAYS_SHOWN)
                        .forEach(set -> ways.add(set.stream()
                                .sorted()
                                .map(id -> dossier.document(id)
                                        .map(document -> document.name() + " (" + document.keptBy() + ")")
                                        .orElse(id))
                                .collect(Collectors.joining(", together with "))));
                if (!ways.isEmpty()) {
                    page.add(new Block.Checks(ways));
                }
                if (need.settledBy().size() > WAYS_SHOWN) {
                    page.fine(
                            "And %s.".formatted(Wording.number(need.settledBy().size() - WAYS_SHOWN, "other way")));
                }
            }
        }
        limits(dossier, open, page);
    }

    private static void limits(Dossier dossier, List<Finding> open, Page.Builder page) {
        Map<String, List<String>> rows = new LinkedHashMap<>();
        open.stream()
                .flatMap(finding -> finding.needs().stream())
                .flatMap(need -> need.settledBy().stream().limit(WAYS_SHOWN))
                .flatMap(set -> set.stream().sorted())
                .forEach(id -> dossier.document(id)
                        .ifPresent(document -> rows.put(
                                id,
                                List.of(
                                        document.name(),
                                        document.cannotProve().isBlank() ? "\u2013" : document.cannotProve(),
                                        document.burned()
                                                ? "most of the Army\u2019s burned in 1973"
                                                : "not touched"))));
        if (!rows.isEmpty()) {
            page.part("What each document does not prove");
            page.table(
                    List.of("Document", "It does not prove", "The fire of 1973"),
                    List.of(42, 36, 22),
                    List.copyOf(rows.values()));
        }
    }
}
