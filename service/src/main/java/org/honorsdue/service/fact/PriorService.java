package org.honorsdue.service.fact;

import java.util.Optional;

/**
 * Service outside the tour of the paper that mentions it: an earlier enlistment, or time in a reserve.
 *
 * @param duty whether it was active service; reserve time counts for pay, not for stripes or the Good Conduct Medal
 * @param component expanded, when typed
 * @param from first day, when typed
 * @param to last day, inclusive, when typed
 */
public record PriorService(
        int paper,
        Duty duty,
        Optional<String> component,
        Optional<PartialDate> from,
        Optional<PartialDate> to,
        String asTyped,
        Basis basis)
        implements ServiceFact {
    /** Active or not. */
    public enum Duty {
        ACTIVE,
        INACTIVE,
        NOT_SHOWN
    }
}
