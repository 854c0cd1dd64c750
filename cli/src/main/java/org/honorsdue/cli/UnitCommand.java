package org.honorsdue.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.honorsdue.documents.unit.UnitCardJson;
import org.honorsdue.documents.unit.UnitCardText;
import org.honorsdue.reading.unit.OrganizationReader;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.unit.UnitCard;
import org.honorsdue.reference.unit.UnitCards;
import org.honorsdue.reference.unit.UnitTables;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code honors unit "Co B 331st Inf"}: the unit card. */
@Command(
        name = "unit",
        mixinStandardHelpOptions = true,
        header = "What is known of a unit, by any reasonable spelling.",
        description = {
            "A unit by any reasonable spelling: what it is, its parents, campaigns, assaults, citations,",
            "where it stood after the surrender, its patch, and how far each was verified."
        })
final class UnitCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "UNIT", description = "as typed on a paper, in quotation marks")
    private String typed = "";

    @Option(names = "--format", paramLabel = "FORMAT", description = "text or json; text if not given")
    private Format format = Format.TEXT;

    private enum Format {
        TEXT,
        JSON
    }

    @Override
    public Integer call() {
        if (typed.isBlank()) {
            throw new InputFault("honors: name a unit, in quotation marks, as it stands on the paper.");
        }
        var tables = UnitTables.published();
        var reading = new OrganizationReader(tables).read(typed);
        var cards = new UnitCards(tables, Reference.published());
        var card = reading.ids().isEmpty()
                ? Optional.<UnitCard>empty()
                : cards.card(reading.ids().get(0));
        var out = spec.commandLine().getOut();
        out.print(
                format == Format.TEXT
                        ? new UnitCardText(Terminal.ink(), Terminal.width()).write(reading, card)
                        : UnitCardJson.write(reading, card));
        return 0;
    }
}
