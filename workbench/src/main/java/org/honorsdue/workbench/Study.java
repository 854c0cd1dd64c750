package org.honorsdue.workbench;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.honorsdue.casebook.KeptCase;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.determination.finding.OnPaper;
import org.honorsdue.service.Casefile;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.Tour;

/** One case, read and examined as of one day: what the leaves of its folder show. */
public record Study(KeptCase kept, Casefile casefile, ServiceFacts facts, Findings findings) {
    /** How a reader meets the findings: four groups, in this order. */
    public enum Group {
        CONFIRMED("On the paper, and the law confirms it", "confirmed"),
        LEFT_OUT("Due, and not on the paper", "left-out"),
        OPEN("Needs proof", "open"),
        NOT_DUE("Not due, and why", "not-due");

        private final String words;
        private final String id;

        Group(String words, String id) {
            this.words = words;
            this.id = id;
        }

        public String words() {
            return words;
        }

        public String id() {
            return id;
        }

        /** The group of a finding. A device that the paper lacks makes an award left out, not confirmed. */
        public static Group of(Finding finding) {
            return switch (finding.standing()) {
                case AUTHORIZED -> finding.onPaper() == OnPaper.YES ? CONFIRMED : LEFT_OUT;
                case PRESUMED, UNSETTLED -> OPEN;
                case NOT_AUTHORIZED -> NOT_DUE;
            };
        }
    }

    public List<Finding> in(Group group) {
        return findings.findings().stream()
                .filter(finding -> Group.of(finding) == group)
                .toList();
    }

    /** The last day of service that any paper gives. */
    public Optional<LocalDate> separated() {
        return facts.every(Tour.class).stream()
                .flatMap(tour -> tour.separated().stream())
                .map(PartialDate::latest)
                .max(LocalDate::compareTo);
    }

    /** Whether nothing was handed in yet: no entry of any paper, no evidence. */
    public boolean isEmpty() {
        return casefile.evidence().isEmpty()
                && casefile.papers().stream().allMatch(paper -> paper.entries().isEmpty());
    }
}
