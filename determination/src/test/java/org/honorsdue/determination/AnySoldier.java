package org.honorsdue.determination;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.Theater;
import org.honorsdue.service.Sex;
import org.honorsdue.service.evidence.Evidence;
import org.honorsdue.service.fact.ArmFact;
import org.honorsdue.service.fact.Assault;
import org.honorsdue.service.fact.Assignment;
import org.honorsdue.service.fact.AwardClaim;
import org.honorsdue.service.fact.AwardOrder;
import org.honorsdue.service.fact.Basis;
import org.honorsdue.service.fact.CampaignClaim;
import org.honorsdue.service.fact.Captivity;
import org.honorsdue.service.fact.Component;
import org.honorsdue.service.fact.Conduct;
import org.honorsdue.service.fact.Death;
import org.honorsdue.service.fact.Device;
import org.honorsdue.service.fact.DeviceCount;
import org.honorsdue.service.fact.HospitalAdmission;
import org.honorsdue.service.fact.LapelButton;
import org.honorsdue.service.fact.NoneTyped;
import org.honorsdue.service.fact.OrderReference;
import org.honorsdue.service.fact.Origin;
import org.honorsdue.service.fact.OverseasStay;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.PriorService;
import org.honorsdue.service.fact.Qualification;
import org.honorsdue.service.fact.School;
import org.honorsdue.service.fact.SeparationReason;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.ServiceTotal;
import org.honorsdue.service.fact.SexFact;
import org.honorsdue.service.fact.Specialty;
import org.honorsdue.service.fact.Statement;
import org.honorsdue.service.fact.Station;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.fact.UnitCredit;
import org.honorsdue.service.fact.Wound;
import org.honorsdue.service.paper.Entry;

/** A soldier whose facts are thrown together: dates out of order, places unknown, claims without sense. */
final class AnySoldier {
    private static final List<String> PLACES = List.of(
            "ETO", "England", "Germany", "Italy", "SWPA", "Leyte", "Corregidor", "Japan", "Panama", "Aust", "Nowhere");
    private static final List<String> ARMS = List.of(
            "Infantry", "Medical Department", "Air Corps", "Women's Army Corps", "Army Nurse Corps", "Field Artillery");

    private final Random random;
    private final List<ServiceFact> facts = new ArrayList<>();
    private final List<Set<Entry>> supplied = new ArrayList<>();
    private int item;

    private AnySoldier(long seed) {
        random = new Random(seed);
        int papers = random.nextInt(3);
        for (int paper = 1; paper <= papers; paper++) {
            var entries = EnumSet.noneOf(Entry.class);
            for (var entry : Entry.values()) {
                if (random.nextInt(4) > 0) {
                    entries.add(entry);
                }
            }
            supplied.add(entries);
            facts.add(new Tour(paper, any(Tour.Category.values()), date(), date(), date(), date(), basis()));
        }
        int many = random.nextInt(25);
        for (int i = 0; i < many; i++) {
            facts.add(fact(1 + random.nextInt(Math.max(1, papers))));
        }
    }

    static AnySoldier of(long seed) {
        return new AnySoldier(seed);
    }

    List<ServiceFact> list() {
        return facts;
    }

    ServiceFacts facts() {
        return with(facts);
    }

    ServiceFacts with(List<ServiceFact> all) {
        return new ServiceFacts(all, List.of(), List.of(), supplied);
    }

    private ServiceFact fact(int paper) {
        String award = any(Reference.published().awards()).id();
        String campaign = any(Reference.published().campaigns()).id();
        String place = any(PLACES);
        String unit = random.nextBoolean() ? "999th Infantry" : "998th FA Bn";
        return switch (random.nextInt(25)) {
            case 0 ->
                new AwardClaim(
                        award, award, 1 + random.nextInt(7), devices(), orders(), date(), any(Entry.values()), basis());
            case 1 -> new AwardOrder(award, text("GO 1"), date(), random.nextBoolean(), basis());
            case 2 -> new CampaignClaim(campaign, campaign, basis());
            case 3 -> new OverseasStay(paper, date(), date(), date(), date(), place, theaters(), text(place), basis());
            case 4 -> new Station(place, text(place), theaters(), date(), date(), basis());
            case 5 -> new Captivity(date(), date(), text(place), random.nextInt(5) == 0, basis());
            case 6 -> new Wound(date(), text(place), any(List.of("Belgium", "Trench foot", "Frozen feet")), basis());
            case 7 ->
                new HospitalAdmission(any(Evidence.HospitalAdmission.Cause.values()), date(), text("malaria"), basis());
            case 8 -> new Death(date(), any(Evidence.Death.Manner.values()), basis());
            case 9 -> new Conduct(text("excellent"), text("good"), number(), number(), basis());
            case 10 ->
                new UnitCredit(
                        unit,
                        List.of(),
                        random.nextBoolean() ? award : campaign,
                        text("GO 2"),
                        date(),
                        date(),
                        basis());
            case 11 -> new Assignment(unit, List.of(), date(), date(), random.nextBoolean(), basis());
            case 12 -> new Assault(campaign, text("parachute"), date(), basis());
            case 13 -> new ArmFact(paper, any(ARMS), random.nextBoolean(), basis());
            case 14 -> new SexFact(any(Sex.values()), basis());
            case 15 ->
                new ServiceTotal(
                        paper,
                        any(ServiceTotal.Kind.values()),
                        random.nextInt(4),
                        random.nextInt(12),
                        random.nextInt(31),
                        basis());
            case 16 -> new Specialty(paper, text("745"), "title", basis());
            case 17 -> new Qualification(any(Qualification.Level.values()), text("Rifle"), date(), basis());
            case 18 -> new LapelButton(paper, random.nextBoolean(), basis());
            case 19 -> new School(paper, any(List.of("Parachute School", "Cooks")), basis());
            case 20 ->
                new SeparationReason(paper, any(List.of("Disability", "Convenience")), text("AR 615-361"), basis());
            case 21 -> new Statement(text("family"), any(List.of("he was captured", "he was brave")), basis());
            case 22 -> new NoneTyped(paper, any(Entry.values()), basis());
            case 23 ->
                new PriorService(paper, any(PriorService.Duty.values()), text("RA"), date(), date(), "RA", basis());
            default -> new Component(paper, any(List.of("WAAC", "Army of the United States")), basis());
        };
    }

    private List<DeviceCount> devices() {
        return random.nextBoolean() ? List.of() : List.of(new DeviceCount(any(Device.values()), 1 + random.nextInt(6)));
    }

    private List<OrderReference> orders() {
        return random.nextBoolean()
                ? List.of()
                : List.of(new OrderReference("GO 5 44", text("GO"), number(), text("Hq"), year()));
    }

    private OptionalInt year() {
        return random.nextBoolean() ? OptionalInt.of(1942 + random.nextInt(8)) : OptionalInt.empty();
    }

    private OptionalInt number() {
        return random.nextBoolean() ? OptionalInt.of(random.nextInt(60)) : OptionalInt.empty();
    }

    private Optional<String> text(String value) {
        return random.nextInt(3) > 0 ? Optional.of(value) : Optional.empty();
    }

    private Set<Theater> theaters() {
        var set = EnumSet.noneOf(Theater.class);
        int many = random.nextInt(3);
        for (int i = 0; i < many; i++) {
            set.add(any(Theater.values()));
        }
        return set;
    }

    private Optional<PartialDate> date() {
        var day = LocalDate.of(1939, 1, 1).plusDays(random.nextInt(365 * 10));
        return switch (random.nextInt(8)) {
            case 0, 1 -> Optional.empty();
            case 2 -> Optional.of(PartialDate.month(YearMonth.from(day)));
            case 3 -> Optional.of(PartialDate.year(day.getYear()));
            default -> Optional.of(PartialDate.day(day));
        };
    }

    private Basis basis() {
        item++;
        var certainty = random.nextInt(6) == 0 ? Basis.Certainty.DOUBTFUL : Basis.Certainty.PLAIN;
        Origin origin = random.nextBoolean()
                ? new Origin.InEvidence(item, "kind", "text", Optional.empty())
                : new Origin.OnPaper(1, any(Entry.values()), item, item + 1, "x");
        return new Basis(List.of(origin), certainty);
    }

    private <T> T any(List<T> values) {
        return values.get(random.nextInt(values.size()));
    }

    @SafeVarargs
    private <T> T any(T... values) {
        return values[random.nextInt(values.length)];
    }
}
