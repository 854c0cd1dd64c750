package org.honorsdue.reference.unit;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.honorsdue.reference.Provenance;

/**
 * A citation or a foreign award to a unit.
 *
 * @param parts the parts cited; empty when the unit as a whole
 * @param action what for
 * @param when the days of the action as far as known
 * @param order the order that announced it; may be empty
 * @param asNamed the unit in the words of the source
 */
public record UnitAward(
        String unit,
        List<UnitPart> parts,
        Kind award,
        String action,
        LooseSpan when,
        String order,
        String asNamed,
        String note,
        Provenance provenance) {
    public UnitAward {
        parts = List.copyOf(parts);
    }

    /** The awards that units hold. */
    public enum Kind {
        DISTINGUISHED_UNIT_CITATION("distinguished-unit-citation", "Distinguished Unit Citation", Nation.UNITED_STATES),
        MERITORIOUS_UNIT_COMMENDATION(
                "meritorious-unit-commendation", "Meritorious Service Unit Plaque", Nation.UNITED_STATES),
        NAVY_PRESIDENTIAL_UNIT_CITATION(
                "navy-presidential-unit-citation", "Presidential Unit Citation (Navy)", Nation.UNITED_STATES),
        PHILIPPINE_PRESIDENTIAL_UNIT_CITATION(
                "philippine-presidential-unit-citation",
                "Philippine Republic Presidential Unit Citation",
                Nation.PHILIPPINES),
        FRENCH_CROIX_DE_GUERRE("french-croix-de-guerre", "French Croix de Guerre with Palm", Nation.FRANCE),
        FRENCH_FOURRAGERE("french-fourragere", "French fourragere", Nation.FRANCE),
        BELGIAN_ARMY_CITATION(
                "belgian-army-citation", "Citation in the Order of the Day of the Belgian Army", Nation.BELGIUM),
        BELGIAN_CROIX_DE_GUERRE("belgian-croix-de-guerre", "Belgian Croix de Guerre with Palm", Nation.BELGIUM),
        BELGIAN_FOURRAGERE("belgian-fourragere", "Belgian fourragere 1940", Nation.BELGIUM),
        NETHERLANDS_MILITARY_ORDER_OF_WILLIAM(
                "netherlands-military-order-of-william", "Military Order of William", Nation.NETHERLANDS),
        NETHERLANDS_ORANGE_LANYARD("netherlands-orange-lanyard", "Netherlands Orange Lanyard", Nation.NETHERLANDS),
        LUXEMBOURG_CROIX_DE_GUERRE("luxembourg-croix-de-guerre", "Luxembourg Croix de Guerre", Nation.LUXEMBOURG);

        private static final Map<String, Kind> BY_ID =
                Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(Kind::id, Function.identity()));

        private final String id;
        private final String title;
        private final Nation nation;

        Kind(String id, String title, Nation nation) {
            this.id = id;
            this.title = title;
            this.nation = nation;
        }

        /** The award id, the same as in the table of awards where the award is there. */
        public String id() {
            return id;
        }

        public String title() {
            return title;
        }

        public Nation nation() {
            return nation;
        }

        public boolean foreign() {
            return nation != Nation.UNITED_STATES;
        }

        public static Optional<Kind> ofId(String id) {
            return Optional.ofNullable(BY_ID.get(id));
        }
    }

    /** Whose award it is. */
    public enum Nation {
        UNITED_STATES,
        PHILIPPINES,
        FRANCE,
        BELGIUM,
        NETHERLANDS,
        LUXEMBOURG
    }
}
