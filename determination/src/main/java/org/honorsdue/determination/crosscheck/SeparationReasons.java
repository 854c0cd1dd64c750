package org.honorsdue.determination.crosscheck;

import java.util.Locale;
import java.util.stream.Stream;
import org.honorsdue.service.fact.SeparationReason;

/**
 * What kind of separation the typed reason tells of. The printed reason is read before the number of the regulation,
 * because the meanings of the numbers are from memory.
 */
final class SeparationReasons {
    private SeparationReasons() {}

    /** Certificate of disability, physical or medical grounds. */
    static boolean isDisability(SeparationReason reason) {
        return says(reason, "disab", "cdd", "medical", "physical", "615-361");
    }

    /** The ordinary release of 1945 and after under the point, age or length plan. */
    static boolean isDemobilization(SeparationReason reason) {
        return says(reason, "demob", "rr 1-1", "rr1-1", "readjustment", "points")
                || says(reason, "conv", "cog") && !isSpecial(reason);
    }

    /** A reason that asks for no points: age, dependency, hardship, re-enlistment, a commission and the like. */
    static boolean isSpecial(SeparationReason reason) {
        return isDisability(reason)
                || says(
                        reason,
                        "age",
                        "minor",
                        "depend",
                        "hardship",
                        "enlist",
                        "commission",
                        "appoint",
                        "warrant",
                        "industry",
                        "key man",
                        "pow",
                        "prisoner",
                        "exp",
                        "ets",
                        "length",
                        "years",
                        "surplus",
                        "child",
                        "national health",
                        "school",
                        "615-362",
                        "615-366",
                        "615-368",
                        "615-369");
    }

    private static boolean says(SeparationReason reason, String... words) {
        var text = (reason.reason() + " " + reason.authority().orElse("")).toLowerCase(Locale.ROOT);
        return Stream.of(words).anyMatch(text::contains);
    }
}
