package org.honorsdue.workbench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Form;
import org.honorsdue.service.paper.Paper;

/** The entries of a paper in the order in which its form prints them. */
public final class BoxOrder {
    /** Entries that the findings or the letters rest on; the others are there for who wants the paper whole. */
    private static final Set<Entry> WEIGHTY = EnumSet.of(
            Entry.NAME,
            Entry.SERIAL_NUMBER,
            Entry.GRADE,
            Entry.ARM,
            Entry.COMPONENT,
            Entry.ORGANIZATION,
            Entry.SEPARATED,
            Entry.DATE_OF_BIRTH,
            Entry.DEPENDENTS,
            Entry.INDUCTED,
            Entry.ENLISTED,
            Entry.ENTERED_ACTIVE_SERVICE,
            Entry.MILITARY_SPECIALTY,
            Entry.QUALIFICATIONS,
            Entry.BATTLES_AND_CAMPAIGNS,
            Entry.DECORATIONS_AND_CITATIONS,
            Entry.WOUNDS,
            Entry.SERVICE_OUTSIDE_US,
            Entry.LENGTH_OF_SERVICE,
            Entry.CONTINENTAL_SERVICE,
            Entry.FOREIGN_SERVICE,
            Entry.HIGHEST_GRADE,
            Entry.PRIOR_SERVICE,
            Entry.REASON,
            Entry.SERVICE_SCHOOLS,
            Entry.LONGEVITY,
            Entry.MUSTERING_OUT_PAY,
            Entry.REMARKS,
            Entry.CHARACTER,
            Entry.EFFICIENCY);

    private BoxOrder() {}

    /**
     * Every entry of that form. The totals of service share one box; they are one entry when the paper gives them as
     * one text, else two.
     */
    public static List<Entry> of(Paper paper) {
        var order = new ArrayList<Entry>();
        boolean numbered = paper.form() == Form.ENLISTED_53_55 || paper.form() == Form.OFFICER_53_98;
        boolean together = paper.entries().containsKey(Entry.LENGTH_OF_SERVICE);
        for (var entry : byBox(paper.form(), numbered)) {
            if (entry == Entry.LENGTH_OF_SERVICE && !together) {
                order.add(Entry.CONTINENTAL_SERVICE);
                order.add(Entry.FOREIGN_SERVICE);
            } else {
                order.add(entry);
            }
        }
        // Whatever else was supplied, or stands outside the boxes.
        for (var entry : Entry.values()) {
            boolean outside = entry == Entry.CHARACTER || entry == Entry.EFFICIENCY;
            if (!order.contains(entry) && (outside || paper.entries().containsKey(entry))) {
                order.add(entry);
            }
        }
        return order;
    }

    private static List<Entry> byBox(Form form, boolean numbered) {
        if (!numbered) {
            return Arrays.stream(Entry.values())
                    .filter(entry -> entry != Entry.CONTINENTAL_SERVICE && entry != Entry.FOREIGN_SERVICE)
                    .toList();
        }
        return Arrays.stream(Entry.values())
                .filter(entry -> entry.box(form).isPresent())
                .sorted(Comparator.comparing(entry -> entry.box(form).orElseThrow()))
                .toList();
    }

    /** Whether the findings or the letters rest on it. */
    public static boolean weighty(Entry entry) {
        return WEIGHTY.contains(entry);
    }

    /** The number printed in the box, or nothing. */
    public static String number(Form form, Entry entry) {
        boolean total = entry == Entry.CONTINENTAL_SERVICE || entry == Entry.FOREIGN_SERVICE;
        return (total ? Entry.LENGTH_OF_SERVICE : entry)
                .box(form)
                .map(String::valueOf)
                .orElse("");
    }
}
