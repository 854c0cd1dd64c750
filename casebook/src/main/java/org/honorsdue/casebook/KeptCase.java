package org.honorsdue.casebook;

import java.time.Instant;

/**
 * A case as it stands.
 *
 * @param revision grows with every change; a saver must name the one he started from
 */
public record KeptCase(String id, int revision, Instant changedAt, boolean removed, CaseContent content) {}
