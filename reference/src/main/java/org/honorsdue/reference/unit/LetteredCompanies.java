package org.honorsdue.reference.unit;

import java.util.List;
import org.honorsdue.reference.Provenance;

/**
 * Which lettered companies, troops or batteries made up a battalion.
 *
 * @param kind the kind of the regiment
 * @param battalion its number in the regiment
 * @param letters capital letters
 */
public record LetteredCompanies(
        UnitKind kind, int battalion, List<String> letters, String note, Provenance provenance) {
    public LetteredCompanies {
        letters = List.copyOf(letters);
    }
}
