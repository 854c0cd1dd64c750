package org.honorsdue.determination.dossier;

import java.time.LocalDate;
import java.util.Optional;
import org.honorsdue.service.fact.PartialDate;

/**
 * A stretch of days whose ends are known only as far as the papers give them. Days are counted from 1970-01-01; all ends
 * are inclusive. The first day lies between {@code firstEarliest} and {@code firstLatest}, the last day between
 * {@code lastEarliest} and {@code lastLatest}.
 */
public record Stretch(long firstEarliest, long firstLatest, long lastEarliest, long lastLatest) {
    /** A first day for service whose beginning nobody states: the first day of the First World War draft army. */
    static final long LONG_AGO = LocalDate.of(1917, 4, 6).toEpochDay();
    /** A last day for service whose end nobody states. */
    static final long LONG_AFTER = LocalDate.of(1949, 12, 31).toEpochDay();

    /** Ends that contradict each other leave every day between them possible and none certain. */
    static Stretch between(long firstEarliest, long firstLatest, long lastEarliest, long lastLatest) {
        if (lastLatest < firstEarliest) {
            return new Stretch(lastLatest, firstEarliest, lastLatest, firstEarliest);
        }
        return new Stretch(
                firstEarliest, Math.min(firstLatest, lastLatest), Math.max(lastEarliest, firstEarliest), lastLatest);
    }

    static Stretch of(Optional<PartialDate> first, Optional<PartialDate> last, long ifNoFirst, long ifNoLast) {
        long firstEarliest = first.isPresent() ? earliest(first.get()) : ifNoFirst;
        long lastLatest = last.isPresent() ? latest(last.get()) : Math.max(ifNoLast, firstEarliest);
        long lastEarliest =
                last.isPresent() ? earliest(last.get()) : first.isPresent() ? latest(first.get()) : ifNoFirst;
        long firstLatest = first.isPresent() ? latest(first.get()) : lastLatest;
        return between(firstEarliest, firstLatest, lastEarliest, lastLatest);
    }

    static long earliest(PartialDate date) {
        return date.earliest().toEpochDay();
    }

    static long latest(PartialDate date) {
        return date.latest().toEpochDay();
    }

    /** Whether some day of it surely lies from {@code first} to {@code last}. */
    public boolean surelyTouches(long first, long last) {
        return (firstLatest <= lastEarliest && firstLatest <= last && lastEarliest >= first)
                || (firstEarliest >= first && firstLatest <= last)
                || (lastEarliest >= first && lastLatest <= last);
    }

    /** Whether some day of it may lie from {@code first} to {@code last}. */
    public boolean mayTouch(long first, long last) {
        return firstEarliest <= last && lastLatest >= first;
    }

    /** Days that surely belong to it and lie from {@code first} to {@code last}. */
    public long sureDays(long first, long last) {
        return Math.max(0, Math.min(lastEarliest, last) - Math.max(firstLatest, first) + 1);
    }

    /** Days that may belong to it and lie from {@code first} to {@code last}. */
    public long possibleDays(long first, long last) {
        return Math.max(0, Math.min(lastLatest, last) - Math.max(firstEarliest, first) + 1);
    }

    /** The stretch in words: both ends where they are known to the day, else as far as they are. */
    public String inWords() {
        return InWords.span(firstEarliest, firstLatest) + " to " + InWords.span(lastEarliest, lastLatest);
    }
}
