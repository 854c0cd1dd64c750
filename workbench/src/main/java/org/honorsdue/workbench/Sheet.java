package org.honorsdue.workbench;

import java.util.List;
import java.util.Optional;
import org.honorsdue.reading.EntryReading;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Form;
import org.honorsdue.service.paper.Leg;
import org.honorsdue.service.paper.Paper;
import org.honorsdue.service.paper.Typed;

/**
 * One paper as it lies on the desk.
 *
 * @param number of the paper in the casefile, from 1
 * @param picture checksum of the upright picture it was read from
 */
public record Sheet(int number, Paper paper, List<Line> lines, Optional<String> picture) {
    public Sheet {
        lines = List.copyOf(lines);
    }

    /**
     * One entry.
     *
     * @param box number printed in it, or nothing
     * @param weighty whether findings or letters rest on it
     * @param item what the reading of a picture left to look at
     */
    public record Line(
            Entry entry,
            String box,
            boolean weighty,
            Typed typed,
            Optional<EntryReading> reading,
            Optional<Review.Item> item) {
        public String text() {
            return typed instanceof Typed.Text text ? text.text() : "";
        }

        /** Text, blank, illegible, or none when the entry was not shown to us. */
        public String kind() {
            if (typed instanceof Typed.Text) {
                return "text";
            }
            if (typed instanceof Typed.Blank) {
                return "blank";
            }
            return typed instanceof Typed.Illegible ? "illegible" : "none";
        }

        /** Whether a machine read it with a doubt and no person has changed it or found it right since. */
        public boolean unseen() {
            return item.map(read -> !read.seen()
                            && read.read().equals(text())
                            && !read.says().isEmpty())
                    .orElse(false);
        }

        /** What the entry looks like while it waits for a look; the doubtful ones are looked at first. */
        public String waits() {
            return !unseen()
                    ? ""
                    : item.filter(Review.Item::inDoubt).isPresent() ? "unseen-yet in-doubt" : "unseen-yet";
        }

        /** Where the entry stands on the upright picture: left, top, width, height; or nothing. */
        public String place() {
            return item.map(read -> String.join(
                            ",", read.box().stream().map(String::valueOf).toList()))
                    .orElse("");
        }
    }

    /** How many of them because the reading itself is in doubt. */
    public long inDoubt() {
        return lines.stream().filter(line -> line.waits().endsWith("in-doubt")).count();
    }

    /** How many entries want a look beside the picture. */
    public long toSee() {
        return lines.stream().filter(Line::unseen).count();
    }

    /** Whether the crossings are typed line by line; else the box is one text. */
    public boolean crossingsInLines() {
        return !paper.legs().isEmpty() || !(paper.entry(Entry.SERVICE_OUTSIDE_US) instanceof Typed.Text);
    }

    /** The crossings, with an empty line for the next one. */
    public List<Leg> legs() {
        var legs = new java.util.ArrayList<>(paper.legs());
        legs.add(new Leg("", "", ""));
        return legs;
    }

    public boolean numbered() {
        return paper.form() == Form.ENLISTED_53_55 || paper.form() == Form.OFFICER_53_98;
    }
}
