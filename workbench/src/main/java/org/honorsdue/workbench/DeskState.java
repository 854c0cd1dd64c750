package org.honorsdue.workbench;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.honorsdue.service.Casefile;
import org.honorsdue.service.Sex;
import org.honorsdue.service.evidence.Evidence;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Form;
import org.honorsdue.service.paper.Leg;
import org.honorsdue.service.paper.Paper;
import org.honorsdue.service.paper.Typed;

/**
 * What stands on the reading desk of one browser tab at this moment, as its script sends it.
 *
 * @param revision the revision the tab was opened with or last saved
 * @param touched the entries changed since the desk was last looked at
 */
record DeskState(int revision, Optional<String> name, Optional<Sex> sex, List<Paper> papers, List<Place> touched) {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int LARGEST = 1_000_000;
    private static final int MOST_PAPERS = 20;

    /** One entry of one paper, counted from 1. */
    record Place(int paper, Entry entry) {}

    /** @throws InputFault when it is not what the desk's script sends */
    static DeskState read(String body) {
        if (body.length() > LARGEST) {
            throw new InputFault(
                    "More than a million characters stand on this desk. One case holds one soldier; check what was"
                            + " pasted.",
                    List.of());
        }
        JsonNode root;
        try {
            root = JSON.readTree(body);
        } catch (JsonProcessingException e) {
            throw new InputFault("What the page sent cannot be read. Load the page again.", List.of());
        }
        var papers = new ArrayList<Paper>();
        for (var paper : root.path("papers")) {
            papers.add(paper(paper));
        }
        if (papers.size() > MOST_PAPERS) {
            throw new InputFault("One case holds at most %d papers.".formatted(MOST_PAPERS), List.of());
        }
        var touched = new ArrayList<Place>();
        for (var at : root.path("at")) {
            int paper = at.path("paper").asInt(1);
            if (paper >= 1 && paper <= papers.size()) {
                Entry.ofKey(at.path("entry").asText()).ifPresent(entry -> touched.add(new Place(paper, entry)));
            }
        }
        return new DeskState(
                root.path("revision").asInt(),
                Optional.of(root.path("name").asText("").strip()).filter(text -> !text.isEmpty()),
                sex(root.path("sex").asText("")),
                papers,
                touched);
    }

    private static Optional<Sex> sex(String word) {
        for (var sex : Sex.values()) {
            if (sex.name().toLowerCase(Locale.ROOT).equals(word)) {
                return Optional.of(sex);
            }
        }
        return Optional.empty();
    }

    private static Paper paper(JsonNode node) {
        var entries = new EnumMap<Entry, Typed>(Entry.class);
        node.path("blank").forEach(key -> put(entries, key.asText(), new Typed.Blank()));
        node.path("illegible").forEach(key -> put(entries, key.asText(), new Typed.Illegible()));
        for (Map.Entry<String, JsonNode> typed : node.path("entries").properties()) {
            String text = typed.getValue().asText();
            if (!text.isBlank()) {
                put(entries, typed.getKey(), new Typed.Text(text));
            }
        }
        var legs = new ArrayList<Leg>();
        for (var leg : node.path("legs")) {
            var read = new Leg(
                    leg.path(0).asText().strip(),
                    leg.path(1).asText().strip(),
                    leg.path(2).asText().strip());
            if (!read.text().isEmpty()) {
                legs.add(read);
            }
        }
        String named = node.path("form").asText(Form.ENLISTED_53_55.title());
        return new Paper(form(named), named.isBlank() ? "other" : named, entries, legs);
    }

    private static Form form(String named) {
        for (var form : Form.values()) {
            if (form.title().equals(named)) {
                return form;
            }
        }
        return Form.OTHER;
    }

    private static void put(Map<Entry, Typed> entries, String key, Typed typed) {
        var entry = Entry.ofKey(key)
                .orElseThrow(() -> new InputFault(
                        "The page named an entry \"%s\" that no paper has. Load it again."
                                .formatted(key.length() > 40 ? key.substring(0, 40) : key),
                        List.of()));
        entries.put(entry, typed);
    }

    /** The casefile as it would be if it were saved now. */
    Casefile casefile(List<Evidence> evidence) {
        return new Casefile(name, sex, papers, evidence);
    }
}
