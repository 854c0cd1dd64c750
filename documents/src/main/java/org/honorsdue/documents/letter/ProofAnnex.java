package org.honorsdue.documents.letter;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.Need;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.documents.page.Block;
import org.honorsdue.documents.page.Page;
import org.honorsdue.reference.Grade;

/** Every finding with its clauses, authorities and quotations, numbered so that a letter can cite it. */
final class ProofAnnex {
    private ProofAnnex() {}

    static Page of(Dossier dossier) {
        var page = Page.of("proof-annex", Page.Kind.SHEET, "Proof annex", dossier.soldier(), dossier.dated());
        page.say(
                "Each finding below bears a number. Under it stands each clause of the law that was asked, the answer, the"
                        + " authority with its edition, and the characters or the evidence the answer rests on. Quotations are"
                        + " letter by letter as typed.");
        page.fine("An authority marked [read at second hand] was read in a work that reproduces or reports it;"
                + " [text not yet read] stands on memory and has to be looked up before it is cited.");
        page.table(List.of("No.", "Award", "Standing", "On the paper"), List.of(6, 58, 20, 16), index(dossier));
        page.part("One by one");
        int number = 0;
        for (var finding : dossier.findings().findings()) {
            number++;
            finding(dossier, number, finding, page);
        }
        crosschecks(dossier, page);
        unread(dossier, page);
        return page.page();
    }

    /** The number of a finding in the annex, from 1. */
    static int numberOf(Dossier dossier, Finding finding) {
        return dossier.findings().findings().indexOf(finding) + 1;
    }

    private static List<List<String>> index(Dossier dossier) {
        return dossier.findings().findings().stream()
                .map(finding -> List.of(
                        Integer.toString(numberOf(dossier, finding)),
                        Wording.awardInShort(finding),
                        standing(finding),
                        finding.onPaper().id()))
                .toList();
    }

    private static String standing(Finding finding) {
        return finding.standing().id().replace('-', ' ');
    }

    private static void finding(Dossier dossier, int number, Finding finding, Page.Builder page) {
        page.section(number + ". " + Wording.award(finding));
        page.fine("%s; on the paper: %s%s"
                .formatted(
                        Wording.capital(standing(finding)),
                        finding.onPaper().id(),
                        finding.whyNotOnPaper().isBlank() ? "." : ". " + finding.whyNotOnPaper()));
        var rows = new ArrayList<List<String>>();
        for (var ground : finding.grounds()) {
            rows.add(List.of(
                    ground.verdict().id().replace('-', ' '),
                    ground.says(),
                    Wording.authority(ground.authority()),
                    ground.evidence().stream()
                            .map(origin -> Wording.place(dossier, origin))
                            .distinct()
                            .collect(Collectors.joining("; "))));
        }
        page.table(List.of("Answer", "Clause", "Authority", "Rests on"), List.of(10, 39, 21, 30), rows);
        for (var need : finding.needs()) {
            page.say("Open: " + need.question() + " " + settledBy(dossier, need));
        }
        finding.cautions().forEach(caution -> page.add(new Block.Warning(caution)));
        if (finding.standing() == Standing.AUTHORIZED
                && finding.grounds().stream()
                        .anyMatch(ground -> ground.authority().grade() == Grade.MEMORY)) {
            page.fine("A clause of this proof has not been read in its source yet.");
        }
    }

    private static String settledBy(Dossier dossier, Need need) {
        if (need.settledBy().isEmpty()) {
            return "";
        }
        return need.settledBy().stream()
                .limit(3)
                .map(set -> set.stream()
                        .sorted()
                        .map(id -> dossier.document(id)
                                .map(document -> document.name())
                                .orElse(id))
                        .collect(Collectors.joining(" together with ")))
                .collect(Collectors.joining(", or by ", "Settled by ", "."));
    }

    private static void crosschecks(Dossier dossier, Page.Builder page) {
        if (dossier.findings().crosschecks().isEmpty()) {
            return;
        }
        page.part("One entry held against another");
        page.table(
                List.of("Outcome", "What was compared", "Entries", "Rule"),
                List.of(11, 43, 22, 24),
                dossier.findings().crosschecks().stream()
                        .map(check -> List.of(
                                check.outcome().id().replace('-', ' '),
                                check.says(),
                                entries(dossier, check),
                                check.rule().source()))
                        .toList());
    }

    private static String entries(Dossier dossier, Crosscheck check) {
        boolean onePaper = dossier.casefile().papers().size() == 1;
        return check.entries().stream()
                .map(entry -> onePaper ? Wording.box(dossier, 1, entry) : entry.caption())
                .distinct()
                .collect(Collectors.joining("; "));
    }

    private static void unread(Dossier dossier, Page.Builder page) {
        if (!dossier.findings().conflicts().isEmpty()) {
            page.part("Sources that contradict each other");
            page.points(dossier.findings().conflicts().stream()
                    .map(conflict -> conflict.says())
                    .toList());
        }
        if (!dossier.findings().unread().isEmpty()) {
            page.part("Left unread");
            for (var unread : dossier.findings().unread()) {
                page.add(new Block.Typed(
                        Wording.box(dossier, unread.paper(), unread.entry()) + ":",
                        dossier.unread(unread.entry(), unread.text())));
            }
        }
    }
}
