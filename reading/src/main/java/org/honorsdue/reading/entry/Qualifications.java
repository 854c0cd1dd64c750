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
 * Whichever stands first, class or weapon, stands first in each item.
 */
final class Qualifications {
    private final EntryText entry;
    private final List<Piece> row = new ArrayList<>();

    private @Nullable Piece level;
    private @Nullable Piece levelBefore;
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
        boolean weaponFirst = false;
        levelBefore = null;
        for (int i = 0; i < part.size(); i++) {
            Piece piece = part.get(i);
            boolean fresh = level == null && weapons.isEmpty();
            if (piece.isDate()) {
                if (dateFirst) {
                    emit();
                    date = piece;
                } else {
                    date = piece;
                    if (!weapons.isEmpty()) {
                        emit();
                    }
                }
            } else if (piece.is(SenseKind.LEVEL)) {
                if (level != null || !weaponFirst && !weapons.isEmpty()) {
                    emit();
                    weaponFirst = false;
                } else if (fresh) {
                    weaponFirst = false;
                }
                level = piece;
            } else {
                if (fresh) {
                    weaponFirst = true;
                } else if (weaponFirst && level != null) {
                    emit();
                } else if (!weapons.isEmpty() && level != null && classFollows(part, i)) {
                    emit();
                    weaponFirst = true;
                }
                if (weapons.stream()
                        .noneMatch(weapon ->
                                weapon.sense().id().equals(piece.sense().id()))) {
                    weapons.add(piece);
                }
            }
        }
        emit();
    }

    /** Whether the weapon at that place is followed by its own class, after which no weapon comes. */
    private static boolean classFollows(List<Piece> part, int at) {
        boolean level = at + 1 < part.size() && part.get(at + 1).is(SenseKind.LEVEL);
        return level && (at + 2 >= part.size() || part.get(at + 2).isDate());
    }

    /** Weapons without a class of their own take the one before them: {@code MM Rifle Dec 43 Carbine Jan 44}. */
    private void emit() {
        Piece of = level == null && !weapons.isEmpty() ? levelBefore : level;
        if (of != null) {
            if (weapons.isEmpty()) {
                fact(of, null);
            }
            weapons.forEach(weapon -> fact(of, weapon));
            levelBefore = of;
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
