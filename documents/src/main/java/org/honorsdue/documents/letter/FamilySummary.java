package org.honorsdue.documents.letter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.determination.finding.OnPaper;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.determination.finding.Verdict;
import org.honorsdue.documents.page.Block;
import org.honorsdue.documents.page.Page;
import org.honorsdue.reference.law.Award;
import org.honorsdue.service.fact.Assignment;
import org.honorsdue.service.fact.CampaignClaim;
import org.honorsdue.service.fact.OverseasStay;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.Tour;

/** One or two pages in plain words, for an older reader, to keep. */
final class FamilySummary {
    private FamilySummary() {}

    static Page of(Dossier dossier) {
        var page =
                Page.of("family-summary", dossier.soldier(), "What he or she was authorized, and why", dossier.dated());
        dossier.rack().ifPresent(page::add);
        service(dossier, page);
        cameHomeWith(dossier, page);
        due(dossier, page);
        open(dossier, page);
        notDue(dossier, page);
        return page.page();
    }

    private static void service(Dossier dossier, Page.Builder page) {
        page.part("The service");
        var lines = new ArrayList<String>();
        for (var tour : dossier.facts().every(Tour.class)) {
            tour.entered().ifPresent(day -> lines.add("Entered active service " + words(day) + "."));
        }
        dossier.facts().every(Assignment.class).stream()
                .filter(Assignment::atSeparation)
                .forEach(unit -> lines.add("The paper names the unit " + unit.designation()
                        + ". That is the unit at the end; it need not be the one of the fighting."));
        for (var stay : dossier.facts().every(OverseasStay.class)) {
            stay(stay).ifPresent(lines::add);
        }
        var campaigns = dossier.facts().every(CampaignClaim.class).stream()
                .map(claim -> dossier.reference()
                        .campaign(claim.campaign())
                        .map(campaign -> campaign.name())
                        .orElse(claim.asTyped()))
                .distinct()
                .toList();
        if (!campaigns.isEmpty()) {
            lines.add("Campaigns on the paper: " + String.join(", ", campaigns) + ".");
        }
        for (var tour : dossier.facts().every(Tour.class)) {
            tour.separated().ifPresent(day -> lines.add("Left the service " + words(day) + "."));
        }
        if (lines.isEmpty()) {
            page.say("No paper with dates of service was given.");
        } else {
            page.points(lines);
        }
    }

    private static Optional<String> stay(OverseasStay stay) {
        if (stay.departed().isEmpty() && stay.arrived().isEmpty()) {
            return Optional.empty();
        }
        var words = new StringBuilder("Overseas: ").append(stay.destination());
        stay.departed().ifPresent(day -> words.append(", sailed ").append(words(day)));
        stay.arrived().ifPresent(day -> words.append(", arrived ").append(words(day)));
        stay.returned().ifPresent(day -> words.append(", home ").append(words(day)));
        return Optional.of(words.append('.').toString());
    }

    private static String words(PartialDate date) {
        return date.isDay() ? Wording.day(date.earliest()) : date.toString();
    }

    private static void cameHomeWith(Dossier dossier, Page.Builder page) {
        var onPaper = dossier.findings().findings().stream()
                .filter(finding -> finding.onPaper() != OnPaper.NO)
                .filter(finding -> finding.standing() != Standing.NOT_AUTHORIZED)
                .toList();
        if (onPaper.isEmpty()) {
            return;
        }
        page.part("On the paper");
        page.add(table(dossier, onPaper));
    }

    private static void due(Dossier dossier, Page.Builder page) {
        var due = dossier.authorized().stream()
                .filter(finding -> finding.onPaper() == OnPaper.NO)
                .toList();
        if (due.isEmpty()) {
            return;
        }
        page.part("Due, and not on the paper");
        page.say(
                "The paper is not the last word. Some awards were created after it was typed; some the clerk left out.");
        var rows = new ArrayList<List<String>>();
        for (var finding : due) {
            rows.add(List.of(
                    Wording.award(finding),
                    meaning(dossier, finding),
                    finding.whyNotOnPaper().isBlank() ? reason(finding) : finding.whyNotOnPaper()));
        }
        page.add(new Block.Table(List.of("Award", "What it is for", "Why it is not there"), rows));
    }

    private static void open(Dossier dossier, Page.Builder page) {
        var open = dossier.standing(Standing.PRESUMED, Standing.UNSETTLED);
        if (open.isEmpty()) {
            return;
        }
        page.part("Still open");
        page.say(
                "These could be right. One or two documents would tell; the checklist says which and where they are kept.");
        var items = new ArrayList<String>();
        for (var finding : open) {
            String question = finding.needs().isEmpty()
                    ? ""
                    : " " + finding.needs().get(0).question();
            String likely = finding.standing() == Standing.PRESUMED ? " (likely)" : "";
            items.add(Wording.award(finding) + likely + "." + question);
        }
        page.points(items);
    }

    private static void notDue(Dossier dossier, Page.Builder page) {
        var shown = dossier.standing(Standing.NOT_AUTHORIZED).stream()
                .filter(finding -> finding.onPaper() != OnPaper.NO)
                .toList();
        if (shown.isEmpty()) {
            return;
        }
        page.part("On the paper, and not due");
        page.say("Clerks were tired and rules changed. No blame attaches to the soldier for these.");
        page.points(shown.stream()
                .map(finding -> finding.name() + ". " + reason(finding))
                .toList());
    }

    private static Block.Table table(Dossier dossier, List<Finding> findings) {
        var rows = findings.stream()
                .map(finding -> List.of(Wording.award(finding), meaning(dossier, finding), note(finding)))
                .toList();
        return new Block.Table(List.of("Award", "What it is for", "Note"), rows);
    }

    private static String note(Finding finding) {
        return switch (finding.standing()) {
            case AUTHORIZED -> finding.onPaper() == OnPaper.INCOMPLETE ? "More is due than the paper shows." : "Right.";
            case PRESUMED -> "Likely right; the order is not at hand.";
            case UNSETTLED -> "Needs proof.";
            case NOT_AUTHORIZED -> "Not due.";
        };
    }

    private static String meaning(Dossier dossier, Finding finding) {
        return dossier.reference().award(finding.award()).map(Award::meaning).orElse("");
    }

    private static String reason(Finding finding) {
        return finding.grounds().stream()
                .filter(ground -> ground.verdict() != Verdict.UNKNOWN)
                .map(ground -> ground.says())
                .findFirst()
                .orElse("");
    }

    /** Awards that a later day's law added to those of an earlier day. */
    static Set<String> added(Findings then, Findings now) {
        var before = then.findings().stream()
                .filter(finding -> finding.standing() == Standing.AUTHORIZED)
                .map(Finding::award)
                .collect(Collectors.toSet());
        return now.findings().stream()
                .filter(finding -> finding.standing() == Standing.AUTHORIZED)
                .map(Finding::award)
                .filter(award -> !before.contains(award))
                .collect(Collectors.toUnmodifiableSet());
    }
}
