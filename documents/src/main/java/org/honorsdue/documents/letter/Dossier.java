package org.honorsdue.documents.letter;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.honorsdue.determination.Examiner;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.determination.nextsteps.NextSteps;
import org.honorsdue.insignia.display.CaseWish;
import org.honorsdue.reading.CasefileReader;
import org.honorsdue.reading.EntryReading;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.law.Award;
import org.honorsdue.reference.paper.ProofDocument;
import org.honorsdue.service.Casefile;
import org.honorsdue.service.fact.Death;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.PersonName;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.SexFact;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Typed;

/**
 * Everything the letters of one case are made from.
 *
 * @param findings as of the day the letters bear
 * @param thenFindings as of the day of separation or death, when that day is known
 * @param steps what would settle the open questions with the least work
 * @param readings per paper, each entry with characters as it was read
 * @param relation of whoever writes
 * @param display how the display case was laid out; empty when nobody did
 */
public record Dossier(
        Casefile casefile,
        ServiceFacts facts,
        Findings findings,
        Optional<Findings> thenFindings,
        NextSteps steps,
        List<Map<Entry, EntryReading>> readings,
        Reference reference,
        Relation relation,
        Masking masking,
        Optional<CaseWish> display) {
    public Dossier {
        readings = List.copyOf(readings);
    }

    /**
     * Reads the casefile and examines the soldier under the law of the day the letters bear and of the day he left the
     * service. The writer's relation is not stated yet, and what is private is masked.
     *
     * @param dated the day the letters bear
     * @param asked award ids that must be answered even if nothing points to them
     */
    public static Dossier of(
            Casefile casefile,
            CasefileReader reader,
            Reference reference,
            Examiner examiner,
            LocalDate dated,
            Set<String> asked) {
        var readings = IntStream.rangeClosed(1, casefile.papers().size())
                .mapToObj(paper -> reader.readings(casefile, paper))
                .toList();
        return of(casefile, reader.read(casefile), readings, reference, examiner, dated, asked);
    }

    /** The same from facts that were read already. */
    public static Dossier of(
            Casefile casefile,
            ServiceFacts facts,
            List<Map<Entry, EntryReading>> readings,
            Reference reference,
            Examiner examiner,
            LocalDate dated,
            Set<String> asked) {
        var findings = examiner.examine(facts, dated, asked);
        return new Dossier(
                casefile,
                facts,
                findings,
                lastDay(facts).map(day -> examiner.examine(facts, day, asked)),
                NextSteps.of(findings, facts, reference),
                readings,
                reference,
                Relation.NOT_STATED,
                Masking.SHARED,
                Optional.empty());
    }

    /** The same case, written by somebody else. */
    public Dossier from(Relation writer) {
        return new Dossier(
                casefile, facts, findings, thenFindings, steps, readings, reference, writer, masking, display);
    }

    /** The same case, for other eyes. */
    public Dossier masked(Masking how) {
        return new Dossier(casefile, facts, findings, thenFindings, steps, readings, reference, relation, how, display);
    }

    /** The same case with its display as somebody laid it out. */
    public Dossier laidOut(CaseWish wish) {
        return new Dossier(
                casefile,
                facts,
                findings,
                thenFindings,
                steps,
                readings,
                reference,
                relation,
                masking,
                Optional.of(wish));
    }

    /** The last day of service that is known to the day. */
    private static Optional<LocalDate> lastDay(ServiceFacts facts) {
        return Stream.concat(
                        facts.every(Tour.class).stream().flatMap(tour -> tour.separated().stream()),
                        facts.every(Death.class).stream().flatMap(death -> death.date().stream()))
                .filter(PartialDate::isDay)
                .map(PartialDate::latest)
                .max(LocalDate::compareTo);
    }

    /** Authorized awards, in the order of the findings. */
    List<Finding> authorized() {
        return standing(Standing.AUTHORIZED);
    }

    /** Awards with one of these standings, in the order of the findings. */
    List<Finding> standing(Standing... standings) {
        var wanted = Set.of(standings);
        return findings.findings().stream()
                .filter(finding -> wanted.contains(finding.standing()))
                .toList();
    }

    /** Whether it is worn on the sleeve or the lapel and counts as no award of its own. */
    boolean isInsigne(Finding finding) {
        return reference
                .award(finding.award())
                .map(award -> award.kind() == Award.Kind.INSIGNE)
                .orElse(false);
    }

    String meaning(Finding finding) {
        return reference.award(finding.award()).map(Award::meaning).orElse("");
    }

    Optional<ProofDocument> document(String id) {
        return reference.document(id);
    }

    /** What stands in an entry of the last paper that has it, as it may be shown; empty when nothing stands there. */
    Optional<String> typed(Entry entry) {
        for (int i = casefile.papers().size() - 1; i >= 0; i--) {
            if (casefile.papers().get(i).entry(entry) instanceof Typed.Text text) {
                return Optional.of(masking.show(
                        entry, text.text().strip().replace('\n', ';').replace(";", "; ")));
            }
        }
        return Optional.empty();
    }

    /** Characters of an entry as they may be quoted. */
    String quoted(Entry entry, String text) {
        return masking.withholds(entry) || entry != Entry.REMARKS
                ? masking.show(entry, text)
                : masking.scrap(casefile, text);
    }

    /** Characters that were left unread, as they may be quoted. */
    String unread(Entry entry, String text) {
        return masking.withholds(entry) ? masking.show(entry, text) : masking.scrap(casefile, text);
    }

    /** The day every letter bears. */
    LocalDate dated() {
        return findings.asOf();
    }

    Person person() {
        return Person.of(
                casefile.name().or(() -> facts.first(PersonName.class).map(PersonName::name)),
                casefile.sex().or(() -> facts.first(SexFact.class).map(SexFact::sex)));
    }

    /** The soldier as offices file the name. */
    String soldier() {
        return person().listed();
    }
}
