package org.honorsdue.service;

import java.util.List;
import java.util.Optional;
import org.honorsdue.service.evidence.Evidence;
import org.honorsdue.service.paper.Paper;

/**
 * One soldier as handed in: the papers as typed and whatever else is known.
 *
 * @param name as the family or the file gives it; the paper's own name entry may differ
 * @param sex when stated outside the papers
 * @param papers in the order given; may be empty. Referred to by their number, counted from 1
 * @param evidence in the order given; may be empty. Referred to by their number, counted from 1
 */
public record Casefile(Optional<String> name, Optional<Sex> sex, List<Paper> papers, List<Evidence> evidence) {
    public Casefile {
        papers = List.copyOf(papers);
        evidence = List.copyOf(evidence);
    }
}
