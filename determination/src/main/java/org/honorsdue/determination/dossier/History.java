package org.honorsdue.determination.dossier;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.honorsdue.reference.DateSpan;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.Theater;
import org.honorsdue.reference.history.AssaultLanding;
import org.honorsdue.reference.history.Campaign;
import org.honorsdue.reference.history.OccupationArea;
import org.honorsdue.reference.history.Place;
import org.honorsdue.reference.unit.UnitHistory;
import org.honorsdue.reference.unit.UnitTables;
import org.honorsdue.service.fact.Assault;
import org.jspecify.annotations.Nullable;

/** The published history with its dates as day numbers, prepared once for all soldiers. */
public final class History {
    /** A span as day numbers, both ends inclusive. */
    public record Days(long first, long last) {
        public Days(DateSpan span) {
            this(span.first().toEpochDay(), span.last().toEpochDay());
        }

        public long length() {
            return last - first + 1;
        }
    }

    /**
     * A campaign with its dates.
     *
     * @param order its place in the table, which is the order in which stars are named
     */
    public record Fought(Campaign campaign, Days ground, Days air, int order) {
        /** The dates for his arm; the wider of the two when the arm is not known. */
        public Days daysFor(boolean airman, boolean armKnown) {
            if (armKnown) {
                return airman ? air : ground;
            }
            return new Days(Math.min(ground.first, air.first), Math.max(ground.last, air.last));
        }
    }

    private final Reference reference;
    private final Map<String, Fought> campaigns = new HashMap<>();
    private final Map<Theater, Days> theaters = new EnumMap<>(Theater.class);
    private final Map<String, Place> places = new HashMap<>();
    private final Map<Place.Occupation, List<OccupationArea>> areasByClasp = new EnumMap<>(Place.Occupation.class);
    private final Map<String, OccupationArea> areas = new HashMap<>();
    private final Set<String> philippineIslands = new HashSet<>();
    private volatile @Nullable UnitHistory units;

    public History(Reference reference) {
        this.reference = reference;
        int order = 0;
        for (var campaign : reference.campaigns()) {
            campaigns.put(
                    campaign.id(),
                    new Fought(campaign, new Days(campaign.ground()), new Days(campaign.air()), order++));
        }
        for (var window : reference.theaters()) {
            theaters.put(window.theater(), new Days(window.dates()));
        }
        for (var area : reference.occupationAreas()) {
            areas.put(area.id(), area);
            areasByClasp
                    .computeIfAbsent(area.clasp(), clasp -> new ArrayList<>())
                    .add(area);
        }
        reference.places().forEach(place -> places.put(place.name(), place));
        for (var island : List.of(
                "Philippine Islands",
                "Leyte",
                "Luzon",
                "Manila",
                "Mindanao",
                "Cebu",
                "Panay",
                "Negros",
                "Mindoro",
                "Palawan",
                "Samar",
                "Batangas",
                "Bataan",
                "Corregidor")) {
            philippineIslands.add(island.toLowerCase(Locale.ROOT));
        }
    }

    /** What units hold, by the tables of units; read when first asked for. */
    public UnitHistory units() {
        UnitHistory known = units;
        if (known == null) {
            known = new UnitHistory(UnitTables.published(), reference);
            units = known;
        }
        return known;
    }

    public Reference reference() {
        return reference;
    }

    public Optional<Fought> campaign(String id) {
        return Optional.ofNullable(campaigns.get(id));
    }

    /**
     * The dates in which service in a theatre counts.
     *
     * @throws IllegalArgumentException for the continental United States, which is no theatre
     */
    public Days window(Theater theater) {
        var days = theaters.get(theater);
        if (days == null) {
            throw new IllegalArgumentException(theater + " is no theatre with a campaign medal.");
        }
        return days;
    }

    public List<AssaultLanding> assaults() {
        return reference.assaults();
    }

    /**
     * An assault by its name: the place of the landing or jump where its day fits one of that campaign, else the
     * campaign's name, else what was typed.
     */
    public String nameOf(Assault assault) {
        return AssaultName.of(assault, reference);
    }

    /** The place of that name: by the exact name of the table, else by an alias. */
    public Optional<Place> place(Optional<String> known, String asGiven) {
        var exact = places.get(known.orElse(asGiven));
        return exact != null ? Optional.of(exact) : reference.place(known.orElse(asGiven));
    }

    /** Whether a place lies in the Philippines, by its name in the tables or as given. Common geography, no source. */
    boolean inPhilippines(Optional<String> known, String asGiven) {
        return (known.isPresent() && philippineIslands.contains(known.get().toLowerCase(Locale.ROOT)))
                || philippineIslands.contains(asGiven.strip().toLowerCase(Locale.ROOT));
    }

    /** The occupied areas whose duty puts that clasp on the medal. */
    public List<OccupationArea> occupationAreas(Place.Occupation clasp) {
        return areasByClasp.getOrDefault(clasp, List.of());
    }

    public Optional<OccupationArea> occupationArea(String id) {
        return Optional.ofNullable(areas.get(id));
    }
}
