package org.honorsdue.documents.letter;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.documents.page.Block;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.paper.ProofDocument;
import org.honorsdue.service.Casefile;
import org.honorsdue.service.fact.PersonName;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Typed;

/**
 * Everything the letters of one case are made from.
 *
 * @param findings as of the day the letters bear
 * @param thenFindings as of the day of separation, when that is known
 * @param relation of whoever writes
 * @param rack the ribbon rack, when there is one to draw
 */
public record Dossier(
        Casefile casefile,
        ServiceFacts facts,
        Findings findings,
        Optional<Findings> thenFindings,
        Reference reference,
        Relation relation,
        Masking masking,
        Optional<Block.Drawing> rack) {
    /** Authorized awards, in the order of the findings. */
    List<Finding> authorized() {
        return standing(Standing.AUTHORIZED);
    }

    /** Awards with one of these standings, in the order of the findings. */
    List<Finding> standing(Standing... standings) {
        var wanted = Set.of(standings);
        return findings.findings().stream()
                .filter(finding -> wanted.contains(finding.standing()))
                .toList();
    }

    Optional<ProofDocument> document(String id) {
        return reference.documents().stream()
                .filter(document -> document.id().equals(id))
                .findFirst();
    }

    /** What stands in an entry of any paper, as it may be shown; empty when nothing stands there. */
    Optional<String> typed(Entry entry) {
        for (var paper : casefile.papers()) {
            if (paper.entry(entry) instanceof Typed.Text text) {
                return Optional.of(masking.show(entry, text.text().strip()));
            }
        }
        return Optional.empty();
    }

    /** The day every letter bears. */
    LocalDate dated() {
        return findings.asOf();
    }

    /** The soldier as the letters name him. */
    String soldier() {
        return facts.first(PersonName.class)
                .map(PersonName::name)
                .or(casefile::name)
                .orElse("the soldier");
    }
}
