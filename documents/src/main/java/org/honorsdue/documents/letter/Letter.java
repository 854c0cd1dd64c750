package org.honorsdue.documents.letter;

import java.util.ArrayList;
import java.util.List;
import org.honorsdue.documents.page.Block;
import org.honorsdue.documents.page.Page;
import org.honorsdue.service.fact.BirthDate;
import org.honorsdue.service.paper.Entry;

/** The parts that letters share: head, particulars of the soldier, close. */
final class Letter {
    static final String CONFIRM =
            "Addresses and forms change: confirm the present ones with the office before sending.";

    private Letter() {}

    /** @param office by name only: the reader confirms its address */
    static Page.Builder to(String office, String name, String title, String subject, Dossier dossier) {
        var page = Page.of(name, Page.Kind.LETTER, title, dossier.soldier(), dossier.dated());
        page.add(new Block.Blanks(List.of("Name of the writer", "Address", "Town, state, postal code")));
        page.add(new Block.Lines(List.of(Wording.day(dossier.dated()))));
        page.add(new Block.Lines(List.of(office, "(address as the office gives it today)")));
        page.add(new Block.Heading(0, subject));
        return page;
    }

    /** The relation as a sentence with a blank before it, or a line to be completed by hand. */
    static String relation(Dossier dossier) {
        return dossier.relation() == Relation.NOT_STATED
                ? " My relation to the soldier: ____________________________."
                : " " + dossier.relation().sentence();
    }

    static Block.Particulars identity(Dossier dossier) {
        var rows = new ArrayList<Block.Particular>();
        rows.add(new Block.Particular("Name as used in service", dossier.soldier(), false));
        serial(dossier, rows);
        row(dossier, rows, "Grade", Entry.GRADE);
        row(dossier, rows, "Arm or service", Entry.ARM);
        row(dossier, rows, "Organization on the paper", Entry.ORGANIZATION);
        row(dossier, rows, "Entered active service", Entry.ENTERED_ACTIVE_SERVICE);
        row(dossier, rows, "Separated", Entry.SEPARATED);
        row(dossier, rows, "Place of separation", Entry.PLACE_OF_SEPARATION);
        dossier.facts()
                .first(BirthDate.class)
                .ifPresent(birth -> rows.add(new Block.Particular("Born", Wording.date(birth.born()), false)));
        row(dossier, rows, "Place of birth", Entry.PLACE_OF_BIRTH);
        return new Block.Particulars(rows);
    }

    // A masked letter must still be fit to send: the office needs the number whole, so a line is left for it.
    private static void serial(Dossier dossier, List<Block.Particular> rows) {
        dossier.typed(Entry.SERIAL_NUMBER)
                .ifPresentOrElse(
                        number -> rows.add(
                                dossier.masking() == Masking.PRIVATE
                                        ? new Block.Particular("Army serial number", number, true)
                                        : new Block.Particular(
                                                "Army serial number: write it in (ends in %s)"
                                                        .formatted(number.replace("\u2026", "")),
                                                "",
                                                false)),
                        () -> rows.add(new Block.Particular("Army serial number, if known", "", false)));
    }

    private static void row(Dossier dossier, List<Block.Particular> rows, String caption, Entry entry) {
        dossier.typed(entry).ifPresent(text -> rows.add(new Block.Particular(caption, text, true)));
    }

    static void close(Page.Builder page, List<String> enclosures) {
        page.say("Respectfully,");
        page.add(new Block.Blanks(List.of("Signature, and the date of signing")));
        page.fine("Enclosed: " + String.join("; ", enclosures) + ".");
    }

    /** What follows is for whoever writes and does not go into the envelope. */
    static void forTheWriter(Page.Builder page) {
        page.add(new Block.NewSheet());
        page.part("For the writer: this sheet stays at home");
    }
}
