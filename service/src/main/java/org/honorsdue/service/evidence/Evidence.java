package org.honorsdue.service.evidence;

import java.util.Optional;
import java.util.OptionalInt;
import org.honorsdue.service.fact.PartialDate;

/** One piece of evidence that is not on a separation paper, as given. The kinds are those of the casefile. */
public sealed interface Evidence {
    /** What document this was read in and where that is kept; empty when the casefile does not say. */
    Optional<String> source();

    /** The word that names this kind in a casefile. */
    String kind();

    /**
     * A published order for an award.
     *
     * @param award award id, as in {@code silver-star}
     * @param heroism true when the order gives heroism or valor as its ground: what a letter V rests on
     */
    record Order(
            String award,
            Optional<String> reference,
            Optional<PartialDate> date,
            boolean heroism,
            Optional<String> source)
            implements Evidence {
        @Override
        public String kind() {
            return "order";
        }
    }

    /** Membership of a unit; both ends inclusive. */
    record UnitAssignment(String unit, Optional<PartialDate> from, Optional<PartialDate> to, Optional<String> source)
            implements Evidence {
        @Override
        public String kind() {
            return "unit-assignment";
        }
    }

    /** Presence at a place on duty; both ends inclusive. */
    record Station(String place, Optional<PartialDate> from, Optional<PartialDate> to, Optional<String> source)
            implements Evidence {
        @Override
        public String kind() {
            return "station";
        }
    }

    /** A hospital admission or treatment record. */
    record HospitalAdmission(
            Cause cause, Optional<PartialDate> date, Optional<String> diagnosis, Optional<String> source)
            implements Evidence {
        @Override
        public String kind() {
            return "hospital-admission";
        }

        /** Whether the record marks a battle casualty. */
        public enum Cause {
            BATTLE,
            NON_BATTLE,
            NOT_STATED
        }
    }

    /** Time in enemy hands, or interned by a neutral when the place says so; both ends inclusive. */
    record Captivity(
            Optional<PartialDate> from, Optional<PartialDate> to, Optional<String> place, Optional<String> source)
            implements Evidence {
        @Override
        public String kind() {
            return "captivity";
        }
    }

    /** An order crediting a unit with a unit award or a campaign. */
    record UnitCredit(
            String unit,
            String award,
            Optional<String> reference,
            Optional<PartialDate> from,
            Optional<PartialDate> to,
            Optional<String> source)
            implements Evidence {
        @Override
        public String kind() {
            return "unit-credit";
        }
    }

    /** Part in an assault landing, a combat jump or a glider landing. */
    record Assault(String campaign, Optional<String> means, Optional<PartialDate> date, Optional<String> source)
            implements Evidence {
        @Override
        public String kind() {
            return "assault";
        }
    }

    /** Ratings of character and efficiency, days lost, convictions by court-martial. */
    record Conduct(
            Optional<String> character,
            Optional<String> efficiency,
            OptionalInt lostDays,
            OptionalInt convictions,
            Optional<String> source)
            implements Evidence {
        @Override
        public String kind() {
            return "conduct";
        }
    }

    /** Death in service. */
    record Death(Optional<PartialDate> date, Manner manner, Optional<String> source) implements Evidence {
        @Override
        public String kind() {
            return "death";
        }

        /** How he died. */
        public enum Manner {
            KILLED_IN_ACTION,
            DIED_OF_WOUNDS,
            DIED_IN_CAPTIVITY,
            FINDING_OF_DEATH,
            NON_BATTLE,
            NOT_STATED
        }
    }

    /** What somebody says. Never settles anything by itself. */
    record Statement(Optional<String> by, String says, Optional<String> source) implements Evidence {
        @Override
        public String kind() {
            return "statement";
        }
    }
}
