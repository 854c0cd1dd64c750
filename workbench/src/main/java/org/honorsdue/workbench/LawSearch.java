package org.honorsdue.workbench;

import java.util.List;
import java.util.Locale;
import org.honorsdue.determination.LawBook;
import org.honorsdue.determination.law.Rule;

/** Finds rules by the award's name, by any name it bore, or by words of its clauses' citations. */
final class LawSearch {
    private LawSearch() {}

    static List<Rule> rules(LawBook book, String words) {
        var wanted = List.of(words.toLowerCase(Locale.ROOT).strip().split("\\s+"));
        return book.rules().stream()
                .filter(rule -> {
                    String text = text(rule);
                    return wanted.stream().allMatch(text::contains);
                })
                .toList();
    }

    private static String text(Rule rule) {
        var text = new StringBuilder(rule.award().name())
                .append(' ')
                .append(String.join(" ", rule.award().otherNames()))
                .append(' ')
                .append(rule.award().establishedBy().text());
        rule.routes()
                .forEach(route -> route.clauses()
                        .forEach(clause ->
                                text.append(' ').append(clause.law().citation().text())));
        return text.toString().toLowerCase(Locale.ROOT);
    }
}
