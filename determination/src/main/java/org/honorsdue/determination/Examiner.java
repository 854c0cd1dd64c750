package org.honorsdue.determination;

import java.time.LocalDate;
import java.util.Set;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.service.fact.ServiceFacts;

/** Decides every award for one soldier as the law stood on a given day. Thread-safe. */
public interface Examiner {
    /**
     * @param asOf the day whose law is asked for
     * @param asked award ids that must be answered even if nothing points to them
     */
    Findings examine(ServiceFacts facts, LocalDate asOf, Set<String> asked);
}
