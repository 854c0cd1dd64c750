package org.honorsdue.service.fact;

/**
 * The honorable service lapel button: issued or not, as typed.
 */
public record LapelButton(int paper, boolean issued, Basis basis) implements ServiceFact {}
