package org.honorsdue.documents.letter;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.honorsdue.determination.nextsteps.OpenQuestion;
import org.honorsdue.determination.nextsteps.Step;
import org.honorsdue.documents.page.Page;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.Tour;

/**
 * Letter and worksheet to the National Archives at St. Louis: named documents, never "everything". How the office works
 * and what it needs: National Archives, archival programs at St. Louis (secondary), National Genealogical Society
 * lectures of 2010 (secondary).
 */
final class RecordsRequest {
    /** After so many years a file passes to the archives and is open (National Archives, archival programs). */
    private static final int YEARS_CLOSED = 62;

    private static final String HERE = "St. Louis";

    private RecordsRequest() {}

    static Page of(Dossier dossier) {
        var person = dossier.person();
        var page = Letter.to(
                "National Personnel Records Center, archival records, St. Louis",
                "records-request",
                "Request for records",
                "Request for copies of records: " + dossier.soldier(),
                dossier);
        page.say("I ask for copies of the records named below of %s, who served in the Army in the Second World War.%s"
                .formatted(
                        person.full().equals("The soldier") ? "the soldier" : person.full(), Letter.relation(dossier)));
        page.add(Letter.identity(dossier));
        page.say(openness(dossier));
        wanted(dossier, page);
        page.say(
                "If the personnel file was lost in the fire of 12 July 1973, I ask for any rebuilt file and for the final"
                        + " pay voucher. An answer that no file is left is an answer too; I would be glad to have it in writing.");
        Letter.close(
                page,
                dossier.casefile().papers().isEmpty()
                        ? List.of("proof of death and of kinship, where they are asked for")
                        : List.of(
                                "a copy of the separation paper, both sides (the original stays with the family)",
                                "proof of death and of kinship, where they are asked for"));
        forTheWriter(dossier, page);
        return page.page();
    }

    /** The day from which the file is open to anyone; empty when the separation is not known. */
    static Optional<LocalDate> archivalSince(Dossier dossier) {
        return dossier.facts().every(Tour.class).stream()
                .flatMap(tour -> tour.separated().stream())
                .map(PartialDate::latest)
                .max(LocalDate::compareTo)
                .map(day -> day.plusYears(YEARS_CLOSED));
    }

    private static String openness(Dossier dossier) {
        return archivalSince(dossier)
                .map(open -> open.isAfter(dossier.dated())
                        ? "The file becomes archival on %s; until then I ask as next of kin."
                                .formatted(Wording.day(open))
                        : "More than %d years have passed since the separation, so the file is archival and open."
                                .formatted(YEARS_CLOSED))
                .orElse("The date of separation is not known to me.");
    }

    private static void wanted(Dossier dossier, Page.Builder page) {
        var here =
                dossier.steps().steps().stream().filter(RecordsRequest::isHere).toList();
        if (here.isEmpty()) {
            page.say("I ask for the official military personnel file, if it survived or was rebuilt, and the final pay"
                    + " voucher.");
            return;
        }
        page.say("I ask for these records and no wider search:");
        var items = new ArrayList<String>();
        for (var step : here) {
            items.add(EvidenceChecklist.what(step) + ". To establish: " + about(step) + ".");
        }
        page.steps(items);
    }

    private static boolean isHere(Step step) {
        return step.document().keptBy().contains(HERE);
    }

    private static String about(Step step) {
        var names = new ArrayList<String>();
        step.settles().stream().map(OpenQuestion::name).forEach(names::add);
        step.bearsOn().stream().map(OpenQuestion::name).forEach(names::add);
        return String.join(", ", names.stream().distinct().toList());
    }

    private static void forTheWriter(Dossier dossier, Page.Builder page) {
        Letter.forTheWriter(page);
        page.say(
                "The usual form for this letter is Standard Form 180, Request Pertaining to Military Records. What to enter"
                        + " in which section:");
        page.table(
                List.of("Section", "What it asks", "Enter"),
                List.of(12, 34, 54),
                List.of(
                        List.of(
                                "I",
                                "Information needed to locate records",
                                "The particulars in the letter, line for line, as typed on the paper. Service: Army. Enlisted"
                                        + " or officer as the paper shows. Whether the soldier is dead, and the date."),
                        List.of(
                                "II",
                                "Information or documents requested, and the purpose",
                                "Tick \u201cother\u201d and copy the numbered list of the letter. Purpose: to establish the"
                                        + " soldier\u2019s awards."),
                        List.of(
                                "III",
                                "Return address and signature",
                                "Your own name and address. Relation: "
                                        + (dossier.relation() == Relation.NOT_STATED
                                                ? "as it is"
                                                : dossier.relation().words())
                                        + ". Sign and date it.")));
        page.fine("Section numbers from memory of the form; follow the edition you hold. " + Letter.CONFIRM);
        page.points(List.of(
                "For morning reports the office needs the exact company, what happened, and one named month. One request a"
                        + " month, one company a request.",
                "Send copies, never originals. A family copy may be the only one left.",
                "After the fire the office may send two questionnaires, NA 13075 on service and NA 13055 on medical treatment:"
                        + " fill in both and attach the paper."));
        elsewhere(dossier, page);
        Answers.to(dossier, page);
    }

    private static void elsewhere(Dossier dossier, Page.Builder page) {
        var other = dossier.steps().steps().stream()
                .filter(step -> !isHere(step))
                .map(step ->
                        List.of(EvidenceChecklist.what(step), step.document().keptBy(), about(step)))
                .toList();
        if (!other.isEmpty()) {
            page.part("Not kept at St. Louis: ask there");
            page.table(List.of("Document", "Kept by", "What it would settle"), List.of(40, 28, 32), other);
        }
    }
}
