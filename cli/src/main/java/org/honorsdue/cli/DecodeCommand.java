package org.honorsdue.cli;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.honorsdue.documents.findings.Column;
import org.honorsdue.documents.findings.Ink;
import org.honorsdue.reading.EntryReading;
import org.honorsdue.reading.ReadToken;
import org.honorsdue.service.fact.Basis.Certainty;
import org.honorsdue.service.fact.OrderReference;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Form;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code honors decode "TEXT" [--entry NAME]}: what a line of typing means. */
@Command(
        name = "decode",
        mixinStandardHelpOptions = true,
        header = "What a line of typing means, token by token.",
        description = "What a line of typing means, token by token, and what stayed unread.")
final class DecodeCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "TEXT", description = "the characters as typed, in quotation marks")
    private String text = "";

    @Option(
            names = "--entry",
            paramLabel = "NAME",
            description = {
                "the entry they stand in, as in decorations_and_citations, or its box number on the 53-55;",
                "without it, what only the entry could settle stays in doubt"
            })
    private Optional<String> entry = Optional.empty();

    @Override
    public Integer call() {
        if (text.isBlank()) {
            throw new InputFault("honors: there is nothing to decode. Give the characters in quotation marks.");
        }
        var reader = new Examination().reader().entries();
        var reading = entry.map(DecodeCommand::entry)
                .map(where -> reader.read(where, text))
                .orElseGet(() -> reader.read(text));
        spec.commandLine().getOut().print(show(reading, Terminal.ink(), Terminal.width()));
        return 0;
    }

    private static Entry entry(String named) {
        String key = named.strip().toLowerCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
        if (key.matches("[0-9]{1,2}")) {
            return Entry.ofBox(Form.ENLISTED_53_55, Integer.parseInt(key))
                    .orElseThrow(
                            () -> new InputFault("honors: the 53-55 has no box %s that is read.".formatted(named)));
        }
        return Entry.ofKey(key)
                .orElseThrow(() -> new InputFault("honors: there is no entry \"%s\". The entries are: %s."
                        .formatted(
                                named,
                                Arrays.stream(Entry.values()).map(Entry::key).collect(Collectors.joining(", ")))));
    }

    private static String show(EntryReading reading, Ink ink, int width) {
        var page = new Column(width);
        int typed = reading.tokens().stream()
                .mapToInt(token -> token.text().length())
                .max()
                .orElse(0);
        int lead = Math.min(Math.max(typed, 8), 28);
        for (var token : reading.tokens()) {
            token(page, token, lead, ink);
        }
        for (var unread : reading.unread()) {
            page.paragraph(lead(unread.text(), lead), "unread", ink::doubt);
        }
        if (!reading.orders().isEmpty()) {
            page.gap();
            reading.orders().stream()
                    .map(OrderReference::asTyped)
                    .distinct()
                    .forEach(order -> page.paragraph("order: ", order));
        }
        return page.toString();
    }

    private static void token(Column page, ReadToken token, int lead, Ink ink) {
        String meaning = token.certainty() == Certainty.DOUBTFUL ? token.meaning() + "  (in doubt)" : token.meaning();
        page.paragraph(lead(token.text(), lead), meaning);
        String indent = " ".repeat(lead + 2);
        if (!token.alternatives().isEmpty()) {
            page.paragraph(indent, "or " + String.join(", or ", token.alternatives()), ink::doubt);
        }
        if (!token.note().isBlank()) {
            page.paragraph(indent, token.note(), ink::dim);
        }
    }

    private static String lead(String typed, int width) {
        String flat = typed.replaceAll("\\s+", " ");
        return flat + " ".repeat(Math.max(width - flat.length(), 0)) + "  ";
    }
}
