package org.honorsdue.reading.entry;

import java.util.Optional;
import org.honorsdue.service.fact.PartialDate;

/**
 * One line of the entry on service outside the continental United States.
 *
 * @param destination as typed
 */
public record Crossing(Optional<PartialDate> departed, String destination, Optional<PartialDate> arrived) {}
