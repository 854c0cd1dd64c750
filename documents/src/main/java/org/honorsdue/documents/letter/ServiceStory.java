package org.honorsdue.documents.letter;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.honorsdue.documents.page.Block;
import org.honorsdue.reference.Theater;
import org.honorsdue.service.fact.ArmFact;
import org.honorsdue.service.fact.Assault;
import org.honorsdue.service.fact.Assignment;
import org.honorsdue.service.fact.CampaignClaim;
import org.honorsdue.service.fact.Captivity;
import org.honorsdue.service.fact.Death;
import org.honorsdue.service.fact.HospitalAdmission;
import org.honorsdue.service.fact.MilitaryGrade;
import org.honorsdue.service.fact.OverseasStay;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.Specialty;
import org.honorsdue.service.fact.Station;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.fact.Wound;

/** Who the soldier was and where he served, from the papers and the evidence; nothing is added to them. */
final class ServiceStory {
    private final Dossier dossier;
    private final Person person;

    ServiceStory(Dossier dossier) {
        this.dossier = dossier;
        this.person = dossier.person();
    }

    /** {@code Technician Fifth Grade, Field Artillery}; empty when the papers give neither. */
    String gradeAndArm() {
        var parts = new LinkedHashSet<String>();
        var grades = dossier.facts().every(MilitaryGrade.class);
        if (!grades.isEmpty()) {
            parts.add(grades.get(grades.size() - 1).title());
        }
        dossier.facts().first(ArmFact.class).ifPresent(arm -> parts.add(arm.arm()));
        return String.join(", ", parts);
    }

    List<String> sentences() {
        var sentences = new ArrayList<String>();
        var says = new ArrayList<String>();
        for (var tour : dossier.facts().every(Tour.class)) {
            String span = tour(tour, says.isEmpty() ? person.full() : person.subject() + " again");
            if (!span.isEmpty()) {
                says.add(span);
            }
        }
        death().ifPresent(death -> says.add(death(death)));
        dossier.facts()
                .first(Specialty.class)
                .ifPresent(specialty -> says.add(
                        "%s specialty was: %s.".formatted(person.possessive(), Wording.small(specialty.title()))));
        var campaigns = dossier.facts().every(CampaignClaim.class).stream()
                .map(claim -> campaign(claim.campaign()))
                .distinct()
                .toList();
        if (!campaigns.isEmpty()) {
            says.add("The paper names %s: %s."
                    .formatted(Wording.number(campaigns.size(), "campaign"), String.join(", ", campaigns)));
        }
        lastUnit().ifPresent(says::add);
        if (!says.isEmpty()) {
            sentences.add(String.join(" ", says));
        }
        if (sentences.isEmpty()) {
            sentences.add("No paper with dates of service was given.");
        }
        return sentences;
    }

    /** The one source that gives the day, before one that does not. */
    private Optional<Death> death() {
        var deaths = dossier.facts().every(Death.class);
        return deaths.stream()
                .filter(death -> death.date().isPresent())
                .findFirst()
                .or(() -> deaths.stream().findFirst());
    }

    private Optional<String> lastUnit() {
        return dossier.facts().every(Assignment.class).stream()
                .filter(Assignment::atSeparation)
                .map(Assignment::designation)
                .distinct()
                .reduce((one, other) -> other)
                .map(unit -> death().isPresent()
                        ? "The paper names the unit %s.".formatted(unit)
                        : "The unit on the paper, %s, is the one %s came home with; it need not be the one %s fought with."
                                .formatted(unit, person.he(), person.he()));
    }

    private static String tour(Tour tour, String who) {
        if (tour.entered().isPresent() && tour.separated().isPresent()) {
            return "%s entered active service on %s and left it on %s."
                    .formatted(
                            who,
                            Wording.date(tour.entered().get()),
                            Wording.date(tour.separated().get()));
        }
        return tour.entered()
                .map(day -> "%s entered active service on %s.".formatted(who, Wording.date(day)))
                .or(() -> tour.separated()
                        .map(day -> "%s left the service in or on %s.".formatted(who, Wording.date(day))))
                .orElse("");
    }

    private String death(Death death) {
        String manner = switch (death.manner()) {
            case KILLED_IN_ACTION -> "was killed in action";
            case DIED_OF_WOUNDS -> "died of wounds";
            case DIED_IN_CAPTIVITY -> "died in captivity";
            case FINDING_OF_DEATH -> "was found to have died";
            case NON_BATTLE -> "died, not in battle";
            case NOT_STATED -> "died in service";
        };
        return "%s %s%s."
                .formatted(
                        person.subject(),
                        manner,
                        death.date().map(day -> " on " + Wording.date(day)).orElse(""));
    }

    /** A line of the list of places. */
    private record Line(LocalDate sorted, String when, String what) {}

    /** When and where, in the order of time; the first and the last day stand in the sentences. */
    Block.Particulars places() {
        var lines = new ArrayList<Line>();
        dossier.facts().every(OverseasStay.class).forEach(stay -> stay(lines, stay));
        for (var unit : dossier.facts().every(Assignment.class)) {
            if (!unit.atSeparation()) {
                during(lines, unit.from(), unit.to(), "With " + unit.designation());
            }
        }
        for (var station : dossier.facts().every(Station.class)) {
            during(lines, station.from(), station.to(), "Stationed: " + station.place());
        }
        for (var assault : dossier.facts().every(Assault.class)) {
            on(
                    lines,
                    assault.date(),
                    "In the assault: " + campaign(assault.campaign())
                            + assault.means().map(means -> ", " + means).orElse(""));
        }
        for (var wound : dossier.facts().every(Wound.class)) {
            on(lines, wound.date(), "Wounded in action" + after(wound.place()));
        }
        for (var hospital : dossier.facts().every(HospitalAdmission.class)) {
            on(lines, hospital.date(), "In hospital" + after(hospital.diagnosis()));
        }
        for (var captivity : dossier.facts().every(Captivity.class)) {
            during(
                    lines,
                    captivity.from(),
                    captivity.to(),
                    (captivity.internedByNeutral() ? "Interned" : "Prisoner of war") + after(captivity.place()));
        }
        dossier.facts().every(Death.class).forEach(death -> on(lines, death.date(), "Died"));
        return new Block.Particulars(lines.stream()
                .sorted(Comparator.comparing(Line::sorted))
                .map(line -> new Block.Particular(line.when(), line.what(), false))
                .distinct()
                .toList());
    }

    private String campaign(String id) {
        return dossier.reference().campaign(id).map(known -> known.name()).orElse(id);
    }

    private static String after(Optional<String> words) {
        return words.map(known -> ": " + known).orElse("");
    }

    private static void stay(List<Line> lines, OverseasStay stay) {
        String where = stay.destination() + theaters(stay.theaters());
        if (stay.arrived().isPresent()) {
            String sailed =
                    stay.departed().map(day -> "; sailed " + Wording.date(day)).orElse("");
            String home =
                    stay.returned().map(day -> ", home " + Wording.date(day)).orElse("");
            during(lines, stay.arrived(), stay.left(), "Overseas: " + where + sailed + home);
        } else {
            on(lines, stay.departed(), "Sailed for " + where);
            on(lines, stay.returned(), "Back in the United States");
        }
    }

    private static String theaters(Set<Theater> theaters) {
        if (theaters.size() != 1) {
            return "";
        }
        return switch (theaters.iterator().next()) {
            case CONTINENTAL_US -> "";
            case AMERICAN -> " (American Theater)";
            case EAME -> " (European-African-Middle Eastern Theater)";
            case ASIATIC_PACIFIC -> " (Asiatic-Pacific Theater)";
        };
    }

    private static void on(List<Line> lines, Optional<PartialDate> day, String what) {
        day.ifPresent(known -> lines.add(new Line(known.earliest(), Wording.date(known), what)));
    }

    private static void during(List<Line> lines, Optional<PartialDate> from, Optional<PartialDate> to, String what) {
        from.or(() -> to).ifPresent(sorted -> lines.add(new Line(sorted.earliest(), Wording.span(from, to), what)));
    }
}
