package org.honorsdue.workbench;

import java.util.List;
import java.util.stream.Collectors;
import org.honorsdue.service.Casefile;
import org.honorsdue.service.fact.Origin;
import org.honorsdue.service.paper.Entry;

/** Where a ground rests: for the page, the place it lights up; for the reader, the place in words. */
public final class Lights {
    private Lights() {}

    /** The places of several origins, as the page's script takes them. */
    public static String of(List<Origin> origins) {
        return origins.stream()
                .map(Lights::of)
                .filter(place -> !place.isEmpty())
                .distinct()
                .collect(Collectors.joining(" "));
    }

    /** {@code 1-remarks:12:40} for characters, {@code evidence-3} for evidence; nothing for what is merely stated. */
    public static String of(Origin origin) {
        if (origin instanceof Origin.OnPaper on) {
            return on.paper() + "-" + on.entry().key() + ":" + on.start() + ":" + on.end();
        }
        return origin instanceof Origin.InEvidence in ? "evidence-" + in.item() : "";
    }

    public static String entries(List<Entry> entries, int papers) {
        var places = new java.util.ArrayList<String>();
        for (int paper = 1; paper <= papers; paper++) {
            for (var entry : entries) {
                places.add(paper + "-" + entry.key());
            }
        }
        return String.join(" ", places);
    }

    /** The address of the place on the desk. */
    public static String address(String caseId, Origin origin) {
        if (origin instanceof Origin.OnPaper on) {
            return "/cases/" + caseId + "#e-" + on.paper() + "-" + on.entry().key();
        }
        return origin instanceof Origin.InEvidence in ? "#evidence-" + in.item() : "/cases/" + caseId;
    }

    /** The place in words: {@code box 55}, {@code evidence 3}. */
    public static String where(Casefile casefile, Origin origin) {
        if (origin instanceof Origin.OnPaper on) {
            var paper = casefile.papers().get(on.paper() - 1);
            String box = BoxOrder.number(paper.form(), on.entry());
            String which = casefile.papers().size() > 1 ? "paper " + on.paper() + ", " : "";
            return which + (box.isEmpty() ? on.entry().caption().toLowerCase(java.util.Locale.ROOT) : "box " + box);
        }
        return origin instanceof Origin.InEvidence in ? "evidence " + in.item() : "as stated";
    }
}
