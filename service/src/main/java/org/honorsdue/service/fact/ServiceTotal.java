package org.honorsdue.service.fact;

/**
 * A total of years, months and days typed on a paper.
 */
public record ServiceTotal(int paper, Kind kind, int years, int months, int days, Basis basis) implements ServiceFact {
    /** Which total. */
    public enum Kind {
        CONTINENTAL,
        FOREIGN,
        LONGEVITY
    }
}
