package org.honorsdue.determination.since;

import java.util.List;
import java.util.Optional;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.reference.Citation;

/**
 * One award that stands otherwise on this day than on the day before it in the list.
 *
 * @param before how it stood; empty when nothing was said of it
 * @param after how it stands; empty when nothing is said of it any more
 * @param countBefore awards of it, 0 when it was not due
 * @param why the act, order or clause that changed it, in plain words
 * @param authorities what it rests on; empty when no row of the law bears that day
 */
public record Change(
        String award,
        String name,
        Optional<Standing> before,
        Optional<Standing> after,
        int countBefore,
        int countAfter,
        String why,
        List<Citation> authorities) {
    public Change {
        authorities = List.copyOf(authorities);
    }

    /** Whether it was not due before and is due now, surely or presumably. */
    public boolean added() {
        return !isDue(before) && isDue(after);
    }

    static boolean isDue(Optional<Standing> standing) {
        return standing.filter(is -> is == Standing.AUTHORIZED || is == Standing.PRESUMED)
                .isPresent();
    }
}
