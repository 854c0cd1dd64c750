package org.honorsdue.reading.entry;

import static org.honorsdue.reading.token.Preference.group;
import static org.honorsdue.reading.token.SenseKind.ARM;
import static org.honorsdue.reading.token.SenseKind.AWARD;
import static org.honorsdue.reading.token.SenseKind.CAMPAIGN;
import static org.honorsdue.reading.token.SenseKind.CHARACTER;
import static org.honorsdue.reading.token.SenseKind.COMPONENT;
import static org.honorsdue.reading.token.SenseKind.DEVICE;
import static org.honorsdue.reading.token.SenseKind.GRADE;
import static org.honorsdue.reading.token.SenseKind.LEVEL;
import static org.honorsdue.reading.token.SenseKind.LINK;
import static org.honorsdue.reading.token.SenseKind.MONTH;
import static org.honorsdue.reading.token.SenseKind.NOTHING;
import static org.honorsdue.reading.token.SenseKind.ORDER;
import static org.honorsdue.reading.token.SenseKind.PLACE;
import static org.honorsdue.reading.token.SenseKind.SCHOOL;
import static org.honorsdue.reading.token.SenseKind.SPECIALTY;
import static org.honorsdue.reading.token.SenseKind.TERM;
import static org.honorsdue.reading.token.SenseKind.THEATER;
import static org.honorsdue.reading.token.SenseKind.UNIT;
import static org.honorsdue.reading.token.SenseKind.WEAPON;
import static org.honorsdue.reading.token.SenseKind.WORD;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.honorsdue.reading.token.Lexicon;
import org.honorsdue.reading.token.Preference;
import org.honorsdue.reading.unit.UnitReader;
import org.honorsdue.reference.Reference;
import org.honorsdue.service.paper.Entry;

/** The reader for each entry, with the kinds of meaning that the entry is for. Immutable and thread-safe. */
public final class EntryReaders {
    private static final Preference DECORATIONS = Preference.of(
            group(AWARD, LINK),
            group(DEVICE, TERM),
            group(CAMPAIGN),
            group(LEVEL),
            group(ORDER, MONTH),
            group(WEAPON, THEATER),
            group(PLACE),
            group(NOTHING, WORD, UNIT, ARM, COMPONENT, GRADE));
    private static final Preference QUALIFICATIONS = Preference.of(
            group(LEVEL, LINK),
            group(WEAPON),
            group(AWARD),
            group(DEVICE, TERM),
            group(ORDER, MONTH),
            group(CAMPAIGN, THEATER),
            group(PLACE, NOTHING, WORD, UNIT, ARM));
    private static final Preference CAMPAIGNS = Preference.of(
            group(CAMPAIGN, LINK),
            group(AWARD),
            group(DEVICE, TERM),
            group(ORDER, MONTH),
            group(THEATER),
            group(PLACE),
            group(NOTHING, WORD, UNIT, ARM));
    private static final Preference ANYTHING = Preference.of(
            group(AWARD, LEVEL, LINK),
            group(DEVICE, TERM),
            group(CAMPAIGN),
            group(WEAPON, ORDER, MONTH),
            group(THEATER),
            group(PLACE),
            group(NOTHING, GRADE, COMPONENT, ARM, WORD, UNIT));
    private static final Preference PLACES = Preference.of(
            group(PLACE), group(THEATER), group(TERM, LINK, NOTHING), group(WORD, UNIT, ARM, CAMPAIGN, ORDER));
    private static final Preference WOUNDS = Preference.of(
            group(PLACE, THEATER),
            group(TERM, NOTHING),
            group(LINK),
            group(ORDER, AWARD, DEVICE),
            group(WORD, CAMPAIGN, UNIT, ARM));
    private static final Preference TOTALS = Preference.of(group(TERM), group(NOTHING), group(LINK), group(WORD, PLACE))
            .withoutDates();
    private static final Preference DATES =
            Preference.of(group(MONTH, TERM), group(NOTHING, LINK), group(WORD)).datesOnly();
    private static final Preference GRADES =
            Preference.of(group(GRADE), group(COMPONENT, ARM), group(NOTHING, LINK), group(WORD, UNIT));
    private static final Preference ARMS =
            Preference.of(group(ARM), group(COMPONENT, NOTHING), group(LINK), group(UNIT, WORD));
    private static final Preference COMPONENTS =
            Preference.of(group(COMPONENT), group(ARM, NOTHING), group(LINK), group(UNIT, WORD));
    private static final Preference UNITS =
            Preference.of(group(UNIT), group(ARM), group(THEATER), group(ORDER, LINK, NOTHING), group(WORD, PLACE));
    private static final Preference SPECIALTIES =
            Preference.of(group(SPECIALTY), group(WEAPON), group(ARM, UNIT, NOTHING), group(LINK, WORD));
    private static final Preference SCHOOLS =
            Preference.of(group(SCHOOL), group(NOTHING, LINK), group(UNIT), group(ARM), group(PLACE), group(WORD));
    private static final Preference REASONS =
            Preference.of(group(TERM), group(ORDER), group(NOTHING, LINK), group(WORD, UNIT));
    private static final Preference CHARACTERS = Preference.of(group(CHARACTER), group(NOTHING, LINK), group(WORD));
    private static final Preference PRIOR =
            Preference.of(group(COMPONENT), group(MONTH, TERM, NOTHING), group(ARM, LINK), group(UNIT, GRADE, WORD));

    private final Lexicon lexicon;
    private final Reference reference;
    private final UnitReader units;
    private final Map<Entry, Preference> preferences = new EnumMap<>(Entry.class);

    /** @param units finds units in the unit tables */
    public EntryReaders(Lexicon lexicon, Reference reference, UnitReader units) {
        this.lexicon = lexicon;
        this.reference = reference;
        this.units = units;
        for (Entry entry : Entry.values()) {
            preferences.put(entry, preference(entry));
        }
    }

    private static Preference preference(Entry entry) {
        return switch (entry) {
            case DECORATIONS_AND_CITATIONS -> DECORATIONS;
            case QUALIFICATIONS -> QUALIFICATIONS;
            case BATTLES_AND_CAMPAIGNS -> CAMPAIGNS;
            case REMARKS -> ANYTHING;
            case SERVICE_OUTSIDE_US -> PLACES;
            case WOUNDS -> WOUNDS;
            case LENGTH_OF_SERVICE, CONTINENTAL_SERVICE, FOREIGN_SERVICE, LONGEVITY -> TOTALS;
            case GRADE, HIGHEST_GRADE -> GRADES;
            case ARM -> ARMS;
            case COMPONENT -> COMPONENTS;
            case DEPENDENTS, MUSTERING_OUT_PAY -> TOTALS;
            case ORGANIZATION -> UNITS;
            case MILITARY_SPECIALTY -> SPECIALTIES;
            case SERVICE_SCHOOLS -> SCHOOLS;
            case REASON -> REASONS;
            case CHARACTER, EFFICIENCY -> CHARACTERS;
            case PRIOR_SERVICE -> PRIOR;
            default -> DATES;
        };
    }

    /** Whether the entry is read at all; addresses, thumb prints and the like are only kept. */
    public static boolean isRead(Entry entry) {
        return switch (entry) {
            case NAME,
                    GRADE,
                    ARM,
                    COMPONENT,
                    ORGANIZATION,
                    SEPARATED,
                    DATE_OF_BIRTH,
                    DEPENDENTS,
                    INDUCTED,
                    ENLISTED,
                    ENTERED_ACTIVE_SERVICE,
                    MILITARY_SPECIALTY,
                    QUALIFICATIONS,
                    BATTLES_AND_CAMPAIGNS,
                    DECORATIONS_AND_CITATIONS,
                    WOUNDS,
                    SERVICE_OUTSIDE_US,
                    LENGTH_OF_SERVICE,
                    CONTINENTAL_SERVICE,
                    FOREIGN_SERVICE,
                    HIGHEST_GRADE,
                    PRIOR_SERVICE,
                    REASON,
                    SERVICE_SCHOOLS,
                    LONGEVITY,
                    MUSTERING_OUT_PAY,
                    REMARKS,
                    CHARACTER,
                    EFFICIENCY -> true;
            default -> false;
        };
    }

    /** Whether the entry holds one date and nothing else. */
    public static boolean isDate(Entry entry) {
        return switch (entry) {
            case SEPARATED, INDUCTED, ENLISTED, ENTERED_ACTIVE_SERVICE, DATE_OF_BIRTH -> true;
            default -> false;
        };
    }

    /** Reads the text of an entry that is read. */
    public EntryText read(int paper, Entry entry, String text) {
        boolean free = entry == Entry.NAME
                || entry == Entry.ORGANIZATION
                || entry == Entry.SERVICE_SCHOOLS
                || entry == Entry.MILITARY_SPECIALTY
                || entry == Entry.REASON;
        var read =
                new EntryText(paper, entry, text, lexicon, reference, preferences.getOrDefault(entry, ANYTHING), free);
        switch (entry) {
            case NAME -> PersonEntries.name(read);
            case GRADE, HIGHEST_GRADE -> PersonEntries.grade(read);
            case ARM -> PersonEntries.arm(read);
            case COMPONENT -> PersonEntries.component(read);
            case ORGANIZATION -> ServiceEntries.organization(read, units);
            case DATE_OF_BIRTH -> ServiceEntries.birth(read);
            case SEPARATED, INDUCTED, ENLISTED, ENTERED_ACTIVE_SERVICE -> {
                read.saysNothing();
                ServiceEntries.date(read);
            }
            case DEPENDENTS -> PersonEntries.dependents(read);
            case MILITARY_SPECIALTY -> ServiceEntries.specialty(read);
            case WOUNDS -> new Wounds(read).read();
            case SERVICE_OUTSIDE_US -> new Legs(read).read();
            case LENGTH_OF_SERVICE, CONTINENTAL_SERVICE, FOREIGN_SERVICE, LONGEVITY -> new Totals(read).read();
            case PRIOR_SERVICE -> ServiceEntries.priorService(read);
            case REASON -> ServiceEntries.reason(read);
            case SERVICE_SCHOOLS -> ServiceEntries.schools(read);
            case MUSTERING_OUT_PAY -> ServiceEntries.pay(read);
            case CHARACTER, EFFICIENCY -> PersonEntries.character(read);
            default -> new Items(read).read();
        }
        return read;
    }

    /** Reads a line of which nobody says where it stands; crossings are known by their dates and places. */
    public EntryText readAnything(String text) {
        var probe = new EntryText(1, Entry.SERVICE_OUTSIDE_US, text, lexicon, reference, PLACES, false);
        long dates = probe.pieces().stream()
                .filter(piece -> piece.isDate() && piece.date() != null)
                .count();
        boolean onlyCrossings = dates >= 2
                && probe.pieces().stream().anyMatch(piece -> piece.may(PLACE) || piece.may(THEATER))
                && probe.pieces().stream()
                        .allMatch(piece -> piece.isDate() || piece.may(PLACE) || piece.may(THEATER) || piece.may(LINK));
        if (onlyCrossings) {
            new Legs(probe).read();
            return probe;
        }
        return read(1, Entry.REMARKS, text);
    }

    /** The date of an entry that holds one; empty when there is none with a year. */
    public static Optional<org.honorsdue.service.fact.PartialDate> dateOf(EntryText read) {
        var piece = ServiceEntries.date(read);
        return piece == null ? Optional.empty() : Optional.ofNullable(piece.date());
    }
}
