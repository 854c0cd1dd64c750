package org.honorsdue.determination.since;

import java.time.LocalDate;
import java.util.List;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.determination.finding.OnPaper;
import org.honorsdue.determination.finding.Standing;

/**
 * How things stood on one day.
 *
 * @param changes what changed since the clock before it; for the first clock everything that was due
 */
public record Clock(LocalDate day, Kind kind, Findings findings, List<Change> changes) {
    public Clock {
        changes = List.copyOf(changes);
    }

    /** Which of the three clocks it is. */
    public enum Kind {
        SEPARATION("the day he left the service"),
        MILESTONE("later law"),
        TODAY("today");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** Awards that were due for certain that day. */
    public long authorized() {
        return findings.count(Standing.AUTHORIZED);
    }

    public long presumed() {
        return findings.count(Standing.PRESUMED);
    }

    /** Awards of the findings that stand on the paper, whatever day is asked about. */
    public long onPaper() {
        return findings.findings().stream()
                .filter(finding -> finding.onPaper() != OnPaper.NO)
                .count();
    }
}
