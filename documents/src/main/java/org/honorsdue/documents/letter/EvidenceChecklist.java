package org.honorsdue.documents.letter;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import org.honorsdue.determination.finding.FactWanted;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.documents.page.Block;
import org.honorsdue.documents.page.Page;

/** For each open question the documents that would settle it, and where they are kept. */
final class EvidenceChecklist {
    private EvidenceChecklist() {}

    static Page of(Dossier dossier) {
        var page = Page.of("evidence-checklist", "Evidence to look for", dossier.soldier(), dossier.dated());
        var open = dossier.standing(Standing.PRESUMED, Standing.UNSETTLED);
        boolean any = false;
        var named = new TreeSet<String>();
        for (var finding : open) {
            for (var need : finding.needs()) {
                any = true;
                page.section(Wording.award(finding));
                page.say(need.question());
                var about = need.wanted().stream()
                        .map(FactWanted::about)
                        .filter(words -> !words.isBlank())
                        .sorted()
                        .toList();
                if (!about.isEmpty()) {
                    page.fine("To be shown: " + String.join("; ", about) + ".");
                }
                var ways = new ArrayList<String>();
                for (var set : need.settledBy()) {
                    named.addAll(set);
                    ways.add(String.join(
                            ", together with ",
                            set.stream()
                                    .sorted()
                                    .map(id -> dossier.document(id)
                                            .map(document -> document.name())
                                            .orElse(id))
                                    .toList()));
                }
                page.points(ways.stream().map(way -> "[ ] " + way).toList());
            }
        }
        if (!any) {
            page.say("Nothing is open: every award is settled one way or the other by what is at hand.");
            return page.page();
        }
        page.part("Where these documents are");
        var rows = new TreeMap<String, List<String>>();
        for (String id : named) {
            dossier.document(id)
                    .ifPresent(document -> rows.put(
                            document.effort() + document.name(),
                            List.of(
                                    document.name(),
                                    document.keptBy(),
                                    document.cannotProve(),
                                    document.burned() ? "most burned in 1973" : "")));
        }
        page.add(new Block.Table(
                List.of("Document", "Kept by", "It does not prove", "The fire"), List.copyOf(rows.values())));
        return page.page();
    }
}
