package org.honorsdue.reference.unit;

import java.util.List;

/**
 * The id of a unit and, after slashes, of a part of it: {@code infantry-regiment-331/company-b}.
 *
 * @param unit id of the unit
 * @param part id of the part; empty for the unit itself
 */
public record UnitId(String unit, String part) {
    /** Takes an id apart. */
    public static UnitId parse(String id) {
        int slash = id.indexOf('/');
        return slash < 0 ? new UnitId(id, "") : new UnitId(id.substring(0, slash), id.substring(slash + 1));
    }

    /** The parts named, empty for the unit itself. */
    public List<UnitPart> parts() {
        return part.isEmpty() ? List.of() : List.of(new UnitPart(part));
    }

    @Override
    public String toString() {
        return part.isEmpty() ? unit : unit + "/" + part;
    }
}
