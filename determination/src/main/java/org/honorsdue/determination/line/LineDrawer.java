package org.honorsdue.determination.line;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.honorsdue.determination.dossier.AssaultName;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.determination.line.ServiceLine.CampaignTime;
import org.honorsdue.determination.line.ServiceLine.Contradiction;
import org.honorsdue.determination.line.ServiceLine.Event;
import org.honorsdue.determination.line.ServiceLine.Gap;
import org.honorsdue.determination.line.ServiceLine.Segment;
import org.honorsdue.determination.line.ServiceLine.Stay;
import org.honorsdue.determination.line.ServiceLine.UnitTime;
import org.honorsdue.determination.line.ServiceLine.Window;
import org.honorsdue.reference.DateSpan;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.Theater;
import org.honorsdue.reference.history.Campaign;
import org.honorsdue.reference.history.OccupationArea;
import org.honorsdue.reference.history.TheaterWindow;
import org.honorsdue.reference.law.Award;
import org.honorsdue.reference.unit.UnitTables;
import org.honorsdue.service.fact.ArmFact;
import org.honorsdue.service.fact.Assault;
import org.honorsdue.service.fact.Assignment;
import org.honorsdue.service.fact.AwardClaim;
import org.honorsdue.service.fact.AwardOrder;
import org.honorsdue.service.fact.CampaignClaim;
import org.honorsdue.service.fact.Captivity;
import org.honorsdue.service.fact.Death;
import org.honorsdue.service.fact.HospitalAdmission;
import org.honorsdue.service.fact.OverseasStay;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.Station;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.fact.Wound;

/** Lays the facts of one soldier out in time. */
final class LineDrawer {
    /** Any active duty in it earns the Victory Medal: 32 CFR 578.47(a), 2006 edition. */
    private static final DateSpan VICTORY = new DateSpan(LocalDate.of(1941, 12, 7), LocalDate.of(1946, 12, 31));

    private static final String OCCUPATION = "army-of-occupation-medal";
    /** A few days without a unit are a voyage or a replacement depot, and no gap. */
    private static final int SHORTEST_GAP = 31;

    private final ServiceFacts facts;
    private final Findings findings;
    private final Reference reference;

    LineDrawer(ServiceFacts facts, Findings findings, Reference reference) {
        this.facts = facts;
        this.findings = findings;
        this.reference = reference;
    }

    ServiceLine draw() {
        var segments = segments();
        var stays = stays();
        var events = events();
        var extent = extent(segments, stays, events);
        return new ServiceLine(
                extent,
                segments,
                stays,
                units(),
                captivity(),
                campaigns(stays),
                extent.map(span -> windows(span, segments, stays)).orElse(List.of()),
                events,
                extent.map(span -> gaps(span, segments, stays)).orElse(List.of()),
                contradictions());
    }

    private List<Segment> segments() {
        return facts.every(Tour.class).stream()
                .map(tour -> new Segment(tour.paper(), tour.category(), new Stretch(tour.entered(), tour.separated())))
                .sorted(Comparator.comparing((Segment segment) -> segment.when().from(), LineDrawer::earlier)
                        .thenComparing(Segment::paper))
                .toList();
    }

    private List<Stay> stays() {
        var stays = new ArrayList<Stay>();
        for (var stay : facts.every(OverseasStay.class)) {
            stays.add(new Stay(
                    stay.destination(),
                    stay.theaters(),
                    new Stretch(
                            stay.departed().or(stay::arrived), stay.returned().or(stay::left)),
                    new Stretch(stay.arrived().or(stay::departed), stay.left().or(stay::returned))));
        }
        for (var station : facts.every(Station.class)) {
            var when = new Stretch(station.from(), station.to());
            stays.add(new Stay(station.place(), station.theaters(), when, when));
        }
        stays.sort(Comparator.comparing((Stay stay) -> stay.passage().from(), LineDrawer::earlier)
                .thenComparing(Stay::destination));
        return stays;
    }

    private List<UnitTime> units() {
        return facts.every(Assignment.class).stream()
                .map(one -> new UnitTime(one.designation(), new Stretch(one.from(), one.to()), one.atSeparation()))
                .sorted(Comparator.comparing(UnitTime::atSeparation)
                        .thenComparing(unit -> unit.when().from(), LineDrawer::earlier)
                        .thenComparing(UnitTime::designation))
                .toList();
    }

    private List<Stretch> captivity() {
        return facts.every(Captivity.class).stream()
                .map(one -> new Stretch(one.from(), one.to()))
                .sorted(Comparator.comparing(Stretch::from, LineDrawer::earlier))
                .toList();
    }

    /** Those the paper names, and those his units are credited with while he was in the theatre. */
    private List<CampaignTime> campaigns(List<Stay> stays) {
        var named = facts.every(CampaignClaim.class).stream()
                .map(CampaignClaim::campaign)
                .collect(Collectors.toSet());
        var campaigns = new ArrayList<CampaignTime>();
        for (var campaign : reference.campaigns()) {
            var dates = dates(campaign);
            var his = withoutCaptivity(his(stays, campaign.theater(), dates));
            var credited = credited(campaign, dates);
            boolean due = !his.isEmpty() && credited.filter(yes -> yes).isPresent();
            if (named.contains(campaign.id()) || due && !campaign.blanket()) {
                campaigns.add(new CampaignTime(
                        campaign.id(), campaign.name(), dates, his, named.contains(campaign.id()), credited));
            }
        }
        campaigns.sort(Comparator.comparing((CampaignTime one) -> one.dates().first())
                .thenComparing(one -> one.dates().last())
                .thenComparing(CampaignTime::campaign));
        return campaigns;
    }

    private DateSpan dates(Campaign campaign) {
        boolean air = facts.every(ArmFact.class).stream().anyMatch(ArmFact::airForces);
        return air ? campaign.air() : campaign.ground();
    }

    private static List<DateSpan> his(List<Stay> stays, Theater theater, DateSpan dates) {
        return joined(stays.stream()
                .filter(stay -> stay.theaters().isEmpty() || stay.theaters().contains(theater))
                .flatMap(stay -> stay.there().within(dates).stream()));
    }

    /** Days as a prisoner earn no campaign: 32 CFR 578.48(c), 2006 edition. */
    private List<DateSpan> withoutCaptivity(List<DateSpan> spans) {
        var left = spans;
        for (var captivity : facts.every(Captivity.class)) {
            if (captivity.from().isPresent() && captivity.to().isPresent()) {
                var first = captivity.from().get().latest().plusDays(1);
                var last = captivity.to().get().earliest().minusDays(1);
                left = left.stream().flatMap(span -> less(span, first, last)).toList();
            }
        }
        return left;
    }

    /** What of the span lies before the first day and after the last. */
    private static Stream<DateSpan> less(DateSpan span, LocalDate first, LocalDate last) {
        if (last.isBefore(first) || !span.overlaps(new DateSpan(first, last))) {
            return Stream.of(span);
        }
        var parts = new ArrayList<DateSpan>();
        if (span.first().isBefore(first)) {
            parts.add(new DateSpan(span.first(), first.minusDays(1)));
        }
        if (span.last().isAfter(last)) {
            parts.add(new DateSpan(last.plusDays(1), span.last()));
        }
        return parts.stream();
    }

    /** The spans in order of time, those that touch or overlap made one. */
    private static List<DateSpan> joined(Stream<DateSpan> spans) {
        var joined = new ArrayList<DateSpan>();
        spans.sorted(Comparator.comparing(DateSpan::first).thenComparing(DateSpan::last))
                .forEach(span -> {
                    var before =
                            joined.isEmpty() ? Optional.<DateSpan>empty() : Optional.of(joined.get(joined.size() - 1));
                    if (before.filter(one -> !span.first().isAfter(one.last().plusDays(1)))
                            .isPresent()) {
                        joined.set(joined.size() - 1, spanning(before.get(), span));
                    } else {
                        joined.add(span);
                    }
                });
        return List.copyOf(joined);
    }

    private Optional<Boolean> credited(Campaign campaign, DateSpan dates) {
        var lists = facts.every(Assignment.class).stream()
                .filter(one -> one.atSeparation() || new Stretch(one.from(), one.to()).mayOverlap(dates))
                .flatMap(one -> one.units().stream()
                        .flatMap(unit -> UnitTables.published().campaignsOf(unit).stream())
                        .limit(1))
                .toList();
        return lists.isEmpty()
                ? Optional.empty()
                : Optional.of(lists.stream().anyMatch(list -> list.campaigns().contains(campaign.id())));
    }

    private List<Window> windows(DateSpan extent, List<Segment> segments, List<Stay> stays) {
        var windows = new ArrayList<Window>();
        for (var theater : reference.theaters()) {
            add(
                    windows,
                    theater.medal(),
                    name(theater.medal()),
                    theater.dates(),
                    his(stays, theater.theater(), theater.dates()),
                    extent);
        }
        occupation(windows, stays, extent);
        add(windows, "ww2-victory-medal", name("ww2-victory-medal"), VICTORY, served(segments, VICTORY), extent);
        windows.sort(Comparator.comparing((Window window) -> window.dates().first())
                .thenComparing(Window::award)
                .thenComparing(Window::name));
        return windows;
    }

    /** One window for each clasp, from the first day in any of its areas to the last. */
    private void occupation(List<Window> windows, List<Stay> stays, DateSpan extent) {
        var clasps = reference.occupationAreas().stream()
                .map(OccupationArea::clasp)
                .distinct()
                .sorted()
                .toList();
        for (var clasp : clasps) {
            var areas = reference.occupationAreas().stream()
                    .filter(area -> area.clasp() == clasp)
                    .toList();
            var dates = areas.stream()
                    .map(OccupationArea::dates)
                    .reduce(LineDrawer::spanning)
                    .orElseThrow();
            var theater = reference.theaters().stream()
                    .filter(window -> window.medal().equals(areas.get(0).gateMedal()))
                    .map(TheaterWindow::theater)
                    .findFirst();
            var clasped = clasp.name().charAt(0) + clasp.name().substring(1).toLowerCase(Locale.ROOT) + " clasp";
            add(
                    windows,
                    OCCUPATION,
                    name(OCCUPATION) + ", " + clasped,
                    dates,
                    theater.map(where -> his(stays, where, dates)).orElse(List.of()),
                    extent);
        }
    }

    private static List<DateSpan> served(List<Segment> segments, DateSpan dates) {
        return joined(segments.stream()
                .filter(segment ->
                        segment.when().from().isPresent() && segment.when().to().isPresent())
                .flatMap(segment -> segment.when().within(dates).stream()));
    }

    private static void add(
            List<Window> windows, String award, String name, DateSpan dates, List<DateSpan> his, DateSpan extent) {
        if (!his.isEmpty() && dates.overlaps(extent)) {
            windows.add(new Window(award, name, dates, his));
        }
    }

    private String name(String award) {
        return reference.award(award).map(Award::name).orElse(award);
    }

    private List<Event> events() {
        var events = new ArrayList<Event>();
        for (var tour : facts.every(Tour.class)) {
            if (!tour.inducted().equals(tour.entered())) {
                add(events, tour.inducted(), Event.Kind.INDUCTED, "inducted", tour);
            }
            add(events, tour.entered(), Event.Kind.ENTERED, "entered active service", tour);
            add(events, tour.separated(), Event.Kind.SEPARATED, "separated", tour);
        }
        for (var stay : facts.every(OverseasStay.class)) {
            add(events, stay.departed(), Event.Kind.SAILED, "sailed for " + stay.destination(), stay);
            add(events, stay.arrived(), Event.Kind.LANDED, "reached " + stay.destination(), stay);
            add(events, stay.left(), Event.Kind.SAILED, "left " + stay.destination(), stay);
            add(events, stay.returned(), Event.Kind.RETURNED, "back in the United States", stay);
        }
        for (var wound : facts.every(Wound.class)) {
            add(
                    events,
                    wound.date(),
                    Event.Kind.WOUNDED,
                    "wounded" + wound.place().map(place -> ", " + place).orElse(""),
                    wound);
        }
        for (var admission : facts.every(HospitalAdmission.class)) {
            add(
                    events,
                    admission.date(),
                    Event.Kind.HOSPITAL,
                    "hospital" + admission.diagnosis().map(what -> ", " + what).orElse(""),
                    admission);
        }
        for (var captivity : facts.every(Captivity.class)) {
            var where = captivity.place().map(place -> ", " + place).orElse("");
            add(events, captivity.from(), Event.Kind.CAPTURED, "captured" + where, captivity);
            add(events, captivity.to(), Event.Kind.FREED, "freed" + where, captivity);
        }
        for (var assault : facts.every(Assault.class)) {
            add(events, assault.date(), Event.Kind.ASSAULT, "assault, " + AssaultName.of(assault, reference), assault);
        }
        for (var claim : facts.every(AwardClaim.class)) {
            add(events, claim.date(), Event.Kind.AWARD, name(claim.award()), claim);
        }
        for (var order : facts.every(AwardOrder.class)) {
            add(
                    events,
                    order.date(),
                    Event.Kind.ORDER,
                    name(order.award()) + order.reference().map(by -> ", " + by).orElse(""),
                    order);
        }
        for (var death : facts.every(Death.class)) {
            add(events, death.date(), Event.Kind.DIED, "died", death);
        }
        events.sort(Comparator.comparing(Event::when).thenComparing(Event::kind).thenComparing(Event::says));
        return events;
    }

    private static void add(
            List<Event> events, Optional<PartialDate> when, Event.Kind kind, String says, ServiceFact fact) {
        when.ifPresent(
                date -> events.add(new Event(date, kind, says, fact.basis().origins())));
    }

    private static Optional<DateSpan> extent(List<Segment> segments, List<Stay> stays, List<Event> events) {
        var days = Stream.of(
                        segments.stream().map(Segment::when),
                        stays.stream().map(Stay::passage),
                        events.stream().map(event -> new Stretch(Optional.of(event.when()), Optional.of(event.when()))))
                .flatMap(stretches -> stretches)
                .flatMap(stretch -> Stream.concat(stretch.from().stream(), stretch.to().stream()))
                .flatMap(date -> Stream.of(date.earliest(), date.latest()))
                .sorted()
                .toList();
        return days.isEmpty() ? Optional.empty() : Optional.of(new DateSpan(days.get(0), days.get(days.size() - 1)));
    }

    private List<Gap> gaps(DateSpan extent, List<Segment> segments, List<Stay> stays) {
        var gaps = new ArrayList<Gap>();
        between(
                gaps,
                Gap.Kind.BETWEEN_SERVICES,
                segments.stream().map(Segment::when).toList(),
                1,
                "between one service and the next");
        between(
                gaps,
                Gap.Kind.BETWEEN_PLACES,
                facts.every(OverseasStay.class).stream()
                        .filter(stay -> stay.returned().isEmpty())
                        .map(stay -> new Stretch(stay.departed(), stay.left()))
                        .toList(),
                SHORTEST_GAP,
                "on the way from one place abroad to the next, or at one that is not typed");
        withoutUnit(gaps, extent, stays);
        gaps.sort(Comparator.comparing((Gap gap) -> gap.days().first()).thenComparing(Gap::kind));
        return gaps;
    }

    private static void between(List<Gap> gaps, Gap.Kind kind, List<Stretch> stretches, int shortest, String says) {
        for (int i = 0; i + 1 < stretches.size(); i++) {
            var end = stretches.get(i).to().map(PartialDate::latest);
            var begin = stretches.get(i + 1).from().map(PartialDate::earliest);
            if (end.isPresent() && begin.isPresent()) {
                var first = end.get().plusDays(1);
                var last = begin.get().minusDays(1);
                if (!last.isBefore(first.plusDays(shortest - 1L))) {
                    gaps.add(new Gap(kind, new DateSpan(first, last), says));
                }
            }
        }
    }

    private void withoutUnit(List<Gap> gaps, DateSpan extent, List<Stay> stays) {
        var known = facts.every(Assignment.class).stream()
                .filter(one -> !one.atSeparation())
                .map(one -> new Stretch(one.from(), one.to()).within(extent))
                .flatMap(Optional::stream)
                .sorted(Comparator.comparing(DateSpan::first))
                .toList();
        for (var stay : stays) {
            stay.there().within(extent).ifPresent(there -> uncovered(gaps, there, known, stay.destination()));
        }
    }

    private static void uncovered(List<Gap> gaps, DateSpan there, List<DateSpan> known, String destination) {
        var from = there.first();
        for (var span : known) {
            if (span.first().isAfter(from)) {
                var until = span.first().minusDays(1);
                gap(gaps, from, until.isBefore(there.last()) ? until : there.last(), destination);
            }
            if (!span.last().isBefore(from)) {
                from = span.last().plusDays(1);
            }
            if (from.isAfter(there.last())) {
                return;
            }
        }
        gap(gaps, from, there.last(), destination);
    }

    private static void gap(List<Gap> gaps, LocalDate from, LocalDate to, String destination) {
        if (!to.isBefore(from.plusDays(SHORTEST_GAP - 1L))) {
            gaps.add(new Gap(
                    Gap.Kind.NO_UNIT,
                    new DateSpan(from, to),
                    "at " + destination + ", and no evidence says with which unit"));
        }
    }

    private List<Contradiction> contradictions() {
        return findings.crosschecks().stream()
                .filter(result -> result.outcome() == Crosscheck.Outcome.DISAGREES)
                .map(result -> new Contradiction(result.check(), result.says(), result.entries()))
                .toList();
    }

    private static DateSpan spanning(DateSpan one, DateSpan other) {
        return new DateSpan(
                one.first().isBefore(other.first()) ? one.first() : other.first(),
                one.last().isAfter(other.last()) ? one.last() : other.last());
    }

    /** A date that is not known comes last. */
    private static int earlier(Optional<PartialDate> one, Optional<PartialDate> other) {
        if (one.isEmpty() || other.isEmpty()) {
            return Boolean.compare(one.isEmpty(), other.isEmpty());
        }
        return one.get().compareTo(other.get());
    }
}
