package org.honorsdue.service.fact;

/**
 * Component on one paper, expanded, as in {@code Army of the United States}.
 */
public record Component(int paper, String component, Basis basis) implements ServiceFact {}
