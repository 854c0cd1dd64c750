package org.honorsdue.reading.casefile;

import java.util.List;
import java.util.function.Function;
import org.honorsdue.service.Casefile;

/** What came of a file that was handed in: a casefile, or everything that is wrong with it. */
public sealed interface Submission {
    /** The file is sound. */
    record Accepted(Casefile casefile) implements Submission {
        @Override
        public <R> R answer(Function<Accepted, R> accepted, Function<Refused, R> refused) {
            return accepted.apply(this);
        }
    }

    /**
     * The file cannot be used.
     *
     * @param faults all of them, in the order of the file; never empty
     */
    record Refused(List<CasefileFault> faults) implements Submission {
        public Refused {
            faults = List.copyOf(faults);
            if (faults.isEmpty()) {
                throw new IllegalArgumentException("A file is refused for a reason.");
            }
        }

        @Override
        public <R> R answer(Function<Accepted, R> accepted, Function<Refused, R> refused) {
            return refused.apply(this);
        }
    }

    /** Both outcomes must be answered. */
    <R> R answer(Function<Accepted, R> accepted, Function<Refused, R> refused);
}
