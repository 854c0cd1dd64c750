package org.honorsdue.determination;

import static java.util.stream.Collectors.toCollection;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.assertj.core.api.AbstractAssert;
import org.honorsdue.determination.finding.FactWanted;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.Ground;
import org.honorsdue.determination.finding.OnPaper;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.determination.finding.Verdict;
import org.honorsdue.service.fact.Device;

/** Says of a finding what a case note says. */
public final class FindingAssert extends AbstractAssert<FindingAssert, Finding> {
    private FindingAssert(Finding finding) {
        super(finding, FindingAssert.class);
    }

    public static FindingAssert assertThat(Finding finding) {
        return new FindingAssert(finding);
    }

    public FindingAssert isAuthorized() {
        return stands(Standing.AUTHORIZED);
    }

    public FindingAssert isPresumed() {
        return stands(Standing.PRESUMED);
    }

    public FindingAssert isUnsettled() {
        return stands(Standing.UNSETTLED);
    }

    public FindingAssert isNotAuthorized() {
        return stands(Standing.NOT_AUTHORIZED);
    }

    public FindingAssert isPresumedOrUnsettled() {
        if (actual.standing() != Standing.PRESUMED && actual.standing() != Standing.UNSETTLED) {
            failWithMessage("Expected an open question, but it is %s.%n%s", actual.standing(), proof());
        }
        return this;
    }

    public FindingAssert isPresumedOrAuthorized() {
        if (actual.standing() != Standing.PRESUMED && actual.standing() != Standing.AUTHORIZED) {
            failWithMessage("Expected it due, but it is %s.%n%s", actual.standing(), proof());
        }
        return this;
    }

    private FindingAssert stands(Standing standing) {
        if (actual.standing() != standing) {
            failWithMessage(
                    "Expected %s to be %s, but it is %s.%n%s", actual.award(), standing, actual.standing(), proof());
        }
        return this;
    }

    public FindingAssert counts(int awards) {
        if (actual.count() != awards) {
            failWithMessage("Expected %d of %s, but counted %d.%n%s", awards, actual.award(), actual.count(), proof());
        }
        return this;
    }

    public FindingAssert wears(Device device, int number) {
        int worn = worn(device);
        if (worn != number) {
            failWithMessage("Expected %d %s, but %d are worn.%n%s", number, device.id(), worn, proof());
        }
        return this;
    }

    public FindingAssert wearsFor(Device device, String... standsFor) {
        wears(device, standsFor.length);
        for (var each : actual.devices()) {
            if (each.device() == device && !each.standsFor().equals(List.of(standsFor))) {
                failWithMessage(
                        "Expected %s for %s, but it is for %s.", device.id(), List.of(standsFor), each.standsFor());
            }
        }
        return this;
    }

    public FindingAssert wearsNothing() {
        if (!actual.devices().isEmpty()) {
            failWithMessage("Expected nothing to be worn on %s, but found %s.", actual.award(), actual.devices());
        }
        return this;
    }

    private int worn(Device device) {
        return actual.devices().stream()
                .filter(each -> each.device() == device)
                .mapToInt(each -> each.count())
                .sum();
    }

    public FindingAssert isOnPaper() {
        return paper(OnPaper.YES);
    }

    public FindingAssert isNotOnPaper() {
        return paper(OnPaper.NO);
    }

    public FindingAssert isShortOnPaper() {
        return paper(OnPaper.INCOMPLETE);
    }

    private FindingAssert paper(OnPaper expected) {
        if (actual.onPaper() != expected) {
            failWithMessage("Expected %s on the paper: %s, but it is %s.", actual.award(), expected, actual.onPaper());
        }
        return this;
    }

    /** The clause, by its short name, has that answer in the proof. */
    public FindingAssert rests(String shortName, Verdict verdict) {
        String clause = actual.award() + "/" + shortName;
        boolean found = actual.grounds().stream()
                .anyMatch(ground -> ground.clause().equals(clause) && ground.verdict() == verdict);
        if (!found) {
            failWithMessage("Expected %s to be %s.%n%s", clause, verdict, proof());
        }
        return this;
    }

    public FindingAssert saying(String words) {
        boolean found = actual.grounds().stream()
                        .anyMatch(ground -> ground.says().contains(words))
                || actual.cautions().stream().anyMatch(caution -> caution.contains(words))
                || actual.needs().stream().anyMatch(need -> need.question().contains(words))
                || actual.whyNotOnPaper().contains(words);
        if (!found) {
            failWithMessage("Expected the words \"%s\".%n%s", words, proof());
        }
        return this;
    }

    /** The kinds of fact that any need asks for. */
    public FindingAssert wants(String... kinds) {
        Set<String> wanted = actual.needs().stream()
                .flatMap(need -> need.wanted().stream())
                .map(FactWanted::kind)
                .collect(toCollection(TreeSet::new));
        if (!wanted.equals(new TreeSet<>(List.of(kinds)))) {
            failWithMessage(
                    "Expected the facts %s to be wanted, but they are %s.%n%s", List.of(kinds), wanted, proof());
        }
        return this;
    }

    /** Some need can be settled by these documents together. */
    public FindingAssert settledBy(String... documents) {
        var set = Set.of(documents);
        if (actual.needs().stream().noneMatch(need -> need.settledBy().contains(set))) {
            failWithMessage("Expected to be settled by %s.%n%s", set, proof());
        }
        return this;
    }

    public FindingAssert wantsNothing() {
        if (!actual.needs().isEmpty()) {
            failWithMessage("Expected no open question, but found %s.", actual.needs());
        }
        return this;
    }

    private String proof() {
        var words = new StringBuilder();
        for (Ground ground : actual.grounds()) {
            words.append("  ")
                    .append(ground.clause())
                    .append(' ')
                    .append(ground.verdict())
                    .append(": ");
            words.append(ground.says()).append(System.lineSeparator());
        }
        actual.needs()
                .forEach(need -> words.append("  ? ")
                        .append(need.question())
                        .append(' ')
                        .append(need.settledBy())
                        .append(System.lineSeparator()));
        actual.cautions()
                .forEach(caution -> words.append("  ! ").append(caution).append(System.lineSeparator()));
        return words.toString();
    }
}
