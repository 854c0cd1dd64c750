package org.honorsdue.documents.letter;

import java.util.ArrayList;
import java.util.List;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.OnPaper;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.determination.finding.Verdict;
import org.honorsdue.documents.page.Block;
import org.honorsdue.documents.page.Page;

/**
 * Draft for DD Form 149, application for correction of military record: the last road, when the records center and the
 * Army's awards branch have answered. What the board does: applicant's guide of the Army Board for Correction of
 * Military Records; decisions named by docket.
 */
final class CorrectionRequest {
    private CorrectionRequest() {}

    static Page of(Dossier dossier) {
        var page = Page.of(
                "correction-request", "Draft for a correction of the record", dossier.soldier(), dossier.dated());
        page.add(new Block.Warning(
                "Send this only when the ordinary road is exhausted: the records center and the Army's"
                        + " awards branch must have answered first. The board is not a research agency."));
        page.say("To the Army Board for Correction of Military Records, on DD Form 149. I am "
                + dossier.relation().words() + ".");
        if (!dossier.relation().mayAskCorrection()) {
            page.add(new Block.Warning("The board's guide does not name "
                    + dossier.relation().words()
                    + " among those who may apply. A legal appointment or a nearer relative's signature is needed."));
        }
        var missing = dossier.authorized().stream()
                .filter(finding -> finding.onPaper() != OnPaper.YES)
                .toList();
        page.part("The error, and the reason");
        if (missing.isEmpty()) {
            page.say("Nothing that is settled is missing from the paper. There is nothing to ask the board for yet.");
        }
        for (var finding : missing) {
            error(dossier, finding, page);
        }
        pending(dossier, page);
        page.part("What the board usually does");
        page.points(List.of(
                "It adds service medals that follow from dates, such as the American Campaign Medal and the World War II"
                        + " Victory Medal, as a matter of course (AR20160016517, AR20160014459).",
                "It gives the Bronze Star Medal on a Combat Infantryman Badge of the war (AR20170003387); a badge of a later"
                        + " war brings none (AR20210008187).",
                "For a Purple Heart it wants three things shown: the enemy's act, treatment by a medical officer, and an"
                        + " official record of it (9607853, 9605300).",
                "It corrects records and does not issue medals (AR20210015010); the result is a correction form attached to the"
                        + " paper, never a new paper (AR20150002905).",
                "A second application needs new evidence; a stronger tone is not evidence (AR20110016902)."));
        page.add(new Block.Blanks(List.of("Name of the applicant", "Address", "Signature", "Date")));
        return page.page();
    }

    private static void error(Dossier dossier, Finding finding, Page.Builder page) {
        page.section(Wording.award(finding));
        page.say("The paper does not show it%s. It is due because:"
                .formatted(finding.onPaper() == OnPaper.INCOMPLETE ? " in full" : ""));
        var reasons = new ArrayList<String>();
        for (var ground : finding.grounds()) {
            if (ground.verdict() == Verdict.MET) {
                var places = ground.evidence().stream()
                        .map(origin -> Wording.place(dossier, origin))
                        .toList();
                reasons.add(ground.says() + " (" + Wording.authority(ground.authority()) + ")"
                        + (places.isEmpty() ? "" : " " + String.join("; ", places)));
            }
        }
        page.points(reasons);
        page.fine("Proof annex, number " + ProofAnnex.numberOf(dossier, finding) + ".");
    }

    private static void pending(Dossier dossier, Page.Builder page) {
        var open = dossier.standing(Standing.PRESUMED, Standing.UNSETTLED);
        if (open.isEmpty()) {
            return;
        }
        page.part("Not asked for here");
        page.say("These are not settled and would be refused without new evidence: "
                + String.join(", ", open.stream().map(Finding::name).toList()) + ".");
    }
}
