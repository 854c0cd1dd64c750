package org.honorsdue.service.fact;

import java.util.Optional;

/**
 * Part in an assault landing, jump or glider landing, from evidence.
 *
 * @param campaign campaign id when known, else as given
 */
public record Assault(String campaign, Optional<String> means, Optional<PartialDate> date, Basis basis)
        implements ServiceFact {}
