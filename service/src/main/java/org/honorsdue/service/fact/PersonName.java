package org.honorsdue.service.fact;

/**
 * The soldier's name as one source gives it.
 */
public record PersonName(String name, Basis basis) implements ServiceFact {}
