package org.honorsdue.service.fact;

import java.util.Optional;

/**
 * A published order for an award, seen outside the papers.
 *
 * @param heroism the order gives heroism as its ground, so the letter V may be worn where the award takes one
 */
public record AwardOrder(
        String award, Optional<String> reference, Optional<PartialDate> date, boolean heroism, Basis basis)
        implements ServiceFact {}
