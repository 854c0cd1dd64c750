package org.honorsdue.service.fact;

/**
 * A service school attended.
 */
public record School(int paper, String school, Basis basis) implements ServiceFact {}
