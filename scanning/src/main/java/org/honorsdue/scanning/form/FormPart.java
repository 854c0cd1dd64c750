package org.honorsdue.scanning.form;

import java.util.Optional;
import org.honorsdue.service.paper.Entry;

/**
 * One printed part of a form: a box, a heading, a place for a tick.
 *
 * @param id as printed for boxes ("33"); for parts of a box the box number with a letter ("36a")
 * @param kind what is printed there
 * @param entry the entry that its typing belongs to; empty for headings and the like
 * @param caption the printed words
 * @param place where it is, in hundredths of the page's width and height
 */
public record FormPart(String id, Kind kind, Optional<Entry> entry, String caption, Area place) {
    /** What may be printed on a form. */
    public enum Kind {
        BOX,
        /** Part of a box with a heading of its own, read by itself. */
        PART,
        /** One of several columns of a box, read line by line across. */
        COLUMN,
        TICK,
        TITLE,
        BAR,
        LABEL,
        FOOTER
    }

    /** The number of the box it is or belongs to; empty for titles, bars and labels. */
    public Optional<Integer> box() {
        var digits = id.replaceAll("[a-z]$", "");
        return digits.chars().allMatch(Character::isDigit) ? Optional.of(Integer.parseInt(digits)) : Optional.empty();
    }
}
