package org.honorsdue.determination.crosscheck;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.honorsdue.determination.crosscheck.points.MonthRounding;
import org.honorsdue.determination.crosscheck.points.MonthsAndDays;
import org.honorsdue.determination.crosscheck.points.RatingDate;
import org.honorsdue.reference.DateSpan;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.Theater;
import org.honorsdue.reference.history.AssaultLanding;
import org.honorsdue.reference.history.Campaign;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.paper.Entry;

/**
 * A soldier whose paper is consistent because every box was worked out from one life, the way a clerk would: the dates
 * first, then what follows from them. A planted error changes one box and nothing else.
 *
 * <p>What no text fixes is drawn at random, so that the checks must bear with every usage: the rounding of months, the
 * score of May carried over, the day of sailing counted or not, lost time taken off or not.
 */
final class InventedSoldier {
    private static final LocalDate POINTS_FROM = LocalDate.of(1940, 9, 16);

    final Random random;
    final LocalDate entered;
    LocalDate inducted;
    LocalDate separated;
    Optional<Voyage> voyage = Optional.empty();
    LocalDate born;
    String arm = "Infantry";
    String specialty = "745";
    String specialtyTitle = "Rifleman";
    int lostDays;
    boolean goodConduct;
    boolean infantryBadge;
    boolean medicalBadge;
    final List<Campaign> campaigns = new ArrayList<>();
    int stars;
    boolean arrowhead;
    final List<LocalDate> wounds = new ArrayList<>();
    int purpleHearts;
    int bronzeStars;
    int silverStarOrderYear;
    int children;
    int dependents;
    Period continental = Period.ZERO;
    Period foreign = Period.ZERO;
    Period longevity = Period.ZERO;
    int musteringOutPay;
    int bars;
    int stripes;
    int score;
    RatingDate label = RatingDate.SECOND;
    String reason = "Conv of Govt RR 1-1 Demobilization";
    Optional<DateSpan> captivity = Optional.empty();
    Optional<Second> second = Optional.empty();
    boolean otherRibbon;

    /** Out and home again. */
    record Voyage(LocalDate departed, LocalDate arrived, Theater theater, LocalDate left, LocalDate returned) {
        DateSpan there() {
            return new DateSpan(arrived, left);
        }

        String destination() {
            return theater == Theater.EAME ? "ETO" : "Pacific Theater";
        }

        String medal() {
            return theater == Theater.EAME ? "eame-campaign-medal" : "asiatic-pacific-campaign-medal";
        }

        String otherMedal() {
            return theater == Theater.EAME ? "asiatic-pacific-campaign-medal" : "eame-campaign-medal";
        }
    }

    /** A re-enlistment with its own paper. */
    record Second(LocalDate entered, LocalDate separated, LocalDate born) {}

    /** @param seed the same seed gives the same soldier */
    InventedSoldier(long seed, Reference reference) {
        random = new Random(seed * 0x9E3779B97F4A7C15L + 0x1945);
        entered = LocalDate.of(1940, 10, 1).plusDays(between(0, 1520));
        inducted = entered.minusDays(chance(30) ? 14 : 0);
        born = entered.minusYears(between(18, 33)).minusDays(between(1, 364));
        service();
        work();
        battles(reference);
        decorations(reference);
        conduct();
        captivity();
        totals();
        family();
        score();
        separation(reference);
        again();
    }

    int between(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    boolean chance(int percent) {
        return random.nextInt(100) < percent;
    }

    private void service() {
        var firstOut = latest(LocalDate.of(1945, 6, 1), entered.plusMonths(14));
        if (chance(20)) {
            separated = firstOut.plusDays(between(0, 300));
            return;
        }
        var departed = latest(LocalDate.of(1942, 1, 10), entered.plusDays(between(110, 420)));
        var arrived = departed.plusDays(between(7, 30));
        var left = latest(LocalDate.of(1945, 5, 15), arrived.plusDays(between(60, 200)))
                .plusDays(between(0, 240));
        var returned = left.plusDays(between(7, 30));
        separated = returned.plusDays(between(2, 60));
        var theater = chance(55) ? Theater.EAME : Theater.ASIATIC_PACIFIC;
        if (theater == Theater.EAME && arrived.isAfter(LocalDate.of(1945, 11, 1))) {
            theater = Theater.ASIATIC_PACIFIC;
        }
        voyage = Optional.of(new Voyage(departed, arrived, theater, left, returned));
    }

    private void work() {
        switch (between(0, 4)) {
            case 0 -> duty("Field Artillery", "844", "Gun crewman, light artillery");
            case 1 -> duty("Quartermaster Corps", "405", "Clerk-typist");
            case 2 -> {
                duty("Medical Department", "657", "Litter bearer");
                medicalBadge = voyage.isPresent() && chance(50);
            }
            default -> infantryBadge = voyage.isPresent() && chance(70);
        }
    }

    private void duty(String branch, String number, String title) {
        arm = branch;
        specialty = number;
        specialtyTitle = title;
    }

    private void battles(Reference reference) {
        voyage.ifPresent(out -> reference.campaigns().stream()
                .filter(campaign -> campaign.theater() == out.theater() && !campaign.blanket())
                .filter(campaign -> campaign.ground().overlaps(out.there()))
                .filter(campaign -> chance(45))
                .limit(7)
                .forEach(campaigns::add));
        stars = campaigns.size();
        arrowhead = voyage.isPresent()
                && reference.assaults().stream()
                        .filter(AssaultLanding::credited)
                        .anyMatch(landing ->
                                campaigns.stream().anyMatch(one -> one.id().equals(landing.campaign()))
                                        && landing.dates().overlaps(voyage.get().there()))
                && chance(30);
    }

    private void decorations(Reference reference) {
        for (int i = 0; i < 2 && !campaigns.isEmpty() && chance(25); i++) {
            var campaign = campaigns.get(random.nextInt(campaigns.size()));
            var days =
                    campaign.ground().intersection(voyage.orElseThrow().there()).orElseThrow();
            var day = days.first().plusDays(random.nextInt((int) days.days()));
            if (!wounds.contains(day)) {
                wounds.add(day);
            }
        }
        purpleHearts = wounds.size();
        if (voyage.isPresent()) {
            bronzeStars = separated.isAfter(LocalDate.of(1944, 6, 1)) && chance(25) ? between(1, 2) : 0;
            silverStarOrderYear = chance(10) ? voyage.get().left().getYear() : 0;
        }
    }

    private void conduct() {
        lostDays = chance(6) ? between(2, 40) : 0;
        var war = new DateSpan(LocalDate.of(1941, 12, 7), LocalDate.of(1946, 3, 2));
        long inWar = new DateSpan(entered, separated)
                .intersection(war)
                .map(DateSpan::days)
                .orElse(0L);
        goodConduct = lostDays == 0 && inWar >= 366 && chance(50);
    }

    /** Captured in action and freed before the sailing home; no campaign named lies wholly inside. */
    private void captivity() {
        if (voyage.isEmpty() || campaigns.isEmpty() || !chance(5)) {
            return;
        }
        var there = voyage.get().there();
        var first = there.first().plusDays(there.days() / 2);
        var last = earliest(there.last(), LocalDate.of(1945, 8, 30));
        if (!first.isBefore(last)) {
            return;
        }
        captivity = Optional.of(new DateSpan(first, last));
        campaigns.removeIf(campaign -> !campaign.ground().first().isBefore(first)
                || !campaign.air().first().isBefore(first));
        stars = campaigns.size();
        arrowhead = false;
        wounds.removeIf(day -> !day.isBefore(first)
                || campaigns.stream().noneMatch(one -> one.ground().contains(day)));
        purpleHearts = wounds.size();
        if (campaigns.isEmpty()) {
            infantryBadge = false;
        }
    }

    private void totals() {
        voyage.ifPresent(out -> foreign = clerksTotal(
                out.departed(), chance(50) ? out.returned() : out.returned().plusDays(1)));
        var whole = clerksTotal(entered, chance(50) ? separated : separated.plusDays(1));
        int days = whole.getYears() * 360 + whole.getMonths() * 30 + whole.getDays();
        days -= foreign.getYears() * 360 + foreign.getMonths() * 30 + foreign.getDays();
        if (chance(50)) {
            days -= lostDays;
        }
        continental = Period.of(Math.max(0, days) / 360, Math.max(0, days) % 360 / 30, Math.max(0, days) % 30);
        longevity = whole.plusMonths(chance(20) ? between(0, 11) : 0).normalized();
        musteringOutPay = voyage.isPresent() ? 300 : 200;
        bars = (int) foreign.toTotalMonths() / 6;
        stripes = clerksTotal(entered, separated.minusDays(lostDays)).getYears() / 3;
    }

    private static Period clerksTotal(LocalDate from, LocalDate to) {
        return Period.between(from, to);
    }

    private void family() {
        children = chance(25) ? between(1, 3) : 0;
        dependents = children + (children > 0 || chance(30) ? 1 : 0);
    }

    private void score() {
        boolean early = separated.isBefore(RatingDate.SECOND.day());
        label = early ? RatingDate.FIRST : RatingDate.SECOND;
        var worked = early || chance(10) ? RatingDate.FIRST : RatingDate.SECOND;
        score = scoreAt(worked, MonthRounding.values()[between(0, 2)], chance(50) ? lostDays : 0);
    }

    /** The four factors added up, as the card had it. */
    int scoreAt(RatingDate date, MonthRounding rounding, int lost) {
        var end = earliest(date.day(), separated);
        var service = MonthsAndDays.between(latest(entered, POINTS_FROM), end);
        service = lost > 0 ? service.less(lost) : service;
        var overseas = voyage.map(out -> MonthsAndDays.between(out.departed(), earliest(out.returned(), end)))
                .orElse(MonthsAndDays.NONE);
        int items = stars + purpleHearts + bronzeStars + (silverStarOrderYear > 0 ? 1 : 0);
        return service.counted(rounding) + overseas.counted(rounding) + 5 * items + 12 * children;
    }

    /**
     * Whether the paper itself allows that number: by some usage and some number of children, as of the day it names, or
     * by some usage for this very family as of the other day. Such a number is no error that anybody could see.
     */
    boolean paperAllows(int points) {
        for (var rounding : MonthRounding.values()) {
            for (int lost : new int[] {0, lostDays}) {
                for (int fewer = children; fewer >= children - Math.min(3, dependents); fewer--) {
                    if (scoreAt(label, rounding, lost) - 12 * fewer == points) {
                        return true;
                    }
                }
                if (scoreAt(RatingDate.FIRST, rounding, lost) == points) {
                    return true;
                }
            }
        }
        return false;
    }

    /** A score too low for release that week needs another reason. */
    private void separation(Reference reference) {
        new CriticalScores(reference)
                .lowest(separated, false)
                .filter(figure -> score < figure.points())
                .ifPresent(figure -> reason = chance(50) ? "AR 615-362 Dependency" : "AR 615-361 CDD");
    }

    private void again() {
        if (chance(4) && separated.isBefore(LocalDate.of(1946, 3, 1))) {
            second = Optional.of(new Second(separated.plusDays(between(0, 30)), separated.plusMonths(14), born));
            reason = "Conv of Govt to enlist in the RA";
        }
    }

    ServiceFacts facts() {
        var soldier = Soldier.enlisted(entered.toString(), separated.toString())
                .inducted(inducted.toString())
                .named("Fairweather, Orrin T")
                .born(born.toString())
                .arm(arm)
                .specialty(specialty, specialtyTitle)
                .continental(continental.getYears(), continental.getMonths(), continental.getDays())
                .foreign(foreign.getYears(), foreign.getMonths(), foreign.getDays())
                .longevity(longevity.getYears(), longevity.getMonths(), longevity.getDays())
                .musteringOutPay(musteringOutPay)
                .score(score, label.day().toString())
                .dependents(dependents)
                .lostDays(lostDays)
                .reason(reason)
                .campaigns(campaigns.stream().map(Campaign::id).toArray(String[]::new));
        voyage.ifPresent(out -> {
            soldier.abroad(
                    out.departed().toString(),
                    out.arrived().toString(),
                    out.destination(),
                    out.theater(),
                    out.left().toString(),
                    out.returned().toString());
            if (otherRibbon) {
                soldier.ribbon(out.otherMedal(), 0);
            }
            if (stars >= 5 && seedIsEven()) {
                soldier.silverRibbon(out.medal(), stars / 5, stars % 5);
            } else {
                soldier.ribbon(out.medal(), stars, arrowhead ? 1 : 0);
            }
        });
        counted(soldier);
        second.ifPresent(next -> soldier.paper(
                        Tour.Category.ENLISTED,
                        next.entered().toString(),
                        next.separated().toString())
                .named("Fairweather, Orrin T")
                .born(next.born().toString()));
        return soldier.facts();
    }

    private boolean seedIsEven() {
        return entered.getDayOfMonth() % 2 == 0 && !arrowhead;
    }

    private void counted(Soldier soldier) {
        if (goodConduct) {
            soldier.award("army-good-conduct-medal");
        }
        if (infantryBadge) {
            soldier.awardIn(Entry.QUALIFICATIONS, "combat-infantryman-badge", 1);
        }
        if (medicalBadge) {
            soldier.awardIn(Entry.QUALIFICATIONS, "combat-medical-badge", 1);
        }
        if (purpleHearts > 0) {
            soldier.award("purple-heart", purpleHearts);
        }
        if (bronzeStars > 0) {
            soldier.award("bronze-star-medal", bronzeStars);
        }
        if (silverStarOrderYear > 0) {
            soldier.ordered(
                    "silver-star", Entry.DECORATIONS_AND_CITATIONS, 40, "HQ 999th Inf Div", silverStarOrderYear);
        }
        if (bars > 0) {
            soldier.award("overseas-service-bars", bars);
        }
        if (stripes > 0) {
            soldier.award("service-stripes", stripes);
        }
        wounds.forEach(day ->
                soldier.wounded(day.toString(), voyage.orElseThrow().theater() == Theater.EAME ? "ETO" : "Pacific"));
        captivity.ifPresent(
                held -> soldier.captive(held.first().toString(), held.last().toString()));
    }

    static LocalDate latest(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }

    static LocalDate earliest(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? one : other;
    }
}
