package org.honorsdue.documents.unit;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.honorsdue.documents.findings.Column;
import org.honorsdue.documents.findings.Ink;
import org.honorsdue.reading.unit.OrganizationReading;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.unit.Held;
import org.honorsdue.reference.unit.LooseDate;
import org.honorsdue.reference.unit.LooseSpan;
import org.honorsdue.reference.unit.Unit;
import org.honorsdue.reference.unit.UnitAward;
import org.honorsdue.reference.unit.UnitCard;
import org.honorsdue.service.fact.Basis.Certainty;

/** A unit's card for the reader at a terminal. What rests on memory says so on its line. */
public final class UnitCardText {
    private final Ink ink;
    private final int width;

    public UnitCardText(Ink ink, int width) {
        this.ink = ink;
        this.width = width;
    }

    /** @param card of the unit found; empty when none surely is */
    public String write(OrganizationReading reading, Optional<UnitCard> card) {
        var page = new Column(width);
        reading(page, reading);
        card.ifPresent(found -> card(page, found));
        return page.toString();
    }

    private void reading(Column page, OrganizationReading reading) {
        switch (reading.outcome()) {
            case FOUND -> {
                page.paragraph("", reading.meaning(), ink::bold);
                if (reading.certainty() == Certainty.DOUBTFUL) {
                    page.paragraph(
                            "  ! ", "Read with a doubt: look at the line again before you rest on it.", ink::doubt);
                }
            }
            case PARENT_ONLY ->
                page.paragraph(
                        "", reading.meaning() + ": the larger unit is in our tables, the smaller is not.", ink::bold);
            case AMBIGUOUS -> {
                page.paragraph("", candidates(reading), ink::bold);
                reading.candidates().forEach(unit -> page.paragraph("  - ", unit.name()));
            }
            case NOT_IN_TABLES -> page.paragraph("", reading.meaning() + ": not in our tables.", ink::bold);
            case NO_UNIT -> page.paragraph("", "No unit can be read from this.", ink::bold);
        }
        reading.nearest()
                .forEach(near -> page.paragraph("  near it: ", near.unit().name() + " (" + near.difference() + ")"));
        reading.notes().forEach(note -> page.paragraph("  ! ", note, ink::doubt));
        if (!reading.unread().isEmpty()) {
            page.paragraph("  unread: ", String.join(" ", reading.unread()), ink::doubt);
        }
    }

    private static String candidates(OrganizationReading reading) {
        return reading.candidates().size() == 1
                ? reading.meaning()
                        + ": no arm is typed; of our tables only this unit could be meant, and others bore the number:"
                : "Several units answer to this, and nothing typed decides:";
    }

    private void card(Column page, UnitCard card) {
        var unit = card.unit();
        if (!unit.nickname().isBlank()) {
            page.paragraph("  ", "\u201c" + unit.nickname() + "\u201d");
        }
        card.battalion()
                .ifPresent(battalion -> page.paragraph(
                        "  ",
                        "the lettered company falls into battalion %d by the tables of organization%s"
                                .formatted(
                                        battalion.battalion(),
                                        doubt(battalion.provenance().grade()))));
        for (var parent : card.parents()) {
            page.paragraph(
                    "  part of ",
                    card.nameOf(parent.parent()) + " ("
                            + parent.relation().name().toLowerCase(Locale.ROOT)
                            + (parent.when().text().isBlank()
                                    ? ""
                                    : ", " + parent.when().words()) + ")"
                            + doubt(parent.provenance().grade()));
        }
        card.overseas().ifPresent(history -> {
            var words = new StringBuilder();
            history.arrived()
                    .ifPresent(day -> words.append("overseas ")
                            .append(day.words())
                            .append(' ')
                            .append(history.arrivedAt()));
            dated(words, "in combat", history.enteredCombat());
            dated(words, "returned", history.returned());
            dated(words, "inactivated", history.inactivated());
            page.paragraph(
                    "  ",
                    words.toString().strip()
                            + (history.unit().equals(unit.id()) ? "" : " [of the " + card.nameOf(history.unit()) + "]")
                            + doubt(history.provenance().grade()));
        });
        section(
                page,
                "CAMPAIGNS",
                card.campaigns(),
                held -> held.row().campaign().name() + ", "
                        + day(held.row().campaign().ground().first()) + " to "
                        + day(held.row().campaign().ground().last()));
        section(
                page,
                "ASSAULTS",
                card.assaults(),
                held -> held.row().place() + span(held.row().when()) + ", "
                        + held.row().means().name().toLowerCase(Locale.ROOT));
        section(page, "CITATIONS", card.citations(), UnitCardText::award);
        section(page, "FOREIGN AWARDS", card.foreignAwards(), UnitCardText::award);
        section(
                page,
                "WHERE IT STOOD AFTER THE SURRENDER",
                card.whereabouts(),
                held -> held.row().place() + span(held.row().when()));
        card.patch().ifPresent(patch -> {
            page.gap().line(ink.heading("SLEEVE INSIGNIA"));
            page.paragraph("  ", patch.row().description() + holder(patch) + doubt(patch.grade()));
        });
        if (!card.sources().isEmpty()) {
            page.gap().line(ink.heading("READ IN"));
            card.sources().stream()
                    .map(source -> source.source() + doubt(source.grade()))
                    .distinct()
                    .forEach(source -> page.paragraph("  - ", source, ink::dim));
        }
        if (!card.sameNumber().isEmpty()) {
            page.gap().line(ink.heading("OTHER UNITS OF THAT NUMBER"));
            page.paragraph("  ", card.sameNumber().stream().map(Unit::name).collect(Collectors.joining("; ")));
        }
        page.gap()
                .paragraph(
                        "",
                        "Credit belongs to the unit; that a man was there must be shown for the man. Lines from memory suggest"
                                + " and never decide.",
                        ink::dim);
    }

    private interface Words<T> {
        String of(Held<T> held);
    }

    private <T> void section(Column page, String heading, List<Held<T>> rows, Words<T> words) {
        if (rows.isEmpty()) {
            return;
        }
        page.gap().line(ink.heading(heading));
        for (var held : rows) {
            page.paragraph("  ", words.of(held) + holder(held) + doubt(held.grade()));
        }
    }

    private static String award(Held<UnitAward> held) {
        var award = held.row();
        return award.award().title() + ": " + award.action() + span(award.when())
                + (award.order().isBlank() ? "" : ", " + award.order());
    }

    private static String holder(Held<?> held) {
        String of = held.inherited() ? " [of the " + held.holder().name() + "]" : "";
        return of
                + switch (held.reach()) {
                    case ALL -> "";
                    case A_PART -> " [a part of it]";
                    case ANOTHER_PART -> " [another part of it]";
                };
    }

    private static void dated(StringBuilder words, String what, Optional<LooseDate> date) {
        date.ifPresent(day -> words.append(words.length() == 0 ? "" : "; ")
                .append(what)
                .append(' ')
                .append(day.words()));
    }

    private static String day(LocalDate day) {
        return new LooseDate(day, day).words();
    }

    private static String span(LooseSpan span) {
        return span.text().isBlank() ? "" : ", " + span.words();
    }

    private static String doubt(Grade grade) {
        return grade.reservation().map(words -> " (" + words + ")").orElse("");
    }
}
