package org.honorsdue.documents.letter;

import java.util.List;
import org.honorsdue.documents.page.Page;

/** All papers of one case. */
public final class Correspondence {
    private Correspondence() {}

    /** Every paper, in the order in which a person would work through them. */
    public static List<Page> all(Dossier dossier) {
        return List.of(
                FamilySummary.of(dossier),
                ProofAnnex.of(dossier),
                EvidenceChecklist.of(dossier),
                RecordsRequest.of(dossier),
                MedalsRequest.of(dossier),
                CorrectionRequest.of(dossier));
    }

    /** The proof alone: what {@code honors examine} prints as HTML or PDF. */
    public static Page proof(Dossier dossier) {
        return ProofAnnex.of(dossier);
    }
}
