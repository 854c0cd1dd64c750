package org.honorsdue.determination.crosscheck;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.honorsdue.determination.crosscheck.points.Children;
import org.honorsdue.determination.crosscheck.points.Listed;
import org.honorsdue.determination.crosscheck.points.MonthsAndDays;
import org.honorsdue.determination.crosscheck.points.PointsSheet;
import org.honorsdue.determination.crosscheck.points.PointsSolution;
import org.honorsdue.determination.crosscheck.points.PointsSolver;
import org.honorsdue.determination.crosscheck.points.RatingDate;
import org.honorsdue.determination.crosscheck.points.TimeServed;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.score.ScoreItem;
import org.honorsdue.service.fact.AwardClaim;
import org.honorsdue.service.fact.Conduct;
import org.honorsdue.service.fact.Dependents;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.PointsScore;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.paper.Entry;

/**
 * The points score against months of service, months overseas, stars, decorations and dependents.
 *
 * <p>What no text fixes is tried every way: three roundings of part-months, lost time taken off or not, no child to
 * three. A score dated 2 September 1945 may be the figure of 12 May carried over. That reading is tried with both kinds of
 * month rounded alike, and with children only where the paper shows dependents: one assumption, not two. If only it fits,
 * one cannot tell, because an item not typed explains the score as well.
 */
final class PointsScoreCheck implements Check {
    private static final Provenance RULE = new Provenance(
            "War Department readjustment plan of May 1945, as reported in Time, 21 May and 17 September 1945",
            Grade.SECONDARY);
    private static final LocalDate COUNTED_FROM = LocalDate.of(1940, 9, 16);
    private static final int WIDEST_PART_DATE = 45;

    private final Reference reference;
    /** What brought five points, each award anew: by a text, or only from memory. */
    private final Set<String> counting;

    private final Set<String> mayCount;

    PointsScoreCheck(Reference reference) {
        this.reference = reference;
        counting = items(reference, false);
        mayCount = items(reference, true);
    }

    private static Set<String> items(Reference reference, boolean fromMemory) {
        return reference.scoreItems().stream()
                .filter(ScoreItem::counts)
                .filter(item -> fromMemory == (item.provenance().grade() == Grade.MEMORY))
                .map(ScoreItem::item)
                .collect(Collectors.toUnmodifiableSet());
    }

    @Override
    public String id() {
        return "points-score";
    }

    @Override
    public List<Crosscheck> compare(ServiceFacts facts) {
        var comparison = new Comparison(id(), RULE);
        for (var score : facts.every(PointsScore.class)) {
            compare(new OnePaper(facts, score.paper()), score, comparison);
        }
        return comparison.results();
    }

    /** The whole calculation for a score; empty when the dates it needs are not there. */
    Optional<PointsSheet> sheet(ServiceFacts facts, PointsScore score) {
        var paper = new OnePaper(facts, score.paper());
        return lives(paper, score)
                .map(lives -> PointsSolver.solve(score.points(), listed(paper, lives.get(0)), children(paper), lives));
    }

    private void compare(OnePaper paper, PointsScore score, Comparison comparison) {
        var restsOn = restsOn(paper, score);
        var found = sheet(paper.facts(), score);
        if (found.isEmpty()) {
            comparison.cannotTell(
                    "The score of %d cannot be worked out: the date of entry or the crossings are not all there."
                            .formatted(score.points()),
                    Set.of(),
                    restsOn,
                    Entry.ENTERED_ACTIVE_SERVICE,
                    Entry.SERVICE_OUTSIDE_US);
            return;
        }
        var sheet = found.get();
        var named = namedDate(paper, score);
        var fitting = sheet.solutions().stream()
                .filter(PointsSolution::fits)
                .filter(solution -> solution.asOf() == named)
                .findFirst();
        if (fitting.isPresent()) {
            comparison.agrees(
                    "The score of %d is %s."
                            .formatted(sheet.score(), fitting.get().sum()),
                    Set.of(),
                    restsOn);
            return;
        }
        var touched = touched(paper);
        var carriedOver = sheet.solutions().stream()
                .filter(PointsSolution::fits)
                .filter(PointsSolution::sameRounding)
                .filter(solution ->
                        solution.children() == 0 || children(paper).dependents().isPresent())
                .findFirst();
        if (carriedOver.isPresent()) {
            comparison.cannotTell(
                    "%s Or the figure of %s was carried over: then it is %s."
                            .formatted(
                                    mismatch(sheet, named),
                                    Wording.day(carriedOver.get().asOf().day()),
                                    carriedOver.get().sum()),
                    touched,
                    restsOn);
            return;
        }
        if (!listIsWhole(paper)) {
            comparison.cannotTell(
                    mismatch(sheet, named)
                            + " The entries that list stars and decorations were not all supplied or read.",
                    touched,
                    restsOn,
                    Entry.BATTLES_AND_CAMPAIGNS,
                    Entry.DECORATIONS_AND_CITATIONS);
            return;
        }
        comparison.disagrees(
                mismatch(sheet, named) + otherWays(sheet), touched, restsOn, Entry.DECORATIONS_AND_CITATIONS);
    }

    /** A five-point item that is missing or too many may be any of these. */
    private Set<String> touched(OnePaper paper) {
        var touched = new TreeSet<String>();
        touched.add("purple-heart");
        paper.every(AwardClaim.class).stream()
                .map(AwardClaim::award)
                .filter(counting::contains)
                .forEach(touched::add);
        CampaignStars.of(paper, reference)
                .forEach(stars -> CampaignStars.medal(stars.theater()).ifPresent(touched::add));
        return touched;
    }

    private static Optional<PointsSolution> best(PointsSheet sheet, RatingDate named) {
        return sheet.solutions().stream()
                .filter(PointsSolution::childrenAllowed)
                .filter(solution -> solution.asOf() == named)
                .findFirst();
    }

    private static String mismatch(PointsSheet sheet, RatingDate named) {
        var typed = "The score of %d does not follow from the paper".formatted(sheet.score());
        var best = best(sheet, named);
        if (best.isEmpty()) {
            return typed
                    + ": no number of stars, decorations and children the paper allows makes up the rest, so a month count or a date is off.";
        }
        var solution = best.get();
        var listed = sheet.listed();
        var lists = listed.fewest() == listed.most()
                ? Integer.toString(listed.most())
                : listed.fewest() + " to " + listed.most();
        if (solution.unlisted() > 0) {
            return typed
                    + ": %s takes %s of five points, the paper lists %s. %d points too many: %s the clerk counted and did not type."
                            .formatted(
                                    solution.sum(),
                                    Wording.many(solution.items(), "item"),
                                    lists,
                                    5 * solution.unlisted(),
                                    solution.unlisted() == 1
                                            ? "a decoration or campaign star"
                                            : solution.unlisted() + " decorations or campaign stars");
        }
        return typed
                + ": %s leaves room for %s of five points, the paper lists %s. %d points too few: credited after the score was worked out, or not counted."
                        .formatted(
                                solution.sum(),
                                Wording.many(solution.items(), "item"),
                                lists,
                                -5 * solution.unlisted());
    }

    private static String otherWays(PointsSheet sheet) {
        var others = sheet.solutions().stream()
                .skip(1)
                .map(solution -> "%s (%s)"
                        .formatted(solution.sum(), Wording.day(solution.asOf().day())))
                .collect(Collectors.joining("; "));
        return others.isEmpty() ? "" : " Every other sum that gives it, likeliest first: " + others + ".";
    }

    private static boolean listIsWhole(OnePaper paper) {
        return paper.readWhole(Entry.BATTLES_AND_CAMPAIGNS) && paper.readWhole(Entry.DECORATIONS_AND_CITATIONS);
    }

    private static List<ServiceFact> restsOn(OnePaper paper, PointsScore score) {
        var facts = new ArrayList<ServiceFact>();
        facts.add(score);
        paper.tour().ifPresent(facts::add);
        facts.addAll(paper.stays());
        facts.addAll(paper.every(Dependents.class));
        return facts;
    }

    private static Children children(OnePaper paper) {
        return new Children(paper.first(Dependents.class)
                .map(dependents -> OptionalInt.of(dependents.number()))
                .orElse(OptionalInt.empty()));
    }

    private Listed listed(OnePaper paper, TimeServed life) {
        int fewest = 0;
        int most = 0;
        for (var stars : CampaignStars.of(paper, reference)) {
            fewest += stars.fewest();
            most += stars.most();
        }
        var perEntry = new LinkedHashMap<String, Map<Entry, Integer>>();
        var later = new TreeSet<String>();
        for (var claim : paper.every(AwardClaim.class)) {
            if (counting.contains(claim.award()) || mayCount.contains(claim.award())) {
                perEntry.computeIfAbsent(claim.award(), award -> new EnumMap<>(Entry.class))
                        .merge(claim.entry(), claim.count(), Integer::sum);
                if (claim.date()
                        .filter(date -> date.latest().isAfter(life.asOf().day()))
                        .isPresent()) {
                    later.add(claim.award());
                }
            }
        }
        for (var award : perEntry.entrySet()) {
            var counts = award.getValue().values();
            // The same medal in two entries may be told twice or be two medals.
            int told = counts.stream().mapToInt(Integer::intValue).max().orElse(0);
            most += counts.stream().mapToInt(Integer::intValue).sum();
            if (counting.contains(award.getKey()) && !later.contains(award.getKey())) {
                fewest += told;
            }
        }
        return new Listed(fewest, most);
    }

    private static RatingDate namedDate(OnePaper paper, PointsScore score) {
        boolean outBeforeSecond = paper.tour()
                .flatMap(Tour::separated)
                .filter(separated -> separated.latest().isBefore(RatingDate.SECOND.day()))
                .isPresent();
        boolean saysFirst = score.asOf()
                .filter(date -> date.latest().isBefore(LocalDate.of(1945, 8, 1)))
                .isPresent();
        return outBeforeSecond || saysFirst ? RatingDate.FIRST : RatingDate.SECOND;
    }

    private static Optional<List<TimeServed>> lives(OnePaper paper, PointsScore score) {
        var entered = paper.tour().flatMap(Tour::entered).filter(PointsScoreCheck::narrow);
        var absences = absences(paper);
        if (entered.isEmpty() || absences.isEmpty()) {
            return Optional.empty();
        }
        var separated = paper.tour().flatMap(Tour::separated).map(PartialDate::latest);
        int lost = paper.every(Conduct.class).stream()
                .mapToInt(conduct -> conduct.lostDays().orElse(0))
                .max()
                .orElse(0);
        var dates = namedDate(paper, score) == RatingDate.FIRST
                ? List.of(RatingDate.FIRST)
                : List.of(RatingDate.SECOND, RatingDate.FIRST);
        var lives = new ArrayList<TimeServed>();
        for (var date : dates) {
            var end = separated.filter(date.day()::isAfter).orElse(date.day());
            for (var begin : ends(entered.get())) {
                var service = MonthsAndDays.between(begin.isBefore(COUNTED_FROM) ? COUNTED_FROM : begin, end);
                for (var overseas : overseas(absences.get(), end)) {
                    lives.add(new TimeServed(date, service, overseas, false));
                    if (lost > 0) {
                        lives.add(new TimeServed(date, service.less(lost), overseas, true));
                    }
                }
            }
        }
        return Optional.of(List.copyOf(lives));
    }

    /** The absences, if every date is known to within a month or so. */
    private static Optional<List<PortToPort>> absences(OnePaper paper) {
        return PortToPort.of(paper)
                .filter(all -> all.stream().allMatch(one -> narrow(one.departed()) && narrow(one.back())));
    }

    private static List<MonthsAndDays> overseas(List<PortToPort> absences, LocalDate end) {
        var shortest = new ArrayList<MonthsAndDays>();
        var longest = new ArrayList<MonthsAndDays>();
        for (var absence : absences) {
            shortest.add(part(absence.departed().latest(), absence.back().earliest(), end));
            longest.add(part(absence.departed().earliest(), absence.back().latest(), end));
        }
        return absences.isEmpty()
                ? List.of(MonthsAndDays.NONE)
                : Stream.of(MonthsAndDays.sum(shortest), MonthsAndDays.sum(longest))
                        .distinct()
                        .toList();
    }

    private static MonthsAndDays part(LocalDate departed, LocalDate back, LocalDate end) {
        var first = departed.isBefore(COUNTED_FROM) ? COUNTED_FROM : departed;
        return MonthsAndDays.between(first, back.isBefore(end) ? back : end);
    }

    private static List<LocalDate> ends(PartialDate date) {
        return date.isDay() ? List.of(date.earliest()) : List.of(date.earliest(), date.latest());
    }

    private static boolean narrow(PartialDate date) {
        return date.latest().toEpochDay() - date.earliest().toEpochDay() <= WIDEST_PART_DATE;
    }
}
