package org.honorsdue.workbench;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.Need;
import org.honorsdue.determination.law.FactKind;
import org.honorsdue.reading.casefile.CasefileFile;
import org.honorsdue.reference.Reference;
import org.honorsdue.service.evidence.Evidence;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.paper.Entry;

/**
 * The small form by which one kind of evidence is added. What it takes is checked by the reader of casefiles, so that a
 * form and a file say the same about the same mistake.
 */
public record EvidenceForm(Kind kind, Map<String, String> filled) {
    /** The kinds of evidence in the order in which a person would look for them in a list. */
    public enum Kind {
        ORDER("order", "An order for an award", "award", "reference", "date", "heroism"),
        UNIT_ASSIGNMENT("unit-assignment", "Time in a unit", "unit", "from", "to"),
        STATION("station", "Time at a place", "place", "from", "to"),
        HOSPITAL("hospital-admission", "A hospital or treatment record", "cause", "date", "diagnosis"),
        CAPTIVITY("captivity", "Time in enemy hands", "from", "to", "place"),
        UNIT_CREDIT("unit-credit", "A credit or citation of the unit", "unit", "award", "reference", "from", "to"),
        ASSAULT("assault", "Part in a landing or jump", "campaign", "means", "date"),
        CONDUCT("conduct", "Ratings, days lost, convictions", "character", "efficiency", "lost_days", "convictions"),
        DEATH("death", "Death in service", "date", "manner"),
        STATEMENT("statement", "What somebody says", "by", "says");

        private final String id;
        private final String words;
        private final List<String> fields;

        Kind(String id, String words, String... fields) {
            this.id = id;
            this.words = words;
            this.fields = List.of(fields);
        }

        public String id() {
            return id;
        }

        public String words() {
            return words;
        }

        /** The keys of the casefile that this kind has, without its source. */
        public List<String> fields() {
            return fields;
        }

        static Optional<Kind> ofId(String id) {
            for (var kind : values()) {
                if (kind.id.equals(id)) {
                    return Optional.of(kind);
                }
            }
            return Optional.empty();
        }
    }

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Set<String> NUMBERS = Set.of("lost_days", "convictions");

    public EvidenceForm {
        filled = Map.copyOf(filled);
    }

    public String value(String field) {
        return filled.getOrDefault(field, "");
    }

    /** The caption of a field. */
    public static String caption(String field) {
        return switch (field) {
            case "award" -> "Award";
            case "reference" -> "Order, as in GO 40 HQ 999th Inf Div";
            case "date" -> "Day, as far as known (1944-12-03, 1944-12 or 1944)";
            case "heroism" -> "The order gives heroism or valor as its ground";
            case "unit" -> "Unit, as in Btry B 391st AFA Bn";
            case "from" -> "From (first day, as far as known)";
            case "to" -> "To (last day, as far as known)";
            case "place" -> "Place or country";
            case "cause" -> "Cause";
            case "diagnosis" -> "Diagnosis, as written";
            case "campaign" -> "Campaign";
            case "means" -> "By boat, parachute or glider";
            case "character" -> "Character, as rated";
            case "efficiency" -> "Efficiency, as rated";
            case "lost_days" -> "Days lost";
            case "convictions" -> "Convictions by court-martial";
            case "manner" -> "Manner of death";
            case "by" -> "Who says so";
            case "says" -> "What is said";
            default -> field;
        };
    }

    /** The forms that could answer a need, the likeliest first. */
    public static List<EvidenceForm> answering(Finding finding, Need need) {
        var kinds = new LinkedHashSet<Kind>();
        for (var wanted : need.wanted().stream()
                .sorted((a, b) -> a.kind().compareTo(b.kind()))
                .toList()) {
            FactKind.ofId(wanted.kind()).ifPresent(kind -> kinds.addAll(kinds(kind)));
        }
        if (kinds.isEmpty()) {
            kinds.add(Kind.STATEMENT);
        }
        var forms = new ArrayList<EvidenceForm>();
        for (var kind : kinds) {
            forms.add(new EvidenceForm(
                    kind,
                    kind.fields().contains("award") && kind == Kind.ORDER
                            ? Map.of("award", finding.award())
                            : Map.of()));
        }
        return forms;
    }

    private static List<Kind> kinds(FactKind wanted) {
        return switch (wanted) {
            case AWARD_ORDER, COMMENDATION, FOREIGN_AWARD -> List.of(Kind.ORDER);
            case UNIT_PRESENCE, COMBAT_DUTY -> List.of(Kind.UNIT_ASSIGNMENT);
            case UNIT_CREDIT -> List.of(Kind.UNIT_CREDIT);
            case WOUND_BY_ENEMY, MEDICAL_TREATMENT -> List.of(Kind.HOSPITAL);
            case CAPTIVITY, CAPTIVITY_CONDUCT -> List.of(Kind.CAPTIVITY);
            case DEATH -> List.of(Kind.DEATH);
            case OVERSEAS_DATES, STATION -> List.of(Kind.STATION);
            case CONDUCT, COURT_MARTIAL, LOST_TIME -> List.of(Kind.CONDUCT);
            case ASSAULT -> List.of(Kind.ASSAULT);
            default -> List.of();
        };
    }

    /** Whether an entry of the paper, read again or typed in, could answer a need; the first such entry. */
    public static Set<Entry> entries(Need need) {
        var entries = new LinkedHashSet<Entry>();
        for (var wanted : need.wanted()) {
            FactKind.ofId(wanted.kind()).ifPresent(kind -> entries.addAll(kind.entries()));
        }
        return entries;
    }

    /**
     * The evidence that the form holds.
     *
     * @throws InputFault with every fault of the form
     */
    Evidence evidence(Reference reference) {
        var file = JSON.createObjectNode();
        var item = file.putArray("evidence").addObject();
        item.put("kind", kind.id);
        for (var field : kind.fields) {
            String value = value(field).strip();
            if (value.isEmpty()) {
                continue;
            }
            if (field.equals("heroism")) {
                item.put(field, true);
            } else if (NUMBERS.contains(field) && value.matches("\\d{1,6}")) {
                item.put(field, Integer.parseInt(value));
            } else {
                item.put(field, value);
            }
        }
        if (!value("source").isBlank()) {
            item.put("source", value("source").strip());
        }
        return CasefileFile.read(file.toString(), reference)
                .answer(accepted -> accepted.casefile().evidence().get(0), refused -> {
                    throw new InputFault("This evidence was not added.", refused.faults());
                });
    }

    /** A piece of evidence in one line of words. */
    public static String words(Evidence evidence) {
        String kind = Kind.ofId(evidence.kind()).map(Kind::words).orElse(evidence.kind());
        String source = evidence.source().map(" (%s)"::formatted).orElse("");
        return kind + ": " + String.join(" · ", details(evidence)) + source;
    }

    private static List<String> details(Evidence evidence) {
        var words = new ArrayList<String>();
        if (evidence instanceof Evidence.Order order) {
            words.add(order.award());
            order.reference().ifPresent(words::add);
            order.date().map(Days::partial).ifPresent(words::add);
            if (order.heroism()) {
                words.add("for heroism");
            }
        } else if (evidence instanceof Evidence.UnitAssignment assignment) {
            words.add(assignment.unit());
            span(words, assignment.from(), assignment.to());
        } else if (evidence instanceof Evidence.Station station) {
            words.add(station.place());
            span(words, station.from(), station.to());
        } else if (evidence instanceof Evidence.HospitalAdmission admission) {
            words.add(plain(admission.cause()));
            admission.date().map(Days::partial).ifPresent(words::add);
            admission.diagnosis().ifPresent(words::add);
        } else if (evidence instanceof Evidence.Captivity captivity) {
            captivity.place().ifPresent(words::add);
            span(words, captivity.from(), captivity.to());
        } else if (evidence instanceof Evidence.UnitCredit credit) {
            words.add(credit.unit());
            words.add(credit.award());
            credit.reference().ifPresent(words::add);
            span(words, credit.from(), credit.to());
        } else if (evidence instanceof Evidence.Assault assault) {
            words.add(assault.campaign());
            assault.means().ifPresent(words::add);
            assault.date().map(Days::partial).ifPresent(words::add);
        } else if (evidence instanceof Evidence.Conduct conduct) {
            conduct.character().map("character %s"::formatted).ifPresent(words::add);
            conduct.efficiency().map("efficiency %s"::formatted).ifPresent(words::add);
            conduct.lostDays().ifPresent(days -> words.add(days + " days lost"));
            conduct.convictions().ifPresent(number -> words.add(number + " convictions"));
        } else if (evidence instanceof Evidence.Death death) {
            words.add(plain(death.manner()));
            death.date().map(Days::partial).ifPresent(words::add);
        } else if (evidence instanceof Evidence.Statement statement) {
            statement.by().map("%s says"::formatted).ifPresent(words::add);
            words.add("\u201c" + statement.says() + "\u201d");
        }
        return words;
    }

    private static void span(List<String> words, Optional<PartialDate> from, Optional<PartialDate> to) {
        from.map(day -> "from " + Days.partial(day)).ifPresent(words::add);
        to.map(day -> "to " + Days.partial(day)).ifPresent(words::add);
    }

    private static String plain(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
