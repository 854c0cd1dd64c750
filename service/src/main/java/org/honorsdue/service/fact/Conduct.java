package org.honorsdue.service.fact;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * What bears on conduct: ratings, days lost under Article of War 107, convictions.
 *
 * @param lostDays absent when not stated; 0 when the paper says none were lost
 */
public record Conduct(
        Optional<String> character,
        Optional<String> efficiency,
        OptionalInt lostDays,
        OptionalInt convictions,
        Basis basis)
        implements ServiceFact {}
