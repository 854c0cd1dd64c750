package org.honorsdue.reference.unit;

import java.util.List;
import java.util.Optional;
import org.honorsdue.reference.Provenance;

/**
 * When a division went overseas, fought, came back and was inactivated.
 *
 * @param fieldsRead which facts of the division were read in the source; every other one is from memory
 */
public record OverseasHistory(
        String unit,
        Optional<LooseDate> arrived,
        String arrivedAt,
        Optional<LooseDate> enteredCombat,
        Optional<LooseDate> returned,
        Optional<LooseDate> inactivated,
        List<String> fieldsRead,
        String note,
        Provenance provenance) {
    public OverseasHistory {
        fieldsRead = List.copyOf(fieldsRead);
    }
}
