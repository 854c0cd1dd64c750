package org.honorsdue.determination.nextsteps;

import java.time.YearMonth;
import java.util.Comparator;
import java.util.Optional;

/**
 * One thing to ask for: a kind of document, and for those kept by company and month, which month.
 *
 * @param document id of the kind of document
 * @param company the company as best known; empty when the document is not kept by company
 */
record Request(String document, String company, Optional<YearMonth> month) implements Comparable<Request> {
    private static final Comparator<Request> ORDER = Comparator.comparing(Request::document)
            .thenComparing(request -> request.month().map(YearMonth::toString).orElse(""))
            .thenComparing(Request::company);

    @Override
    public int compareTo(Request other) {
        return ORDER.compare(this, other);
    }
}
