package org.honorsdue.documents.letter;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.OnPaper;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.determination.finding.Verdict;
import org.honorsdue.documents.page.Block;
import org.honorsdue.documents.page.Page;

/** One or two pages in plain words, for an older reader, to keep. */
final class FamilySummary {
    private FamilySummary() {}

    static Page of(Dossier dossier) {
        var person = dossier.person();
        var story = new ServiceStory(dossier);
        var page = Page.of("family-summary", Page.Kind.KEEPSAKE, person.full(), story.gradeAndArm(), dossier.dated());
        var ribbons = new Ribbons(dossier.findings());
        ribbons.rack().ifPresent(page::add);
        figures(dossier, page);
        page.part("The service");
        story.sentences().forEach(page::say);
        ServiceLineDrawing.of(dossier).ifPresent(page::add);
        var places = story.places();
        if (!places.rows().isEmpty()) {
            page.add(places);
        }
        cameHomeWith(dossier, ribbons, page);
        due(dossier, ribbons, page);
        open(dossier, page);
        notDue(dossier, page);
        insignia(dossier, page);
        whatNow(dossier, page);
        return page.page();
    }

    private static List<Finding> awards(Dossier dossier, Predicate<Finding> which) {
        return dossier.findings().findings().stream()
                .filter(finding -> !dossier.isInsigne(finding))
                .filter(which)
                .toList();
    }

    private static boolean isOpen(Finding finding) {
        return finding.standing() == Standing.PRESUMED || finding.standing() == Standing.UNSETTLED;
    }

    private static void figures(Dossier dossier, Page.Builder page) {
        long home = awards(dossier, finding -> finding.onPaper() != OnPaper.NO).size();
        long now = awards(dossier, finding -> finding.standing() == Standing.AUTHORIZED)
                .size();
        long open = awards(dossier, FamilySummary::isOpen).size();
        var then = dossier.thenFindings()
                .map(findings -> findings.findings().stream()
                        .filter(finding -> finding.standing() == Standing.AUTHORIZED)
                        .filter(finding -> !dossier.isInsigne(finding))
                        .count());
        var figures = new ArrayList<Block.Figure>();
        if (!dossier.casefile().papers().isEmpty()) {
            figures.add(new Block.Figure(home, "medals and badges on the paper"));
        }
        then.ifPresent(due -> figures.add(new Block.Figure(due, "due by the law of that day")));
        figures.add(new Block.Figure(now, "due by the law of today"));
        if (open > 0) {
            figures.add(new Block.Figure(open, open == 1 ? "still an open question" : "still open questions"));
        }
        page.add(new Block.Figures(figures));
        if (then.isPresent() && !dossier.casefile().papers().isEmpty()) {
            page.say(thenAndNow(
                    dossier.person(), dossier.thenFindings().orElseThrow().asOf(), home, then.get(), now));
        }
    }

    /** {@code His paper names four awards; by the law of 11 November 1945 he was due six, and with the law made since, eight.} */
    static String thenAndNow(Person person, LocalDate day, long home, long due, long now) {
        var says = new StringBuilder("%s paper names %s".formatted(person.possessive(), Wording.medalsAndBadges(home)));
        if (due > home) {
            says.append(
                    "; by the law of %s %s was due %s".formatted(Wording.day(day), person.he(), Wording.number(due)));
        } else if (due == home) {
            says.append(", as many as the law of %s gave %s".formatted(Wording.day(day), person.him()));
        } else {
            says.append("; by the law of %s, %s can be settled from what is at hand"
                    .formatted(Wording.day(day), Wording.number(due)));
        }
        return says.append(now > due ? ", and with the law made since, %s.".formatted(Wording.number(now)) : ".")
                .toString();
    }

    private static void cameHomeWith(Dossier dossier, Ribbons ribbons, Page.Builder page) {
        var named = awards(
                dossier, finding -> finding.onPaper() != OnPaper.NO && finding.standing() != Standing.NOT_AUTHORIZED);
        if (named.isEmpty()) {
            return;
        }
        page.part("What %s came home with".formatted(dossier.person().he()));
        for (var finding : named) {
            var notes = new ArrayList<String>();
            String aside = "";
            if (finding.onPaper() == OnPaper.INCOMPLETE) {
                notes.add("The paper shows less than this. " + finding.whyNotOnPaper());
            }
            if (isOpen(finding)) {
                aside = finding.standing() == Standing.PRESUMED ? "likely right; proof not at hand" : "needs proof";
                finding.needs().stream().limit(1).forEach(need -> notes.add(need.question()));
            }
            page.add(entry(dossier, ribbons, finding, aside, notes));
        }
    }

    private static void due(Dossier dossier, Ribbons ribbons, Page.Builder page) {
        var due = awards(
                dossier, finding -> finding.onPaper() == OnPaper.NO && finding.standing() == Standing.AUTHORIZED);
        if (due.isEmpty()) {
            return;
        }
        boolean besides = dossier.findings().findings().stream().anyMatch(finding -> finding.onPaper() != OnPaper.NO);
        page.part("What %s is due%s".formatted(dossier.person().he(), besides ? " besides" : ""));
        for (var finding : due) {
            var notes = new ArrayList<String>();
            notes.add(Wording.reason(finding, Verdict.MET));
            if (!finding.whyNotOnPaper().isBlank()) {
                notes.add("Not on the paper: " + Wording.small(finding.whyNotOnPaper()));
            }
            page.add(entry(dossier, ribbons, finding, "", notes));
        }
    }

    private static Block entry(Dossier dossier, Ribbons ribbons, Finding finding, String aside, List<String> notes) {
        String devices = Wording.devicesForTheFamily(finding.devices());
        String with = devices.isEmpty() ? "" : "with " + devices;
        String counted = finding.devices().isEmpty() && finding.count() > 1 ? ", " + finding.count() : "";
        return new Block.AwardEntry(
                finding.name() + counted,
                with.isEmpty() || aside.isEmpty() ? with + aside : with + "; " + aside,
                dossier.meaning(finding),
                notes,
                ribbons.of(finding.name()));
    }

    private static void open(Dossier dossier, Page.Builder page) {
        var open = awards(dossier, finding -> finding.onPaper() == OnPaper.NO && isOpen(finding));
        if (open.isEmpty()) {
            return;
        }
        page.part("Still open");
        for (var finding : open) {
            page.add(new Block.AwardEntry(
                    Wording.awardInShort(finding),
                    finding.standing() == Standing.PRESUMED ? "likely" : "",
                    "",
                    finding.needs().stream()
                            .limit(1)
                            .map(need -> need.question())
                            .toList(),
                    Optional.empty()));
        }
    }

    private static void notDue(Dossier dossier, Page.Builder page) {
        var shown = awards(
                dossier,
                finding -> finding.standing() == Standing.NOT_AUTHORIZED
                        && (finding.onPaper() != OnPaper.NO
                                || !finding.grounds().isEmpty()));
        if (shown.isEmpty()) {
            return;
        }
        page.part("Not %s, and why".formatted(dossier.person().his()));
        for (var finding : shown) {
            page.add(new Block.AwardEntry(
                    finding.name(),
                    finding.onPaper() == OnPaper.NO ? "" : "named on the paper",
                    "",
                    List.of(Wording.refusal(finding)),
                    Optional.empty()));
        }
    }

    private static void insignia(Dossier dossier, Page.Builder page) {
        var worn = dossier.authorized().stream().filter(dossier::isInsigne).toList();
        if (worn.isEmpty()) {
            return;
        }
        page.part("On the sleeve and the lapel");
        page.say(Wording.capital(
                String.join("; ", worn.stream().map(Wording::awardInShort).toList()) + "."));
    }

    private static void whatNow(Dossier dossier, Page.Builder page) {
        page.part("What can be done now");
        var items = new ArrayList<String>();
        if (!dossier.authorized().isEmpty()) {
            items.add("What is settled can be asked for: the medals request is ready to sign.");
        }
        if (!dossier.steps().steps().isEmpty()) {
            items.add("%s would settle what is open; the evidence checklist says which."
                    .formatted(Wording.capital(
                            Wording.number(dossier.steps().steps().size(), "document"))));
        }
        items.add("Send copies and keep the original paper flat, dry and dark. Do not laminate it or write on it.");
        page.points(items);
        page.fine("Each line of this summary is proved, clause by clause, in the proof annex.");
    }
}
