package org.honorsdue.documents;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.history.Place;
import org.honorsdue.service.Casefile;
import org.honorsdue.service.Sex;
import org.honorsdue.service.evidence.Evidence;
import org.honorsdue.service.fact.ArmFact;
import org.honorsdue.service.fact.Assault;
import org.honorsdue.service.fact.Assignment;
import org.honorsdue.service.fact.AwardClaim;
import org.honorsdue.service.fact.AwardOrder;
import org.honorsdue.service.fact.Basis;
import org.honorsdue.service.fact.BirthDate;
import org.honorsdue.service.fact.CampaignClaim;
import org.honorsdue.service.fact.Captivity;
import org.honorsdue.service.fact.Component;
import org.honorsdue.service.fact.Conduct;
import org.honorsdue.service.fact.Conflict;
import org.honorsdue.service.fact.Death;
import org.honorsdue.service.fact.DeviceCount;
import org.honorsdue.service.fact.HospitalAdmission;
import org.honorsdue.service.fact.LapelButton;
import org.honorsdue.service.fact.MilitaryGrade;
import org.honorsdue.service.fact.OrderReference;
import org.honorsdue.service.fact.Origin;
import org.honorsdue.service.fact.OverseasStay;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.PersonName;
import org.honorsdue.service.fact.PointsScore;
import org.honorsdue.service.fact.Qualification;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.ServiceTotal;
import org.honorsdue.service.fact.SexFact;
import org.honorsdue.service.fact.Specialty;
import org.honorsdue.service.fact.Statement;
import org.honorsdue.service.fact.Station;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.fact.UnitCredit;
import org.honorsdue.service.fact.Unread;
import org.honorsdue.service.fact.Wound;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Form;
import org.honorsdue.service.paper.Paper;
import org.honorsdue.service.paper.Typed;

/**
 * An invented soldier: what is typed, and what it means, side by side, so that the documents can be tried without the
 * modules that read and decide. Each fact points at the characters it rests on; a text that does not stand in its entry
 * is a mistake of the test. Dates are ISO days, months or years; an empty text is a date not given.
 */
public final class InventedSoldier {
    private final String id;
    private final Optional<String> name;
    private final Optional<Sex> sex;
    private final List<Paper> papers = new ArrayList<>();
    private final List<Evidence> evidence = new ArrayList<>();
    private final List<ServiceFact> facts = new ArrayList<>();
    private final List<Unread> unread = new ArrayList<>();
    private final List<Conflict> conflicts = new ArrayList<>();
    private final Set<String> asked = new TreeSet<>();
    private Map<Entry, Typed> entries = new EnumMap<>(Entry.class);

    private InventedSoldier(String id, Optional<String> name, Optional<Sex> sex) {
        this.id = id;
        this.name = name;
        this.sex = sex;
        sex.ifPresent(known -> facts.add(new SexFact(
                known, Basis.plain(new Origin.Stated("sex: " + (known == Sex.MALE ? "male" : "female"))))));
    }

    public static InventedSoldier man(String id, String name) {
        return new InventedSoldier(id, Optional.of(name), Optional.of(Sex.MALE));
    }

    public static InventedSoldier woman(String id, String name) {
        return new InventedSoldier(id, Optional.of(name), Optional.of(Sex.FEMALE));
    }

    /** Nothing is known of the person but what the papers say. */
    public static InventedSoldier unnamed(String id) {
        return new InventedSoldier(id, Optional.empty(), Optional.empty());
    }

    public String id() {
        return id;
    }

    public Set<String> asked() {
        return asked;
    }

    public Casefile casefile() {
        return new Casefile(name, sex, papers, evidence);
    }

    public ServiceFacts facts() {
        var supplied = papers.stream()
                .map(paper -> (Set<Entry>)
                        (paper.entries().isEmpty()
                                ? EnumSet.noneOf(Entry.class)
                                : EnumSet.copyOf(paper.entries().keySet())))
                .toList();
        return new ServiceFacts(facts, unread, conflicts, supplied);
    }

    // Papers

    /** Puts down a paper; the facts that follow stand on it. Entries alternate key and text; an empty text is a blank. */
    public InventedSoldier paper(Form form, String... typed) {
        entries = new EnumMap<>(Entry.class);
        for (int i = 0; i < typed.length; i += 2) {
            var entry = Entry.ofKey(typed[i]).orElseThrow();
            entries.put(entry, typed[i + 1].isEmpty() ? new Typed.Blank() : new Typed.Text(typed[i + 1]));
        }
        papers.add(new Paper(form, form.title(), entries, List.of()));
        if (entries.get(Entry.NAME) instanceof Typed.Text text) {
            facts.add(new PersonName(text.text(), Basis.plain(at(Entry.NAME, text.text()))));
        }
        return this;
    }

    private Origin at(Entry entry, String words) {
        if (!(papers.get(papers.size() - 1).entry(entry) instanceof Typed.Text text)) {
            throw new IllegalArgumentException("Nothing is typed in " + entry.key() + ".");
        }
        int start = text.text().indexOf(words);
        if (start < 0) {
            throw new IllegalArgumentException("\"%s\" does not stand in %s.".formatted(words, entry.key()));
        }
        return new Origin.OnPaper(papers.size(), entry, start, start + words.length(), words);
    }

    private Basis on(Entry entry, String words) {
        return Basis.plain(at(entry, words));
    }

    private Basis on(Entry entry) {
        if (!(papers.get(papers.size() - 1).entry(entry) instanceof Typed.Text text)) {
            throw new IllegalArgumentException("Nothing is typed in " + entry.key() + ".");
        }
        return on(entry, text.text());
    }

    public InventedSoldier served(Tour.Category category, String entered, String separated) {
        var origins = new ArrayList<Origin>();
        if (!entered.isEmpty()) {
            origins.addAll(on(Entry.ENTERED_ACTIVE_SERVICE).origins());
        }
        if (!separated.isEmpty()) {
            origins.addAll(on(Entry.SEPARATED).origins());
        }
        facts.add(new Tour(
                papers.size(),
                category,
                date(entered),
                Optional.empty(),
                Optional.empty(),
                date(separated),
                new Basis(origins, Basis.Certainty.PLAIN)));
        return this;
    }

    public InventedSoldier grade(String title, Tour.Category category) {
        facts.add(new MilitaryGrade(papers.size(), Entry.GRADE, title, category, on(Entry.GRADE)));
        return this;
    }

    public InventedSoldier arm(String arm) {
        facts.add(new ArmFact(papers.size(), arm, arm.startsWith("Air") || arm.startsWith("Army Air"), on(Entry.ARM)));
        return this;
    }

    public InventedSoldier component(String component) {
        facts.add(new Component(papers.size(), component, on(Entry.COMPONENT)));
        return this;
    }

    public InventedSoldier organization(String designation) {
        facts.add(new Assignment(
                designation, List.of(), Optional.empty(), Optional.empty(), true, on(Entry.ORGANIZATION)));
        return this;
    }

    public InventedSoldier born(String day) {
        facts.add(new BirthDate(date(day).orElseThrow(), on(Entry.DATE_OF_BIRTH)));
        return this;
    }

    public InventedSoldier specialty(String number, String title) {
        facts.add(new Specialty(papers.size(), Optional.of(number), title, on(Entry.MILITARY_SPECIALTY)));
        return this;
    }

    public InventedSoldier qualified(Qualification.Level level, String weapon, String dated, String words) {
        facts.add(new Qualification(level, Optional.of(weapon), date(dated), on(Entry.QUALIFICATIONS, words)));
        return this;
    }

    /** Campaign ids and the words for them, in turn. */
    public InventedSoldier campaigns(String... idsAndWords) {
        for (int i = 0; i < idsAndWords.length; i += 2) {
            facts.add(new CampaignClaim(
                    idsAndWords[i], idsAndWords[i + 1], on(Entry.BATTLES_AND_CAMPAIGNS, idsAndWords[i + 1])));
        }
        return this;
    }

    public InventedSoldier claims(String award, int count, String words, DeviceCount... devices) {
        return claims(Entry.DECORATIONS_AND_CITATIONS, award, count, words, "", devices);
    }

    public InventedSoldier claims(
            Entry entry, String award, int count, String words, String order, DeviceCount... devices) {
        List<OrderReference> orders = order.isEmpty() ? List.of() : List.of(reference(order));
        facts.add(new AwardClaim(
                award, words, count, List.of(devices), orders, Optional.empty(), entry, on(entry, words)));
        return this;
    }

    private static OrderReference reference(String order) {
        var words = order.split(" ");
        return new OrderReference(
                order,
                Optional.of(words[0]),
                OptionalInt.of(Integer.parseInt(words[1])),
                Optional.of(order.substring(order.indexOf(words[2]), order.lastIndexOf(' '))),
                OptionalInt.of(1900 + Integer.parseInt(words[words.length - 1])));
    }

    public InventedSoldier wounded(String dated, String place, String words) {
        facts.add(new Wound(date(dated), Optional.of(place), words, on(Entry.WOUNDS, words)));
        return this;
    }

    public InventedSoldier overseas(String destination, String departed, String arrived, String left, String returned) {
        var place = Reference.published().place(destination);
        facts.add(new OverseasStay(
                papers.size(),
                date(departed),
                date(arrived),
                date(left),
                date(returned),
                destination,
                place.map(Place::theaters).orElse(Set.of()),
                place.map(Place::name),
                on(Entry.SERVICE_OUTSIDE_US)));
        return this;
    }

    public InventedSoldier total(ServiceTotal.Kind kind, int years, int months, int days) {
        var entry = kind == ServiceTotal.Kind.FOREIGN ? Entry.FOREIGN_SERVICE : Entry.CONTINENTAL_SERVICE;
        facts.add(new ServiceTotal(papers.size(), kind, years, months, days, on(entry)));
        return this;
    }

    public InventedSoldier points(int points, String asOf, String words) {
        facts.add(new PointsScore(papers.size(), points, date(asOf), on(Entry.REMARKS, words)));
        return this;
    }

    public InventedSoldier lapelButton(String words) {
        facts.add(new LapelButton(papers.size(), true, on(Entry.REMARKS, words)));
        return this;
    }

    public InventedSoldier noDaysLost(String words) {
        facts.add(new Conduct(
                Optional.empty(), Optional.empty(), OptionalInt.of(0), OptionalInt.empty(), on(Entry.REMARKS, words)));
        return this;
    }

    public InventedSoldier character(String rating) {
        facts.add(new Conduct(
                Optional.of(rating), Optional.empty(), OptionalInt.empty(), OptionalInt.empty(), on(Entry.CHARACTER)));
        return this;
    }

    public InventedSoldier unread(Entry entry, String words) {
        var place = (Origin.OnPaper) at(entry, words);
        unread.add(new Unread(place.paper(), entry, place.start(), place.end(), words));
        return this;
    }

    public InventedSoldier conflict(String says, Entry entry, String words) {
        conflicts.add(new Conflict(says, List.of(at(entry, words))));
        return this;
    }

    // Evidence

    public InventedSoldier order(String award, String reference, String dated, boolean heroism, String source) {
        evidence.add(new Evidence.Order(award, some(reference), date(dated), heroism, some(source)));
        facts.add(new AwardOrder(
                award, some(reference), date(dated), heroism, basis("order", award + " " + reference, source)));
        return this;
    }

    public InventedSoldier assigned(String unit, String from, String to, String source) {
        evidence.add(new Evidence.UnitAssignment(unit, date(from), date(to), some(source)));
        facts.add(new Assignment(
                unit, List.of(), date(from), date(to), false, basis("unit-assignment", words(unit, from, to), source)));
        return this;
    }

    public InventedSoldier stationed(String place, String from, String to, String source) {
        evidence.add(new Evidence.Station(place, date(from), date(to), some(source)));
        var known = Reference.published().place(place);
        facts.add(new Station(
                place,
                known.map(Place::name),
                known.map(Place::theaters).orElse(Set.of()),
                date(from),
                date(to),
                basis("station", words(place, from, to), source)));
        return this;
    }

    public InventedSoldier hospital(
            Evidence.HospitalAdmission.Cause cause, String dated, String diagnosis, String source) {
        evidence.add(new Evidence.HospitalAdmission(cause, date(dated), some(diagnosis), some(source)));
        facts.add(new HospitalAdmission(
                cause, date(dated), some(diagnosis), basis("hospital-admission", words(diagnosis, dated, ""), source)));
        return this;
    }

    public InventedSoldier captive(String from, String to, String place, String source) {
        evidence.add(new Evidence.Captivity(date(from), date(to), some(place), some(source)));
        facts.add(new Captivity(
                date(from), date(to), some(place), false, basis("captivity", words(place, from, to), source)));
        return this;
    }

    public InventedSoldier died(String dated, Evidence.Death.Manner manner, String source) {
        evidence.add(new Evidence.Death(date(dated), manner, some(source)));
        facts.add(new Death(date(dated), manner, basis("death", words("death", dated, ""), source)));
        return this;
    }

    public InventedSoldier landed(String campaign, String means, String dated, String source) {
        evidence.add(new Evidence.Assault(campaign, some(means), date(dated), some(source)));
        facts.add(
                new Assault(campaign, some(means), date(dated), basis("assault", words(campaign, dated, ""), source)));
        return this;
    }

    public InventedSoldier credited(
            String unit, String award, String reference, String from, String to, String source) {
        evidence.add(new Evidence.UnitCredit(unit, award, some(reference), date(from), date(to), some(source)));
        facts.add(new UnitCredit(
                unit,
                List.of(),
                award,
                some(reference),
                date(from),
                date(to),
                basis("unit-credit", words(unit + " " + award, from, to), source)));
        return this;
    }

    public InventedSoldier blameless(String source) {
        evidence.add(new Evidence.Conduct(
                Optional.of("excellent"),
                Optional.of("excellent"),
                OptionalInt.of(0),
                OptionalInt.of(0),
                some(source)));
        facts.add(new Conduct(
                Optional.of("excellent"),
                Optional.of("excellent"),
                OptionalInt.of(0),
                OptionalInt.of(0),
                basis("conduct", "excellent, excellent, no days lost, no conviction", source)));
        return this;
    }

    public InventedSoldier stated(String by, String says) {
        evidence.add(new Evidence.Statement(some(by), says, Optional.empty()));
        facts.add(new Statement(some(by), says, basis("statement", says, "")));
        return this;
    }

    /** An award that must be answered whatever points to it. */
    public InventedSoldier asking(String award) {
        asked.add(award);
        return this;
    }

    private Basis basis(String kind, String words, String source) {
        return Basis.plain(new Origin.InEvidence(evidence.size(), kind, words, some(source)));
    }

    private static String words(String what, String from, String to) {
        return (what + " " + from + (to.isEmpty() ? "" : " to " + to)).strip();
    }

    private static Optional<String> some(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }

    private static Optional<PartialDate> date(String iso) {
        return switch (iso.length()) {
            case 0 -> Optional.empty();
            case 4 -> Optional.of(PartialDate.year(Integer.parseInt(iso)));
            case 7 -> Optional.of(PartialDate.month(YearMonth.parse(iso)));
            default -> Optional.of(PartialDate.day(LocalDate.parse(iso)));
        };
    }
}
