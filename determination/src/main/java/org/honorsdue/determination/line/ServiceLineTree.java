package org.honorsdue.determination.line;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.honorsdue.reference.DateSpan;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.paper.Entry;

/**
 * The service line as maps, lists, strings and booleans, for whoever writes it out as JSON. Dates are {@code yyyy-MM-dd},
 * {@code yyyy-MM} or {@code yyyy}; keys and order are stable.
 */
public final class ServiceLineTree {
    private ServiceLineTree() {}

    public static Map<String, Object> of(ServiceLine line) {
        var tree = new LinkedHashMap<String, Object>();
        line.extent().ifPresent(extent -> tree.put("extent", span(extent)));
        tree.put(
                "segments",
                line.segments().stream().map(ServiceLineTree::segment).toList());
        tree.put("stays", line.stays().stream().map(ServiceLineTree::stay).toList());
        tree.put("units", line.units().stream().map(ServiceLineTree::unit).toList());
        tree.put(
                "captivity",
                line.captivity().stream().map(ServiceLineTree::stretch).toList());
        tree.put(
                "campaigns",
                line.campaigns().stream().map(ServiceLineTree::campaign).toList());
        tree.put("windows", line.windows().stream().map(ServiceLineTree::window).toList());
        tree.put("events", line.events().stream().map(ServiceLineTree::event).toList());
        tree.put("gaps", line.gaps().stream().map(ServiceLineTree::gap).toList());
        tree.put(
                "contradictions",
                line.contradictions().stream()
                        .map(ServiceLineTree::contradiction)
                        .toList());
        return tree;
    }

    private static Map<String, Object> segment(ServiceLine.Segment segment) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("paper", segment.paper());
        tree.put("category", id(segment.category()));
        put(tree, segment.when());
        return tree;
    }

    private static Map<String, Object> stay(ServiceLine.Stay stay) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("destination", stay.destination());
        tree.put(
                "theaters",
                stay.theaters().stream().map(ServiceLineTree::id).sorted().toList());
        put(tree, stay.passage());
        tree.put("there", stretch(stay.there()));
        return tree;
    }

    private static Map<String, Object> unit(ServiceLine.UnitTime unit) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("designation", unit.designation());
        tree.put("at_separation", unit.atSeparation());
        put(tree, unit.when());
        return tree;
    }

    private static Map<String, Object> campaign(ServiceLine.CampaignTime campaign) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("campaign", campaign.campaign());
        tree.put("name", campaign.name());
        tree.put("dates", span(campaign.dates()));
        tree.put("his", campaign.his().stream().map(ServiceLineTree::span).toList());
        tree.put("named", campaign.named());
        campaign.credited().ifPresent(credited -> tree.put("credited", credited));
        return tree;
    }

    private static Map<String, Object> window(ServiceLine.Window window) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("award", window.award());
        tree.put("name", window.name());
        tree.put("dates", span(window.dates()));
        tree.put("his", window.his().stream().map(ServiceLineTree::span).toList());
        return tree;
    }

    private static Map<String, Object> event(ServiceLine.Event event) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("when", event.when().toString());
        tree.put("kind", event.kind().id());
        tree.put("says", event.says());
        return tree;
    }

    private static Map<String, Object> gap(ServiceLine.Gap gap) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("kind", gap.kind().id());
        tree.put("days", span(gap.days()));
        tree.put("says", gap.says());
        return tree;
    }

    private static Map<String, Object> contradiction(ServiceLine.Contradiction contradiction) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("check", contradiction.check());
        tree.put("says", contradiction.says());
        tree.put("entries", contradiction.entries().stream().map(Entry::key).toList());
        return tree;
    }

    private static void put(Map<String, Object> tree, Stretch stretch) {
        put(tree, "from", stretch.from());
        put(tree, "to", stretch.to());
    }

    private static Map<String, Object> stretch(Stretch stretch) {
        var tree = new LinkedHashMap<String, Object>();
        put(tree, stretch);
        return tree;
    }

    private static void put(Map<String, Object> tree, String key, Optional<PartialDate> date) {
        date.ifPresent(known -> tree.put(key, known.toString()));
    }

    private static List<String> span(DateSpan span) {
        return List.of(span.first().toString(), span.last().toString());
    }

    private static String id(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
