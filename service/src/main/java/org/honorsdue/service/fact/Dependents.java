package org.honorsdue.service.fact;

/**
 * Number of dependents at separation; not all of them need be children.
 */
public record Dependents(int number, Basis basis) implements ServiceFact {}
