package org.honorsdue.reference.paper;

import org.honorsdue.reference.Provenance;

/**
 * A specification serial number. The lists mix enlisted, Air Forces and officer codes under one number.
 *
 * @param safeToDecode false when the number must not be turned into a title without a caution
 */
public record MilitarySpecialty(
        String number,
        String title,
        Leaning infantry,
        Leaning medicalUnit,
        Leaning medicalDepartment,
        Leaning airborne,
        Leaning aircrew,
        boolean safeToDecode,
        String note,
        Provenance provenance) {
    /** Whether the specialty points to a kind of duty. */
    public enum Leaning {
        NO,
        MAYBE,
        YES
    }
}
