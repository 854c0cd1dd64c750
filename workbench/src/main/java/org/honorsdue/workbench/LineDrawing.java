package org.honorsdue.workbench;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.reference.Reference;
import org.honorsdue.service.fact.Assignment;
import org.honorsdue.service.fact.CampaignClaim;
import org.honorsdue.service.fact.Captivity;
import org.honorsdue.service.fact.OverseasStay;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.Station;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.fact.Wound;

/**
 * The service line as rows of spans on one scale of days.
 *
 * @param rows from the top
 * @param moments single days that matter, over all rows
 */
public record LineDrawing(LocalDate first, LocalDate last, List<Row> rows, List<Moment> moments) {
    public LineDrawing {
        rows = List.copyOf(rows);
        moments = List.copyOf(moments);
    }

    /** One row: what it is about, and its spans. */
    public record Row(String caption, String look, List<Span> spans) {
        public Row {
            spans = List.copyOf(spans);
        }
    }

    /** A stretch of days; both ends belong to it. */
    public record Span(LocalDate from, LocalDate to, String words, boolean sure) {}

    /** One day. */
    public record Moment(LocalDate day, String words) {}

    static LineDrawing of(Study study, Reference reference) {
        var rows = new ArrayList<Row>();
        var moments = new ArrayList<Moment>();
        var facts = study.facts();
        var service = new ArrayList<Span>();
        for (var tour : facts.every(Tour.class)) {
            span(service, tour.entered(), tour.separated(), "active service");
            tour.inducted().ifPresent(day -> moments.add(new Moment(day.earliest(), "inducted")));
            tour.entered().ifPresent(day -> moments.add(new Moment(day.earliest(), "entered active service")));
            tour.separated().ifPresent(day -> moments.add(new Moment(day.latest(), "separated")));
        }
        row(rows, "In service", "service", service);
        var abroad = new ArrayList<Span>();
        for (var stay : facts.every(OverseasStay.class)) {
            span(abroad, stay.departed().or(stay::arrived), stay.returned().or(stay::left), stay.destination());
            stay.departed().ifPresent(day -> moments.add(new Moment(day.earliest(), "sailed")));
            stay.returned().ifPresent(day -> moments.add(new Moment(day.latest(), "back in the United States")));
        }
        row(rows, "Abroad", "abroad", abroad);
        var units = new ArrayList<Span>();
        for (var unit : facts.every(Assignment.class)) {
            if (!unit.atSeparation()) {
                span(units, unit.from(), unit.to(), unit.designation());
            }
        }
        row(rows, "With", "unit", units);
        var places = new ArrayList<Span>();
        for (var station : facts.every(Station.class)) {
            span(places, station.from(), station.to(), station.place());
        }
        for (var captivity : facts.every(Captivity.class)) {
            span(
                    places,
                    captivity.from(),
                    captivity.to(),
                    "captivity" + captivity.place().map(place -> ", " + place).orElse(""));
        }
        row(rows, "At", "place", places);
        for (var wound : facts.every(Wound.class)) {
            wound.date().ifPresent(day -> moments.add(new Moment(day.earliest(), "wounded")));
        }
        var campaigns = new ArrayList<Span>();
        var wanted = new java.util.LinkedHashSet<String>();
        facts.every(CampaignClaim.class).forEach(claim -> wanted.add(claim.campaign()));
        study.findings().findings().stream()
                .filter(finding -> finding.standing() == Standing.AUTHORIZED)
                .flatMap(finding -> finding.devices().stream())
                .flatMap(device -> device.standsFor().stream())
                .forEach(name -> reference.campaigns().stream()
                        .filter(campaign -> campaign.name().equals(name))
                        .forEach(campaign -> wanted.add(campaign.id())));
        for (var campaign : reference.campaigns()) {
            if (wanted.contains(campaign.id())) {
                campaigns.add(
                        new Span(campaign.ground().first(), campaign.ground().last(), campaign.name(), true));
            }
        }
        for (var span : campaigns) {
            rows.add(new Row("Campaign", "campaign", List.of(span)));
        }
        return framed(rows, moments);
    }

    private static LineDrawing framed(List<Row> rows, List<Moment> moments) {
        var days = new ArrayList<LocalDate>();
        rows.stream()
                .filter(row -> !row.look.equals("campaign"))
                .forEach(row -> row.spans.forEach(span -> {
                    days.add(span.from);
                    days.add(span.to);
                }));
        moments.forEach(moment -> days.add(moment.day));
        var first = days.stream().min(LocalDate::compareTo).orElse(LocalDate.of(1941, 12, 7));
        var last = days.stream().max(LocalDate::compareTo).orElse(LocalDate.of(1946, 12, 31));
        var sorted = new ArrayList<>(moments);
        sorted.sort(java.util.Comparator.comparing(Moment::day));
        return new LineDrawing(first.minusDays(40), last.plusDays(40), rows, sorted);
    }

    private static void row(List<Row> rows, String caption, String look, List<Span> spans) {
        if (!spans.isEmpty()) {
            rows.add(new Row(caption, look, spans));
        }
    }

    private static void span(List<Span> spans, Optional<PartialDate> from, Optional<PartialDate> to, String words) {
        if (from.isPresent()
                && to.isPresent()
                && !to.get().latest().isBefore(from.get().earliest())) {
            spans.add(new Span(
                    from.get().earliest(),
                    to.get().latest(),
                    words,
                    from.get().isDay() && to.get().isDay()));
        }
    }

    /** Where a day lies, in thousandths of the width. */
    public long x(LocalDate day) {
        long whole = Math.max(1, ChronoUnit.DAYS.between(first, last));
        long at = ChronoUnit.DAYS.between(first, day.isBefore(first) ? first : day.isAfter(last) ? last : day);
        return Math.round(1000.0 * at / whole);
    }

    /** The first days of the years within the line. */
    public List<LocalDate> years() {
        var years = new ArrayList<LocalDate>();
        for (int year = first.getYear() + 1; year <= last.getYear(); year++) {
            years.add(LocalDate.of(year, 1, 1));
        }
        return years;
    }

    public boolean isEmpty() {
        return rows.isEmpty();
    }
}
