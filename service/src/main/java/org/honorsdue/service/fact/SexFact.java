package org.honorsdue.service.fact;

import org.honorsdue.service.Sex;

/**
 * The soldier's sex, stated or shown by the paper (a women's corps, a title).
 */
public record SexFact(Sex sex, Basis basis) implements ServiceFact {}
