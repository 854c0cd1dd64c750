package org.honorsdue.service.fact;

import java.util.Optional;
import org.honorsdue.service.evidence.Evidence.HospitalAdmission.Cause;

/**
 * A hospital admission or treatment record.
 */
public record HospitalAdmission(Cause cause, Optional<PartialDate> date, Optional<String> diagnosis, Basis basis)
        implements ServiceFact {}
