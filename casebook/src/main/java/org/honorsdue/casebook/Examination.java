package org.honorsdue.casebook;

import java.time.Instant;
import java.time.LocalDate;

/** Findings as last examined, with what they were made from. */
public record Examination(int revision, LocalDate asOf, Instant madeAt, String programVersion, String findings) {}
