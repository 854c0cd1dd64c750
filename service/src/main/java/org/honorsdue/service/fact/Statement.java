package org.honorsdue.service.fact;

import java.util.Optional;

/**
 * What somebody says. Never settles anything alone.
 */
public record Statement(Optional<String> by, String says, Basis basis) implements ServiceFact {}
