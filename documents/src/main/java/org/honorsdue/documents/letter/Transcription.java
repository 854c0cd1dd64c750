package org.honorsdue.documents.letter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.honorsdue.documents.page.Block;
import org.honorsdue.documents.page.Page;
import org.honorsdue.reading.EntryReading;
import org.honorsdue.reading.ReadToken;
import org.honorsdue.service.fact.Basis.Certainty;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Paper;
import org.honorsdue.service.paper.Typed;

/** Each paper as typed and, token by token, as read. What stayed unread says so. */
final class Transcription {
    private static final String KEPT = "kept as typed";

    private Transcription() {}

    static Page of(Dossier dossier) {
        var page = Page.of(
                "transcription", Page.Kind.SHEET, "The paper as typed and as read", dossier.soldier(), dossier.dated());
        page.say(
                "Above each list stands the entry letter by letter. Below it each token with its reading; what could be read in"
                        + " more than one way, or was put right, says so.");
        for (int number = 1; number <= dossier.casefile().papers().size(); number++) {
            paper(dossier, number, page);
        }
        return page.page();
    }

    private static void paper(Dossier dossier, int number, Page.Builder page) {
        var paper = dossier.casefile().papers().get(number - 1);
        page.part("Paper " + number + ": " + paper.formAsNamed());
        if (paper.entries().isEmpty()) {
            page.say("Nothing on this paper was given.");
        }
        paper.entries().forEach((entry, typed) -> entry(dossier, number, paper, entry, typed, page));
    }

    private static void entry(Dossier dossier, int number, Paper paper, Entry entry, Typed typed, Page.Builder page) {
        String caption =
                entry.box(paper.form()).map(box -> box + "  " + entry.caption()).orElse(entry.caption());
        if (typed instanceof Typed.Text text) {
            if (dossier.masking().withholds(entry)) {
                page.add(new Block.Gloss(caption, "", "withheld on this copy", List.of()));
                return;
            }
            var reading = number <= dossier.readings().size()
                    ? dossier.readings().get(number - 1).get(entry)
                    : null;
            var tokens = reading == null ? List.<Block.Token>of() : tokens(dossier, entry, reading);
            String shown = dossier.quoted(entry, text.text());
            if (tokens.size() == 1 && tokens.get(0).typed().equals(shown.strip())) {
                page.add(new Block.Gloss(caption, shown, reading(tokens.get(0)), List.of()));
            } else {
                page.add(new Block.Gloss(caption, shown, tokens.isEmpty() ? KEPT : "", tokens));
            }
        } else if (typed instanceof Typed.Blank) {
            page.add(new Block.Gloss(caption, "", "left blank", List.of()));
        } else if (typed instanceof Typed.Illegible) {
            page.add(new Block.Gloss(caption, "", "not legible", List.of()));
        }
    }

    private static String reading(Block.Token token) {
        return token.meaning() + (token.note().isEmpty() ? "" : " (" + token.note() + ")");
    }

    /** A token and the place where it begins, so that what was read and what was not stand in the order of the text. */
    private record Placed(int start, Block.Token token) {}

    private static List<Block.Token> tokens(Dossier dossier, Entry entry, EntryReading reading) {
        if (entry == Entry.SERIAL_NUMBER
                || (reading.unread().isEmpty() && reading.tokens().stream().allMatch(Transcription::isKept))) {
            return List.of();
        }
        var placed = new ArrayList<Placed>();
        for (var token : reading.tokens()) {
            placed.add(new Placed(
                    token.start(), new Block.Token(dossier.quoted(entry, token.text()), token.meaning(), note(token))));
        }
        for (var unread : reading.unread()) {
            placed.add(new Placed(
                    unread.start(), new Block.Token(dossier.unread(entry, unread.text()), "left unread", "")));
        }
        return placed.stream()
                .sorted(Comparator.comparingInt(Placed::start))
                .map(Placed::token)
                .toList();
    }

    private static boolean isKept(ReadToken token) {
        return token.meaning().equals(KEPT);
    }

    private static String note(ReadToken token) {
        var notes = new ArrayList<String>();
        if (token.certainty() == Certainty.DOUBTFUL) {
            notes.add("in doubt");
        } else if (token.certainty() == Certainty.CORRECTED) {
            notes.add("put right");
        }
        if (!token.note().isBlank()) {
            notes.add(token.note());
        }
        if (!token.alternatives().isEmpty()) {
            notes.add("or: " + String.join("; or: ", token.alternatives()));
        }
        return String.join("; ", notes);
    }
}
