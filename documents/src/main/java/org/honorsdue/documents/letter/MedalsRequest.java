package org.honorsdue.documents.letter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.OnPaper;
import org.honorsdue.determination.finding.Verdict;
import org.honorsdue.documents.page.Block;
import org.honorsdue.documents.page.Page;
import org.honorsdue.service.fact.Origin;

/** Letter asking for the issue of medals: only what is settled, each with the box it stands in and its authority. */
final class MedalsRequest {
    private MedalsRequest() {}

    static Page of(Dossier dossier) {
        var page = Page.of("medals-request", "Request for medals", dossier.soldier(), dossier.dated());
        page.add(new Block.Lines(List.of(
                "To: National Personnel Records Center, medals section, St. Louis",
                "(confirm the present address with the office before you send this)")));
        page.say("I ask that the awards listed here be verified and issued for the soldier named above. I am "
                + dossier.relation().words() + ". A copy of the separation paper is enclosed.");
        var settled = dossier.authorized();
        if (settled.isEmpty()) {
            page.say("No award is settled yet; the checklist names the documents to find first.");
        } else {
            page.add(new Block.Table(List.of("No.", "Award", "Where it appears", "Authority"), rows(dossier, settled)));
            page.fine("The numbers are those of the proof annex, which can be enclosed.");
        }
        page.say("The office verifies entitlement and passes the order to the Army's depot. What it cannot establish it"
                + " forwards to the Army's awards branch.");
        page.part("Three questions, three answers");
        RecordsRequest.answers(dossier, page);
        page.add(new Block.Blanks(List.of("Name of the writer", "Address", "Signature", "Date")));
        return page.page();
    }

    private static List<List<String>> rows(Dossier dossier, List<Finding> settled) {
        var rows = new ArrayList<List<String>>();
        for (var finding : settled) {
            rows.add(List.of(
                    Integer.toString(ProofAnnex.numberOf(dossier, finding)),
                    Wording.award(finding),
                    where(dossier, finding),
                    finding.grounds().stream()
                            .filter(ground -> ground.verdict() == Verdict.MET)
                            .map(ground -> Wording.authority(ground.authority()))
                            .distinct()
                            .limit(2)
                            .reduce((a, b) -> a + "; " + b)
                            .orElse("")));
        }
        return rows;
    }

    private static String where(Dossier dossier, Finding finding) {
        Optional<String> box = finding.grounds().stream()
                .flatMap(ground -> ground.evidence().stream())
                .filter(Origin.OnPaper.class::isInstance)
                .map(origin -> Wording.entry(dossier, (Origin.OnPaper) origin))
                .findFirst();
        if (finding.onPaper() == OnPaper.NO) {
            return box.map(place -> "not on the paper; rests on " + place).orElse("not on the paper");
        }
        return box.orElse("on the paper");
    }
}
