package org.honorsdue.reading.casefile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.honorsdue.reading.casefile.YamlNode.Mapping;
import org.honorsdue.reading.casefile.YamlNode.Pair;
import org.honorsdue.reading.casefile.YamlNode.Scalar;
import org.honorsdue.reading.casefile.YamlNode.Sequence;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Form;
import org.honorsdue.service.paper.Leg;
import org.honorsdue.service.paper.Paper;
import org.honorsdue.service.paper.Typed;

/** One item of {@code papers:}. */
final class PaperSection {
    /** The remarks box holds some eight hundred characters; ten times as much is not the text of an entry. */
    private static final int LONGEST_ENTRY = 8_000;

    private static final List<String> ENTRY_KEYS =
            Arrays.stream(Entry.values()).map(Entry::key).toList();
    private static final List<String> LEG_KEYS = List.of("departed", "destination", "arrived");

    private final Faults faults;
    private final Map<Entry, Typed> typed = new EnumMap<>(Entry.class);
    private List<Leg> legs = List.of();

    private PaperSection(Faults faults) {
        this.faults = faults;
    }

    static Optional<Paper> read(YamlNode item, Faults faults) {
        if (!(item instanceof Mapping mapping)) {
            faults.add(item, "A paper is %s.".formatted(item.kind()), "Write its keys: form, and entries or boxes.");
            return Optional.empty();
        }
        return Optional.of(new PaperSection(faults).paper(mapping));
    }

    private Paper paper(Mapping mapping) {
        var keys = new Keys(mapping, List.of("form", "entries", "boxes"), "a paper", faults);
        String named = keys.required("form", "A paper", "WD AGO 53-55");
        Form form = form(named);
        keys.node("entries").ifPresent(this::entries);
        keys.node("boxes").ifPresent(boxes -> boxes(boxes, form, named));
        return new Paper(form, named.isEmpty() ? form.title() : named, typed, legs);
    }

    /** The form by the words that name it; anything unknown is {@link Form#OTHER}, as the contract allows. */
    static Form form(String named) {
        String plain = named.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9]", "");
        if (plain.contains("5355")) {
            return Form.ENLISTED_53_55;
        }
        if (plain.contains("5398")) {
            return Form.OFFICER_53_98;
        }
        return plain.contains("REPORTOFDEATH") ? Form.REPORT_OF_DEATH : Form.OTHER;
    }

    private void entries(YamlNode section) {
        if (!(section instanceof Mapping mapping)) {
            faults.add(
                    section,
                    "\"entries\" is %s.".formatted(section.kind()),
                    "Write one entry a line, as in grade: Tec 5.");
            return;
        }
        for (Pair pair : mapping.pairs()) {
            String key = pair.key().text();
            var entry = Entry.ofKey(key);
            if (entry.isEmpty()) {
                faults.add(
                        pair.key(),
                        "There is no entry \"%s\".".formatted(Keys.shortened(key)),
                        NearestName.hint(key, ENTRY_KEYS));
            } else {
                put(pair.key(), entry.get(), pair.value());
            }
        }
    }

    private void boxes(YamlNode section, Form form, String named) {
        if (!(section instanceof Mapping mapping)) {
            faults.add(
                    section,
                    "\"boxes\" is %s.".formatted(section.kind()),
                    "Write one box a line, as in \"33\": EAMET Rib.");
            return;
        }
        if (form != Form.ENLISTED_53_55 && form != Form.OFFICER_53_98) {
            if (!named.isEmpty()) {
                faults.add(
                        section,
                        "The box numbers of \"%s\" are not known.".formatted(Keys.shortened(named)),
                        "Use entries: with the names of the entries.");
            }
            return;
        }
        for (Pair pair : mapping.pairs()) {
            box(pair, form);
        }
    }

    private void box(Pair pair, Form form) {
        String number = pair.key().text().strip();
        boolean isNumber =
                !number.isEmpty() && number.length() <= 3 && number.chars().allMatch(c -> c >= '0' && c <= '9');
        if (!isNumber) {
            faults.add(
                    pair.key(),
                    "\"%s\" is not the number of a box.".formatted(Keys.shortened(number)),
                    "Write the number printed in the box, or use entries: with the names of the entries.");
            return;
        }
        var entry = Entry.ofBox(form, Integer.parseInt(number));
        if (entry.isEmpty()) {
            faults.add(
                    pair.key(),
                    "%s has no box %s.".formatted(form.title(), number),
                    "Its boxes run from 1 to %d; check the number and the form."
                            .formatted(Arrays.stream(Entry.values())
                                    .flatMap(each -> each.box(form).stream())
                                    .mapToInt(Integer::intValue)
                                    .max()
                                    .orElseThrow()));
            return;
        }
        put(pair.key(), entry.get(), pair.value());
    }

    private void put(Scalar key, Entry entry, YamlNode value) {
        if (typed.containsKey(entry)) {
            faults.add(
                    key,
                    "\"%s\" is given twice, as an entry and as a box.".formatted(entry.key()),
                    "Keep one of the two.");
            return;
        }
        if (value instanceof Scalar text) {
            typed.put(entry, text(text));
        } else if (isIllegible(value)) {
            typed.put(entry, new Typed.Illegible());
        } else if (entry == Entry.SERVICE_OUTSIDE_US && value instanceof Sequence lines) {
            legs(lines);
        } else {
            faults.add(
                    value,
                    "The entry \"%s\" is %s.".formatted(entry.key(), value.kind()),
                    entry == Entry.SERVICE_OUTSIDE_US
                            ? "Write the text of the box, or a list of legs with departed, destination and arrived."
                            : "Write what is typed there, in quotation marks if it holds a colon or brackets.");
        }
    }

    /** {@code [illegible]}, with or without quotation marks, says that something stands there and cannot be made out. */
    private static boolean isIllegible(YamlNode value) {
        return value instanceof Sequence sequence
                && sequence.items().size() == 1
                && sequence.items().get(0) instanceof Scalar word
                && word.text().strip().equalsIgnoreCase("illegible");
    }

    private Typed text(Scalar scalar) {
        if (scalar.isNothing()) {
            return new Typed.Blank();
        }
        if (scalar.text().strip().equalsIgnoreCase("[illegible]")) {
            return new Typed.Illegible();
        }
        if (scalar.text().length() > LONGEST_ENTRY) {
            faults.add(
                    scalar,
                    "An entry holds %d characters.".formatted(scalar.text().length()),
                    "No box of the paper holds more than %d; check what was pasted here.".formatted(LONGEST_ENTRY));
            return new Typed.Illegible();
        }
        return new Typed.Text(scalar.text());
    }

    private void legs(Sequence lines) {
        var read = new ArrayList<Leg>();
        for (YamlNode line : lines.items()) {
            if (line instanceof Mapping mapping) {
                leg(mapping).ifPresent(read::add);
            } else {
                faults.add(
                        line,
                        "A leg of service abroad is %s.".formatted(line.kind()),
                        "Write { departed: ..., destination: ..., arrived: ... }, or the whole box as one text.");
            }
        }
        if (read.size() > 60) {
            faults.add(lines, "There are %d legs.".formatted(read.size()), "No paper holds so many; check the list.");
            return;
        }
        legs = read;
        if (read.isEmpty()) {
            typed.put(Entry.SERVICE_OUTSIDE_US, new Typed.Blank());
        }
    }

    private Optional<Leg> leg(Mapping mapping) {
        var keys = new Keys(mapping, LEG_KEYS, "a leg of service abroad", faults);
        var leg = new Leg(part(keys, "departed"), part(keys, "destination"), part(keys, "arrived"));
        return leg.text().isEmpty() ? Optional.empty() : Optional.of(leg);
    }

    private String part(Keys keys, String key) {
        return keys.text(key).orElse("").replace('\n', ' ');
    }
}
