package org.honorsdue.service.fact;

import java.util.Optional;

/**
 * Reason and authority for separation.
 *
 * @param reason as typed
 * @param authority the regulation cited, as in {@code AR 615-365}
 */
public record SeparationReason(int paper, String reason, Optional<String> authority, Basis basis)
        implements ServiceFact {}
