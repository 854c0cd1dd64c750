package org.honorsdue.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.honorsdue.reading.unit.UnitReader;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.Theater;
import org.honorsdue.reference.history.Place;
import org.honorsdue.service.Casefile;
import org.honorsdue.service.evidence.Evidence;
import org.honorsdue.service.fact.Assault;
import org.honorsdue.service.fact.Assignment;
import org.honorsdue.service.fact.AwardOrder;
import org.honorsdue.service.fact.Basis;
import org.honorsdue.service.fact.BirthDate;
import org.honorsdue.service.fact.Captivity;
import org.honorsdue.service.fact.Conduct;
import org.honorsdue.service.fact.Conflict;
import org.honorsdue.service.fact.Death;
import org.honorsdue.service.fact.HospitalAdmission;
import org.honorsdue.service.fact.Origin;
import org.honorsdue.service.fact.PersonName;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.SexFact;
import org.honorsdue.service.fact.Statement;
import org.honorsdue.service.fact.Station;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.fact.UnitCredit;
import org.honorsdue.service.fact.Unread;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Typed;

/**
 * Reads a whole casefile: all papers, all evidence, and where they cannot both be right. Immutable and thread-safe;
 * build one and keep it. What is known does not depend on the order of the papers or of the evidence.
 */
public final class CasefileReader {
    private final Reference reference;
    private final UnitReader units;
    private final EntryReader entries;

    /** @param units finds units in the unit tables; {@link UnitReader#none()} keeps designations as typed */
    public CasefileReader(Reference reference, UnitReader units) {
        this.reference = reference;
        this.units = units;
        entries = new EntryReader(reference, units);
    }

    /** The reader for single entries, sharing the lexicon of this one. */
    public EntryReader entries() {
        return entries;
    }

    /** The facts of one soldier. */
    public ServiceFacts read(Casefile casefile) {
        var facts = new ArrayList<ServiceFact>();
        var unread = new ArrayList<Unread>();
        var conflicts = new ArrayList<Conflict>();
        var supplied = new ArrayList<Set<Entry>>();
        head(casefile, facts);
        for (int i = 0; i < casefile.papers().size(); i++) {
            supplied.add(
                    new PaperReader(entries.readers(), i + 1, casefile.papers().get(i), facts, unread, conflicts)
                            .read());
        }
        for (int i = 0; i < casefile.evidence().size(); i++) {
            facts.add(fact(i + 1, casefile.evidence().get(i)));
        }
        contradictions(facts, conflicts);
        return new ServiceFacts(facts, unread, conflicts, supplied);
    }

    /** Every entry of a paper as it was read, in the order of the form; entries without characters are left out. */
    public Map<Entry, EntryReading> readings(Casefile casefile, int paper) {
        var readings = new LinkedHashMap<Entry, EntryReading>();
        casefile.papers().get(paper - 1).entries().forEach((entry, typed) -> {
            if (typed instanceof Typed.Text text) {
                readings.put(entry, entries.read(entry, text.text()));
            }
        });
        return readings;
    }

    private static void head(Casefile casefile, List<ServiceFact> facts) {
        casefile.name().ifPresent(name -> facts.add(new PersonName(name, Basis.plain(new Origin.Stated(name)))));
        casefile.sex()
                .ifPresent(sex -> facts.add(new SexFact(
                        sex, Basis.plain(new Origin.Stated(sex.name().toLowerCase(Locale.ROOT))))));
    }

    // ---- evidence

    private ServiceFact fact(int item, Evidence evidence) {
        return switch (evidence.kind()) {
            case "order" -> {
                var order = (Evidence.Order) evidence;
                yield new AwardOrder(
                        order.award(),
                        order.reference(),
                        order.date(),
                        order.heroism(),
                        basis(
                                item,
                                order,
                                order.award()
                                        + order.reference()
                                                .map(cited -> " " + cited)
                                                .orElse("")));
            }
            case "unit-assignment" -> {
                var in = (Evidence.UnitAssignment) evidence;
                yield new Assignment(
                        in.unit(),
                        units.read(in.unit()).units(),
                        in.from(),
                        in.to(),
                        false,
                        basis(item, in, in.unit()));
            }
            case "station" -> {
                var station = (Evidence.Station) evidence;
                Optional<Place> place = reference.place(station.place());
                yield new Station(
                        station.place(),
                        place.map(Place::name),
                        place.map(Place::theaters).orElse(Set.<Theater>of()),
                        station.from(),
                        station.to(),
                        basis(item, station, station.place()));
            }
            case "hospital-admission" -> {
                var admission = (Evidence.HospitalAdmission) evidence;
                yield new HospitalAdmission(
                        admission.cause(),
                        admission.date(),
                        admission.diagnosis(),
                        basis(item, admission, admission.diagnosis().orElse("hospital admission")));
            }
            case "captivity" -> {
                var captivity = (Evidence.Captivity) evidence;
                yield new Captivity(
                        captivity.from(),
                        captivity.to(),
                        captivity.place(),
                        captivity.place().filter(CasefileReader::isNeutral).isPresent(),
                        basis(item, captivity, captivity.place().orElse("captivity")));
            }
            case "unit-credit" -> {
                var credit = (Evidence.UnitCredit) evidence;
                yield new UnitCredit(
                        credit.unit(),
                        units.read(credit.unit()).units(),
                        credit.award(),
                        credit.reference(),
                        credit.from(),
                        credit.to(),
                        basis(item, credit, credit.unit() + " " + credit.award()));
            }
            case "assault" -> {
                var assault = (Evidence.Assault) evidence;
                yield new Assault(
                        assault.campaign(),
                        assault.means(),
                        assault.date(),
                        basis(
                                item,
                                assault,
                                assault.campaign()
                                        + assault.means().map(by -> " " + by).orElse("")));
            }
            case "conduct" -> {
                var conduct = (Evidence.Conduct) evidence;
                yield new Conduct(
                        conduct.character(),
                        conduct.efficiency(),
                        conduct.lostDays(),
                        conduct.convictions(),
                        basis(item, conduct, conduct.character().orElse("conduct")));
            }
            case "death" -> {
                var death = (Evidence.Death) evidence;
                yield new Death(
                        death.date(),
                        death.manner(),
                        basis(
                                item,
                                death,
                                death.manner().name().toLowerCase(Locale.ROOT).replace('_', '-')));
            }
            case "statement" -> {
                var statement = (Evidence.Statement) evidence;
                yield new Statement(statement.by(), statement.says(), basis(item, statement, statement.says()));
            }
            default -> throw new IllegalStateException("No fact is made of evidence of kind " + evidence.kind());
        };
    }

    /** Held by a power that was not at war with the United States. */
    private static boolean isNeutral(String place) {
        String where = place.toLowerCase(Locale.ROOT);
        return where.contains("intern")
                || where.contains("switz")
                || where.contains("swiss")
                || where.contains("sweden")
                || where.contains("spain")
                || where.contains("turkey")
                || where.contains("portugal")
                || where.contains("eire")
                || where.contains("russia")
                || where.contains("ussr")
                || where.contains("soviet");
    }

    private static Basis basis(int item, Evidence evidence, String text) {
        return Basis.plain(new Origin.InEvidence(item, evidence.kind(), text, evidence.source()));
    }

    // ---- contradictions

    private static void contradictions(List<ServiceFact> facts, List<Conflict> conflicts) {
        differing(facts, BirthDate.class, birth -> birth.born().toString(), "The dates of birth differ", conflicts);
        differing(
                facts,
                SexFact.class,
                sex -> sex.sex().name().toLowerCase(Locale.ROOT),
                "The sources differ on the soldier's sex",
                conflicts);
        differing(
                facts,
                PersonName.class,
                name -> surname(name.name()),
                "The sources differ on the soldier's surname",
                conflicts);
        overlaps(facts, conflicts);
        conflicts.sort(Comparator.comparing(Conflict::says));
    }

    private static String surname(String name) {
        String first = name.strip();
        int end = 0;
        while (end < first.length()
                && (Character.isLetter(first.charAt(end)) || first.charAt(end) == '\'' || first.charAt(end) == '-')) {
            end++;
        }
        return first.substring(0, end).toUpperCase(Locale.ROOT);
    }

    private static <T extends ServiceFact> void differing(
            List<ServiceFact> facts, Class<T> kind, Function<T, String> value, String says, List<Conflict> conflicts) {
        Map<String, List<Origin>> byValue = null;
        for (ServiceFact fact : facts) {
            if (kind.isInstance(fact)) {
                byValue = byValue == null ? new HashMap<>() : byValue;
                byValue.computeIfAbsent(value.apply(kind.cast(fact)), key -> new ArrayList<>())
                        .addAll(fact.basis().origins());
            }
        }
        if (byValue != null && byValue.size() > 1) {
            var values = byValue.keySet().stream().sorted().toList();
            var origins = byValue.values().stream().flatMap(List::stream).toList();
            conflicts.add(new Conflict(says + ": " + String.join(", ", values) + ".", origins));
        }
    }

    /** Two tours of active service that overlap by more than the day on which one ends and the next begins. */
    private static void overlaps(List<ServiceFact> facts, List<Conflict> conflicts) {
        List<Tour> tours = new ArrayList<>();
        for (ServiceFact fact : facts) {
            if (fact instanceof Tour tour
                    && tour.entered().isPresent()
                    && tour.separated().isPresent()) {
                tours.add(tour);
            }
        }
        tours.sort(Comparator.comparing((Tour tour) -> tour.entered().orElseThrow())
                .thenComparing(tour -> tour.separated().orElseThrow()));
        for (int i = 0; i + 1 < tours.size(); i++) {
            Tour one = tours.get(i);
            Tour two = tours.get(i + 1);
            var ends = one.separated().orElseThrow();
            var begins = two.entered().orElseThrow();
            if (begins.latest().isBefore(ends.earliest())) {
                var origins = new ArrayList<>(one.basis().origins());
                origins.addAll(two.basis().origins());
                conflicts.add(new Conflict(
                        "Two papers overlap: active service to %s on one, from %s on the other."
                                .formatted(ends, begins),
                        origins));
            }
        }
    }
}
