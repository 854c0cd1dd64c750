package org.honorsdue.service.fact;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * An order as cited on a paper: {@code GO 33 WD 45}.
 *
 * @param asTyped the whole citation as typed
 * @param type as in {@code GO}; empty when not readable
 * @param number the order's number
 * @param headquarters who issued it, as typed
 * @param year four digits
 */
public record OrderReference(
        String asTyped, Optional<String> type, OptionalInt number, Optional<String> headquarters, OptionalInt year) {}
