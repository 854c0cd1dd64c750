package org.honorsdue.determination.crosscheck;

import java.util.List;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.service.fact.ServiceFacts;

/** One comparison of what the papers say with what they say elsewhere. Stateless; safe for any number of threads. */
interface Check {
    /** The id under which outside scripts know it. */
    String id();

    /** What came of it: empty when the papers hold nothing of the kind, so that there is nothing to compare. */
    List<Crosscheck> compare(ServiceFacts facts);
}
