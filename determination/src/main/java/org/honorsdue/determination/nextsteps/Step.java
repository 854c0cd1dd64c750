package org.honorsdue.determination.nextsteps;

import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import org.honorsdue.reference.paper.ProofDocument;

/**
 * One thing to look for.
 *
 * @param subject which of it, in words a letter can use: {@code Co B 331st Inf, December 1944}; empty when there is only
 *     one for the man
 * @param month for documents kept by the month
 * @param settles the questions it settles alone, once those before it are answered
 * @param bearsOn the questions it helps to settle together with another step
 * @param because why this one
 * @param otherwise what to turn to when it is not to be had; empty when nothing else would do
 */
public record Step(
        ProofDocument document,
        String subject,
        Optional<YearMonth> month,
        List<OpenQuestion> settles,
        List<OpenQuestion> bearsOn,
        String because,
        List<String> otherwise,
        List<String> cautions) {
    public Step {
        settles = List.copyOf(settles);
        bearsOn = List.copyOf(bearsOn);
        otherwise = List.copyOf(otherwise);
        cautions = List.copyOf(cautions);
    }
}
