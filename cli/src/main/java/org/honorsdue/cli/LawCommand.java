package org.honorsdue.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.honorsdue.determination.LawBook;
import org.honorsdue.determination.law.Clause;
import org.honorsdue.determination.law.Rule;
import org.honorsdue.documents.findings.Column;
import org.honorsdue.documents.findings.Ink;
import org.honorsdue.reference.Citation;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.law.Award;
import org.honorsdue.reference.law.LawClause;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code honors law AWARD}: the rule as held, with its sources. */
@Command(
        name = "law",
        mixinStandardHelpOptions = true,
        header = "The law on an award as the tool holds it.",
        description = "The law on an award as the tool holds it: clauses, dates, citations, how far each was verified.")
final class LawCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(
            arity = "0..1",
            paramLabel = "AWARD",
            description = "id or name, as in eame-campaign-medal; without it, all ids")
    private Optional<String> award = Optional.empty();

    @Override
    public Integer call() {
        var reference = Reference.published();
        var out = spec.commandLine().getOut();
        if (award.isEmpty()) {
            reference.awards().forEach(each -> out.printf("%-36s %s%n", each.id(), each.name()));
            return 0;
        }
        var found = AwardNames.find(reference, award.get());
        out.print(card(reference, found, Terminal.ink(), Terminal.width()));
        return 0;
    }

    private static String card(Reference reference, Award award, Ink ink, int width) {
        var page = new Column(width);
        page.line(ink.bold(award.name()) + "  " + ink.dim(award.id()));
        page.paragraph("  ", award.meaning());
        if (!award.otherNames().isEmpty()) {
            page.paragraph("  also called ", String.join(", ", award.otherNames()), ink::dim);
        }
        page.paragraph(
                "  created ",
                award.established().map(Object::toString).orElse("on a day not established here") + ", "
                        + authority(award.establishedBy()));
        var rule = new LawBook(reference).rule(award.id());
        rule.ifPresentOrElse(
                how -> how(page, how, ink), () -> section(page, "THE LAW", reference.clausesOf(award.id()), ink));
        return page.toString();
    }

    /** The rule as it is applied: each way to the award with all that it asks, then what bars it, what is worn, the rest. */
    private static void how(Column page, Rule rule, Ink ink) {
        for (int i = 0; i < rule.routes().size(); i++) {
            var route = rule.routes().get(i);
            String which = rule.routes().size() == 1 ? "" : i == 0 ? "ONE WAY: " : "OR: ";
            String all = route.clauses().size() == 1 ? "" : " (all of these)";
            section(
                    page,
                    which + route.title().toUpperCase(Locale.ROOT) + all,
                    route.clauses().stream().map(Clause::law).toList(),
                    ink);
        }
        section(page, "NOT DUE WHEN", rule.bars().stream().map(Clause::law).toList(), ink);
        section(page, "WHAT IS WORN", rule.devices(), ink);
        section(page, "ALSO SAID", rule.told().stream().map(told -> told.law()).toList(), ink);
    }

    private static void section(Column page, String heading, List<LawClause> clauses, Ink ink) {
        if (!clauses.isEmpty()) {
            page.gap().line(ink.heading(heading));
            clauses.forEach(clause -> clause(page, clause, ink));
        }
    }

    private static void clause(Column page, LawClause clause, Ink ink) {
        page.paragraph("  - ", clause.text());
        page.paragraph("    ", authority(clause.citation()), ink::dim);
        String dates = clause.inForceFrom().map(day -> "law from " + day).orElse("")
                + clause.inForceUntil().map(day -> " until " + day).orElse("");
        if (!dates.isBlank()) {
            page.paragraph("    ", dates.strip(), ink::dim);
        }
        if (clause.citation().grade() != Grade.MEMORY) {
            page.paragraph("    read in: ", clause.source(), ink::dim);
        }
        if (!clause.note().isBlank()) {
            page.paragraph("    note: ", clause.note(), ink::doubt);
        }
    }

    private static String authority(Citation citation) {
        return citation.text()
                + switch (citation.grade()) {
                    case TEXT -> " (read in the text)";
                    case SECONDARY -> " (read at second hand)";
                    case MEMORY -> " (text not yet read: from memory)";
                };
    }
}
