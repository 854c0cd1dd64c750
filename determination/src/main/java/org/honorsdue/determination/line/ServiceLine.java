package org.honorsdue.determination.line;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.reference.DateSpan;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.Theater;
import org.honorsdue.service.fact.Origin;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.paper.Entry;

/**
 * One man's service in time. Everything in a list is in order of time.
 *
 * @param extent from the first day anything is known of to the last; empty when no date is known at all
 * @param captivity time in the hands of the enemy, which earns no campaign
 */
public record ServiceLine(
        Optional<DateSpan> extent,
        List<Segment> segments,
        List<Stay> stays,
        List<UnitTime> units,
        List<Stretch> captivity,
        List<CampaignTime> campaigns,
        List<Window> windows,
        List<Event> events,
        List<Gap> gaps,
        List<Contradiction> contradictions) {
    public ServiceLine {
        segments = List.copyOf(segments);
        stays = List.copyOf(stays);
        units = List.copyOf(units);
        captivity = List.copyOf(captivity);
        campaigns = List.copyOf(campaigns);
        windows = List.copyOf(windows);
        events = List.copyOf(events);
        gaps = List.copyOf(gaps);
        contradictions = List.copyOf(contradictions);
    }

    /** A service from entry to separation, as one paper gives it. */
    public record Segment(int paper, Tour.Category category, Stretch when) {}

    /**
     * A stay outside the continental United States.
     *
     * @param passage from the departure to the return, the sea voyages included
     * @param there at the destination itself
     * @param theaters where the destination may lie; empty when the word does not tell
     */
    public record Stay(String destination, Set<Theater> theaters, Stretch passage, Stretch there) {
        public Stay {
            theaters = Set.copyOf(theaters);
        }
    }

    /** With a unit; without dates for the one he came home with. */
    public record UnitTime(String designation, Stretch when, boolean atSeparation) {}

    /**
     * A campaign while it ran, and what of it he can have seen.
     *
     * @param dates of the ground column, or the air column for a man of the Air Forces
     * @param his the days of it on which he was in the theatre and no prisoner; empty when there are none
     * @param named whether the paper names it
     * @param credited whether a unit he was with is credited with it; empty when no unit is known
     */
    public record CampaignTime(
            String campaign,
            String name,
            DateSpan dates,
            List<DateSpan> his,
            boolean named,
            Optional<Boolean> credited) {
        public CampaignTime {
            his = List.copyOf(his);
        }
    }

    /**
     * The time in which service counts for an award.
     *
     * @param his the days of it he served where it counts
     */
    public record Window(String award, String name, DateSpan dates, List<DateSpan> his) {
        public Window {
            his = List.copyOf(his);
        }
    }

    /** Something that happened. */
    public record Event(PartialDate when, Kind kind, String says, List<Origin> origins) {
        public Event {
            origins = List.copyOf(origins);
        }

        /** What sort of thing happened. */
        public enum Kind {
            INDUCTED("inducted", '+'),
            ENTERED("entered", '+'),
            SAILED("sailed", '>'),
            LANDED("landed", '>'),
            ASSAULT("assault", '^'),
            WOUNDED("wounded", 'x'),
            HOSPITAL("hospital", 'h'),
            CAPTURED("captured", '('),
            FREED("freed", ')'),
            AWARD("award", '*'),
            ORDER("order", '*'),
            RETURNED("returned", '<'),
            SEPARATED("separated", '-'),
            DIED("died", '-');

            private final String id;
            private final char mark;

            Kind(String id, char mark) {
                this.id = id;
                this.mark = mark;
            }

            public String id() {
                return id;
            }

            /** One plain character for a line of text. */
            public char mark() {
                return mark;
            }
        }
    }

    /** Time of which something one would expect to know is not known. */
    public record Gap(Kind kind, DateSpan days, String says) {
        /** What is not known. */
        public enum Kind {
            /** Between one paper and the next. */
            BETWEEN_SERVICES("between-services"),
            /** Abroad, and no unit is known. */
            NO_UNIT("no-unit"),
            /** Between one place abroad and the next. */
            BETWEEN_PLACES("between-places");

            private final String id;

            Kind(String id) {
                this.id = id;
            }

            public String id() {
                return id;
            }
        }
    }

    /** Two boxes that do not fit together. */
    public record Contradiction(String check, String says, List<Entry> entries) {
        public Contradiction {
            entries = List.copyOf(entries);
        }
    }

    public static ServiceLine of(ServiceFacts facts, Findings findings, Reference reference) {
        return new LineDrawer(facts, findings, reference).draw();
    }
}
