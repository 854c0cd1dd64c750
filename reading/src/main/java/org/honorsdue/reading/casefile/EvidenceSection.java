package org.honorsdue.reading.casefile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.honorsdue.reading.casefile.YamlNode.Mapping;
import org.honorsdue.reading.casefile.YamlNode.Scalar;
import org.honorsdue.reading.casefile.YamlNode.Sequence;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.history.Campaign;
import org.honorsdue.reference.law.Award;
import org.honorsdue.service.evidence.Evidence;

/** {@code evidence:}: what is known of the soldier from anything but the papers. */
final class EvidenceSection {
    private static final Map<String, List<String>> KEYS = new LinkedHashMap<>();

    static {
        KEYS.put("order", List.of("award", "reference", "date", "heroism"));
        KEYS.put("unit-assignment", List.of("unit", "from", "to"));
        KEYS.put("station", List.of("place", "from", "to"));
        KEYS.put("hospital-admission", List.of("cause", "date", "diagnosis"));
        KEYS.put("captivity", List.of("from", "to", "place"));
        KEYS.put("unit-credit", List.of("unit", "award", "reference", "from", "to"));
        KEYS.put("assault", List.of("campaign", "means", "date"));
        KEYS.put("conduct", List.of("character", "efficiency", "lost_days", "convictions"));
        KEYS.put("death", List.of("date", "manner"));
        KEYS.put("statement", List.of("by", "says"));
    }

    private final Reference reference;
    private final Faults faults;

    EvidenceSection(Reference reference, Faults faults) {
        this.reference = reference;
        this.faults = faults;
    }

    List<Evidence> read(YamlNode section) {
        if (!(section instanceof Sequence items)) {
            faults.add(
                    section,
                    "\"evidence\" is %s.".formatted(section.kind()),
                    "Write a list: each piece on a line of its own, after a dash.");
            return List.of();
        }
        var read = new ArrayList<Evidence>();
        for (YamlNode item : items.items()) {
            if (item instanceof Mapping mapping) {
                item(mapping).ifPresent(read::add);
            } else {
                faults.add(
                        item,
                        "A piece of evidence is %s.".formatted(item.kind()),
                        "Write its keys, as in { kind: statement, by: family, says: ... }.");
            }
        }
        return read;
    }

    private Optional<Evidence> item(Mapping mapping) {
        var kindGiven = mapping.pairs().stream()
                .filter(pair -> pair.key().text().equals("kind"))
                .map(YamlNode.Pair::value)
                .findFirst();
        if (kindGiven.isEmpty() || !(kindGiven.get() instanceof Scalar kind) || kind.isNothing()) {
            faults.add(
                    mapping,
                    "A piece of evidence lacks its kind.",
                    "Add kind: and one of %s.".formatted(String.join(", ", KEYS.keySet())));
            return Optional.empty();
        }
        var keys = KEYS.get(kind.text().strip());
        if (keys == null) {
            faults.add(
                    kind,
                    "There is no kind of evidence \"%s\".".formatted(Keys.shortened(kind.text())),
                    NearestName.hint(kind.text(), KEYS.keySet()));
            return Optional.empty();
        }
        var known = Stream.of(List.of("kind"), keys, List.of("source"))
                .flatMap(List::stream)
                .toList();
        String whatItIs = "evidence of kind %s".formatted(kind.text().strip());
        return Optional.of(evidence(kind.text().strip(), new Keys(mapping, known, whatItIs, faults)));
    }

    private Evidence evidence(String kind, Keys keys) {
        var source = keys.text("source");
        return switch (kind) {
            case "order" ->
                new Evidence.Order(
                        award(keys, "An order", "silver-star", false),
                        keys.text("reference"),
                        keys.date("date"),
                        keys.flag("heroism"),
                        source);
            case "unit-assignment" ->
                spanned(
                        keys,
                        span -> new Evidence.UnitAssignment(
                                keys.required("unit", "A unit assignment", "\"Btry B 999th FA Bn\""),
                                span.from(),
                                span.to(),
                                source));
            case "station" ->
                spanned(
                        keys,
                        span -> new Evidence.Station(
                                keys.required("place", "A station", "Germany"), span.from(), span.to(), source));
            case "hospital-admission" ->
                new Evidence.HospitalAdmission(
                        keys.choice(
                                "cause",
                                Evidence.HospitalAdmission.Cause.class,
                                Evidence.HospitalAdmission.Cause.NOT_STATED),
                        keys.date("date"),
                        keys.text("diagnosis"),
                        source);
            case "captivity" ->
                spanned(keys, span -> new Evidence.Captivity(span.from(), span.to(), keys.text("place"), source));
            case "unit-credit" ->
                spanned(
                        keys,
                        span -> new Evidence.UnitCredit(
                                keys.required("unit", "A unit credit", "\"999th Inf\""),
                                award(keys, "A unit credit", "distinguished-unit-citation", true),
                                keys.text("reference"),
                                span.from(),
                                span.to(),
                                source));
            case "assault" ->
                new Evidence.Assault(
                        campaignOr(keys.required("campaign", "An assault", "Normandy")),
                        keys.text("means"),
                        keys.date("date"),
                        source);
            case "conduct" ->
                new Evidence.Conduct(
                        keys.text("character"),
                        keys.text("efficiency"),
                        keys.number("lost_days"),
                        keys.number("convictions"),
                        source);
            case "death" ->
                new Evidence.Death(
                        keys.date("date"),
                        keys.choice("manner", Evidence.Death.Manner.class, Evidence.Death.Manner.NOT_STATED),
                        source);
            case "statement" ->
                new Evidence.Statement(
                        keys.text("by"), keys.required("says", "A statement", "\"He told of the crossing.\""), source);
            default -> throw new IllegalStateException("No reader for evidence of kind " + kind);
        };
    }

    private record Span(
            Optional<org.honorsdue.service.fact.PartialDate> from,
            Optional<org.honorsdue.service.fact.PartialDate> to) {}

    private static Evidence spanned(Keys keys, Function<Span, Evidence> make) {
        var span = new Span(keys.date("from"), keys.date("to"));
        keys.inOrder("from", span.from(), "to", span.to());
        return make.apply(span);
    }

    /** An award id of the table; where a campaign may stand instead, its id for its id or its name. */
    private String award(Keys keys, String whatItIs, String example, boolean orCampaign) {
        String id = keys.required("award", whatItIs, example);
        if (id.isEmpty() || reference.award(id).isPresent()) {
            return id;
        }
        if (orCampaign) {
            String campaign = campaignOr(id);
            if (reference.campaign(campaign).isPresent()) {
                return campaign;
            }
        }
        keys.scalar("award")
                .ifPresent(where -> faults.add(
                        where,
                        "There is no award \"%s\".".formatted(Keys.shortened(id)),
                        NearestName.of(
                                        id,
                                        reference.awards().stream()
                                                .map(Award::id)
                                                .toList())
                                .map("Did you mean \"%s\"?"::formatted)
                                .orElse("Write its id, as in %s.".formatted(example))));
        return id;
    }

    private String campaignOr(String given) {
        return reference.campaigns().stream()
                .filter(campaign ->
                        campaign.name().equalsIgnoreCase(given) || campaign.id().equalsIgnoreCase(given))
                .map(Campaign::id)
                .findFirst()
                .orElse(given);
    }
}
