package org.honorsdue.determination.crosscheck;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.BiPredicate;
import org.honorsdue.determination.crosscheck.points.RatingDate;
import org.honorsdue.reference.DateSpan;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.Theater;
import org.honorsdue.reference.history.Campaign;

/** One wrong box on an otherwise consistent paper, and the check that ought to name it. */
enum PlantedError {
    SCORE_FIVE_TOO_HIGH("points-score", (soldier, reference) -> {
        soldier.score += 5;
        return !soldier.paperAllows(soldier.score);
    }),
    SCORE_FIFTEEN_TOO_HIGH("points-score", (soldier, reference) -> {
        soldier.score += 15;
        return !soldier.paperAllows(soldier.score);
    }),
    SCORE_FIVE_TOO_LOW("points-score", (soldier, reference) -> {
        soldier.score -= 5;
        return !soldier.paperAllows(soldier.score);
    }),
    PURPLE_HEART_LEFT_OUT_OF_BOTH_ENTRIES("points-score", (soldier, reference) -> {
        boolean wounded = soldier.purpleHearts > 0;
        soldier.purpleHearts = 0;
        soldier.wounds.clear();
        return wounded && !soldier.paperAllows(soldier.score);
    }),
    ONE_BAR_TOO_MANY("overseas-bars", (soldier, reference) -> {
        soldier.bars++;
        return monthsFromNextBar(soldier) > 0.5;
    }),
    ONE_BAR_TOO_FEW("overseas-bars", (soldier, reference) -> {
        soldier.bars--;
        return soldier.bars > 0 && monthsFromNextBar(soldier) < 5.5;
    }),
    ONE_STRIPE_TOO_MANY("service-stripes", (soldier, reference) -> {
        soldier.stripes++;
        long days = soldier.separated.toEpochDay() - soldier.entered.toEpochDay();
        long longevity = Math.round(soldier.longevity.toTotalMonths() * 30.44) + soldier.longevity.getDays();
        return Math.max(days, longevity) < soldier.stripes * 1095L - 20;
    }),
    FOREIGN_SERVICE_A_MONTH_TOO_LONG("service-total", (soldier, reference) -> {
        soldier.foreign = soldier.foreign.plusMonths(1).normalized();
        return soldier.voyage.isPresent();
    }),
    CONTINENTAL_SERVICE_A_MONTH_TOO_LONG("service-total", (soldier, reference) -> {
        soldier.continental = soldier.continental.plusMonths(1).normalized();
        // A month of lost time, taken off or not, hides a month too many.
        return Math.abs(soldier.lostDays - 30) > 20;
    }),
    CONTINENTAL_SERVICE_A_YEAR_TOO_SHORT("foreign-plus-continental", (soldier, reference) -> {
        boolean long1 = soldier.continental.getYears() > 0;
        soldier.continental = soldier.continental.minusYears(1);
        return long1;
    }),
    LONGEVITY_A_YEAR_TOO_SHORT("longevity", (soldier, reference) -> {
        boolean whole = soldier.longevity.getYears() > 1;
        soldier.longevity = soldier.longevity.minusYears(1);
        return whole;
    }),
    MUSTERING_OUT_PAY_OF_A_MAN_AT_HOME("mustering-out-pay", (soldier, reference) -> {
        soldier.musteringOutPay = 200;
        return soldier.voyage.isPresent();
    }),
    MUSTERING_OUT_PAY_OF_A_MAN_ABROAD("mustering-out-pay", (soldier, reference) -> {
        soldier.musteringOutPay = 300;
        return soldier.voyage.isEmpty();
    }),
    ONE_STAR_TOO_MANY("star-count", (soldier, reference) -> {
        soldier.stars++;
        return soldier.voyage.isPresent();
    }),
    ONE_STAR_TOO_FEW("star-count", (soldier, reference) -> {
        soldier.stars--;
        return soldier.stars > 0;
    }),
    CAMPAIGN_BEFORE_HE_CAME(
            "campaign-dates",
            (soldier, reference) ->
                    swapIn(soldier, other(soldier, reference, soldier.voyage.map(InventedSoldier.Voyage::theater)))),
    CAMPAIGN_OF_THE_OTHER_THEATER(
            "campaign-dates",
            (soldier, reference) -> swapIn(
                    soldier,
                    other(
                            soldier,
                            reference,
                            soldier.voyage.map(
                                    out -> out.theater() == Theater.EAME ? Theater.ASIATIC_PACIFIC : Theater.EAME)))),
    ARROWHEAD_WITHOUT_ASSAULT("arrowhead", (soldier, reference) -> {
        soldier.arrowhead = true;
        return soldier.voyage.isPresent()
                && soldier.stars > 0
                && reference.assaults().stream()
                        .noneMatch(landing -> soldier.campaigns.stream()
                                        .anyMatch(one -> one.id().equals(landing.campaign()))
                                && landing.dates().overlaps(soldier.voyage.get().there()));
    }),
    ORDER_OLDER_THAN_HIS_SERVICE("order-reference", (soldier, reference) -> {
        boolean ordered = soldier.silverStarOrderYear > 0;
        soldier.silverStarOrderYear = soldier.entered.getYear() - 1;
        return ordered;
    }),
    INFANTRY_BADGE_ON_A_CLERKS_PAPER("badge-specialty", (soldier, reference) -> {
        soldier.infantryBadge = true;
        return soldier.voyage.isPresent() && !soldier.arm.equals("Infantry");
    }),
    INFANTRY_BADGE_WITHOUT_SERVICE_ABROAD("badge-specialty", (soldier, reference) -> {
        soldier.infantryBadge = true;
        return soldier.voyage.isEmpty() && soldier.second.isEmpty();
    }),
    GOOD_CONDUCT_BESIDE_LOST_TIME("good-conduct", (soldier, reference) -> {
        soldier.goodConduct = true;
        return soldier.lostDays > 0;
    }),
    BIRTH_TEN_YEARS_LATE("age", (soldier, reference) -> {
        boolean young = soldier.born.plusYears(26).isAfter(soldier.entered);
        soldier.born = soldier.born.plusYears(10);
        return young;
    }),
    WOUND_BEFORE_THE_SAILING(
            "wound-dates",
            (soldier, reference) ->
                    moveWound(soldier, soldier.voyage.map(out -> out.departed().minusDays(20)))),
    WOUND_AFTER_THE_RETURN(
            "wound-dates",
            (soldier, reference) ->
                    moveWound(soldier, soldier.voyage.map(out -> out.returned().plusDays(1)))),
    WOUND_IN_A_CAMPAIGN_NOT_NAMED("wound-dates", (soldier, reference) -> {
        if (soldier.wounds.isEmpty()) {
            return false;
        }
        var day = soldier.wounds.get(0);
        boolean removed = soldier.campaigns.removeIf(
                one -> one.ground().contains(day) || one.air().contains(day));
        soldier.stars = soldier.campaigns.size();
        return removed;
    }),
    PURPLE_HEART_MISSING_FOR_A_WOUND("wounds-against-purple-heart", (soldier, reference) -> {
        soldier.purpleHearts--;
        return soldier.purpleHearts >= 0;
    }),
    FREED_AFTER_THE_RETURN("prisoner-dates", (soldier, reference) -> {
        soldier.captivity = soldier.captivity.map(held -> new DateSpan(
                held.first(), soldier.voyage.orElseThrow().returned().plusDays(1)));
        return soldier.captivity.isPresent();
    }),
    CAMPAIGN_WHILE_A_PRISONER("prisoner-dates", (soldier, reference) -> {
        var inside = soldier.captivity.flatMap(held -> reference.campaigns().stream()
                .filter(one -> one.theater() == soldier.voyage.orElseThrow().theater() && !one.blanket())
                .filter(one -> one.ground().first().isAfter(held.first())
                        && one.air().first().isAfter(held.first())
                        && one.ground().last().isBefore(held.last())
                        && one.air().last().isBefore(held.last()))
                .findFirst());
        inside.ifPresent(campaign -> {
            soldier.campaigns.add(campaign);
            soldier.stars++;
        });
        return inside.isPresent();
    }),
    SCORE_BELOW_THE_CRITICAL("critical-score", (soldier, reference) -> {
        boolean below = new CriticalScores(reference)
                .lowest(soldier.separated, false)
                .filter(figure -> soldier.score < figure.points())
                .isPresent();
        soldier.reason = "Conv of Govt RR 1-1 Demobilization";
        boolean young = soldier.born.plusYears(35).isAfter(soldier.separated);
        return below && young && soldier.dependents < 3 && soldier.captivity.isEmpty() && soldier.second.isEmpty();
    }),
    RETURN_AFTER_THE_SEPARATION("date-order", (soldier, reference) -> {
        soldier.voyage = soldier.voyage.map(out -> new InventedSoldier.Voyage(
                out.departed(), out.arrived(), out.theater(), out.left(), soldier.separated.plusDays(3)));
        return soldier.voyage.isPresent();
    }),
    INDUCTION_AFTER_ENTRY("date-order", (soldier, reference) -> {
        soldier.inducted = soldier.entered.plusYears(1);
        return true;
    }),
    RIBBON_OF_A_THEATER_HE_NEVER_SAW("theater-ribbon", (soldier, reference) -> {
        soldier.otherRibbon = true;
        return soldier.voyage.isPresent();
    }),
    SECOND_SERVICE_BEGINS_BEFORE_THE_FIRST_ENDS("paper-against-paper", (soldier, reference) -> {
        soldier.second = soldier.second.map(
                next -> new InventedSoldier.Second(soldier.separated.minusDays(40), next.separated(), next.born()));
        return soldier.second.isPresent();
    }),
    TWO_BIRTHS_ON_TWO_PAPERS("paper-against-paper", (soldier, reference) -> {
        soldier.second = soldier.second.map(next -> new InventedSoldier.Second(
                next.entered(), next.separated(), next.born().plusYears(1)));
        return soldier.second.isPresent();
    });

    /** The check that ought to name the error. */
    final String check;

    private final BiPredicate<InventedSoldier, Reference> plant;

    PlantedError(String check, BiPredicate<InventedSoldier, Reference> plant) {
        this.check = check;
        this.plant = plant;
    }

    /** Makes the error; false when this soldier's paper has no room for it. */
    boolean plantIn(InventedSoldier soldier, Reference reference) {
        return plant.test(soldier, reference);
    }

    /** How far the months abroad stand beyond the last bar, in months. */
    private static double monthsFromNextBar(InventedSoldier soldier) {
        double beyond = soldier.foreign.toTotalMonths() % 6 + soldier.foreign.getDays() / 30.0;
        return soldier.voyage.isEmpty() ? 0 : 6 - beyond;
    }

    /** A campaign that he can have had no part in, by a month at least. */
    private static Optional<Campaign> other(InventedSoldier soldier, Reference reference, Optional<Theater> theater) {
        return reference.campaigns().stream()
                .filter(one -> theater.equals(Optional.of(one.theater())) && !one.blanket())
                .filter(one -> apart(one.ground(), soldier) && apart(one.air(), soldier)
                        || one.theater() != soldier.voyage.orElseThrow().theater())
                .max(Comparator.comparing(one -> one.ground().first()));
    }

    private static boolean apart(DateSpan dates, InventedSoldier soldier) {
        return dates.last().isBefore(soldier.voyage.orElseThrow().arrived())
                || dates.first().isAfter(soldier.voyage.orElseThrow().left());
    }

    private static boolean swapIn(InventedSoldier soldier, Optional<Campaign> wrong) {
        if (wrong.isEmpty() || soldier.campaigns.isEmpty()) {
            return false;
        }
        soldier.campaigns.set(0, wrong.get());
        return true;
    }

    private static boolean moveWound(InventedSoldier soldier, Optional<LocalDate> day) {
        if (day.isEmpty() || soldier.wounds.isEmpty() || !day.get().isBefore(RatingDate.SECOND.day())) {
            return false;
        }
        soldier.wounds.set(0, day.get());
        return true;
    }
}
