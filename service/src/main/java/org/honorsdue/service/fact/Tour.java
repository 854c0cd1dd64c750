package org.honorsdue.service.fact;

import java.util.Optional;

/**
 * The dates of one paper: entry, induction, enlistment and separation as that paper gives them.
 *
 * @param paper number of the paper in the casefile, from 1
 * @param category whether he served this tour as enlisted man or officer
 * @param entered entry into active service; service counts from this day
 * @param separated last day of active service
 */
public record Tour(
        int paper,
        Category category,
        Optional<PartialDate> entered,
        Optional<PartialDate> inducted,
        Optional<PartialDate> enlisted,
        Optional<PartialDate> separated,
        Basis basis)
        implements ServiceFact {
    /** Enlisted or officer: the Good Conduct Medal and the combat badges depend on it. */
    public enum Category {
        ENLISTED,
        WARRANT_OFFICER,
        OFFICER,
        NOT_SHOWN
    }
}
