package org.honorsdue.documents.findings;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.determination.finding.Ground;
import org.honorsdue.determination.finding.Need;
import org.honorsdue.determination.finding.OnPaper;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.determination.finding.Verdict;
import org.honorsdue.determination.finding.WornDevice;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.paper.ProofDocument;
import org.honorsdue.service.fact.Origin;

/** Findings for a reader: what is right, what is due, what needs proof, what is not due, each with its reason. */
public final class FindingsText {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

    /** Parts a clause from what was found about the soldier, in the words of the findings. */
    private static final String HERE = " Here: ";

    private final Ink ink;
    private final int width;
    private final boolean everyClause;
    private final Map<String, ProofDocument> documents;

    /** @param everyClause show each clause with its verdict, not only those that decided */
    public FindingsText(Reference reference, Ink ink, int width, boolean everyClause) {
        this.ink = ink;
        this.width = width;
        this.everyClause = everyClause;
        this.documents = reference.documents().stream()
                .collect(Collectors.toMap(ProofDocument::id, document -> document, (a, b) -> a, LinkedHashMap::new));
    }

    /**
     * @param title the soldier, as a reader would head the page; may be empty
     * @param further parts to stand between the findings and the summary, such as the next steps
     */
    public String write(String title, Findings findings, List<String> further) {
        var page = new Column(width);
        if (!title.isBlank()) {
            page.line(ink.bold(title));
        }
        page.line(ink.dim("as the law stands on " + day(findings.asOf())));
        for (var group : Group.values()) {
            group(page, group, findings);
        }
        crosschecks(page, findings);
        leftOver(page, findings);
        for (var part : further) {
            page.gap().line(part.stripTrailing());
        }
        summary(page, findings);
        page.gap().paragraph("", FindingsJson.ADVICE, ink::dim);
        return page.toString();
    }

    private enum Group {
        RIGHT("ON THE PAPER, AND RIGHT"),
        SHORT("ON THE PAPER, BUT SHORT OF WHAT IS DUE"),
        DUE("DUE, AND NOT ON THE PAPER"),
        PROOF("NEEDS PROOF"),
        NOT_DUE("NOT DUE");

        private final String heading;

        Group(String heading) {
            this.heading = heading;
        }

        static Group of(Finding finding) {
            return switch (finding.standing()) {
                case AUTHORIZED ->
                    switch (finding.onPaper()) {
                        case YES -> RIGHT;
                        case INCOMPLETE -> SHORT;
                        case NO -> DUE;
                    };
                case PRESUMED, UNSETTLED -> PROOF;
                case NOT_AUTHORIZED -> NOT_DUE;
            };
        }
    }

    private void group(Column page, Group group, Findings findings) {
        var members =
                findings.findings().stream().filter(f -> Group.of(f) == group).toList();
        if (members.isEmpty()) {
            return;
        }
        page.gap().line(ink.heading(group.heading));
        for (var finding : members) {
            finding(page, group, finding);
        }
    }

    private void finding(Column page, Group group, Finding finding) {
        var name = new StringBuilder(finding.name());
        if (finding.count() > 1) {
            name.append(", ").append(finding.count()).append(" awards");
        }
        if (group == Group.PROOF) {
            name.append(finding.standing() == Standing.PRESUMED ? "  (presumed)" : "  (unsettled)");
            if (finding.onPaper() != OnPaper.NO) {
                name.append("  on the paper");
            }
        }
        page.paragraph("  ", name.toString(), ink::bold);
        for (var device : finding.devices()) {
            page.paragraph("      with ", device(device));
        }
        var quoted = new HashSet<Origin>();
        for (var same : byClause(grounds(finding))) {
            grounds(page, same, quoted);
        }
        if (!finding.whyNotOnPaper().isBlank()) {
            page.paragraph("      not on the paper: ", finding.whyNotOnPaper());
        }
        for (var need : finding.needs()) {
            need(page, need);
        }
        for (var caution : finding.cautions()) {
            page.paragraph("      ! ", caution, ink::doubt);
        }
    }

    /** What decided: the met clauses of a yes, the failed ones of a no, everything of an open question but the met. */
    private List<Ground> grounds(Finding finding) {
        if (everyClause) {
            return finding.grounds();
        }
        var wanted = switch (finding.standing()) {
            case AUTHORIZED, PRESUMED -> Verdict.MET;
            case UNSETTLED -> Verdict.MET;
            case NOT_AUTHORIZED -> Verdict.NOT_MET;
        };
        var deciding = new ArrayList<Ground>();
        for (var ground : finding.grounds()) {
            if (ground.verdict() == wanted) {
                deciding.add(ground);
            }
        }
        return deciding.isEmpty() ? finding.grounds() : deciding;
    }

    /** Grounds that rest on one clause with one answer, together: three stars by one paragraph are one line. */
    private static List<List<Ground>> byClause(List<Ground> grounds) {
        var groups = new LinkedHashMap<String, List<Ground>>();
        for (var ground : grounds) {
            groups.computeIfAbsent(ground.clause() + ground.verdict(), clause -> new ArrayList<>())
                    .add(ground);
        }
        return List.copyOf(groups.values());
    }

    /** @param quoted what was quoted under this finding before; nothing is quoted twice */
    private void grounds(Column page, List<Ground> same, Set<Origin> quoted) {
        var first = same.get(0);
        String mark = switch (first.verdict()) {
            case MET -> "      + ";
            case NOT_MET -> "      - ";
            case UNKNOWN -> "      ? ";
        };
        page.paragraph(mark, says(same));
        String authority = first.authority().text()
                + switch (first.authority().grade()) {
                    case TEXT -> "";
                    case SECONDARY -> " (read at second hand)";
                    case MEMORY -> " (text not yet read)";
                };
        page.paragraph("        ", authority, ink::dim);
        var quotations = same.stream()
                .flatMap(ground -> ground.evidence().stream())
                .filter(quoted::add)
                .map(FindingsText::origin)
                .distinct()
                .collect(Collectors.joining("; "));
        if (!quotations.isEmpty()) {
            page.paragraph("        ", quotations, ink::dim);
        }
    }

    /** The clause once, then what was found about this soldier for each ground. */
    private static String says(List<Ground> same) {
        var words = new StringBuilder(same.get(0).says().stripTrailing());
        for (var ground : same.subList(1, same.size())) {
            int here = ground.says().indexOf(HERE);
            String found = here < 0 ? ground.says() : ground.says().substring(here + HERE.length());
            if (words.indexOf(found) < 0) {
                words.setLength(words.charAt(words.length() - 1) == '.' ? words.length() - 1 : words.length());
                words.append("; ").append(found);
            }
        }
        return words.toString();
    }

    private static String origin(Origin origin) {
        if (origin instanceof Origin.OnPaper typed) {
            return "%s: \"%s\"".formatted(typed.entry().key().replace('_', ' '), typed.text());
        }
        if (origin instanceof Origin.InEvidence item) {
            return "evidence %d, %s: %s%s"
                    .formatted(
                            item.item(),
                            item.kind(),
                            item.text(),
                            item.source().map(source -> " [" + source + "]").orElse(""));
        }
        return "stated: " + origin.text();
    }

    private void need(Column page, Need need) {
        page.paragraph("      ? ", need.question(), ink::doubt);
        int shown = 0;
        for (var set : need.settledBy()) {
            if (shown == 3) {
                page.line("        (%d more; --format json lists them)"
                        .formatted(need.settledBy().size() - shown));
                break;
            }
            page.paragraph(shown == 0 ? "        settled by " : "        or by ", documents(set));
            shown++;
        }
    }

    private String documents(Set<String> ids) {
        return new TreeSet<>(ids)
                .stream()
                        .map(id -> documents.containsKey(id) ? document(documents.get(id)) : id)
                        .collect(Collectors.joining(", with "));
    }

    private static String document(ProofDocument document) {
        return document.name() + " (" + document.keptBy() + ")";
    }

    private static String device(WornDevice device) {
        String name = device.device().id().replace('-', ' ');
        String written = switch (device.device()) {
            case GOOD_CONDUCT_CLASP -> "the Good Conduct clasp with %d loops".formatted(device.count());
            case LETTER_V -> "the letter V";
            case FOREIGN_SERVICE_CLASP -> "the FOREIGN SERVICE clasp";
            case GERMANY_CLASP -> "the GERMANY clasp";
            case JAPAN_CLASP -> "the JAPAN clasp";
            default -> device.count() == 1 ? "1 " + name : device.count() + " " + plural(name);
        };
        return device.standsFor().isEmpty() ? written : written + ": " + String.join(", ", device.standsFor());
    }

    private static String plural(String name) {
        return name + "s";
    }

    private void crosschecks(Column page, Findings findings) {
        var apart = findings.crosschecks().stream()
                .filter(check -> check.outcome() == Crosscheck.Outcome.DISAGREES)
                .toList();
        if (apart.isEmpty()) {
            return;
        }
        page.gap().line(ink.heading("ENTRIES THAT DO NOT FIT TOGETHER"));
        for (var check : apart) {
            page.paragraph("  ! ", check.says());
            page.paragraph(
                    "    ",
                    check.entries().stream().map(e -> e.key().replace('_', ' ')).collect(Collectors.joining(", "))
                            + "; " + check.rule().source(),
                    ink::dim);
        }
    }

    private void leftOver(Column page, Findings findings) {
        if (!findings.conflicts().isEmpty()) {
            page.gap().line(ink.heading("SOURCES THAT CONTRADICT EACH OTHER"));
            findings.conflicts().forEach(conflict -> page.paragraph("  ! ", conflict.says()));
        }
        if (!findings.unread().isEmpty()) {
            page.gap().line(ink.heading("LEFT UNREAD"));
            findings.unread()
                    .forEach(unread -> page.paragraph(
                            "  paper %d, %s: "
                                    .formatted(
                                            unread.paper(), unread.entry().key().replace('_', ' ')),
                            "\"" + unread.text() + "\""));
        }
    }

    private void summary(Column page, Findings findings) {
        page.gap()
                .paragraph(
                        "",
                        "On the paper %d; authorized %d; presumed %d; unsettled %d."
                                .formatted(
                                        findings.onPaper(),
                                        findings.count(Standing.AUTHORIZED),
                                        findings.count(Standing.PRESUMED),
                                        findings.count(Standing.UNSETTLED)),
                        ink::bold);
    }

    private static String day(LocalDate day) {
        return DAY.format(day);
    }
}
