package org.honorsdue.casebook;

import java.time.Instant;

/** One state a case had: who made it, when, and what changed. */
public record Revision(int number, Instant madeAt, String madeBy, String what, CaseContent content) {}
