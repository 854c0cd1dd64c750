package org.honorsdue.reading;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.history.Campaign;
import org.honorsdue.service.fact.ArmFact;
import org.honorsdue.service.fact.AwardClaim;
import org.honorsdue.service.fact.Basis.Certainty;
import org.honorsdue.service.fact.CampaignClaim;
import org.honorsdue.service.fact.Captivity;
import org.honorsdue.service.fact.Component;
import org.honorsdue.service.fact.Conduct;
import org.honorsdue.service.fact.LapelButton;
import org.honorsdue.service.fact.MilitaryGrade;
import org.honorsdue.service.fact.MusteringOutPay;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.PointsScore;
import org.honorsdue.service.fact.Qualification;
import org.honorsdue.service.fact.School;
import org.honorsdue.service.fact.SeparationReason;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceTotal;
import org.honorsdue.service.fact.Specialty;
import org.honorsdue.service.fact.Wound;
import org.honorsdue.service.paper.Entry;

/**
 * Lines of box text with their meaning, and how a reading is held against it; how a line counts is said in the head of
 * {@code decode-corpus.tsv}.
 */
final class DecodeCorpus {
    private DecodeCorpus() {}

    record Line(int number, Entry entry, String text, String expected) {
        boolean isOdd() {
            return number % 2 == 1;
        }
    }

    /** A fact in the notation of the file. */
    private record Said(String words, Certainty certainty) {}

    enum Outcome {
        RIGHT,
        /** Wrong or incomplete, and the reading says that something is corrected, doubtful or unread. */
        MARKED,
        /** Wrong or incomplete, and nothing says so. */
        SILENT
    }

    record Judged(Line line, Outcome outcome, String why) {}

    /**
     * Every line of the table judged. The odd and even shares and the lines missed, of the blind file the odd ones only,
     * are written below target.
     */
    static List<Judged> judged(String table) {
        var judged = lines(table).map(DecodeCorpus::judge).toList();
        report(table, judged);
        return judged;
    }

    static List<Judged> half(List<Judged> judged, boolean odd) {
        return judged.stream().filter(each -> each.line().isOdd() == odd).toList();
    }

    /** Share read right, in per cent. */
    static double share(List<Judged> half) {
        return 100.0 * count(half, Outcome.RIGHT) / half.size();
    }

    static long count(List<Judged> judged, Outcome outcome) {
        return judged.stream().filter(each -> each.outcome() == outcome).count();
    }

    private static Stream<Line> lines(String table) {
        var in = Objects.requireNonNull(DecodeCorpus.class.getResourceAsStream(table));
        var reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
        return reader.lines()
                .filter(line -> !line.startsWith("#") && !line.isBlank())
                .map(line -> {
                    String[] cells = line.split("\t", -1);
                    return new Line(
                            Integer.parseInt(cells[0].strip()),
                            Entry.ofKey(cells[1].strip()).orElseThrow(() -> new AssertionError("no entry " + cells[1])),
                            cells[2],
                            cells[3].strip());
                });
    }

    private static void report(String table, List<Judged> judged) {
        var text = new StringBuilder();
        for (boolean odd : new boolean[] {true, false}) {
            var half = half(judged, odd);
            long right = count(half, Outcome.RIGHT);
            long silent = count(half, Outcome.SILENT);
            text.append("lines %s: %d of %d right (%.1f %%), %d wrong in silence%n"
                    .formatted(
                            odd ? "with odd numbers" : "with even numbers",
                            right,
                            half.size(),
                            100.0 * right / half.size(),
                            silent));
        }
        judged.stream()
                .filter(each -> each.outcome() != Outcome.RIGHT)
                // the even lines of the blind file stay unseen by those who improve the reader
                .filter(each -> each.line().isOdd() || !table.endsWith("-blind.tsv"))
                .forEach(each -> text.append("%n%d %s [%s]%n  %s%n  expected %s%n  %s%n"
                        .formatted(
                                each.line().number(),
                                each.outcome(),
                                each.line().entry().key(),
                                each.line().text(),
                                each.line().expected(),
                                each.why())));
        try {
            Path file = Path.of("target", table.replace(".tsv", "-report.txt"));
            Files.createDirectories(file.getParent());
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Judged judge(Line line) {
        EntryReading reading = ReadAs.entry(line.entry(), line.text());
        var said = said(reading);
        var wanted = new ArrayList<String>();
        boolean rest = false;
        var problems = new ArrayList<String>();
        boolean silentProblem = false;
        var either = new HashSet<String>();
        for (String part : line.expected().split(" ; ")) {
            String expectation = part.strip();
            if (expectation.startsWith("either ")) {
                for (String choice : expectation.substring(7).split("\\|")) {
                    Arrays.stream(choice.split(" \\+ "))
                            .map(DecodeCorpus::plain)
                            .forEach(either::add);
                }
            } else if (expectation.startsWith("not ")) {
                rest = true;
                String trap = plain(expectation.substring(4));
                for (Said each : said) {
                    if (each.words().equals(trap)) {
                        problems.add("fell for " + trap);
                        silentProblem |= each.certainty() == Certainty.PLAIN;
                    }
                }
            } else if (expectation.startsWith("unread ")) {
                String text = plain(expectation.substring(7));
                boolean listed = reading.unread().stream()
                        .anyMatch(unread -> plain(unread.text()).contains(text));
                if (!listed) {
                    problems.add("not listed as unread: " + text);
                    silentProblem = true;
                }
            } else if (expectation.equals("none")) {
                boolean none = reading.tokens().stream()
                        .anyMatch(token -> token.meaning().equals("nothing to enter"));
                if (!none) {
                    problems.add("none not read");
                    silentProblem |= reading.unread().isEmpty();
                }
            } else if (!expectation.isEmpty()) {
                wanted.add(plain(expectation));
            }
        }
        var left = new ArrayList<>(said.stream().distinct().toList());
        for (String want : wanted) {
            Optional<Said> found =
                    left.stream().filter(each -> each.words().equals(want)).findFirst();
            if (found.isPresent()) {
                left.remove(found.get());
            } else {
                problems.add("missing " + want);
            }
        }
        for (String choice : either) {
            Optional<Said> found =
                    left.stream().filter(each -> each.words().equals(choice)).findFirst();
            if (found.isPresent()) {
                left.remove(found.get());
            } else {
                problems.add("one reading not kept: " + choice);
            }
        }
        if (!either.isEmpty() && said.stream().noneMatch(each -> each.certainty() == Certainty.DOUBTFUL)) {
            problems.add("not marked as doubtful");
        }
        if (!rest) {
            for (Said each : left) {
                boolean zero =
                        each.words().equals("total 0-0-0") && line.expected().equals("none");
                if (!zero) {
                    problems.add("not expected: " + each.words() + " " + each.certainty());
                    silentProblem |= each.certainty() == Certainty.PLAIN;
                }
            }
        }
        if (problems.isEmpty()) {
            return new Judged(line, Outcome.RIGHT, "");
        }
        boolean marked = !reading.unread().isEmpty()
                || reading.tokens().stream().anyMatch(token -> token.certainty() != Certainty.PLAIN);
        return new Judged(
                line,
                silentProblem || !marked ? Outcome.SILENT : Outcome.MARKED,
                String.join("; ", problems) + "\n  unread "
                        + reading.unread().stream().map(unread -> unread.text()).toList());
    }

    private static String plain(String words) {
        String plain =
                words.strip().toLowerCase(Locale.ROOT).replaceAll("[,'()]", "").replaceAll("\\s+", " ");
        if (plain.startsWith("award ")) {
            String[] parts = plain.split(" ");
            Arrays.sort(parts, 2, parts.length);
            return String.join(" ", parts).replaceAll(" x1$", "").replaceAll(" x1 ", " ");
        }
        // the bar's name in the table of badges
        plain = plain.replace("automatic rifle", "auto rifle");
        // a credit for a whole theatre, typed without the theatre
        return plain.replaceAll("^campaign (antisubmarine|ground combat|air combat) .*", "campaign $1");
    }

    private static List<Said> said(EntryReading reading) {
        var all = new ArrayList<Said>();
        for (ServiceFact fact : reading.facts()) {
            words(fact)
                    .forEach(
                            words -> all.add(new Said(plain(words), fact.basis().certainty())));
        }
        reading.orders()
                .forEach(order -> all.add(new Said(
                        plain("order %s %s %s"
                                .formatted(
                                        order.type().orElse("-"),
                                        order.number().isPresent()
                                                ? order.number().getAsInt()
                                                : "-",
                                        order.year().isPresent() ? order.year().getAsInt() : "-")),
                        Certainty.PLAIN)));
        reading.crossings()
                .forEach(crossing -> all.add(new Said(
                        plain("stay %s > %s > %s"
                                .formatted(
                                        date(crossing.departed()),
                                        crossing.destination().isEmpty() ? "-" : crossing.destination(),
                                        date(crossing.arrived()))),
                        certaintyOf(reading))));
        if (EntriesOfDates.ALL.contains(reading.entry().orElseThrow())) {
            // a day that may be read both ways is kept as the span from one to the other: both ends are said
            reading.tokens().stream()
                    .filter(token -> token.certainty() == Certainty.DOUBTFUL
                            && token.alternatives().size() == 2)
                    .findFirst()
                    .ifPresent(token -> reading.dates()
                            .forEach(date -> all.addAll(List.of(
                                    new Said("date " + date.earliest(), Certainty.DOUBTFUL),
                                    new Said("date " + date.latest(), Certainty.DOUBTFUL)))));
            reading.dates().stream()
                    .filter(date -> all.stream()
                            .noneMatch(said -> said.words().equals("date " + date.earliest())
                                    && said.certainty() == Certainty.DOUBTFUL))
                    .limit(reading.entry().orElseThrow() == Entry.DATE_OF_BIRTH ? 1 : 9)
                    .forEach(date -> all.add(new Said("date " + date, certaintyOf(reading))));
        }
        return all;
    }

    private static Certainty certaintyOf(EntryReading reading) {
        return reading.tokens().stream()
                .map(ReadToken::certainty)
                .max(Certainty::compareTo)
                .orElse(Certainty.PLAIN);
    }

    private static final class EntriesOfDates {
        static final Set<Entry> ALL = Set.of(
                Entry.SEPARATED, Entry.INDUCTED, Entry.ENLISTED, Entry.ENTERED_ACTIVE_SERVICE, Entry.DATE_OF_BIRTH);
    }

    private static String date(Optional<PartialDate> date) {
        return date.map(PartialDate::toString).orElse("-");
    }

    private static Stream<String> words(ServiceFact fact) {
        if (fact instanceof AwardClaim claim) {
            return Stream.of("award " + claim.award() + (claim.count() > 1 ? " x" + claim.count() : "")
                    + claim.devices().stream()
                            .map(device -> " " + device.device().id() + "=" + device.count())
                            .sorted()
                            .collect(Collectors.joining()));
        }
        if (fact instanceof CampaignClaim claim) {
            return Stream.of("campaign "
                    + Reference.published()
                            .campaign(claim.campaign())
                            .map(Campaign::name)
                            .orElse("?"));
        }
        if (fact instanceof Qualification shot) {
            return Stream.of("qualification %s %s %s"
                    .formatted(shot.level(), shot.weapon().orElse("-"), date(shot.date())));
        }
        if (fact instanceof Wound wound) {
            return Stream.of("wound %s %s".formatted(wound.place().orElse("-"), date(wound.date())));
        }
        if (fact instanceof ServiceTotal total) {
            return Stream.of("total %d-%d-%d".formatted(total.years(), total.months(), total.days()));
        }
        if (fact instanceof PointsScore score) {
            return Stream.of("score " + score.points()
                    + score.asOf().map(day -> " " + day).orElse(""));
        }
        if (fact instanceof Conduct conduct) {
            return Stream.of(
                            conduct.lostDays().isPresent()
                                    ? "lost-days " + conduct.lostDays().getAsInt()
                                    : "",
                            conduct.character().map(word -> "character " + word).orElse(""))
                    .filter(words -> !words.isEmpty());
        }
        if (fact instanceof Captivity captivity) {
            return Stream.of("captivity %s %s".formatted(date(captivity.from()), date(captivity.to())));
        }
        if (fact instanceof MusteringOutPay pay) {
            return Stream.of("pay " + pay.dollars());
        }
        if (fact instanceof Specialty specialty) {
            return Stream.of("specialty " + specialty.number().orElse("-"));
        }
        if (fact instanceof MilitaryGrade grade) {
            return Stream.of("grade " + grade.title());
        }
        if (fact instanceof ArmFact arm) {
            return Stream.of("arm " + arm.arm());
        }
        if (fact instanceof Component component) {
            return Stream.of("component " + component.component());
        }
        if (fact instanceof SeparationReason reason) {
            return reason.authority().map(authority -> "authority " + authority).stream();
        }
        if (fact instanceof School school) {
            return Stream.of("school " + school.school());
        }
        if (fact instanceof LapelButton button) {
            return Stream.of("lapel-button " + (button.issued() ? "yes" : "no"));
        }
        return Stream.empty();
    }
}
