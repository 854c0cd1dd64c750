package org.honorsdue.documents.letter;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.OnPaper;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.determination.finding.Verdict;
import org.honorsdue.documents.page.Block;
import org.honorsdue.documents.page.Page;
import org.honorsdue.service.fact.Origin;

/**
 * Letter asking for the issue of medals: only what is settled, each with the box it stands in and its authority. How the
 * office works: NPRC memoranda 1865.110B and 1865.124.
 */
final class MedalsRequest {
    private MedalsRequest() {}

    static Page of(Dossier dossier) {
        var person = dossier.person();
        var page = Letter.to(
                "National Personnel Records Center, medals section, St. Louis",
                "medals-request",
                "Request for medals",
                "Request for the issue of medals: " + dossier.soldier(),
                dossier);
        page.say(
                "I ask that the awards listed here be verified and issued for %s, who served in the Army in the Second World"
                                .formatted(person.full().equals("The soldier") ? "the soldier" : person.full())
                        + " War." + Letter.relation(dossier) + " A copy of the separation paper is enclosed.");
        page.add(Letter.identity(dossier));
        page.table(List.of("Award", "Where it appears", "Authority", "Proof"), List.of(36, 28, 28, 8), rows(dossier));
        page.fine("\u201cProof\u201d is the number in the proof annex, which is enclosed.");
        page.say(
                "What cannot be verified from the records, I ask you to forward to the Army\u2019s awards branch with this"
                        + " letter.");
        Letter.close(
                page,
                List.of(
                        "a copy of the separation paper, both sides",
                        "the proof annex",
                        "proof of death and of kinship, where they are asked for"));
        forTheWriter(dossier, page);
        return page.page();
    }

    private static List<List<String>> rows(Dossier dossier) {
        var rows = new ArrayList<List<String>>();
        for (var finding : dossier.authorized()) {
            rows.add(List.of(
                    Wording.award(finding),
                    where(dossier, finding),
                    finding.grounds().stream()
                            .filter(ground -> ground.verdict() == Verdict.MET)
                            .map(ground -> Wording.authority(ground.authority()))
                            .distinct()
                            .limit(2)
                            .collect(Collectors.joining("; ")),
                    Integer.toString(ProofAnnex.numberOf(dossier, finding))));
        }
        return rows;
    }

    private static String where(Dossier dossier, Finding finding) {
        var origins = finding.grounds().stream()
                .filter(ground -> ground.verdict() == Verdict.MET)
                .flatMap(ground -> ground.evidence().stream())
                .toList();
        String boxes = origins.stream()
                .filter(Origin.OnPaper.class::isInstance)
                .map(Origin.OnPaper.class::cast)
                .map(origin -> Wording.boxInShort(dossier, origin.paper(), origin.entry()))
                .distinct()
                .limit(3)
                .collect(Collectors.joining(", "));
        String others = origins.stream()
                .filter(Origin.InEvidence.class::isInstance)
                .map(Origin.InEvidence.class::cast)
                .map(item -> item.kind().replace('-', ' ')
                        + item.source().map(source -> " (" + source + ")").orElse(""))
                .distinct()
                .limit(2)
                .collect(Collectors.joining(", "));
        String rests = boxes.isEmpty() ? others : others.isEmpty() ? boxes : boxes + "; " + others;
        return switch (finding.onPaper()) {
            case YES -> Wording.capital(boxes.isEmpty() ? "on the paper" : boxes);
            case INCOMPLETE -> "On the paper in part; rests on " + rests;
            case NO -> rests.isEmpty() ? "Not on the paper" : "Not on the paper; rests on " + rests;
        };
    }

    private static void forTheWriter(Dossier dossier, Page.Builder page) {
        Letter.forTheWriter(page);
        page.points(List.of(
                "Standard Form 180 goes with the letter: copy the list of awards into section II, or write \u201csee letter"
                        + " attached\u201d. Section numbers from memory of the form; follow the edition you hold.",
                "The office verifies what is due and passes the order to the Army\u2019s depot. It does not decide on new awards;"
                        + " what it cannot establish goes to the Army\u2019s awards branch.",
                "It can take from a few months to more than a year. Keep a copy of the letter with the date.",
                "Do not buy and show as the soldier\u2019s what is not settled. The law on buying, selling and claiming decorations"
                        + " is 18 U.S.C. 704; read it as it stands."));
        var open = dossier.standing(Standing.PRESUMED, Standing.UNSETTLED);
        if (!open.isEmpty()) {
            page.say("Left out of the letter because not settled: "
                    + String.join(
                            ", ", open.stream().map(Finding::name).distinct().toList())
                    + ". The evidence checklist says what would settle them.");
        }
        if (dossier.authorized().stream().anyMatch(finding -> finding.onPaper() != OnPaper.YES)) {
            page.say(
                    "Some awards in the letter are not on the paper. The office can verify those that follow from dates; if"
                            + " it refuses one, the draft for a correction of the record is the next road, not the first.");
        }
        Answers.to(dossier, page);
        page.add(new Block.Fine(Letter.CONFIRM));
    }
}
