package org.honorsdue.casebook;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/** A letter made for a case, and what became of it. */
public record Letter(
        String id,
        String kind,
        Instant madeAt,
        Optional<LocalDate> sentOn,
        Optional<LocalDate> answeredOn,
        String body) {}
