package org.honorsdue.determination.crosscheck;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.reference.DateSpan;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;
import org.honorsdue.service.fact.AwardClaim;
import org.honorsdue.service.fact.Conduct;
import org.honorsdue.service.fact.Death;
import org.honorsdue.service.fact.MilitaryGrade;
import org.honorsdue.service.fact.NoneTyped;
import org.honorsdue.service.fact.Origin;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.SeparationReason;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.paper.Entry;

/**
 * A Good Conduct Medal typed on the paper against time lost, character, convictions, grade and length of service.
 *
 * <p>The length: one year wholly inside 7 December 1941 to 2 March 1946, or three years from 27 August 1940. Death and
 * disability in line of duty shortened it, so a short service that ended so is not held against the paper.
 */
final class GoodConductCheck implements Check {
    static final String MEDAL = "army-good-conduct-medal";
    private static final Provenance LENGTH =
            new Provenance("Executive Orders 8809 and 9323, as quoted in 32 CFR 578.27, 2002 edition", Grade.TEXT);
    private static final Provenance CONDUCT = new Provenance(
            "32 CFR 578.27(a), 2002 edition (exemplary behavior, enlisted only); ratings wanted: from memory",
            Grade.TEXT);
    private static final DateSpan WAR = new DateSpan(LocalDate.of(1941, 12, 7), LocalDate.of(1946, 3, 2));
    private static final LocalDate THREE_YEARS_FROM = LocalDate.of(1940, 8, 27);
    private static final int YEAR = 365;
    private static final int THREE_YEARS = 3 * 365;

    @Override
    public String id() {
        return "good-conduct";
    }

    @Override
    public List<Crosscheck> compare(ServiceFacts facts) {
        var comparison = new Comparison(id(), LENGTH);
        var claims = facts.every(AwardClaim.class).stream()
                .filter(claim -> claim.award().equals(MEDAL))
                .toList();
        if (claims.isEmpty()) {
            return List.of();
        }
        conduct(facts, claims, comparison);
        officer(facts, claims, comparison);
        length(facts, claims, comparison);
        return comparison.results();
    }

    private static void conduct(ServiceFacts facts, List<AwardClaim> claims, Comparison comparison) {
        for (var conduct : facts.every(Conduct.class)) {
            var restsOn = new ArrayList<ServiceFact>(claims);
            restsOn.add(conduct);
            if (conduct.lostDays().orElse(0) > 0) {
                comparison.disagrees(
                        CONDUCT,
                        "A Good Conduct Medal is typed beside %s lost under Article of War 107; it stands only if a clean period lies apart from the lost time."
                                .formatted(Wording.days(conduct.lostDays().getAsInt())),
                        Set.of(MEDAL),
                        restsOn);
            }
            if (conduct.convictions().orElse(0) > 0) {
                comparison.disagrees(
                        CONDUCT,
                        "A Good Conduct Medal is typed beside %s by court-martial."
                                .formatted(Wording.many(conduct.convictions().getAsInt(), "conviction")),
                        Set.of(MEDAL),
                        restsOn);
            }
            conduct.character()
                    .filter(character -> !isExcellent(character))
                    .ifPresent(character -> comparison.disagrees(
                            CONDUCT,
                            "A Good Conduct Medal is typed, but the character is given as %s; excellent was the standard."
                                    .formatted(character),
                            Set.of(MEDAL),
                            restsOn));
        }
    }

    private static boolean isExcellent(String character) {
        var word = character.toLowerCase(Locale.ROOT);
        return !List.of("very good", "good", "fair", "poor", "unsatisfactory", "bad")
                .contains(word.strip());
    }

    /** Men promoted from the ranks brought the medal with them; then the paper tells of enlisted service somewhere. */
    private static void officer(ServiceFacts facts, List<AwardClaim> claims, Comparison comparison) {
        var tours = facts.every(Tour.class);
        boolean onlyOfficer = !tours.isEmpty()
                && tours.stream()
                        .allMatch(tour -> tour.category() == Tour.Category.OFFICER
                                || tour.category() == Tour.Category.WARRANT_OFFICER);
        if (!onlyOfficer) {
            return;
        }
        var restsOn = new ArrayList<ServiceFact>(claims);
        restsOn.addAll(tours);
        boolean told = OnePaper.allOf(facts).stream()
                .allMatch(paper -> paper.readWhole(Entry.REMARKS)
                        && paper.shows(Entry.ENTERED_ACTIVE_SERVICE)
                        && !enlistedBefore(paper));
        var says = "The Good Conduct Medal is for enlisted service, and this is an officer's paper";
        if (told) {
            comparison.disagrees(
                    CONDUCT, says + " that tells of no enlisted service.", Set.of(MEDAL), restsOn, Entry.GRADE);
        } else {
            comparison.cannotTell(says + "; his enlisted paper would tell.", Set.of(MEDAL), restsOn, Entry.GRADE);
        }
    }

    private static boolean enlistedBefore(OnePaper paper) {
        return paper.tour()
                        .filter(tour ->
                                tour.enlisted().isPresent() || tour.inducted().isPresent())
                        .isPresent()
                || paper.every(MilitaryGrade.class).stream()
                        .anyMatch(grade -> grade.category() == Tour.Category.ENLISTED)
                || paper.every(SeparationReason.class).stream()
                        .anyMatch(reason ->
                                reason.reason().toLowerCase(Locale.ROOT).contains("commission"))
                || paper.facts().all().stream()
                        .filter(fact -> !(fact instanceof NoneTyped))
                        .flatMap(fact -> fact.basis().origins().stream())
                        .anyMatch(origin ->
                                origin instanceof Origin.OnPaper typed && typed.entry() == Entry.PRIOR_SERVICE);
    }

    private static void length(ServiceFacts facts, List<AwardClaim> claims, Comparison comparison) {
        var restsOn = new ArrayList<ServiceFact>(claims);
        var tours = facts.every(Tour.class);
        restsOn.addAll(tours);
        boolean dated = !tours.isEmpty()
                && tours.stream()
                        .allMatch(tour ->
                                tour.entered().isPresent() && tour.separated().isPresent());
        if (!dated) {
            comparison.cannotTell(
                    "A Good Conduct Medal is typed; the dates of service that would bear it out were not supplied.",
                    Set.of(MEDAL),
                    restsOn,
                    Entry.ENTERED_ACTIVE_SERVICE,
                    Entry.SEPARATED);
            return;
        }
        long inWar = tours.stream()
                .mapToLong(tour -> inside(tour, WAR.first(), WAR.last()))
                .sum();
        long since1940 = tours.stream()
                .mapToLong(tour -> inside(tour, THREE_YEARS_FROM, LocalDate.MAX))
                .sum();
        if (inWar >= YEAR || since1940 >= THREE_YEARS) {
            comparison.agrees("The service is long enough for the Good Conduct Medal typed.", Set.of(MEDAL), restsOn);
            return;
        }
        if (cutShort(facts)) {
            comparison.cannotTell(
                    "A Good Conduct Medal is typed for %s of service; death or disability in line of duty made less than a year enough."
                            .formatted(Wording.days(inWar)),
                    Set.of(MEDAL),
                    restsOn,
                    Entry.REASON);
            return;
        }
        comparison.disagrees(
                "A Good Conduct Medal is typed, but only %s of service lie between 7 Dec 1941 and 2 Mar 1946: %s short of a year."
                        .formatted(Wording.days(inWar), Wording.days(YEAR - inWar)),
                Set.of(MEDAL),
                restsOn);
    }

    /** The most days of the tour that lie inside, both ends counted. */
    private static long inside(Tour tour, LocalDate first, LocalDate last) {
        var begin = tour.entered().map(PartialDate::earliest).orElse(LocalDate.MAX);
        var end = tour.separated().map(PartialDate::latest).orElse(LocalDate.MIN);
        var from = begin.isBefore(first) ? first : begin;
        var to = end.isAfter(last) ? last : end;
        return from.isAfter(to) ? 0 : new DateSpan(from, to).days();
    }

    private static boolean cutShort(ServiceFacts facts) {
        return !facts.every(Death.class).isEmpty()
                || facts.every(SeparationReason.class).stream().anyMatch(SeparationReasons::isDisability);
    }
}
