package org.honorsdue.documents.letter;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.honorsdue.determination.finding.FactWanted;
import org.honorsdue.documents.page.Block;
import org.honorsdue.documents.page.Page;
import org.honorsdue.service.fact.BirthDate;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.paper.Entry;

/**
 * Letter and worksheet to the National Archives at St. Louis: named documents, never "everything". How the office works
 * and what it needs: National Archives, archival programs at St. Louis (secondary), National Genealogical Society
 * lectures of 2010 (secondary).
 */
final class RecordsRequest {
    private RecordsRequest() {}

    static Page of(Dossier dossier) {
        var page = Page.of("records-request", "Request for records", dossier.soldier(), dossier.dated());
        page.add(new Block.Lines(List.of(
                "To: National Personnel Records Center, archival records, St. Louis",
                "(confirm the present address with the office before you send this)")));
        page.say(
                "I ask for copies of records of the soldier named below. The separation paper is enclosed as a copy; the"
                        + " original stays with the family. " + openness(dossier));
        identity(dossier, page);
        wanted(dossier, page);
        page.say("If the personnel file was lost in the fire of 12 July 1973, I ask for any rebuilt file, the final pay"
                + " voucher, and hospital admission extracts.");
        page.add(new Block.Blanks(List.of("Name of the writer", "Address", "Signature", "Date")));
        worksheet(dossier, page);
        page.part("Three questions, three answers");
        answers(dossier, page);
        page.part("Enclose");
        page.points(List.of(
                "A copy of each paper, both sides. Never an original: it may be the only one left in the world.",
                "Proof of death, if the soldier is dead and you ask as next of kin.",
                "The worksheet on the next lines, filled in and signed."));
        return page.page();
    }

    private static String openness(Dossier dossier) {
        var separated = dossier.facts().every(Tour.class).stream()
                .flatMap(tour -> tour.separated().stream())
                .map(date -> date.latest())
                .max(LocalDate::compareTo);
        if (separated.isEmpty()) {
            return "The date of separation is not known to me.";
        }
        var open = separated.get().plusYears(62);
        return dossier.dated().isBefore(open)
                ? "The file becomes archival on %s; until then I ask as %s."
                        .formatted(Wording.day(open), dossier.relation().words())
                : "More than 62 years have passed since the separation of %s, so the file is archival and open to any requester."
                        .formatted(Wording.day(separated.get()));
    }

    private static void identity(Dossier dossier, Page.Builder page) {
        var rows = new ArrayList<List<String>>();
        rows.add(List.of("Name as used in service", dossier.soldier()));
        row(dossier, rows, "Army serial number", Entry.SERIAL_NUMBER);
        row(dossier, rows, "Arm or service", Entry.ARM);
        row(dossier, rows, "Organization at separation", Entry.ORGANIZATION);
        row(dossier, rows, "Entered active service", Entry.ENTERED_ACTIVE_SERVICE);
        row(dossier, rows, "Separated", Entry.SEPARATED);
        dossier.facts()
                .first(BirthDate.class)
                .ifPresent(birth -> rows.add(List.of("Born", birth.born().toString())));
        row(dossier, rows, "Place of birth", Entry.PLACE_OF_BIRTH);
        rows.add(List.of("I am", dossier.relation().words()));
        page.add(new Block.Table(List.of("", "As on the paper"), rows));
        if (dossier.masking() == Masking.SHARED
                && dossier.typed(Entry.SERIAL_NUMBER).isPresent()) {
            page.fine("The serial number is shortened on this shared copy. The office needs it whole: print the private"
                    + " version to send.");
        }
    }

    private static void row(Dossier dossier, List<List<String>> rows, String caption, Entry entry) {
        dossier.typed(entry).ifPresent(text -> rows.add(List.of(caption, text)));
    }

    private static void wanted(Dossier dossier, Page.Builder page) {
        var byDocument = new TreeMap<String, List<String>>();
        for (var finding : dossier.findings().findings()) {
            for (var need : finding.needs()) {
                if (need.settledBy().isEmpty()) {
                    continue;
                }
                var about = need.wanted().stream()
                        .map(FactWanted::about)
                        .filter(words -> !words.isBlank())
                        .sorted()
                        .toList();
                for (String document : need.settledBy().get(0)) {
                    byDocument
                            .computeIfAbsent(document, id -> new ArrayList<>())
                            .add(finding.name() + (about.isEmpty() ? "" : ": " + String.join("; ", about)));
                }
            }
        }
        if (byDocument.isEmpty()) {
            page.say("Nothing is open at present; a request would only confirm what the paper shows.");
            return;
        }
        page.part("What I ask for, and why");
        var rows = new ArrayList<List<String>>();
        byDocument.forEach((id, reasons) -> dossier.document(id)
                .ifPresent(document -> rows.add(List.of(
                        document.name(),
                        document.keptBy(),
                        String.join(". ", reasons.stream().distinct().toList())))));
        page.add(new Block.Table(List.of("Document", "Kept by", "What it would settle"), rows));
        page.fine(
                "For morning reports the office needs one company, what happened, and one named month. Send one request"
                        + " for each.");
    }

    private static void worksheet(Dossier dossier, Page.Builder page) {
        page.part("Worksheet for Standard Form 180");
        page.say(
                "Standard Form 180, Request Pertaining to Military Records, is the usual form. Enter in its sections:");
        page.points(List.of(
                "Section I, information needed to locate records: the table above, line for line.",
                "Section II, information or documents requested: the documents named above, and the purpose (to establish"
                        + " the soldier's awards).",
                "Section III, return address and signature: the writer's, with the relation stated as: "
                        + dossier.relation().words() + "."));
        page.fine("Section numbers from memory of the form; follow the edition you hold.");
    }

    static void answers(Dossier dossier, Page.Builder page) {
        var relation = dossier.relation();
        page.points(List.of(
                "Records: anyone may ask for a file that is more than 62 years past separation. Before that, the veteran or"
                        + " the next of kin.",
                relation.freeMedals()
                        ? "Medals without charge: the Army's list of next of kin names " + relation.words()
                                + ", if all nearer kin are dead."
                        : "Medals without charge: the Army's list runs surviving spouse, eldest child, parent, eldest brother"
                                + " or sister, eldest grandchild. It does not name " + relation.words()
                                + "; ask the relative it names to sign.",
                relation.mayAskCorrection()
                        ? "Correction of the record: " + relation.words()
                                + " may apply; if the veteran is dead, with proof of death and of kinship."
                        : "Correction of the record: the board's guide does not name " + relation.words()
                                + "; a legal appointment, or a nearer relative's signature, is needed."));
    }
}
