package org.honorsdue.service.fact;

/**
 * Date of birth.
 */
public record BirthDate(PartialDate born, Basis basis) implements ServiceFact {}
