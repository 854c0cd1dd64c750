package org.honorsdue.workbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.honorsdue.casebook.CaseContent;
import org.honorsdue.casebook.Revision;
import org.honorsdue.service.Casefile;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Paper;
import org.honorsdue.service.paper.Typed;

/** One state of a case beside the state before it: what was changed. */
public record Change(Revision revision, List<Detail> details) {
    public Change {
        details = List.copyOf(details);
    }

    /** One thing that differs; before or after is empty where nothing stood. */
    public record Detail(String where, String before, String after) {}

    static List<Change> of(Desk desk, List<Revision> newestFirst) {
        var changes = new ArrayList<Change>();
        for (int i = 0; i < newestFirst.size(); i++) {
            var revision = newestFirst.get(i);
            changes.add(new Change(
                    revision,
                    i + 1 < newestFirst.size()
                            ? details(desk, newestFirst.get(i + 1).content(), revision.content())
                            : List.of()));
        }
        return changes;
    }

    private static List<Detail> details(Desk desk, CaseContent before, CaseContent after) {
        var details = new ArrayList<Detail>();
        differ(details, "Title", before.title(), after.title());
        differ(details, "Stands at", before.stage().words(), after.stage().words());
        if (!before.notes().equals(after.notes())) {
            details.add(new Detail(
                    "Notes", "", "%d characters".formatted(after.notes().length())));
        }
        if (!before.display().equals(after.display())) {
            details.add(new Detail("Rack and case", frame(before), frame(after)));
        }
        if (!before.casefile().equals(after.casefile())) {
            var was = casefile(desk, before);
            var is = casefile(desk, after);
            if (was.isPresent() && is.isPresent()) {
                compare(details, was.get(), is.get());
            }
        }
        return details;
    }

    private static String frame(CaseContent content) {
        return content.display().isEmpty()
                ? ""
                : "frame of %s in".formatted(DisplayWish.kept(content.display()).frame());
    }

    private static Optional<Casefile> casefile(Desk desk, CaseContent content) {
        return desk.parse(content.casefile())
                .answer(accepted -> Optional.of(accepted.casefile()), refused -> Optional.empty());
    }

    private static void compare(List<Detail> details, Casefile was, Casefile is) {
        differ(details, "Name", was.name().orElse(""), is.name().orElse(""));
        int papers = Math.max(was.papers().size(), is.papers().size());
        for (int i = 0; i < papers; i++) {
            String which = papers > 1 ? "Paper %d, ".formatted(i + 1) : "";
            if (i >= was.papers().size()) {
                details.add(new Detail(
                        which.isEmpty() ? "Paper" : which.replace(", ", ""),
                        "",
                        is.papers().get(i).formAsNamed()));
            } else if (i >= is.papers().size()) {
                details.add(new Detail(
                        which.isEmpty() ? "Paper" : which.replace(", ", ""),
                        was.papers().get(i).formAsNamed(),
                        ""));
            } else {
                compare(details, which, was.papers().get(i), is.papers().get(i));
            }
        }
        for (var evidence : is.evidence()) {
            if (!was.evidence().contains(evidence)) {
                details.add(new Detail("Evidence", "", EvidenceForm.words(evidence)));
            }
        }
        for (var evidence : was.evidence()) {
            if (!is.evidence().contains(evidence)) {
                details.add(new Detail("Evidence", EvidenceForm.words(evidence), ""));
            }
        }
    }

    private static void compare(List<Detail> details, String which, Paper was, Paper is) {
        for (var entry : Entry.values()) {
            String box = BoxOrder.number(is.form(), entry);
            differ(
                    details,
                    which + (box.isEmpty() ? "" : "box " + box + ", ") + entry.caption(),
                    words(was.entry(entry)),
                    words(is.entry(entry)));
        }
    }

    private static void differ(List<Detail> details, String where, String before, String after) {
        if (!before.equals(after)) {
            details.add(new Detail(where, before, after));
        }
    }

    static String words(Typed typed) {
        if (typed instanceof Typed.Text text) {
            return text.text();
        }
        if (typed instanceof Typed.Blank) {
            return "(blank)";
        }
        return typed instanceof Typed.Illegible ? "(cannot be made out)" : "";
    }
}
