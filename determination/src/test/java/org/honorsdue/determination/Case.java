package org.honorsdue.determination;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.history.Place;
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

/**
 * One soldier's case, fact by fact, and the findings on it. Every entry of a paper counts as supplied until {@link
 * #without} takes it away. Dates are ISO days, months or years; an empty text is a date not given. Invented people and
 * 999th units.
 */
public final class Case {
    public static final LocalDate TODAY = LocalDate.of(2026, 1, 1);

    private static final LawExaminer EXAMINER = new LawExaminer(Reference.published());

    private final List<ServiceFact> facts = new ArrayList<>();
    private final List<Set<Entry>> supplied = new ArrayList<>();
    private final Set<String> asked = new TreeSet<>();
    private LocalDate asOf = TODAY;
    private Basis.Certainty certainty = Basis.Certainty.PLAIN;
    private int paper;
    private int typed;
    private int items;

    private Case() {}

    /** A soldier known only by evidence. */
    public static Case ofNoPaper() {
        return new Case();
    }

    public static Case enlisted(String entered, String separated) {
        return new Case().paper(Tour.Category.ENLISTED, entered, separated);
    }

    public static Case officer(String entered, String separated) {
        return new Case().paper(Tour.Category.OFFICER, entered, separated);
    }

    public static Case warrantOfficer(String entered, String separated) {
        return new Case().paper(Tour.Category.WARRANT_OFFICER, entered, separated);
    }

    /** Begins another paper; what follows stands on it. */
    public Case paper(Tour.Category category, String entered, String separated) {
        paper++;
        supplied.add(EnumSet.allOf(Entry.class));
        facts.add(new Tour(
                paper,
                category,
                date(entered),
                Optional.empty(),
                Optional.empty(),
                date(separated),
                new Basis(
                        List.of(origin(Entry.ENTERED_ACTIVE_SERVICE, entered), origin(Entry.SEPARATED, separated)),
                        certainty)));
        return this;
    }

    /** The paper gives a day of enlistment and no entry into active service. */
    public Case enlistedOnly(String enlisted, String separated) {
        paper++;
        supplied.add(EnumSet.allOf(Entry.class));
        facts.add(new Tour(
                paper,
                Tour.Category.ENLISTED,
                Optional.empty(),
                Optional.empty(),
                date(enlisted),
                date(separated),
                plain(Entry.ENLISTED, enlisted)));
        return this;
    }

    /** Entries of the present paper that nobody showed us. */
    public Case without(Entry... entries) {
        supplied.get(paper - 1).removeAll(Arrays.asList(entries));
        return this;
    }

    /** Only these entries of the present paper were shown. */
    public Case showing(Entry... entries) {
        supplied.get(paper - 1).retainAll(Arrays.asList(entries));
        return this;
    }

    /** What follows is read with doubt. */
    public Case doubtfully() {
        certainty = Basis.Certainty.DOUBTFUL;
        return this;
    }

    public Case plainly() {
        certainty = Basis.Certainty.PLAIN;
        return this;
    }

    /** Out and back: departed the United States, arrived there, left there, back in the United States. */
    public Case overseas(String destination, String departed, String arrived, String left, String returned) {
        var place = Reference.published().place(destination);
        facts.add(new OverseasStay(
                paper,
                date(departed),
                date(arrived),
                date(left),
                date(returned),
                destination,
                place.map(Place::theaters).orElse(Set.of()),
                place.map(Place::name),
                plain(Entry.SERVICE_OUTSIDE_US, departed + " " + destination + " " + returned)));
        return this;
    }

    /** The clerk typed that there was no service outside the United States. */
    public Case neverAbroad() {
        return noneTyped(Entry.SERVICE_OUTSIDE_US);
    }

    public Case noneTyped(Entry entry) {
        facts.add(new NoneTyped(paper, entry, plain(entry, "None")));
        return this;
    }

    public Case total(ServiceTotal.Kind kind, int years, int months, int days) {
        var entry = kind == ServiceTotal.Kind.FOREIGN ? Entry.FOREIGN_SERVICE : Entry.CONTINENTAL_SERVICE;
        facts.add(new ServiceTotal(paper, kind, years, months, days, plain(entry, years + "-" + months + "-" + days)));
        return this;
    }

    public Case campaigns(String... ids) {
        for (var id : ids) {
            var name = Reference.published().campaign(id).orElseThrow().name();
            facts.add(new CampaignClaim(id, name, plain(Entry.BATTLES_AND_CAMPAIGNS, name)));
        }
        return this;
    }

    public Case claims(String award) {
        return claims(award, 1);
    }

    public Case claims(String award, int count, DeviceCount... devices) {
        return claim(award, count, "", Entry.DECORATIONS_AND_CITATIONS, devices);
    }

    /** Claimed with an order: {@code GO 40 HQ 999 Inf Div 44}. */
    public Case claimsWithOrder(String award, String order, DeviceCount... devices) {
        return claim(award, 1, order, Entry.DECORATIONS_AND_CITATIONS, devices);
    }

    /** A badge in the entry of qualifications. */
    public Case badge(String award, String order) {
        return claim(award, 1, order, Entry.QUALIFICATIONS);
    }

    private Case claim(String award, int count, String order, Entry entry, DeviceCount... devices) {
        return claim(award, award, count, order, "", entry, devices);
    }

    public Case typed(String award, String asTyped, String dated, Entry entry) {
        return claim(award, asTyped, 1, "", dated, entry);
    }

    private Case claim(
            String award, String asTyped, int count, String order, String dated, Entry entry, DeviceCount... devices) {
        List<OrderReference> orders = order.isEmpty() ? List.of() : List.of(reference(order));
        facts.add(new AwardClaim(
                award,
                asTyped,
                count,
                List.of(devices),
                orders,
                date(dated),
                entry,
                plain(entry, asTyped + (count > 1 ? " x" + count : "") + " " + order)));
        return this;
    }

    private static OrderReference reference(String order) {
        var words = order.split(" ");
        int year = Integer.parseInt(words[words.length - 1]);
        return new OrderReference(
                order,
                Optional.of(words[0]),
                OptionalInt.of(Integer.parseInt(words[1])),
                Optional.of(String.join(" ", Arrays.copyOfRange(words, 2, words.length - 1))),
                OptionalInt.of(1900 + year));
    }

    public static DeviceCount with(Device device, int count) {
        return new DeviceCount(device, count);
    }

    public Case arm(String arm) {
        facts.add(new ArmFact(paper, arm, arm.startsWith("Air"), plain(Entry.ARM, arm)));
        return this;
    }

    public Case component(String component) {
        facts.add(new Component(paper, component, plain(Entry.COMPONENT, component)));
        return this;
    }

    public Case specialty(String number) {
        facts.add(new Specialty(paper, Optional.of(number), number, plain(Entry.MILITARY_SPECIALTY, number)));
        return this;
    }

    public Case qualified(Qualification.Level level, String weapon, String dated) {
        facts.add(new Qualification(
                level,
                weapon.isEmpty() ? Optional.empty() : Optional.of(weapon),
                date(dated),
                plain(Entry.QUALIFICATIONS, level + " " + weapon + " " + dated)));
        return this;
    }

    public Case woman() {
        facts.add(new SexFact(Sex.FEMALE, Basis.plain(new Origin.Stated("sex: female"))));
        return this;
    }

    public Case school(String school) {
        facts.add(new School(paper, school, plain(Entry.SERVICE_SCHOOLS, school)));
        return this;
    }

    public Case lapelButton() {
        facts.add(new LapelButton(paper, true, plain(Entry.REMARKS, "Lapel button issued")));
        return this;
    }

    /** Earlier active service that the paper mentions. */
    public Case prior(String asTyped, String from, String to) {
        facts.add(new PriorService(
                paper,
                PriorService.Duty.ACTIVE,
                Optional.empty(),
                date(from),
                date(to),
                asTyped,
                plain(Entry.PRIOR_SERVICE, asTyped)));
        return this;
    }

    public Case reason(String reason) {
        facts.add(new SeparationReason(paper, reason, Optional.empty(), plain(Entry.REASON, reason)));
        return this;
    }

    public Case organization(String designation) {
        facts.add(new Assignment(
                designation,
                List.of(),
                Optional.empty(),
                Optional.empty(),
                true,
                plain(Entry.ORGANIZATION, designation)));
        return this;
    }

    public Case wounded(String dated, String place) {
        return woundEntry(place + " " + dated, dated, place);
    }

    public Case woundEntry(String asTyped, String dated, String place) {
        facts.add(new Wound(
                date(dated),
                place.isEmpty() ? Optional.empty() : Optional.of(place),
                asTyped,
                plain(Entry.WOUNDS, asTyped)));
        return this;
    }

    public Case conduct(String character, int lostDays) {
        facts.add(new Conduct(
                character.isEmpty() ? Optional.empty() : Optional.of(character),
                Optional.empty(),
                lostDays < 0 ? OptionalInt.empty() : OptionalInt.of(lostDays),
                OptionalInt.empty(),
                plain(Entry.CHARACTER, character)));
        return this;
    }

    // Evidence

    public Case convicted(int convictions) {
        facts.add(new Conduct(
                Optional.empty(),
                Optional.empty(),
                OptionalInt.empty(),
                OptionalInt.of(convictions),
                evidence("conduct", "convictions")));
        return this;
    }

    public Case order(String award, String reference, String dated) {
        return order(award, reference, dated, false);
    }

    public Case order(String award, String reference, String dated, boolean heroism) {
        facts.add(new AwardOrder(
                award, Optional.of(reference), date(dated), heroism, evidence("order", award + " " + reference)));
        return this;
    }

    public Case stationed(String place, String from, String to) {
        var known = Reference.published().place(place);
        facts.add(new Station(
                place,
                known.map(Place::name),
                known.map(Place::theaters).orElse(Set.of()),
                date(from),
                date(to),
                evidence("station", place)));
        return this;
    }

    public Case assigned(String designation, String from, String to) {
        facts.add(new Assignment(
                designation, List.of(), date(from), date(to), false, evidence("unit-assignment", designation)));
        return this;
    }

    /** In a unit of the unit tables, by its id and those above it. */
    public Case assignedTo(String designation, String from, String to, String... units) {
        facts.add(new Assignment(
                designation, List.of(units), date(from), date(to), false, evidence("unit-assignment", designation)));
        return this;
    }

    public Case credited(String unit, String award, String from, String to) {
        facts.add(new UnitCredit(
                unit,
                List.of(),
                award,
                Optional.of("WD GO 000"),
                date(from),
                date(to),
                evidence("unit-credit", unit + " " + award)));
        return this;
    }

    public Case captive(String from, String to, String place) {
        return captivity(from, to, place, false);
    }

    public Case interned(String from, String to, String place) {
        return captivity(from, to, place, true);
    }

    private Case captivity(String from, String to, String place, boolean neutral) {
        facts.add(new Captivity(
                date(from),
                date(to),
                place.isEmpty() ? Optional.empty() : Optional.of(place),
                neutral,
                evidence("captivity", place)));
        return this;
    }

    public Case hospital(Evidence.HospitalAdmission.Cause cause, String dated, String diagnosis) {
        facts.add(new HospitalAdmission(
                cause,
                date(dated),
                diagnosis.isEmpty() ? Optional.empty() : Optional.of(diagnosis),
                evidence("hospital-admission", diagnosis)));
        return this;
    }

    public Case died(Evidence.Death.Manner manner, String dated) {
        facts.add(new Death(date(dated), manner, evidence("death", manner.name())));
        return this;
    }

    public Case landed(String campaign, String means, String dated) {
        facts.add(new Assault(
                campaign,
                means.isEmpty() ? Optional.empty() : Optional.of(means),
                date(dated),
                evidence("assault", campaign)));
        return this;
    }

    public Case says(String words) {
        facts.add(new Statement(Optional.of("family"), words, evidence("statement", words)));
        return this;
    }

    public Case and(ServiceFact fact) {
        facts.add(fact);
        return this;
    }

    // The question

    public Case asks(String... awards) {
        asked.addAll(Arrays.asList(awards));
        return this;
    }

    public Case asOf(String day) {
        asOf = LocalDate.parse(day);
        return this;
    }

    public List<ServiceFact> list() {
        return facts;
    }

    public List<Set<Entry>> supplied() {
        return supplied;
    }

    public ServiceFacts facts() {
        return new ServiceFacts(facts, List.of(), List.of(), supplied);
    }

    public Findings findings() {
        return EXAMINER.examine(facts(), asOf, asked);
    }

    public Optional<Finding> find(String award) {
        return LawExaminer.on(findings(), award);
    }

    /** The finding on an award, asked for if nothing points to it. */
    public Finding on(String award) {
        asked.add(award);
        return find(award).orElseThrow(() -> new AssertionError("no finding on " + award));
    }

    public static LawExaminer examiner() {
        return EXAMINER;
    }

    private Basis plain(Entry entry, String text) {
        return new Basis(List.of(origin(entry, text)), certainty);
    }

    private Origin origin(Entry entry, String text) {
        typed += 100;
        return new Origin.OnPaper(Math.max(1, paper), entry, typed, typed + text.length(), text);
    }

    private Basis evidence(String kind, String text) {
        items++;
        return new Basis(List.of(new Origin.InEvidence(items, kind, text, Optional.empty())), certainty);
    }

    public static Optional<PartialDate> date(String iso) {
        return switch (iso.length()) {
            case 0 -> Optional.empty();
            case 4 -> Optional.of(PartialDate.year(Integer.parseInt(iso)));
            case 7 -> Optional.of(PartialDate.month(YearMonth.parse(iso)));
            default -> Optional.of(PartialDate.day(LocalDate.parse(iso)));
        };
    }
}
