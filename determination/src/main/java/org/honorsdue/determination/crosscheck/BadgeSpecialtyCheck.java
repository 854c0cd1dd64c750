package org.honorsdue.determination.crosscheck;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.paper.MilitarySpecialty;
import org.honorsdue.reference.paper.MilitarySpecialty.Leaning;
import org.honorsdue.service.fact.ArmFact;
import org.honorsdue.service.fact.AwardClaim;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.Specialty;
import org.honorsdue.service.paper.Entry;

/**
 * Badges against specialty, arm and dates. An arm or a specialty alone proves nothing, since the paper gives only the
 * last: a badge is questioned when both speak against it, when its order is older than the badge, or when a combat badge
 * stands on a paper without service abroad.
 */
final class BadgeSpecialtyCheck implements Check {
    private static final String INFANTRY = "combat-infantryman-badge";
    private static final String MEDICAL = "combat-medical-badge";
    private static final String AVIATION = "aviation-badge";
    private static final Provenance RULE = new Provenance(
            "War Department Circular 269, 27 October 1943 (infantry badges); Medical Badge: War Department Circular 66, 1 March 1945, from memory",
            Grade.SECONDARY);

    private final Reference reference;

    BadgeSpecialtyCheck(Reference reference) {
        this.reference = reference;
    }

    @Override
    public String id() {
        return "badge-specialty";
    }

    @Override
    public List<Crosscheck> compare(ServiceFacts facts) {
        var comparison = new Comparison(id(), RULE);
        for (var paper : OnePaper.allOf(facts)) {
            for (var claim : paper.every(AwardClaim.class)) {
                switch (claim.award()) {
                    case INFANTRY -> {
                        duty(paper, claim, "Infantry", MilitarySpecialty::infantry, comparison);
                        dates(paper, claim, LocalDate.of(1943, 10, 27), comparison);
                    }
                    case MEDICAL -> {
                        duty(paper, claim, "Medical", MilitarySpecialty::medicalDepartment, comparison);
                        dates(paper, claim, LocalDate.of(1945, 3, 1), comparison);
                    }
                    case AVIATION -> aviation(paper, claim, comparison);
                    default -> {}
                }
            }
        }
        return comparison.results();
    }

    private void duty(
            OnePaper paper,
            AwardClaim claim,
            String arm,
            Function<MilitarySpecialty, Leaning> leaning,
            Comparison comparison) {
        var arms = paper.every(ArmFact.class);
        var specialties = paper.every(Specialty.class);
        var restsOn = new ArrayList<ServiceFact>();
        restsOn.add(claim);
        restsOn.addAll(arms);
        restsOn.addAll(specialties);
        boolean armFits = arms.stream().anyMatch(fact -> fact.arm().startsWith(arm));
        boolean specialtyFits = specialties.stream().anyMatch(fact -> leaning(fact, leaning) == Leaning.YES);
        if (armFits || specialtyFits) {
            comparison.agrees(
                    "%s goes with the %s.".formatted(name(claim), armFits ? "arm" : "specialty"),
                    Set.of(claim.award()),
                    restsOn);
            return;
        }
        boolean known = !arms.isEmpty()
                && !specialties.isEmpty()
                && specialties.stream().allMatch(fact -> leaning(fact, leaning) == Leaning.NO);
        if (!known) {
            comparison.cannotTell(
                    "%s is typed; arm and specialty are not both there, or one of them leaves it open."
                            .formatted(name(claim)),
                    Set.of(claim.award()),
                    restsOn,
                    Entry.ARM,
                    Entry.MILITARY_SPECIALTY);
            return;
        }
        comparison.disagrees(
                "%s is typed, but the arm is %s and the specialty %s: neither is of that duty, unless he served otherwise before."
                        .formatted(
                                name(claim),
                                arms.get(0).arm(),
                                specialties.get(0).title()),
                Set.of(claim.award()),
                restsOn);
    }

    private static void dates(OnePaper paper, AwardClaim claim, LocalDate established, Comparison comparison) {
        var date = claim.date();
        if (date.filter(day -> day.latest().isBefore(established)).isPresent()) {
            comparison.disagrees(
                    "%s is dated %s, %s before there was such a badge (%s)."
                            .formatted(
                                    name(claim),
                                    Wording.date(date.get()),
                                    Wording.days(established.toEpochDay()
                                            - date.get().latest().toEpochDay()),
                                    Wording.day(established)),
                    Set.of(claim.award()),
                    List.of(claim));
        }
        boolean neverAbroad = PortToPort.of(paper).filter(List::isEmpty).isPresent()
                && paper.facts().papers() == 1
                && Abroad.of(paper.facts()).isEmpty();
        if (neverAbroad) {
            comparison.disagrees(
                    "%s is for ground combat, and the paper shows no service abroad.".formatted(name(claim)),
                    Set.of(claim.award()),
                    List.of(claim),
                    Entry.SERVICE_OUTSIDE_US);
        }
        var last = paper.tour().flatMap(tour -> tour.separated()).map(PartialDate::latest);
        if (date.isPresent()
                && last.filter(separated -> date.get().earliest().isAfter(separated))
                        .isPresent()) {
            comparison.disagrees(
                    "%s is dated %s, after the separation on %s."
                            .formatted(name(claim), Wording.date(date.get()), Wording.day(last.get())),
                    Set.of(claim.award()),
                    List.of(claim),
                    Entry.SEPARATED);
        }
    }

    /** Liaison pilots of the Field Artillery wore wings too. */
    private void aviation(OnePaper paper, AwardClaim claim, Comparison comparison) {
        var arms = paper.every(ArmFact.class);
        var specialties = paper.every(Specialty.class);
        var restsOn = new ArrayList<ServiceFact>();
        restsOn.add(claim);
        restsOn.addAll(arms);
        restsOn.addAll(specialties);
        boolean airman = arms.stream().anyMatch(ArmFact::airForces)
                || arms.stream().anyMatch(fact -> fact.arm().equals("Field Artillery"))
                || specialties.stream().anyMatch(fact -> leaning(fact, MilitarySpecialty::aircrew) == Leaning.YES);
        boolean known = !arms.isEmpty()
                && !specialties.isEmpty()
                && specialties.stream().allMatch(fact -> leaning(fact, MilitarySpecialty::aircrew) == Leaning.NO);
        if (airman) {
            comparison.agrees(name(claim) + " goes with the arm or the specialty.", Set.of(claim.award()), restsOn);
        } else if (known) {
            comparison.disagrees(
                    "%s is typed, but the arm is %s and the specialty %s: neither flies."
                            .formatted(
                                    name(claim),
                                    arms.get(0).arm(),
                                    specialties.get(0).title()),
                    Set.of(claim.award()),
                    restsOn);
        } else {
            comparison.cannotTell(
                    "%s is typed; arm and specialty are not both there, or one leaves it open.".formatted(name(claim)),
                    Set.of(claim.award()),
                    restsOn,
                    Entry.ARM,
                    Entry.MILITARY_SPECIALTY);
        }
    }

    private Leaning leaning(Specialty specialty, Function<MilitarySpecialty, Leaning> of) {
        return specialty
                .number()
                .flatMap(reference::specialty)
                .filter(MilitarySpecialty::safeToDecode)
                .map(of)
                .orElse(Leaning.MAYBE);
    }

    private static String name(AwardClaim claim) {
        return switch (claim.award()) {
            case INFANTRY -> "The Combat Infantryman Badge";
            case MEDICAL -> "The Medical Badge";
            default -> "An aviation badge";
        };
    }
}
