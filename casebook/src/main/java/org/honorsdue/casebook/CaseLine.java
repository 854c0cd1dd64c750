package org.honorsdue.casebook;

import java.time.Instant;

/** A case as one line of the casebook. */
public record CaseLine(String id, String title, Stage stage, Instant changedAt) {}
