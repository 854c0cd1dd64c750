package org.honorsdue.service.fact;

import java.util.Optional;

/**
 * A wound in action as a paper states it.
 *
 * @param place as typed
 */
public record Wound(Optional<PartialDate> date, Optional<String> place, String asTyped, Basis basis)
        implements ServiceFact {}
