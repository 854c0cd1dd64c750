package org.honorsdue.determination.finding;

import java.time.LocalDate;
import java.util.List;
import org.honorsdue.service.fact.Conflict;
import org.honorsdue.service.fact.Unread;

/** Everything decided about one soldier as the law stood on one day. The cross-checks may be {@link Deferred}. */
public record Findings(
        LocalDate asOf,
        List<Finding> findings,
        List<Crosscheck> crosschecks,
        List<Conflict> conflicts,
        List<Unread> unread) {
    public Findings {
        findings = List.copyOf(findings);
        crosschecks = Deferred.keep(crosschecks);
        conflicts = List.copyOf(conflicts);
        unread = List.copyOf(unread);
    }

    public long count(Standing standing) {
        return findings.stream()
                .filter(finding -> finding.standing() == standing)
                .count();
    }

    public long onPaper() {
        return findings.stream()
                .filter(finding -> finding.onPaper() != OnPaper.NO)
                .count();
    }
}
