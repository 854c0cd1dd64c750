package org.honorsdue.documents.letter;

import java.util.List;
import org.honorsdue.documents.page.Page;

/**
 * The relation asked once, and the three answers the offices give to it. Sources as in {@link Relation}; the lists change
 * and every letter says so.
 */
final class Answers {
    private Answers() {}

    static void to(Dossier dossier, Page.Builder page) {
        var relation = dossier.relation();
        page.part("Who may ask: one relation, three answers");
        page.points(List.of(records(dossier), medals(relation), correction(relation)));
        page.fine("These lists are read at second hand and change; confirm them with the office.");
    }

    private static String records(Dossier dossier) {
        return "Records. "
                + RecordsRequest.archivalSince(dossier)
                        .map(day -> day.isAfter(dossier.dated())
                                ? "The file becomes archival on %s. Until then only the veteran or the next of kin may ask."
                                        .formatted(Wording.day(day))
                                : "More than 62 years have passed since the separation, so anyone may ask; the office charges for"
                                        + " copies.")
                        .orElse(
                                "Anyone may ask once 62 years have passed since the separation; before that the veteran or the"
                                        + " next of kin.");
    }

    private static String medals(Relation relation) {
        String list =
                "the Army\u2019s list runs: surviving spouse, eldest child, parent, eldest brother or sister, eldest"
                        + " grandchild";
        return "Medals without charge. "
                + switch (relation.freeMedals()) {
                    case YES ->
                        relation == Relation.VETERAN
                                ? "The veteran may always ask."
                                : "It names " + relation.words() + ", if all nearer kin are dead; " + list + ".";
                    case NO ->
                        "It does not name " + relation.words() + "; " + list + ". Ask the relative it names to sign.";
                    case DEPENDS -> Wording.capital(list) + ". The first of these who is living should sign.";
                };
    }

    private static String correction(Relation relation) {
        String list =
                "the veteran; if dead, spouse, parent, brother or sister, child or legal representative, with proof"
                        + " of death and of kinship";
        return "Correction of the record. "
                + switch (relation.mayAskCorrection()) {
                    case YES -> "The board\u2019s guide lets " + relation.words() + " apply. It names: " + list + ".";
                    case NO ->
                        "The board\u2019s guide does not name " + relation.words()
                                + "; a legal appointment, or the signature of a nearer relative, is needed. It names: "
                                + list + ".";
                    case DEPENDS -> "The board\u2019s guide names: " + list + ".";
                };
    }
}
