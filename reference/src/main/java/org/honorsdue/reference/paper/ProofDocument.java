package org.honorsdue.reference.paper;

import java.util.List;
import org.honorsdue.reference.Provenance;

/**
 * A kind of document that can settle an open question.
 *
 * @param id as in {@code morning-reports}
 * @param keptBy office or archive, by name
 * @param proves what it can prove, as ids of missing facts ({@code FactWanted} in determination), see the table's header
 * @param cannotProve in words
 * @param burned whether the 1973 fire at St. Louis took most of the Army's
 * @param effort 1 in the family's hands, 2 public print, 3 one letter, 4 long search, 5 last resort
 */
public record ProofDocument(
        String id,
        String name,
        String keptBy,
        List<String> proves,
        String cannotProve,
        boolean burned,
        int effort,
        Provenance provenance) {
    public ProofDocument {
        proves = List.copyOf(proves);
    }
}
