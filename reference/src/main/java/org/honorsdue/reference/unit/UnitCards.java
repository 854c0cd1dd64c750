package org.honorsdue.reference.unit;

import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import org.honorsdue.reference.Reference;

/** Makes the card of a unit. Thread-safe. */
public final class UnitCards {
    private final UnitTables tables;
    private final UnitHistory history;
    private final Ancestry ancestry;

    public UnitCards(UnitTables tables, Reference reference) {
        this.tables = tables;
        history = new UnitHistory(tables, reference);
        ancestry = new Ancestry(tables);
    }

    /**
     * The card of a unit or of a part of one.
     *
     * @param id as in {@code infantry-regiment-331} or {@code infantry-regiment-331/company-b}
     * @return empty when the unit is not in the tables
     */
    public Optional<UnitCard> card(String id) {
        return tables.unit(id).map(unit -> card(unit, UnitId.parse(id)));
    }

    private UnitCard card(Unit unit, UnitId id) {
        Optional<UnitPart> part = id.parts().stream().findFirst();
        return new UnitCard(
                unit,
                part.map(UnitPart::text).orElse(""),
                part.filter(UnitPart::isLettered).flatMap(one -> tables.battalionOf(unit.kind(), one.letter())),
                tables.parentsOf(id.toString()),
                ancestry.usual(id.toString()),
                history.campaigns(id.toString()),
                toldOnce(history.assaults(id.toString()), UnitCards::isSameLanding),
                toldOnce(history.awards(id.toString()), UnitCards::isSameDecree),
                history.whereabouts(id.toString()),
                overseas(unit),
                history.patch(id.toString()),
                sameNumber(unit));
    }

    /** What lists name for the unit and for its division alike is told once, in the unit's own row. */
    private static <T> List<Held<T>> toldOnce(List<Held<T>> all, BiPredicate<T, T> same) {
        return all.stream()
                .filter(held -> !held.inherited()
                        || all.stream().noneMatch(own -> !own.inherited() && same.test(own.row(), held.row())))
                .toList();
    }

    private static boolean isSameLanding(UnitAssault one, UnitAssault other) {
        return one.place().equals(other.place()) && one.when().equals(other.when()) && one.means() == other.means();
    }

    /** Of foreign awards only: a citation of the unit and one of its division are two, whatever their days. */
    private static boolean isSameDecree(UnitAward one, UnitAward other) {
        return one.award().foreign()
                && one.award() == other.award()
                && one.action().equals(other.action())
                && one.when().equals(other.when());
    }

    private Optional<OverseasHistory> overseas(Unit unit) {
        return tables.overseas(unit.id())
                .or(() -> ancestry.usual(unit.id()).stream()
                        .filter(parent -> tables.parentsOf(unit.id()).stream()
                                .noneMatch(tie -> tie.parent().equals(parent.id()) && Ancestry.passing(tie)))
                        .flatMap(parent -> tables.overseas(parent.id()).stream())
                        .findFirst());
    }

    private List<Unit> sameNumber(Unit unit) {
        return unit.number()
                .map(number -> tables.numbered(number).stream()
                        .filter(other -> !other.equals(unit))
                        .toList())
                .orElse(List.of());
    }
}
