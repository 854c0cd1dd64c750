package org.honorsdue.reading.entry;

import static org.honorsdue.reading.token.SenseKind.ARM;
import static org.honorsdue.reading.token.SenseKind.CHARACTER;
import static org.honorsdue.reading.token.SenseKind.COMPONENT;
import static org.honorsdue.reading.token.SenseKind.GRADE;
import static org.honorsdue.reading.token.SenseKind.LINK;

import java.util.Optional;
import java.util.OptionalInt;
import org.honorsdue.reading.token.Piece;
import org.honorsdue.reading.token.SenseKind;
import org.honorsdue.service.Sex;
import org.honorsdue.service.fact.ArmFact;
import org.honorsdue.service.fact.Basis.Certainty;
import org.honorsdue.service.fact.Component;
import org.honorsdue.service.fact.Conduct;
import org.honorsdue.service.fact.Dependents;
import org.honorsdue.service.fact.MilitaryGrade;
import org.honorsdue.service.fact.PersonName;
import org.honorsdue.service.fact.SexFact;
import org.honorsdue.service.fact.Tour.Category;
import org.honorsdue.service.paper.Entry;
import org.jspecify.annotations.Nullable;

/** The short entries about the man: grade, arm, component, name, dependents, character. */
final class PersonEntries {
    private PersonEntries() {}

    static void grade(EntryText entry) {
        Piece piece = first(entry, GRADE);
        if (piece == null) {
            piece = nearest(entry, GRADE);
        }
        if (piece != null) {
            String title = piece.sense().id();
            entry.add(new MilitaryGrade(entry.paper(), entry.entry(), title, category(title), entry.basis(piece)));
        }
        women(entry);
    }

    /** Enlisted, warrant officer or officer; flight officers held a warrant's rank. */
    static Category category(String title) {
        return switch (title) {
            case "Warrant Officer", "Warrant Officer Junior Grade", "Chief Warrant Officer", "Flight Officer" ->
                Category.WARRANT_OFFICER;
            case "Second Lieutenant",
                    "First Lieutenant",
                    "Captain",
                    "Major",
                    "Lieutenant Colonel",
                    "Colonel",
                    "Brigadier General",
                    "Major General",
                    "Lieutenant General",
                    "General" -> Category.OFFICER;
            default -> Category.ENLISTED;
        };
    }

    /** An entry of one unknown word that is a letter off from just one of the words it can hold. */
    private static @Nullable Piece nearest(EntryText entry, SenseKind kind) {
        if (entry.pieces().size() != 1) {
            return null;
        }
        Piece only = entry.pieces().get(0);
        var meant = entry.lexicon().nearest(only.text(), kind);
        if (meant.isEmpty()) {
            return null;
        }
        only.readAs(meant.get());
        return only.take();
    }

    static void arm(EntryText entry) {
        if (entry.pieces().stream().noneMatch(piece -> piece.may(ARM))) {
            nearest(entry, ARM);
        }
        for (Piece piece : entry.pieces()) {
            if (piece.settle(ARM)) {
                String arm = piece.take().sense().id();
                boolean air = arm.equals("Air Corps") || arm.equals("Army Air Forces");
                entry.add(new ArmFact(entry.paper(), arm, air, entry.basis(piece)));
            }
        }
        women(entry);
    }

    static void component(EntryText entry) {
        if (entry.pieces().stream().noneMatch(piece -> piece.may(COMPONENT))) {
            nearest(entry, COMPONENT);
        }
        for (Piece piece : entry.pieces()) {
            if (piece.settle(COMPONENT)) {
                entry.add(new Component(entry.paper(), piece.take().sense().id(), entry.basis(piece)));
            }
        }
        women(entry);
    }

    /** A women's corps shows the soldier's sex. */
    static void women(EntryText entry) {
        for (Piece piece : entry.pieces()) {
            if (!piece.isPhrase()) {
                continue;
            }
            boolean womens = piece.senses().stream()
                    .anyMatch(sense -> (sense.kind() == COMPONENT || sense.kind() == ARM)
                            && (sense.id().startsWith("Women's Army")
                                    || sense.id().equals("Army Nurse Corps")));
            if (womens) {
                entry.add(new SexFact(Sex.FEMALE, entry.basis(piece.take())));
                return;
            }
        }
    }

    static void name(EntryText entry) {
        if (!entry.pieces().isEmpty()) {
            entry.pieces().forEach(piece -> piece.take("name"));
            entry.add(new PersonName(entry.text().strip(), entry.whole(Certainty.PLAIN)));
        }
    }

    static void dependents(EntryText entry) {
        if (entry.saysNothing()) {
            if (!entry.pieces().isEmpty()) {
                entry.add(new Dependents(0, entry.basis(entry.pieces().get(0))));
            }
            return;
        }
        for (Piece piece : entry.pieces()) {
            if (piece.isNumber() && piece.number() <= 30) {
                entry.add(new Dependents(piece.number(), entry.basis(piece.take(piece.number() + " dependents"))));
                return;
            }
        }
    }

    static void character(EntryText entry) {
        Piece piece = first(entry, CHARACTER);
        if (piece == null) {
            return;
        }
        String word = piece.sense().id();
        boolean efficiency = entry.entry() == Entry.EFFICIENCY;
        entry.add(new Conduct(
                efficiency ? Optional.empty() : Optional.of(word),
                efficiency ? Optional.of(word) : Optional.empty(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                entry.basis(piece)));
    }

    /** The first piece of that kind; further ones of the kind are taken as its words, the rest stays as it is. */
    private static @Nullable Piece first(EntryText entry, SenseKind kind) {
        Piece found = null;
        for (Piece piece : entry.pieces()) {
            if (found == null && piece.settle(kind)) {
                found = piece.take();
            } else if (piece.is(LINK)) {
                piece.take();
            }
        }
        return found;
    }
}
