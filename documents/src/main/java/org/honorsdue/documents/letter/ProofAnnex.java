package org.honorsdue.documents.letter;

import java.util.ArrayList;
import java.util.List;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.Need;
import org.honorsdue.documents.page.Block;
import org.honorsdue.documents.page.Page;
import org.honorsdue.service.paper.Entry;

/** Every finding with its clauses, authorities and quotations, numbered so that a letter can cite it. */
final class ProofAnnex {
    private ProofAnnex() {}

    static Page of(Dossier dossier) {
        var page = Page.of("proof-annex", "Proof annex", dossier.soldier(), dossier.dated());
        page.say(
                "Each finding below bears a number. Under it stands each clause of the law that was asked, the answer, the"
                        + " authority with its edition, and the characters or the evidence the answer rests on. Quotations are"
                        + " letter by letter as typed.");
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

    private static void finding(Dossier dossier, int number, Finding finding, Page.Builder page) {
        page.section(number + ". " + Wording.award(finding));
        page.say("Standing: %s. On the paper: %s."
                .formatted(
                        finding.standing().id().replace('-', ' '),
                        finding.onPaper().id()));
        var rows = new ArrayList<List<String>>();
        for (var ground : finding.grounds()) {
            var places = ground.evidence().stream()
                    .map(origin -> Wording.place(dossier, origin))
                    .toList();
            rows.add(List.of(
                    ground.verdict().id().replace('-', ' '),
                    ground.says(),
                    Wording.authority(ground.authority()),
                    String.join("; ", places)));
        }
        if (!rows.isEmpty()) {
            page.add(new Block.Table(List.of("Answer", "Clause", "Authority", "Rests on"), rows));
        }
        if (!finding.whyNotOnPaper().isBlank()) {
            page.say("Why it is not on the paper: " + finding.whyNotOnPaper());
        }
        for (var need : finding.needs()) {
            page.say("Open: " + need.question() + " " + settledBy(dossier, need));
        }
        finding.cautions().forEach(caution -> page.add(new Block.Warning(caution)));
    }

    static String settledBy(Dossier dossier, Need need) {
        if (need.settledBy().isEmpty()) {
            return "";
        }
        var ways = need.settledBy().stream()
                .limit(3)
                .map(set -> String.join(
                        " together with ",
                        set.stream()
                                .sorted()
                                .map(id -> dossier.document(id)
                                        .map(document -> document.name())
                                        .orElse(id))
                                .toList()))
                .toList();
        return "Settled by " + String.join(", or by ", ways) + ".";
    }

    private static void crosschecks(Dossier dossier, Page.Builder page) {
        if (dossier.findings().crosschecks().isEmpty()) {
            return;
        }
        page.part("One entry held against another");
        var rows = new ArrayList<List<String>>();
        for (var check : dossier.findings().crosschecks()) {
            rows.add(List.of(
                    check.outcome().id().replace('-', ' '),
                    check.says(),
                    String.join(
                            ", ", check.entries().stream().map(Entry::caption).toList()),
                    check.rule().source()));
        }
        page.add(new Block.Table(List.of("Outcome", "What was compared", "Entries", "Rule"), rows));
    }

    private static void unread(Dossier dossier, Page.Builder page) {
        if (dossier.findings().unread().isEmpty()
                && dossier.findings().conflicts().isEmpty()) {
            return;
        }
        page.part("Left unread, and contradictions");
        for (var unread : dossier.findings().unread()) {
            page.add(new Block.Typed(
                    Wording.box(dossier, unread.paper(), unread.entry()) + ":",
                    dossier.masking().show(unread.entry(), unread.text())));
        }
        dossier.findings().conflicts().forEach(conflict -> page.say(conflict.says()));
    }
}
