package org.honorsdue.documents.letter;

import java.util.ArrayList;
import java.util.List;
import org.honorsdue.documents.page.Page;

/** All papers of one case. */
public final class Correspondence {
    private Correspondence() {}

    /**
     * Every paper that has something to say, in the order in which a person would work through them. No request for
     * medals and no framer's sheet when no award is settled, no draft for a correction when nothing settled is missing from the paper.
     */
    public static List<Page> all(Dossier dossier) {
        var pages = new ArrayList<Page>();
        pages.add(FamilySummary.of(dossier));
        pages.add(ProofAnnex.of(dossier));
        pages.add(EvidenceChecklist.of(dossier));
        pages.add(RecordsRequest.of(dossier));
        if (!dossier.authorized().isEmpty()) {
            pages.add(MedalsRequest.of(dossier));
        }
        if (CorrectionRequest.hasCause(dossier)) {
            pages.add(CorrectionRequest.of(dossier));
        }
        if (FramersSheet.hasContents(dossier)) {
            pages.add(FramersSheet.of(dossier));
        }
        if (!dossier.casefile().papers().isEmpty()) {
            pages.add(Transcription.of(dossier));
        }
        var cover = new Cover(dossier.masking().cover(dossier.casefile()));
        return pages.stream().map(cover::over).toList();
    }

    /** The proof alone: what {@code honors examine} prints as HTML or PDF. */
    public static Page proof(Dossier dossier) {
        return new Cover(dossier.masking().cover(dossier.casefile())).over(ProofAnnex.of(dossier));
    }
}
