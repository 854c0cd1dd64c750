package org.honorsdue.service.fact;

import java.util.Optional;

/**
 * Time in the hands of the enemy or interned; both ends inclusive.
 *
 * @param internedByNeutral held by a neutral power, which is not captivity for the medal unless found comparable
 */
public record Captivity(
        Optional<PartialDate> from,
        Optional<PartialDate> to,
        Optional<String> place,
        boolean internedByNeutral,
        Basis basis)
        implements ServiceFact {}
