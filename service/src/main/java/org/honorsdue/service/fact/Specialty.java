package org.honorsdue.service.fact;

import java.util.Optional;

/**
 * Military occupational specialty.
 *
 * @param number three or four digits as typed, without a slip; empty when only a title stands there
 * @param title in full, from the table or as typed
 */
public record Specialty(int paper, Optional<String> number, String title, Basis basis) implements ServiceFact {}
