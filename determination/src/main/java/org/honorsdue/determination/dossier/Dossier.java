package org.honorsdue.determination.dossier;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.honorsdue.reference.Theater;
import org.honorsdue.reference.history.Place;
import org.honorsdue.reference.paper.MilitarySpecialty;
import org.honorsdue.service.Sex;
import org.honorsdue.service.fact.ArmFact;
import org.honorsdue.service.fact.Assignment;
import org.honorsdue.service.fact.AwardClaim;
import org.honorsdue.service.fact.AwardOrder;
import org.honorsdue.service.fact.Basis;
import org.honorsdue.service.fact.CampaignClaim;
import org.honorsdue.service.fact.Captivity;
import org.honorsdue.service.fact.Death;
import org.honorsdue.service.fact.MilitaryGrade;
import org.honorsdue.service.fact.NoneTyped;
import org.honorsdue.service.fact.Origin;
import org.honorsdue.service.fact.OverseasStay;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.PriorService;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.ServiceTotal;
import org.honorsdue.service.fact.SexFact;
import org.honorsdue.service.fact.Specialty;
import org.honorsdue.service.fact.Station;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.fact.UnitCredit;
import org.honorsdue.service.fact.Wound;
import org.honorsdue.service.paper.Entry;
import org.jspecify.annotations.Nullable;

/**
 * One soldier's facts in the shape in which the regulations ask for them. Nothing in it depends on the order in which
 * the facts were read. Safe to read from one thread at a time or from many: what is filled in later is always the same.
 */
public final class Dossier {
    /** The longest crossing that a missing date may hide, in days. Common practice, no source. */
    private static final long CROSSING = 60;

    private static final long MONTH = 31;

    private static final Pattern HE = Pattern.compile("\\b(he|his|him|himself|man|men)\\b");

    private static final Comparator<ServiceFact> BY_PLACE_READ =
            Comparator.<ServiceFact>comparingLong(Dossier::placeRead).thenComparing(ServiceFact::toString);

    private final ServiceFacts facts;
    private final History history;
    private final Optional<Death> death;
    private final List<Duty> duties;
    private final List<Abroad> abroad;
    private final List<CampaignClaim> campaigns;
    private final Map<String, Claims> claims;
    private final Map<String, List<AwardOrder>> orders;
    private final Map<String, List<UnitCredit>> credits;
    private final List<MilitarySpecialty> specialties;
    private final boolean airman;
    private final boolean armKnown;
    private final boolean overseasUnknown;
    private final Map<Class<?>, Object> workedOut = new ConcurrentHashMap<>(4);
    private @Nullable HomeTime home;

    public Dossier(ServiceFacts facts, History history) {
        this.facts = facts;
        this.history = history;
        death = every(Death.class).stream().findFirst();
        duties = duties(every(Tour.class));
        abroad = allAbroad();
        overseasUnknown = isOverseasUnknown();
        campaigns = allCampaigns();
        claims = allClaims();
        orders = byKey(sureFirst(every(AwardOrder.class)), AwardOrder::award);
        credits = byKey(every(UnitCredit.class), UnitCredit::award);
        specialties = specialties();
        boolean air = false;
        boolean known = false;
        for (var arm : facts.every(ArmFact.class)) {
            known = true;
            air |= arm.airForces();
        }
        airman = air;
        armKnown = known;
    }

    public ServiceFacts facts() {
        return facts;
    }

    public History history() {
        return history;
    }

    /** All facts of one kind, in the order in which they stand on the papers and then in the evidence. */
    public <T extends ServiceFact> List<T> every(Class<T> kind) {
        var all = facts.every(kind);
        if (all.size() < 2) {
            return all;
        }
        var sorted = new ArrayList<>(all);
        sorted.sort(BY_PLACE_READ);
        return sorted;
    }

    /** The same facts in the order in which they stand on the papers and then in the evidence. */
    public ServiceFacts inPlace() {
        var sorted = new ArrayList<>(facts.all());
        sorted.sort(BY_PLACE_READ);
        var papers = new ArrayList<Set<Entry>>();
        for (int paper = 1; paper <= facts.papers(); paper++) {
            var entries = EnumSet.noneOf(Entry.class);
            for (var entry : facts.suppliedEntries()) {
                if (facts.supplied(paper, entry)) {
                    entries.add(entry);
                }
            }
            papers.add(entries);
        }
        return new ServiceFacts(sorted, facts.unread(), facts.conflicts(), papers);
    }

    private static long placeRead(ServiceFact fact) {
        var origins = fact.basis().origins();
        if (origins.isEmpty()) {
            return Long.MAX_VALUE;
        }
        var origin = origins.get(0);
        if (origin instanceof Origin.OnPaper typed) {
            return ((long) typed.paper() << 32)
                    + ((long) typed.entry().ordinal() << 20)
                    + Math.min(typed.start(), 0xFFFFF);
        }
        if (origin instanceof Origin.InEvidence item) {
            return (1L << 60) + item.item();
        }
        return -1;
    }

    /**
     * Something that another part works out from this dossier: worked out once and kept. Two threads that ask at once
     * work out the same.
     */
    public <T> T once(Class<T> kind, Function<Dossier, T> work) {
        var known = workedOut.get(kind);
        if (known == null) {
            known = work.apply(this);
            workedOut.put(kind, known);
        }
        return kind.cast(known);
    }

    // Service

    /** Active service paper by paper, earliest first. Empty when no paper gives dates. */
    public List<Duty> duties() {
        return duties;
    }

    private List<Duty> duties(List<Tour> tours) {
        var built = new ArrayList<Duty>(tours.size());
        for (var tour : tours) {
            built.add(new Duty(tour.paper(), category(tour), days(tour), tour.basis()));
        }
        for (var prior : every(PriorService.class)) {
            addPrior(prior, built);
        }
        if (built.size() > 1) {
            built.sort(Comparator.<Duty>comparingLong(duty -> duty.days().firstEarliest())
                    .thenComparingLong(duty -> duty.days().lastLatest())
                    .thenComparingInt(Duty::paper));
        }
        return built;
    }

    /**
     * Earlier active service that a paper mentions, unless it is the tour of another paper told again. An enlisted man's
     * earlier service is taken as enlisted; an officer's may have been either.
     */
    private static void addPrior(PriorService prior, List<Duty> built) {
        if (prior.duty() != PriorService.Duty.ACTIVE
                || (prior.from().isEmpty() && prior.to().isEmpty())) {
            return;
        }
        var days = Stretch.of(prior.from(), prior.to(), Stretch.LONG_AGO, Stretch.LONG_AFTER);
        var category = Tour.Category.NOT_SHOWN;
        for (var duty : built) {
            if (duty.days().possibleDays(days.firstEarliest(), days.lastLatest()) > 1) {
                return;
            }
            if (duty.paper() == prior.paper() && duty.enlisted()) {
                category = Tour.Category.ENLISTED;
            }
        }
        built.add(new Duty(0, category, days, prior.basis()));
    }

    private Stretch days(Tour tour) {
        var last = tour.separated().isPresent() ? tour.separated() : death.flatMap(Death::date);
        var first = tour.entered().isPresent() ? tour.entered() : tour.inducted();
        if (first.isEmpty() && tour.enlisted().isPresent()) {
            // A man could enlist in the reserve long before he was called, so the day of enlistment is only the
            // earliest.
            long earliest = Stretch.earliest(tour.enlisted().get());
            var known = Stretch.of(Optional.empty(), last, earliest, Stretch.LONG_AFTER);
            return Stretch.between(earliest, known.firstLatest(), known.lastEarliest(), known.lastLatest());
        }
        return Stretch.of(first, last, Stretch.LONG_AGO, Stretch.LONG_AFTER);
    }

    private Tour.Category category(Tour tour) {
        if (tour.category() != Tour.Category.NOT_SHOWN) {
            return tour.category();
        }
        for (var grade : every(MilitaryGrade.class)) {
            if (grade.paper() == tour.paper() && grade.category() != Tour.Category.NOT_SHOWN) {
                return grade.category();
            }
        }
        return Tour.Category.NOT_SHOWN;
    }

    /** Whether he surely was on active service on some day of the span, by the dates of a paper. */
    public Optional<Duty> onDuty(long first, long last) {
        for (var duty : duties) {
            if (duty.days().surelyTouches(first, last)) {
                return Optional.of(duty);
            }
        }
        return Optional.empty();
    }

    /**
     * What shows that he served on some day of the span: a paper's dates, time abroad, or a dated membership of a unit.
     *
     * @param words as a phrase that can follow a colon
     */
    public record Served(Supplier<String> words, Basis basis) {}

    public Optional<Served> served(long first, long last) {
        var duty = onDuty(first, last);
        if (duty.isPresent()) {
            var days = duty.get().days();
            return Optional.of(new Served(
                    () -> "on active service from " + days.inWords(), duty.get().basis()));
        }
        for (var stay : abroad) {
            if (stay.there().surelyTouches(first, last)) {
                return Optional.of(new Served(stay::inWords, stay.basis()));
            }
        }
        for (var assignment : every(Assignment.class)) {
            if (assignment.from().isPresent() || assignment.to().isPresent()) {
                var days = Stretch.of(assignment.from(), assignment.to(), Stretch.LONG_AGO, Stretch.LONG_AFTER);
                if (days.surelyTouches(first, last)) {
                    return Optional.of(new Served(
                            () -> "with %s from %s".formatted(assignment.designation(), days.inWords()),
                            assignment.basis()));
                }
            }
        }
        return Optional.empty();
    }

    /** Whether the clerk typed that there is none in that entry of some paper. */
    public boolean noneTyped(Entry entry) {
        for (var none : facts.every(NoneTyped.class)) {
            if (none.entry() == entry) {
                return true;
            }
        }
        return false;
    }

    /** Whether he may have been on active service on some day of the span. */
    public boolean maybeOnDuty(long first, long last) {
        if (duties.isEmpty()) {
            return true;
        }
        for (var duty : duties) {
            if (duty.days().mayTouch(first, last)) {
                return true;
            }
        }
        return false;
    }

    /** The last day of his last tour, when a paper gives the day. */
    public Optional<Long> lastDay() {
        Optional<Long> last = Optional.empty();
        for (var duty : duties) {
            var days = duty.days();
            if (days.lastEarliest() == days.lastLatest() && (last.isEmpty() || last.get() < days.lastLatest())) {
                last = Optional.of(days.lastLatest());
            }
        }
        return last;
    }

    public Optional<Death> death() {
        return death;
    }

    public boolean airman() {
        return airman;
    }

    public boolean armKnown() {
        return armKnown;
    }

    public Optional<SexFact> sex() {
        return every(SexFact.class).stream().findFirst();
    }

    public boolean maybeWoman() {
        return sex().map(fact -> fact.sex() == Sex.FEMALE).orElse(false);
    }

    /** A sentence of ours about the soldier, in the words for a woman if she is one. */
    public String spokenOf(String words) {
        if (!maybeWoman()) {
            return words;
        }
        return HE.matcher(words).replaceAll(found -> switch (found.group()) {
            case "he" -> "she";
            case "his" -> "her";
            case "him" -> "her";
            case "himself" -> "herself";
            case "man" -> "woman";
            default -> "women";
        });
    }

    /** Whether the arm of some paper has the word in it, as in {@code Infantry}. */
    public boolean armed(String word) {
        for (var arm : facts.every(ArmFact.class)) {
            if (arm.arm().contains(word)) {
                return true;
            }
        }
        return false;
    }

    /** Whether some specialty of his points that way. */
    public boolean specialty(Function<MilitarySpecialty, MilitarySpecialty.Leaning> leaning) {
        for (var specialty : specialties) {
            if (leaning.apply(specialty) == MilitarySpecialty.Leaning.YES) {
                return true;
            }
        }
        return false;
    }

    private List<MilitarySpecialty> specialties() {
        var known = new ArrayList<MilitarySpecialty>(1);
        for (var specialty : facts.every(Specialty.class)) {
            specialty.number().flatMap(history.reference()::specialty).ifPresent(known::add);
        }
        return known;
    }

    // Abroad

    /** Time outside the continental United States, earliest first. */
    public List<Abroad> abroad() {
        return abroad;
    }

    private List<Abroad> allAbroad() {
        var built = new ArrayList<Abroad>(4);
        for (var stay : facts.every(OverseasStay.class)) {
            if (!stay.theaters().equals(Set.of(Theater.CONTINENTAL_US))) {
                built.add(abroad(stay));
            }
        }
        for (var station : facts.every(Station.class)) {
            if (!station.theaters().equals(Set.of(Theater.CONTINENTAL_US))) {
                var days = Stretch.of(station.from(), station.to(), Stretch.LONG_AGO, Stretch.LONG_AFTER);
                built.add(new Abroad(
                        0,
                        Abroad.Kind.STATION,
                        days,
                        days,
                        station.theaters(),
                        station.place(),
                        history.place(station.knownPlace(), station.place()),
                        history.inPhilippines(station.knownPlace(), station.place()),
                        station.basis()));
            }
        }
        for (var captivity : facts.every(Captivity.class)) {
            var days = Stretch.of(captivity.from(), captivity.to(), Stretch.LONG_AGO, Stretch.LONG_AFTER);
            var place = captivity.place().flatMap(name -> history.place(Optional.empty(), name));
            built.add(new Abroad(
                    0,
                    Abroad.Kind.CAPTIVITY,
                    days,
                    days,
                    place.map(known -> known.theaters()).orElse(Set.of()),
                    captivity.place().orElse("a place not named"),
                    place,
                    history.inPhilippines(
                            place.map(Place::name), captivity.place().orElse("")),
                    captivity.basis()));
        }
        for (var wound : facts.every(Wound.class)) {
            var place = wound.place().flatMap(name -> history.place(Optional.empty(), name));
            if (place.isPresent()
                    && wound.date().isPresent()
                    && !place.get().theaters().contains(Theater.CONTINENTAL_US)) {
                var day = Stretch.of(wound.date(), wound.date(), 0, 0);
                built.add(new Abroad(
                        0,
                        Abroad.Kind.WOUND,
                        day,
                        day,
                        place.get().theaters(),
                        wound.place().get(),
                        place,
                        history.inPhilippines(
                                place.map(Place::name), wound.place().get()),
                        wound.basis()));
            }
        }
        if (built.size() > 1) {
            built.sort(Comparator.<Abroad>comparingLong(stay -> stay.there().firstEarliest())
                    .thenComparingLong(stay -> stay.there().lastLatest())
                    .thenComparing(Abroad::destination)
                    .thenComparing(Abroad::toString));
        }
        return built;
    }

    private Abroad abroad(OverseasStay stay) {
        var tour = tourOf(stay.paper());
        long firstDay = tour.firstEarliest();
        long lastDay = tour.lastLatest();
        var diedThere = stay.left().isEmpty() && stay.returned().isEmpty()
                ? death.flatMap(Death::date)
                : Optional.<PartialDate>empty();
        long firstEarliest =
                stay.arrived().or(stay::departed).map(Stretch::earliest).orElse(firstDay);
        long lastLatest = stay.left()
                .or(stay::returned)
                .or(() -> diedThere)
                .map(Stretch::latest)
                .orElse(lastDay);
        long firstLatest = stay.arrived()
                .map(Stretch::latest)
                .orElse(stay.departed()
                        .map(departed -> Math.min(Stretch.latest(departed) + CROSSING, lastLatest))
                        .orElse(lastLatest));
        long lastEarliest = stay.left()
                .or(() -> diedThere)
                .map(Stretch::earliest)
                .orElse(stay.returned()
                        .map(returned -> Stretch.earliest(returned) - CROSSING)
                        .orElse(stay.arrived().isPresent() ? firstLatest : firstEarliest));
        var there = Stretch.between(firstEarliest, firstLatest, lastEarliest, lastLatest);
        long outEarliest = stay.departed().map(Stretch::earliest).orElse(Math.max(firstDay, firstEarliest - CROSSING));
        long outLatest = stay.departed().map(Stretch::latest).orElse(firstLatest);
        long backEarliest =
                stay.returned().or(() -> diedThere).map(Stretch::earliest).orElse(lastEarliest);
        long backLatest = stay.returned()
                .or(() -> diedThere)
                .map(Stretch::latest)
                .orElse(stay.left()
                        .map(left -> Math.min(Stretch.latest(left) + CROSSING, Math.max(lastDay, lastLatest)))
                        .orElse(lastLatest));
        return new Abroad(
                stay.paper(),
                Abroad.Kind.DESTINATION,
                there,
                Stretch.between(outEarliest, outLatest, backEarliest, backLatest),
                stay.theaters(),
                stay.destination(),
                history.place(stay.place(), stay.destination()),
                history.inPhilippines(stay.place(), stay.destination()),
                stay.basis());
    }

    private Stretch tourOf(int paper) {
        for (var duty : duties) {
            if (duty.paper() == paper) {
                return duty.days();
            }
        }
        return Stretch.between(Stretch.LONG_AGO, Stretch.LONG_AFTER, Stretch.LONG_AGO, Stretch.LONG_AFTER);
    }

    /** Whether the papers shown leave open if he was abroad at some time that they do not tell. */
    public boolean overseasUnknown() {
        return overseasUnknown;
    }

    private boolean isOverseasUnknown() {
        for (int paper = 1; paper <= facts.papers(); paper++) {
            if (overseasUnknown(paper)) {
                return true;
            }
        }
        return facts.papers() == 0;
    }

    /**
     * Whether one paper leaves it open. It does not when it lists destinations, when the clerk typed that there was no
     * foreign service, or when the continental service fills the tour. An entry left blank proves nothing.
     */
    boolean overseasUnknown(int paper) {
        for (var stay : abroad) {
            if (stay.kind() == Abroad.Kind.DESTINATION && stay.paper() == paper) {
                return false;
            }
        }
        for (var none : facts.every(NoneTyped.class)) {
            if (none.paper() == paper
                    && (none.entry() == Entry.SERVICE_OUTSIDE_US || none.entry() == Entry.FOREIGN_SERVICE)) {
                return false;
            }
        }
        for (var total : every(ServiceTotal.class)) {
            if (total.paper() != paper) {
                continue;
            }
            if (total.kind() == ServiceTotal.Kind.FOREIGN) {
                return total.years() + total.months() + total.days() > 0;
            }
            if (total.kind() == ServiceTotal.Kind.CONTINENTAL && fills(total)) {
                return false;
            }
        }
        return true;
    }

    private boolean fills(ServiceTotal total) {
        var tour = tourOf(total.paper());
        return HomeTime.days(total) >= tour.lastLatest() - tour.firstEarliest() + 1 - MONTH;
    }

    /** Days on active service inside the continental United States within the dates of the American Theater. */
    public HomeTime home() {
        var counted = home;
        if (counted == null) {
            counted = HomeTime.of(this, history.window(Theater.AMERICAN));
            home = counted;
        }
        return counted;
    }

    // What the papers and orders name

    /** Campaigns named on the papers, in the order of the table; one claim for each campaign. */
    public List<CampaignClaim> campaigns() {
        return campaigns;
    }

    private List<CampaignClaim> allCampaigns() {
        var all = every(CampaignClaim.class);
        if (all.size() < 2) {
            return all;
        }
        var once = new ArrayList<CampaignClaim>(all.size());
        for (var claim : all) {
            if (once.stream().noneMatch(known -> known.campaign().equals(claim.campaign()))) {
                once.add(claim);
            }
        }
        once.sort(Comparator.<CampaignClaim>comparingInt(claim -> history.campaign(claim.campaign())
                        .map(History.Fought::order)
                        .orElse(Integer.MAX_VALUE))
                .thenComparing(CampaignClaim::campaign));
        return once;
    }

    /** What the papers say of an award. */
    public Claims claims(String award) {
        return claims.getOrDefault(award, Claims.NONE);
    }

    /** The awards named on the papers. */
    public Set<String> claimed() {
        return claims.keySet();
    }

    private Map<String, Claims> allClaims() {
        var all = sureFirst(every(AwardClaim.class));
        if (all.isEmpty()) {
            return Map.of();
        }
        var map = new HashMap<String, Claims>();
        for (var claim : all) {
            map.computeIfAbsent(claim.award(), award -> new Claims()).add(claim);
        }
        return map;
    }

    /** What was read surely goes before what was read with doubt. */
    private static <T extends ServiceFact> List<T> sureFirst(List<T> all) {
        boolean doubt = false;
        for (var fact : all) {
            doubt |= fact.basis().certainty() == Basis.Certainty.DOUBTFUL;
        }
        if (!doubt || all.size() < 2) {
            return all;
        }
        var sorted = new ArrayList<>(all);
        sorted.sort(Comparator.comparing(fact -> fact.basis().certainty() == Basis.Certainty.DOUBTFUL));
        return sorted;
    }

    /** Orders for an award, seen outside the papers; those read surely come first. */
    public List<AwardOrder> orders(String award) {
        return orders.getOrDefault(award, List.of());
    }

    /** Orders crediting a unit with an award or with a campaign. */
    public List<UnitCredit> credits(String award) {
        return credits.getOrDefault(award, List.of());
    }

    /** Whether any order credits a unit. */
    public boolean anyCredits() {
        return !credits.isEmpty();
    }

    private static <T> Map<String, List<T>> byKey(List<T> values, Function<T, String> key) {
        if (values.isEmpty()) {
            return Map.of();
        }
        var map = new HashMap<String, List<T>>();
        for (var value : values) {
            map.computeIfAbsent(key.apply(value), award -> new ArrayList<>(1)).add(value);
        }
        map.replaceAll((award, list) -> Collections.unmodifiableList(list));
        return map;
    }
}
