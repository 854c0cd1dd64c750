package org.honorsdue.determination.law;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.honorsdue.determination.finding.FactWanted;
import org.honorsdue.determination.finding.Verdict;
import org.honorsdue.service.fact.Basis;
import org.honorsdue.service.fact.Origin;
import org.jspecify.annotations.Nullable;

/**
 * What one clause answers about one soldier. The words are deferred: they are written only for somebody who reads.
 *
 * <p>A reading that remains doubtful never settles anything alone, so a {@code met} or {@code notMet} that rests on one
 * becomes an unknown that asks for the paper to be read again.
 */
public final class Answer {
    private static final Supplier<String> NOTHING = () -> "";
    private static final Answer NO = new Answer(Verdict.NOT_MET, null, false, NOTHING, List.of());

    private final Verdict verdict;
    private final @Nullable FactKind missing;
    private final boolean usual;
    private final Supplier<String> words;
    private final List<Basis> rests;

    private Answer(
            Verdict verdict, @Nullable FactKind missing, boolean usual, Supplier<String> words, List<Basis> rests) {
        this.verdict = verdict;
        this.missing = missing;
        this.usual = usual;
        this.words = words;
        this.rests = rests;
    }

    /** Shown. {@code found} says what was found, as a phrase that can follow a colon. */
    public static Answer met(Supplier<String> found, Basis... rests) {
        return shown(Verdict.MET, found, List.of(rests));
    }

    public static Answer met(Supplier<String> found, List<Basis> rests) {
        return shown(Verdict.MET, found, rests);
    }

    /** Shown not to be so. */
    public static Answer notMet(Supplier<String> found, Basis... rests) {
        return shown(Verdict.NOT_MET, found, List.of(rests));
    }

    public static Answer notMet(Supplier<String> found, List<Basis> rests) {
        return shown(Verdict.NOT_MET, found, rests);
    }

    /** Nothing points to it. */
    public static Answer no() {
        return NO;
    }

    /** Not shown, but so in the usual case: if nothing else is missing, the award is presumed. */
    public static Answer usually(FactKind missing, Supplier<String> about, Basis... rests) {
        return new Answer(Verdict.UNKNOWN, missing, true, about, List.of(rests));
    }

    public static Answer usually(FactKind missing, Supplier<String> about, List<Basis> rests) {
        return new Answer(Verdict.UNKNOWN, missing, true, about, rests);
    }

    /** Not shown, and could be either way. */
    public static Answer open(FactKind missing, Supplier<String> about, Basis... rests) {
        return new Answer(Verdict.UNKNOWN, missing, false, about, List.of(rests));
    }

    public static Answer open(FactKind missing, Supplier<String> about, List<Basis> rests) {
        return new Answer(Verdict.UNKNOWN, missing, false, about, rests);
    }

    private static Answer shown(Verdict verdict, Supplier<String> found, List<Basis> rests) {
        for (int i = 0; i < rests.size(); i++) {
            var basis = rests.get(i);
            if (basis.certainty() == Basis.Certainty.DOUBTFUL) {
                return new Answer(
                        Verdict.UNKNOWN, FactKind.CLEAR_READING, verdict == Verdict.MET, () -> typed(basis), rests);
            }
        }
        return new Answer(verdict, null, false, found, rests);
    }

    private static String typed(Basis basis) {
        return basis.origins().isEmpty()
                ? "a doubtful entry"
                : "\"" + basis.origins().get(0).text() + "\"";
    }

    public Verdict verdict() {
        return verdict;
    }

    public boolean isMet() {
        return verdict == Verdict.MET;
    }

    public boolean isUnknown() {
        return verdict == Verdict.UNKNOWN;
    }

    public boolean isNotMet() {
        return verdict == Verdict.NOT_MET;
    }

    /** Whether the missing fact is so in the usual case. */
    public boolean usual() {
        return usual;
    }

    /** Whether anything at all was found, for or against. */
    public boolean speaks() {
        return this != NO;
    }

    /** The fact that would turn an unknown into an answer. */
    public Optional<FactWanted> wanted() {
        return missing == null ? Optional.empty() : Optional.of(new FactWanted(missing.id(), words.get()));
    }

    /** What was found, or what is not shown, in words. */
    public String says() {
        return missing == null ? words.get() : "not shown that " + missing.sentence(words.get());
    }

    /** Whether anything on the papers or in the evidence stands behind it. */
    boolean hasEvidence() {
        for (var basis : rests) {
            if (!basis.origins().isEmpty()) {
                return true;
            }
        }
        return false;
    }

    /** The characters and pieces of evidence it rests on. */
    public List<Origin> origins() {
        if (rests.size() == 1) {
            return rests.get(0).origins();
        }
        var origins = new ArrayList<Origin>();
        for (var basis : rests) {
            for (var origin : basis.origins()) {
                if (!origins.contains(origin)) {
                    origins.add(origin);
                }
            }
        }
        return origins;
    }

    /** For an exclusion: the answer to "is he free of it?". */
    public Answer reversed() {
        return new Answer(verdict.not(), missing, usual, words, rests);
    }
}
