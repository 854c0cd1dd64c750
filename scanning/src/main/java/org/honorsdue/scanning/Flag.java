package org.honorsdue.scanning;

/** Why a person should look at an entry. */
public enum Flag {
    /** Figures stand in it; a figure is never accepted unseen. */
    FIGURES("compare the figures with the picture"),
    /** The readings of the line disagree, or the engine was unsure. */
    DOUBTFUL("the readings disagree"),
    /** The reading offered is not the one the engine made of the picture at first. */
    REREAD("the first reading was another; it stands beside"),
    /** Part of what was read makes no sense in this entry: no word or day that is known there. */
    OUT_OF_PLACE("part of this is not understood"),
    /** Ink stands in the box and nothing could be read of it. */
    DAMAGED("something stands here that could not be read");

    private final String says;

    Flag(String says) {
        this.says = says;
    }

    /** In words, for a person. */
    public String says() {
        return says;
    }
}
