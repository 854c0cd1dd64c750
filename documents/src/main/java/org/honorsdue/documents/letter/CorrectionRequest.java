package org.honorsdue.documents.letter;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.Ground;
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

    /** Whether anything that is settled is missing from the paper, so that there is something to ask. */
    static boolean hasCause(Dossier dossier) {
        return !dossier.casefile().papers().isEmpty() && !missing(dossier).isEmpty();
    }

    private static List<Finding> missing(Dossier dossier) {
        return dossier.authorized().stream()
                .filter(finding -> finding.onPaper() != OnPaper.YES)
                .filter(finding -> !dossier.isInsigne(finding))
                .toList();
    }

    static Page of(Dossier dossier) {
        var person = dossier.person();
        var page = Letter.to(
                "Army Board for Correction of Military Records",
                "correction-request",
                "Draft for a correction of the record",
                "Application for correction of military record, statement to DD Form 149: " + dossier.soldier(),
                dossier);
        page.say(
                "I ask that the record of %s be corrected by adding the awards named below, which the separation paper does"
                                .formatted(person.full().equals("The soldier") ? "the soldier" : person.full())
                        + " not show or shows in part." + Letter.relation(dossier));
        page.add(Letter.identity(dossier));
        page.part("The error, and the reason");
        missing(dossier).forEach(finding -> error(dossier, finding, page));
        page.part("Why the board is asked now");
        page.say(
                "The records center and the Army\u2019s awards branch answered on ____________ and ____________ that they could"
                        + " not add these awards. I ask the board to excuse the time that has passed, in the interest of justice: the"
                        + " error stands on the face of the paper and of the law, and the file is believed to be lost.");
        Letter.close(
                page,
                List.of(
                        "DD Form 149, filled in and signed",
                        "a copy of the separation paper, both sides",
                        "the proof annex",
                        "the answers of the records center and of the awards branch",
                        "proof of death and of kinship, if the veteran is dead"));
        forTheWriter(dossier, page);
        return page.page();
    }

    private static void error(Dossier dossier, Finding finding, Page.Builder page) {
        page.section(Wording.award(finding));
        page.say("%s It is due because:"
                .formatted(
                        finding.onPaper() == OnPaper.INCOMPLETE
                                ? "The paper shows it, but not in full."
                                : "The paper does not show it."));
        page.points(finding.grounds().stream()
                .filter(ground -> ground.verdict() == Verdict.MET)
                .map(ground -> because(dossier, ground))
                .distinct()
                .toList());
        page.fine("Evidence and clauses: proof annex, number " + ProofAnnex.numberOf(dossier, finding) + "."
                + (finding.whyNotOnPaper().isBlank() ? "" : " " + finding.whyNotOnPaper()));
    }

    private static String because(Dossier dossier, Ground ground) {
        String places = ground.evidence().stream()
                .map(origin -> Wording.place(dossier, origin))
                .distinct()
                .limit(3)
                .collect(Collectors.joining("; "));
        return ground.says() + " Authority: " + Wording.authority(ground.authority())
                + (places.isEmpty() ? "." : ". Rests on " + places + ".");
    }

    private static void forTheWriter(Dossier dossier, Page.Builder page) {
        Letter.forTheWriter(page);
        page.add(new Block.Warning(
                "Send this only when the ordinary road is exhausted: the records center and the Army\u2019s awards branch must"
                        + " have answered first. The board is not a research agency."));
        var pending = dossier.standing(Standing.PRESUMED, Standing.UNSETTLED);
        if (!pending.isEmpty()) {
            page.say("Not asked for, because without new evidence it would be refused: "
                    + String.join(
                            ", ", pending.stream().map(Finding::name).distinct().toList())
                    + ".");
        }
        page.part("DD Form 149: what to enter");
        page.table(
                List.of("The form asks", "Enter"),
                List.of(36, 64),
                List.of(
                        List.of(
                                "Whose record",
                                "Name, serial number, branch and dates as in the letter. Army, separated."),
                        List.of(
                                "The error, and the correction asked for",
                                "\u201cAdd to the record: "
                                        + missing(dossier).stream()
                                                .map(Wording::awardInShort)
                                                .collect(Collectors.joining("; "))
                                        + ".\u201d"),
                        List.of("Why the record is in error", "\u201cSee the statement attached.\u201d"),
                        List.of("Evidence", "The enclosures of the letter, numbered."),
                        List.of(
                                "When the error was found, and why it is asked after three years",
                                "The day you found it. Then: \u201cin the interest of justice\u201d, with the reason in the letter."),
                        List.of(
                                "Who applies",
                                "Your name, address, relation; proof of death if the veteran is dead.")));
        page.fine("Captions from memory of the form; follow the edition you hold. " + Letter.CONFIRM);
        usually(page);
        Answers.to(dossier, page);
    }

    private static void usually(Page.Builder page) {
        page.part("What the board usually does");
        var items = new ArrayList<String>();
        items.add(
                "It adds service medals that follow from dates, such as the American Campaign Medal and the World War II"
                        + " Victory Medal (AR20160016517, AR20160014459).");
        items.add(
                "It gives the Bronze Star Medal on a Combat Infantryman Badge of the war (AR20170003387); a badge of a later"
                        + " war brings none (AR20210008187).");
        items.add(
                "For a Purple Heart it wants three things shown: the enemy\u2019s act, treatment by a medical officer, and an"
                        + " official record of it (docket 9607853 and docket 9605300).");
        items.add(
                "It corrects records and does not issue medals (AR20210015010); the result is a correction form attached to"
                        + " the paper, never a new paper (AR20150002905).");
        items.add("A second application needs new evidence; a stronger tone is not evidence (AR20110016902).");
        page.points(items);
    }
}
