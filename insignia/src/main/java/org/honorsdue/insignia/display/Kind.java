package org.honorsdue.insignia.display;

/**
 * What sort of thing lies in a case.
 *
 * <p>{@code clear} names the rule of the clear space round it, {@code depth} the row of the table of depths, {@code
 * leavesFirst} how soon it is left out of a case that is too small: the highest first.
 */
public enum Kind {
    MEDAL("least-gap", "medal", 1),
    NAMEPLATE("around-badge", "paper", 2),
    BADGE("around-badge", "badge", 3),
    PATCH("around-patch", "patch", 4),
    PHOTOGRAPH("around-badge", "paper", 5),
    PAPER("around-badge", "paper", 6),
    DOG_TAGS("around-badge", "medal", 7),
    FLAG("around-badge", "flag", 8),
    UNIT_EMBLEMS("around-badge", "ribbon", 9),
    RIBBONS("around-badge", "ribbon", 10),
    QUALIFICATION("around-badge", "badge", 11),
    SLEEVE_BARS("around-badge", "patch", 12),
    CORD("around-badge", "ribbon", 13),
    SMALL("around-badge", "badge", 14);

    private final String clear;
    private final String depth;
    private final int leavesFirst;

    Kind(String clear, String depth, int leavesFirst) {
        this.clear = clear;
        this.depth = depth;
        this.leavesFirst = leavesFirst;
    }

    /** Id of the display rule for the clear space round it. */
    public String clear() {
        return clear;
    }

    /** Row of the table of depths. */
    public String depth() {
        return depth;
    }

    int leavesFirst() {
        return leavesFirst;
    }
}
