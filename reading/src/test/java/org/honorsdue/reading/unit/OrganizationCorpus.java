package org.honorsdue.reading.unit;

import static java.util.stream.Collectors.toCollection;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.honorsdue.reading.unit.OrganizationReading.Outcome;
import org.honorsdue.reference.unit.Unit;
import org.honorsdue.service.fact.Basis.Certainty;

/** Organization lines written beside the project, and how a reading is held against the unit expected. */
final class OrganizationCorpus {
    private static final String FOLDER = "/org/honorsdue/reading/";

    private OrganizationCorpus() {}

    /** One line: its number, the text, the units expected from the smallest up, empty for "unknown". */
    record Line(int number, String typed, String kind, List<String> expected) {
        boolean unknown() {
            return expected.isEmpty();
        }

        /** Every unit expected stands in the reading, in the same order, the smallest first in both. */
        boolean readRight(OrganizationReading reading) {
            if (unknown()) {
                return reading.unit().isEmpty() && reading.parents().isEmpty();
            }
            List<List<String>> read = names(reading);
            if (read.isEmpty() || !matches(expected.get(0), read.get(0))) {
                return false;
            }
            if (!ofKind(reading)) {
                return false;
            }
            int at = 0;
            for (String unit : expected) {
                while (at < read.size() && !matches(unit, read.get(at))) {
                    at++;
                }
                if (at++ == read.size()) {
                    return false;
                }
            }
            return true;
        }

        private boolean ofKind(OrganizationReading reading) {
            boolean lettered =
                    !reading.parts().isEmpty() && reading.parts().get(0).isLettered();
            return !lettered || reading.parts().get(0).id().startsWith(kind + "-");
        }

        /** A unit of the tables that is not the one meant, given as if nothing were doubtful. */
        boolean silentlyWrong(OrganizationReading reading) {
            boolean sure = reading.outcome() == Outcome.FOUND && reading.certainty() != Certainty.DOUBTFUL;
            if (!sure) {
                return false;
            }
            Unit found = reading.unit().orElseThrow();
            return expected.stream().noneMatch(unit -> matches(unit, namesOf(found)));
        }

        private static boolean matches(String unit, List<String> names) {
            return names.stream().anyMatch(name -> plain(name).equals(plain(unit)));
        }
    }

    private static List<List<String>> names(OrganizationReading reading) {
        var names = new ArrayList<List<String>>();
        List<Unit> known = new ArrayList<>(reading.parents());
        reading.unit().ifPresent(known::add);
        for (String link : reading.chain()) {
            Optional<Unit> unit =
                    known.stream().filter(one -> one.name().equals(link)).findFirst();
            names.add(unit.map(OrganizationCorpus::namesOf).orElse(List.of(link)));
        }
        return names;
    }

    private static List<String> namesOf(Unit unit) {
        var names = new ArrayList<String>();
        names.add(unit.name());
        names.addAll(unit.aliases());
        return names;
    }

    /** Names as the corpus writes them: no brackets, no weights, AW spelt out, a lettered part as its letter alone. */
    static String plain(String name) {
        return name.toLowerCase(Locale.ROOT)
                .replaceAll("^(company|battery|troop) ([a-z])$", "$2")
                .replaceAll("\\([^)]*\\)", " ")
                .replaceAll(", (mechanized|.* division)$", "")
                .replaceAll("\\baw\\b", "automatic weapons")
                .replaceAll("[^a-z0-9]+", " ")
                .strip();
    }

    static List<Line> lines() {
        return lines("organization-corpus.tsv");
    }

    static List<Line> lines(String table) {
        try (var in = new BufferedReader(new InputStreamReader(
                OrganizationCorpus.class.getResourceAsStream(FOLDER + table), StandardCharsets.UTF_8))) {
            return in.lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(OrganizationCorpus::line)
                    .collect(toCollection(ArrayList::new));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Line line(String row) {
        String[] cells = row.split("\t", -1);
        if (cells[2].equals("unknown")) {
            return new Line(Integer.parseInt(cells[0]), cells[1], "", List.of());
        }
        int blank = cells[2].indexOf(' ');
        return new Line(
                Integer.parseInt(cells[0]),
                cells[1],
                cells[2].substring(0, blank),
                Arrays.stream(cells[2].substring(blank + 1).split(" \\| "))
                        .map(String::strip)
                        .toList());
    }
}
