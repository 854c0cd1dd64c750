package org.honorsdue.reading.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.honorsdue.reading.token.Piece;
import org.honorsdue.reading.token.SenseKind;
import org.honorsdue.service.fact.Basis.Certainty;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.Qualification;
import org.jspecify.annotations.Nullable;

/**
 * Classes, weapons and dates in a row, put together: {@code MM M1 Dec 43 SS Carbine}, {@code Rifle SS, Carbine MM}.
 * Whichever stands first, class or weapon, stands first throughout.
 */
final class Qualifications {
    private final EntryText entry;
    private final List<Piece> row = new ArrayList<>();

    private @Nullable Piece level;
    private final List<Piece> weapons = new ArrayList<>();
    private @Nullable Piece date;

    Qualifications(EntryText entry) {
        this.entry = entry;
    }

    boolean isEmpty() {
        return row.isEmpty();
    }

    boolean hasLevel() {
        return row.stream().anyMatch(piece -> piece.is(SenseKind.LEVEL));
    }

    void add(Piece piece) {
        row.add(piece);
    }

    /** The row has ended; reads what it says. */
    void finish() {
        if (row.isEmpty()) {
            return;
        }
        for (var part : parts()) {
            read(part);
        }
        row.clear();
    }

    /** The row cut at its commas, if then each part has a class of its own; else the whole row. */
    private List<List<Piece>> parts() {
        var parts = new ArrayList<List<Piece>>();
        var part = new ArrayList<Piece>();
        for (Piece piece : row) {
            if (!part.isEmpty() && piece.isSetOff() && !piece.isDate()) {
                parts.add(List.copyOf(part));
                part.clear();
            }
            part.add(piece);
        }
        parts.add(List.copyOf(part));
        boolean eachWhole = parts.stream()
                .allMatch(each ->
                        each.stream().filter(piece -> piece.is(SenseKind.LEVEL)).count() >= 1);
        return eachWhole ? parts : List.of(List.copyOf(row));
    }

    private void read(List<Piece> part) {
        boolean dateFirst = part.get(0).isDate();
        boolean weaponFirst = part.stream()
                .filter(piece -> !piece.isDate())
                .findFirst()
                .map(piece -> piece.is(SenseKind.WEAPON))
                .orElse(false);
        for (Piece piece : part) {
            if (piece.isDate()) {
                if (dateFirst && (level != null || !weapons.isEmpty())) {
                    emit();
                }
                date = piece;
            } else if (piece.is(SenseKind.LEVEL)) {
                if (level != null || !weaponFirst && !weapons.isEmpty()) {
                    emit();
                }
                level = piece;
            } else {
                boolean newItem = weaponFirst ? level != null : date != null && !weapons.isEmpty() && !dateFirst;
                if (newItem) {
                    Piece same = weaponFirst ? null : level;
                    emit();
                    level = same;
                }
                weapons.add(piece);
            }
        }
        emit();
    }

    private void emit() {
        Piece of = level;
        if (of != null) {
            if (weapons.isEmpty()) {
                fact(of, null);
            }
            weapons.forEach(weapon -> fact(of, weapon));
        }
        level = null;
        weapons.clear();
        date = null;
    }

    private void fact(Piece of, @Nullable Piece weapon) {
        Piece typed = date;
        int start = of.start();
        int end = of.end();
        Certainty certainty = of.certainty();
        if (weapon != null) {
            start = Math.min(start, weapon.start());
            end = Math.max(end, weapon.end());
            certainty = EntryText.worse(certainty, weapon.certainty());
        }
        Optional<PartialDate> when = Optional.empty();
        if (typed != null) {
            when = Optional.ofNullable(typed.date());
            start = Math.min(start, typed.start());
            end = Math.max(end, typed.end());
            certainty = EntryText.worse(certainty, typed.certainty());
        }
        entry.add(new Qualification(
                Qualification.Level.valueOf(of.sense().id()),
                weapon == null ? Optional.empty() : Optional.of(weapon.sense().id()),
                when,
                entry.basis(start, end, certainty)));
    }
}
