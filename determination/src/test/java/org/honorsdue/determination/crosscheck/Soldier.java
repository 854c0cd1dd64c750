package org.honorsdue.determination.crosscheck;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.honorsdue.reference.Theater;
import org.honorsdue.service.Sex;
import org.honorsdue.service.fact.ArmFact;
import org.honorsdue.service.fact.Assault;
import org.honorsdue.service.fact.Assignment;
import org.honorsdue.service.fact.AwardClaim;
import org.honorsdue.service.fact.Basis;
import org.honorsdue.service.fact.BirthDate;
import org.honorsdue.service.fact.CampaignClaim;
import org.honorsdue.service.fact.Captivity;
import org.honorsdue.service.fact.Conduct;
import org.honorsdue.service.fact.Dependents;
import org.honorsdue.service.fact.Device;
import org.honorsdue.service.fact.DeviceCount;
import org.honorsdue.service.fact.MusteringOutPay;
import org.honorsdue.service.fact.NoneTyped;
import org.honorsdue.service.fact.OrderCited;
import org.honorsdue.service.fact.OrderReference;
import org.honorsdue.service.fact.Origin;
import org.honorsdue.service.fact.OverseasStay;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.PersonName;
import org.honorsdue.service.fact.PointsScore;
import org.honorsdue.service.fact.SeparationReason;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.ServiceTotal;
import org.honorsdue.service.fact.SexFact;
import org.honorsdue.service.fact.Specialty;
import org.honorsdue.service.fact.Station;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.fact.Unread;
import org.honorsdue.service.fact.Wound;
import org.honorsdue.service.paper.Entry;

/**
 * An invented soldier, fact by fact, each resting on the entry it would be typed in. Every entry counts as supplied until
 * {@link #without} takes it away. Dates are ISO days, months or years.
 */
public final class Soldier {
    private final List<ServiceFact> facts = new ArrayList<>();
    private final List<Unread> unread = new ArrayList<>();
    private final List<Set<Entry>> supplied = new ArrayList<>();
    private int paper;

    private Soldier() {}

    /** A soldier with one enlisted paper. */
    public static Soldier enlisted(String entered, String separated) {
        return new Soldier().paper(Tour.Category.ENLISTED, entered, separated);
    }

    public static Soldier officer(String entered, String separated) {
        return new Soldier().paper(Tour.Category.OFFICER, entered, separated);
    }

    /** A soldier whose paper shows no dates of service. */
    public static Soldier undated() {
        var soldier = new Soldier();
        soldier.paper = 1;
        soldier.supplied.add(EnumSet.allOf(Entry.class));
        return soldier.without(Entry.ENTERED_ACTIVE_SERVICE, Entry.SEPARATED);
    }

    /** Begins another paper; what follows stands on it. */
    public Soldier paper(Tour.Category category, String entered, String separated) {
        paper++;
        supplied.add(EnumSet.allOf(Entry.class));
        facts.add(new Tour(
                paper,
                category,
                Optional.of(date(entered)),
                Optional.empty(),
                Optional.empty(),
                Optional.of(date(separated)),
                new Basis(
                        List.of(typed(Entry.ENTERED_ACTIVE_SERVICE, entered), typed(Entry.SEPARATED, separated)),
                        Basis.Certainty.PLAIN)));
        return this;
    }

    public Soldier inducted(String day) {
        facts.replaceAll(fact -> fact instanceof Tour tour && tour.paper() == paper
                ? new Tour(
                        paper,
                        tour.category(),
                        tour.entered(),
                        Optional.of(date(day)),
                        tour.enlisted(),
                        tour.separated(),
                        tour.basis())
                : fact);
        return this;
    }

    /** There and back: sailing, arrival, sailing home, arrival home. */
    public Soldier abroad(
            String departed, String arrived, String destination, Theater theater, String left, String returned) {
        facts.add(new OverseasStay(
                paper,
                Optional.of(date(departed)),
                Optional.of(date(arrived)),
                Optional.of(date(left)),
                Optional.of(date(returned)),
                destination,
                Set.of(theater),
                Optional.empty(),
                plain(Entry.SERVICE_OUTSIDE_US, destination)));
        return this;
    }

    /** Sailing, arrival and sailing on to the next place. */
    public Soldier onwards(String departed, String arrived, String destination, Theater theater, String left) {
        facts.add(new OverseasStay(
                paper,
                Optional.of(date(departed)),
                Optional.of(date(arrived)),
                Optional.of(date(left)),
                Optional.empty(),
                destination,
                Set.of(theater),
                Optional.empty(),
                plain(Entry.SERVICE_OUTSIDE_US, destination)));
        return this;
    }

    public Soldier continental(int years, int months, int days) {
        return total(ServiceTotal.Kind.CONTINENTAL, Entry.CONTINENTAL_SERVICE, years, months, days);
    }

    public Soldier foreign(int years, int months, int days) {
        return total(ServiceTotal.Kind.FOREIGN, Entry.FOREIGN_SERVICE, years, months, days);
    }

    public Soldier longevity(int years, int months, int days) {
        return total(ServiceTotal.Kind.LONGEVITY, Entry.LONGEVITY, years, months, days);
    }

    private Soldier total(ServiceTotal.Kind kind, Entry entry, int years, int months, int days) {
        facts.add(new ServiceTotal(paper, kind, years, months, days, plain(entry, years + "-" + months + "-" + days)));
        return this;
    }

    public Soldier campaigns(String... ids) {
        for (var id : ids) {
            facts.add(new CampaignClaim(id, id, plain(Entry.BATTLES_AND_CAMPAIGNS, id)));
        }
        return this;
    }

    /** A theatre ribbon with bronze stars; none for 0. */
    public Soldier ribbon(String medal, int stars) {
        return ribbon(medal, stars, 0);
    }

    public Soldier ribbon(String medal, int stars, int arrowheads) {
        var devices = new ArrayList<DeviceCount>();
        if (stars > 0) {
            devices.add(new DeviceCount(Device.BRONZE_SERVICE_STAR, stars));
        }
        if (arrowheads > 0) {
            devices.add(new DeviceCount(Device.ARROWHEAD, arrowheads));
        }
        return claim(medal, 1, devices, Entry.DECORATIONS_AND_CITATIONS, Optional.empty(), List.of());
    }

    /** A theatre ribbon with silver stars, each for five. */
    public Soldier silverRibbon(String medal, int silver, int bronze) {
        var devices = new ArrayList<DeviceCount>();
        devices.add(new DeviceCount(Device.SILVER_SERVICE_STAR, silver));
        if (bronze > 0) {
            devices.add(new DeviceCount(Device.BRONZE_SERVICE_STAR, bronze));
        }
        return claim(medal, 1, devices, Entry.DECORATIONS_AND_CITATIONS, Optional.empty(), List.of());
    }

    public Soldier award(String award) {
        return award(award, 1);
    }

    public Soldier award(String award, int count) {
        return claim(award, count, List.of(), Entry.DECORATIONS_AND_CITATIONS, Optional.empty(), List.of());
    }

    public Soldier award(String award, Entry entry, String date) {
        return claim(award, 1, List.of(), entry, Optional.of(date(date)), List.of());
    }

    public Soldier awardIn(Entry entry, String award, int count) {
        return claim(award, count, List.of(), entry, Optional.empty(), List.of());
    }

    public Soldier ordered(String award, Entry entry, int number, String headquarters, int year) {
        var order = new OrderReference(
                "GO %d %s %d".formatted(number, headquarters, year % 100),
                Optional.of("GO"),
                OptionalInt.of(number),
                Optional.of(headquarters),
                OptionalInt.of(year));
        return claim(award, 1, List.of(), entry, Optional.empty(), List.of(order));
    }

    private Soldier claim(
            String award,
            int count,
            List<DeviceCount> devices,
            Entry entry,
            Optional<PartialDate> date,
            List<OrderReference> orders) {
        facts.add(new AwardClaim(award, award, count, devices, orders, date, entry, plain(entry, award)));
        return this;
    }

    public Soldier score(int points, String asOf) {
        facts.add(new PointsScore(
                paper, points, Optional.of(date(asOf)), plain(Entry.REMARKS, "ASR score %d".formatted(points))));
        return this;
    }

    public Soldier scoreUndated(int points) {
        facts.add(new PointsScore(
                paper, points, Optional.empty(), plain(Entry.REMARKS, "ASR score %d".formatted(points))));
        return this;
    }

    public Soldier dependents(int number) {
        facts.add(new Dependents(number, plain(Entry.DEPENDENTS, Integer.toString(number))));
        return this;
    }

    public Soldier musteringOutPay(int dollars) {
        facts.add(new MusteringOutPay(paper, dollars, plain(Entry.MUSTERING_OUT_PAY, Integer.toString(dollars))));
        return this;
    }

    public Soldier born(String day) {
        facts.add(new BirthDate(date(day), plain(Entry.DATE_OF_BIRTH, day)));
        return this;
    }

    public Soldier woman() {
        facts.add(new SexFact(Sex.FEMALE, plain(Entry.ARM, "WAC")));
        return this;
    }

    public Soldier named(String name) {
        facts.add(new PersonName(name, plain(Entry.NAME, name)));
        return this;
    }

    public Soldier arm(String arm) {
        facts.add(new ArmFact(paper, arm, arm.equals("Air Corps"), plain(Entry.ARM, arm)));
        return this;
    }

    public Soldier specialty(String number, String title) {
        facts.add(new Specialty(paper, Optional.of(number), title, plain(Entry.MILITARY_SPECIALTY, number)));
        return this;
    }

    public Soldier reason(String reason) {
        facts.add(new SeparationReason(paper, reason, Optional.empty(), plain(Entry.REASON, reason)));
        return this;
    }

    public Soldier lostDays(int days) {
        facts.add(new Conduct(
                Optional.empty(),
                Optional.empty(),
                OptionalInt.of(days),
                OptionalInt.empty(),
                plain(Entry.REMARKS, days + " days lost under AW 107")));
        return this;
    }

    public Soldier character(String character) {
        facts.add(new Conduct(
                Optional.of(character),
                Optional.empty(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                plain(Entry.CHARACTER, character)));
        return this;
    }

    public Soldier wounded(String day, String place) {
        facts.add(new Wound(
                Optional.of(date(day)), Optional.of(place), place + " " + day, plain(Entry.WOUNDS, place + " " + day)));
        return this;
    }

    public Soldier captive(String from, String to) {
        facts.add(new Captivity(
                Optional.of(date(from)),
                Optional.of(date(to)),
                Optional.empty(),
                false,
                plain(Entry.REMARKS, "POW " + from + " to " + to)));
        return this;
    }

    /** The clerk typed that there is none. */
    public Soldier none(Entry entry) {
        facts.add(new NoneTyped(paper, entry, plain(entry, "None")));
        return this;
    }

    /** An order behind the campaigns. */
    public Soldier campaignOrder(int number, int year) {
        var typed = "GO %d WD %d".formatted(number, year % 100);
        facts.add(new OrderCited(
                paper,
                Entry.BATTLES_AND_CAMPAIGNS,
                new OrderReference(
                        typed, Optional.of("GO"), OptionalInt.of(number), Optional.of("WD"), OptionalInt.of(year)),
                plain(Entry.BATTLES_AND_CAMPAIGNS, typed)));
        return this;
    }

    /** From evidence, not from the paper. */
    public Soldier assault(String campaign, String day) {
        facts.add(new Assault(campaign, Optional.empty(), Optional.of(date(day)), evidence("assault", campaign)));
        return this;
    }

    /** From evidence, not from the paper. */
    public Soldier assigned(String designation, List<String> units, String from, String to) {
        facts.add(new Assignment(
                designation,
                units,
                Optional.of(date(from)),
                Optional.of(date(to)),
                false,
                evidence("unit-assignment", designation)));
        return this;
    }

    public Soldier organization(String designation, List<String> units) {
        facts.add(new Assignment(
                designation, units, Optional.empty(), Optional.empty(), true, plain(Entry.ORGANIZATION, designation)));
        return this;
    }

    /** From evidence, not from the paper. */
    public Soldier stationed(String place, Theater theater, String from, String to) {
        facts.add(new Station(
                place,
                Optional.empty(),
                Set.of(theater),
                Optional.of(date(from)),
                Optional.of(date(to)),
                evidence("station", place)));
        return this;
    }

    /** The entry of the present paper was not supplied. */
    public Soldier without(Entry... entries) {
        supplied.get(paper - 1).removeAll(Arrays.asList(entries));
        return this;
    }

    /** Something in the entry of the present paper could not be read. */
    public Soldier unreadIn(Entry entry) {
        unread.add(new Unread(paper, entry, 0, 3, "xxx"));
        return this;
    }

    public ServiceFacts facts() {
        return new ServiceFacts(facts, unread, List.of(), supplied);
    }

    private Basis plain(Entry entry, String text) {
        return Basis.plain(typed(entry, text));
    }

    private Origin typed(Entry entry, String text) {
        return new Origin.OnPaper(paper, entry, 0, text.length(), text);
    }

    private static Basis evidence(String kind, String text) {
        return Basis.plain(new Origin.InEvidence(1, kind, text, Optional.empty()));
    }

    /** An ISO day, month or year. */
    static PartialDate date(String iso) {
        return switch (iso.length()) {
            case 4 -> PartialDate.year(Integer.parseInt(iso));
            case 7 -> PartialDate.month(YearMonth.parse(iso));
            default -> PartialDate.day(LocalDate.parse(iso));
        };
    }
}
