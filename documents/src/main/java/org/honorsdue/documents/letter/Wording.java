package org.honorsdue.documents.letter;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.Ground;
import org.honorsdue.determination.finding.Verdict;
import org.honorsdue.determination.finding.WornDevice;
import org.honorsdue.reference.Citation;
import org.honorsdue.service.fact.Device;
import org.honorsdue.service.fact.Origin;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.paper.Entry;

/** How awards, devices, authorities, dates and places on the paper are put into words. */
final class Wording {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter DAY_OF_YEAR = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM yyyy", Locale.ENGLISH);
    private static final List<String> NUMBERS = List.of(
            "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve");

    /** Parts the law from the soldier in the sentence of a ground. */
    private static final String HERE = " Here: ";

    private Wording() {}

    static String day(LocalDate day) {
        return DAY.format(day);
    }

    static String date(PartialDate date) {
        if (date.isDay()) {
            return day(date.earliest());
        }
        if (date.equals(PartialDate.year(date.earliest().getYear()))) {
            return Integer.toString(date.earliest().getYear());
        }
        if (date.equals(PartialDate.month(YearMonth.from(date.earliest())))) {
            return MONTH.format(date.earliest());
        }
        return "between " + day(date.earliest()) + " and " + day(date.latest());
    }

    /** {@code 9 January to 18 September 1945}; {@code from May 1945} when only one end is known. */
    static String span(Optional<PartialDate> from, Optional<PartialDate> to) {
        if (from.isPresent() && to.isPresent()) {
            return from.equals(to) ? date(from.get()) : both(from.get(), to.get());
        }
        return from.map(day -> "from " + date(day))
                .or(() -> to.map(day -> "until " + date(day)))
                .orElse("");
    }

    private static String both(PartialDate from, PartialDate to) {
        boolean oneYear = from.isDay()
                && to.isDay()
                && from.earliest().getYear() == to.earliest().getYear();
        return (oneYear ? DAY_OF_YEAR.format(from.earliest()) : date(from)) + " to " + date(to);
    }

    /** A count as a sentence has it: {@code four}, {@code 17}. */
    static String number(long count) {
        return count >= 0 && count < NUMBERS.size() ? NUMBERS.get((int) count) : Long.toString(count);
    }

    /** {@code one award}, {@code four awards}. */
    static String number(long count, String noun) {
        return number(count) + " " + noun + (count == 1 ? "" : "s");
    }

    /** {@code three medals and badges}; bars on the sleeve and the like are not counted. */
    static String medalsAndBadges(long count) {
        return count == 1 ? "one medal or badge" : number(count) + " medals and badges";
    }

    static String capital(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** {@code Purple Heart with 1 bronze oak leaf cluster}. */
    static String award(Finding finding) {
        var words = new StringBuilder(finding.name());
        if (finding.devices().isEmpty() && finding.count() > 1) {
            words.append(", ").append(finding.count());
        }
        var devices = devices(finding.devices());
        if (!devices.isEmpty()) {
            words.append(" with ").append(devices);
        }
        return words.toString();
    }

    static String devices(List<WornDevice> devices) {
        return devices.stream().map(Wording::device).collect(Collectors.joining("; "));
    }

    /** What each stands for is told of stars; of a clasp it would only repeat the reason. */
    static String devicesForTheFamily(List<WornDevice> devices) {
        return devices.stream()
                .map(worn -> switch (worn.device()) {
                    case GERMANY_CLASP, JAPAN_CLASP, FOREIGN_SERVICE_CLASP ->
                        device(new WornDevice(worn.device(), worn.count(), List.of()));
                    default -> device(worn);
                })
                .collect(Collectors.joining("; "));
    }

    private static String device(WornDevice worn) {
        String name = worn.device().id().replace('-', ' ');
        String written = switch (worn.device()) {
            case LETTER_V -> "the letter V";
            case GOOD_CONDUCT_CLASP -> "the clasp with %d loops".formatted(worn.count());
            case FOREIGN_SERVICE_CLASP -> "the Foreign Service clasp";
            case GERMANY_CLASP -> "the Germany clasp";
            case JAPAN_CLASP -> "the Japan clasp";
            case QUALIFICATION_BAR -> worn.count() == 1 ? "a bar" : worn.count() + " bars";
            default -> worn.count() + " " + name + (worn.count() == 1 ? "" : "s");
        };
        return worn.standsFor().isEmpty() ? written : written + " (" + String.join(", ", worn.standsFor()) + ")";
    }

    /** A short form for a list of things: no reasons in brackets. */
    static String awardInShort(Finding finding) {
        var devices = finding.devices().stream()
                .filter(worn -> worn.device() != Device.QUALIFICATION_BAR)
                .map(worn -> device(new WornDevice(worn.device(), worn.count(), List.of())))
                .collect(Collectors.joining(", "));
        String counted = devices.isEmpty() && finding.count() > 1 ? ", " + finding.count() : "";
        return finding.name() + counted + (devices.isEmpty() ? "" : " with " + devices);
    }

    /** What the law asks, without what was found about the soldier. */
    static String law(Ground ground) {
        int here = ground.says().indexOf(HERE);
        return here < 0 ? ground.says() : ground.says().substring(0, here);
    }

    /** What was found about the soldier; the whole sentence when it is not parted. */
    static String found(Ground ground) {
        int here = ground.says().indexOf(HERE);
        return capital(here < 0 ? ground.says() : ground.says().substring(here + HERE.length()));
    }

    /** The first clause that decided, law and soldier in two sentences; empty when no clause was shown. */
    static String reason(Finding finding, Verdict verdict) {
        return finding.grounds().stream()
                .filter(ground -> ground.verdict() == verdict)
                .findFirst()
                .map(ground -> ground.says().contains(HERE) ? law(ground) + " " + found(ground) : ground.says())
                .orElse("");
    }

    /** Why an award is not due: the clauses that fail, two at most, those with a word about the soldier first. */
    static String refusal(Finding finding) {
        return finding.grounds().stream()
                .filter(ground -> ground.verdict() == Verdict.NOT_MET)
                .sorted(Comparator.comparing(ground -> !ground.says().contains(HERE)))
                .limit(2)
                .map(ground -> ground.says().contains(HERE)
                        ? "The rule: " + law(ground) + " " + found(ground)
                        : "Not met: " + ground.says())
                .collect(Collectors.joining(" "));
    }

    /** For the middle of a sentence: the first letter small, unless it begins a name. */
    static String small(String words) {
        return words.matches("(The|It|Left|Created|Papers|Not|An?|On|Given|Ordered|Earned)\\b.*")
                ? words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1)
                : words;
    }

    static String authority(Citation citation) {
        return citation.text()
                + switch (citation.grade()) {
                    case TEXT -> "";
                    case SECONDARY -> " [read at second hand]";
                    case MEMORY -> " [text not yet read]";
                };
    }

    /** Where something stands, so that a reader finds it: {@code box 33, "EAMET Rib"}. */
    static String place(Dossier dossier, Origin origin) {
        if (origin instanceof Origin.OnPaper typed) {
            return "%s: \u201c%s\u201d"
                    .formatted(
                            entry(dossier, typed),
                            dossier.quoted(typed.entry(), typed.text().replace("\n", " / ")));
        }
        if (origin instanceof Origin.InEvidence item) {
            return "evidence %d (%s): %s%s"
                    .formatted(
                            item.item(),
                            item.kind().replace('-', ' '),
                            dossier.masking().show(item.text()),
                            item.source().map(source -> ", " + source).orElse(""));
        }
        return "stated: " + origin.text();
    }

    static String entry(Dossier dossier, Origin.OnPaper typed) {
        return box(dossier, typed.paper(), typed.entry());
    }

    /** {@code box 33 (Decorations and citations)}, or the caption alone where the form has no numbers. */
    static String box(Dossier dossier, int paper, Entry entry) {
        String which = dossier.casefile().papers().size() > 1 ? "paper " + paper + ", " : "";
        var form = dossier.casefile().papers().get(paper - 1).form();
        return which
                + entry.box(form)
                        .map(number -> "box %d (%s)".formatted(number, entry.caption()))
                        .orElse(entry.caption());
    }

    /** {@code box 33}, or the caption where the form has no numbers. */
    static String boxInShort(Dossier dossier, int paper, Entry entry) {
        String which = dossier.casefile().papers().size() > 1 ? "paper " + paper + ", " : "";
        var form = dossier.casefile().papers().get(paper - 1).form();
        return which + entry.box(form).map(number -> "box " + number).orElse(entry.caption());
    }
}
