package org.honorsdue.service.fact;

import java.util.Optional;
import org.honorsdue.service.evidence.Evidence.Death.Manner;

/**
 * Death in service.
 */
public record Death(Optional<PartialDate> date, Manner manner, Basis basis) implements ServiceFact {}
