package org.honorsdue.determination.nextsteps;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.honorsdue.determination.finding.FactWanted;
import org.honorsdue.reference.DateSpan;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.history.Campaign;
import org.honorsdue.service.fact.Assignment;
import org.honorsdue.service.fact.CampaignClaim;
import org.honorsdue.service.fact.Captivity;
import org.honorsdue.service.fact.Death;
import org.honorsdue.service.fact.HospitalAdmission;
import org.honorsdue.service.fact.OverseasStay;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.fact.Wound;

/**
 * When something must have happened, so that a company's reports are asked for one month and not for the whole war: a
 * wound in its month, a campaign in the months he was there for it, otherwise any month abroad.
 */
final class Occasions {
    private static final LocalDate WAR_BEGAN = LocalDate.of(1941, 12, 7);
    private static final LocalDate WAR_ENDED = LocalDate.of(1946, 3, 2);

    private static final Set<String> FIGHTING = Set.of("combat-duty", "assault");
    private static final LocalDate OCCUPATION_ENDS = LocalDate.of(1990, 10, 2);
    /** The campaign for which the Philippine Liberation Ribbon was given. */
    private static final DateSpan LIBERATION = new DateSpan(LocalDate.of(1944, 10, 17), LocalDate.of(1945, 9, 3));
    /** The campaign for which the Philippine Defense Ribbon was given. */
    private static final DateSpan DEFENSE = new DateSpan(LocalDate.of(1941, 12, 8), LocalDate.of(1942, 6, 15));

    private final ServiceFacts facts;
    private final Reference reference;

    Occasions(ServiceFacts facts, Reference reference) {
        this.facts = facts;
        this.reference = reference;
    }

    /**
     * The months of which any one would show the fact.
     *
     * @param about id of the award in question
     */
    Window of(FactWanted wanted, String about) {
        return named(wanted.about())
                .or(() -> event(wanted.kind()))
                .or(() -> timeOf(about))
                .orElseGet(this::abroad);
    }

    /** The time an award is for, as far as he was abroad in it. */
    private Optional<Window> timeOf(String award) {
        var dates = switch (award) {
            case "army-of-occupation-medal" ->
                reference.occupationAreas().stream()
                        .filter(area -> wasIn(area.gateMedal()))
                        .map(area -> area.dates().first())
                        .filter(first -> stays().anyMatch(stay -> !stay.last().isBefore(first)))
                        .min(LocalDate::compareTo)
                        .map(first -> new DateSpan(first, OCCUPATION_ENDS));
            case "philippine-liberation-ribbon" -> Optional.of(LIBERATION);
            case "philippine-defense-ribbon" -> Optional.of(DEFENSE);
            default -> Optional.<DateSpan>empty();
        };
        return dates.flatMap(span -> stays().map(span::intersection)
                .flatMap(Optional::stream)
                .findFirst()
                .map(there -> Window.of(there.first(), there.last())));
    }

    /** Whether a crossing may have gone to the theatre of that campaign medal. */
    private boolean wasIn(String medal) {
        return reference.theaters().stream()
                .filter(window -> window.medal().equals(medal))
                .anyMatch(window -> facts.every(OverseasStay.class).stream()
                        .anyMatch(stay ->
                                stay.theaters().isEmpty() || stay.theaters().contains(window.theater())));
    }

    /** From the first campaign the papers name to the last, as far as he was abroad. */
    private Optional<Window> fighting() {
        return facts.every(CampaignClaim.class).stream()
                .flatMap(claim -> reference.campaign(claim.campaign()).stream())
                .filter(campaign -> !campaign.blanket())
                .map(this::during)
                .reduce((one, other) -> new Window(
                        one.first().isBefore(other.first()) ? one.first() : other.first(),
                        one.last().isAfter(other.last()) ? one.last() : other.last()));
    }

    /** The company whose reports to ask for then, as best known; empty when no unit is known at all. */
    Optional<String> company(Window window) {
        var assignments = facts.every(Assignment.class);
        return assignments.stream()
                .filter(one -> !one.atSeparation() && overlaps(one, window))
                .findFirst()
                .or(() ->
                        assignments.stream().filter(one -> !one.atSeparation()).findFirst())
                .or(() -> assignments.stream().findFirst())
                .map(Assignment::designation);
    }

    /** Whether the only unit known is the one he came home with, which often is not the one he fought with. */
    boolean onlyUnitAtSeparation() {
        var assignments = facts.every(Assignment.class);
        return !assignments.isEmpty() && assignments.stream().allMatch(Assignment::atSeparation);
    }

    boolean noUnitKnown() {
        return facts.every(Assignment.class).isEmpty();
    }

    private static boolean overlaps(Assignment assignment, Window window) {
        var from = assignment.from().map(PartialDate::earliest).orElse(LocalDate.MIN);
        var to = assignment.to().map(PartialDate::latest).orElse(LocalDate.MAX);
        return !from.isAfter(window.last().atEndOfMonth())
                && !to.isBefore(window.first().atDay(1));
    }

    /** A campaign or a date that the words name. */
    private Optional<Window> named(String about) {
        var lower = about.toLowerCase(Locale.ROOT);
        var campaign = reference.campaigns().stream()
                .filter(one -> !one.blanket() && lower.contains(one.name().toLowerCase(Locale.ROOT)))
                .max(Comparator.comparingInt(one -> one.name().length()));
        if (campaign.isPresent()) {
            return Optional.of(during(campaign.get()));
        }
        var dates = DatesInWords.in(about);
        if (dates.isEmpty()) {
            return Optional.empty();
        }
        var first = dates.stream()
                .map(PartialDate::earliest)
                .min(LocalDate::compareTo)
                .orElseThrow();
        var last = dates.stream()
                .map(PartialDate::latest)
                .max(LocalDate::compareTo)
                .orElseThrow();
        var abroad = abroad();
        if (dates.size() == 1 && (lower.contains(" after ") || lower.contains(" since "))) {
            last = later(last, abroad.last().atEndOfMonth());
        } else if (dates.size() == 1 && (lower.contains(" before ") || lower.contains(" until "))) {
            first = first.isBefore(abroad.first().atDay(1))
                    ? first
                    : abroad.first().atDay(1);
        }
        return Optional.of(Window.of(first, last));
    }

    private Window during(Campaign campaign) {
        return stays().map(stay -> stay.intersection(campaign.ground()))
                .flatMap(Optional::stream)
                .findFirst()
                .map(span -> Window.of(span.first(), span.last()))
                .orElse(Window.of(campaign.ground().first(), campaign.ground().last()));
    }

    /** What the facts themselves date. */
    private Optional<Window> event(String kind) {
        if (FIGHTING.contains(kind)) {
            return fighting();
        }
        var dates = switch (kind) {
            case "wound-by-enemy", "medical-treatment" ->
                Stream.concat(
                                facts.every(Wound.class).stream().map(Wound::date),
                                facts.every(HospitalAdmission.class).stream().map(HospitalAdmission::date))
                        .flatMap(Optional::stream)
                        .toList();
            case "captivity" ->
                facts.every(Captivity.class).stream()
                        .flatMap(captivity -> captivity.from().stream())
                        .toList();
            case "death" ->
                facts.every(Death.class).stream()
                        .flatMap(death -> death.date().stream())
                        .toList();
            default -> List.<PartialDate>of();
        };
        return dates.stream().sorted().findFirst().map(date -> Window.of(date.earliest(), date.latest()));
    }

    /** All the months abroad; failing crossings, all the months of service in the war. */
    private Window abroad() {
        return stays().reduce((one, other) ->
                        new DateSpan(earlier(one.first(), other.first()), later(one.last(), other.last())))
                .map(span -> Window.of(span.first(), span.last()))
                .orElseGet(this::service);
    }

    private Window service() {
        var tours = facts.every(Tour.class);
        var first = tours.stream()
                .flatMap(tour -> tour.entered().stream())
                .map(PartialDate::earliest)
                .min(LocalDate::compareTo)
                .orElse(WAR_BEGAN);
        var last = tours.stream()
                .flatMap(tour -> tour.separated().stream())
                .map(PartialDate::latest)
                .max(LocalDate::compareTo)
                .orElse(WAR_ENDED);
        return Window.of(first, last);
    }

    private Stream<DateSpan> stays() {
        return facts.every(OverseasStay.class).stream()
                .flatMap(stay -> span(stay).stream())
                .sorted(Comparator.comparing(DateSpan::first).thenComparing(DateSpan::last));
    }

    private static Optional<DateSpan> span(OverseasStay stay) {
        var first = stay.arrived().or(stay::departed).map(PartialDate::earliest);
        var last = stay.left().or(stay::returned).map(PartialDate::latest);
        return first.isPresent() && last.isPresent() && !last.get().isBefore(first.get())
                ? Optional.of(new DateSpan(first.get(), last.get()))
                : Optional.empty();
    }

    private static LocalDate earlier(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? one : other;
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }
}
