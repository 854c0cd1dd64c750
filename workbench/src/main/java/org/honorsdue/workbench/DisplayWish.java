package org.honorsdue.workbench;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.honorsdue.insignia.display.Addition;
import org.honorsdue.insignia.display.CaseWish;
import org.honorsdue.insignia.display.SoldiersSleeve;
import org.honorsdue.insignia.ribbon.RackStyle;
import org.honorsdue.reference.insignia.Inches;
import org.honorsdue.reference.insignia.InsigniaTables;
import org.honorsdue.service.fact.ServiceFacts;

/**
 * How rack and case are wished for, as the casebook keeps it with the case.
 *
 * @param perRow ribbons to a row, three or four
 * @param frame as people write it, in inches: {@code 16x20}
 * @param plate words of the nameplate; empty for none
 * @param out ids of pieces that are not wanted
 * @param moved pieces put at a place, each with the inches from the left and from the top as written
 */
public record DisplayWish(
        int perRow,
        RackStyle.Practice practice,
        String frame,
        String plate,
        boolean tags,
        boolean chevrons,
        List<String> out,
        Map<String, Place> moved) {
    private static final int MOST_PIECES = 80;
    private static final ObjectMapper JSON = new ObjectMapper();

    /** What nobody has changed yet. */
    static final DisplayWish USUAL =
            new DisplayWish(3, RackStyle.Practice.PRESENT, "16x20", "", false, false, List.of(), Map.of());

    public DisplayWish {
        out = List.copyOf(out);
        moved = Map.copyOf(moved);
    }

    /** A place in the opening, from its upper left corner, as written: {@code 4 1/2}. */
    public record Place(String x, String y) {}

    /** The same with every piece in the case. */
    DisplayWish withEverything() {
        return new DisplayWish(perRow, practice, frame, plate, tags, chevrons, List.of(), moved);
    }

    /** What a form asks for. */
    static DisplayWish of(Context form) {
        var asked = new Asked(form);
        var moved = new LinkedHashMap<String, Place>();
        var pieces = form.formParams("piece");
        var across = form.formParams("x");
        var down = form.formParams("y");
        int count = Math.min(MOST_PIECES, Math.min(pieces.size(), Math.min(across.size(), down.size())));
        for (int i = 0; i < count; i++) {
            if (!across.get(i).isBlank() && !down.get(i).isBlank()) {
                moved.put(
                        pieces.get(i),
                        new Place(across.get(i).strip(), down.get(i).strip()));
            }
        }
        return new DisplayWish(
                asked.form("row").filter("4"::equals).isPresent() ? 4 : 3,
                asked.form("practice").filter("wartime"::equals).isPresent()
                        ? RackStyle.Practice.WARTIME
                        : RackStyle.Practice.PRESENT,
                asked.form("frame").orElse(USUAL.frame),
                asked.form("plate").orElse(""),
                asked.form("tags").isPresent(),
                asked.form("chevrons").isPresent(),
                form.formParams("out").stream().limit(MOST_PIECES).toList(),
                moved);
    }

    /** What a case keeps; the usual when it keeps none, or words of a program that is newer than this one. */
    static DisplayWish kept(String text) {
        if (text.isBlank()) {
            return USUAL;
        }
        try {
            var node = JSON.readTree(text);
            var out = new ArrayList<String>();
            node.path("out").forEach(id -> out.add(id.asText()));
            var moved = new LinkedHashMap<String, Place>();
            node.path("moved")
                    .fields()
                    .forEachRemaining(one -> moved.put(
                            one.getKey(),
                            new Place(
                                    one.getValue().path("x").asText(),
                                    one.getValue().path("y").asText())));
            return new DisplayWish(
                    node.path("row").asInt(USUAL.perRow),
                    "wartime".equals(node.path("practice").asText())
                            ? RackStyle.Practice.WARTIME
                            : RackStyle.Practice.PRESENT,
                    node.path("frame").asText(USUAL.frame),
                    node.path("plate").asText(""),
                    node.path("tags").asBoolean(),
                    node.path("chevrons").asBoolean(),
                    out,
                    moved);
        } catch (JsonProcessingException e) {
            throw new InputFault(
                    "The layout kept with this case cannot be read; lay it out anew. (%s)"
                            .formatted(e.getOriginalMessage()),
                    List.of());
        }
    }

    /** As the casebook keeps it. */
    String text() {
        var node = JSON.createObjectNode();
        node.put("row", perRow);
        node.put("practice", practice == RackStyle.Practice.WARTIME ? "wartime" : "present");
        node.put("frame", frame);
        node.put("plate", plate);
        node.put("tags", tags);
        node.put("chevrons", chevrons);
        var none = node.putArray("out");
        out.forEach(none::add);
        var places = node.putObject("moved");
        new TreeMap<>(moved)
                .forEach((id, place) -> places.putObject(id).put("x", place.x()).put("y", place.y()));
        return node.toString();
    }

    RackStyle style() {
        return RackStyle.standard().withPerRow(perRow == 4 ? 4 : 3).withPractice(practice);
    }

    /** @throws InputFault for a frame or a place that is none */
    CaseWish wish(ServiceFacts facts) {
        try {
            var wish = SoldiersSleeve.dressed(CaseWish.ofSize(frame), facts, InsigniaTables.published())
                    .withRack(style().withCaptions(false));
            var lines = plate.lines()
                    .map(String::strip)
                    .filter(line -> !line.isEmpty())
                    .toList();
            if (!lines.isEmpty()) {
                wish = wish.adding(new Addition.Nameplate(lines));
            }
            if (tags) {
                wish = wish.adding(new Addition.DogTags());
            }
            if (chevrons) {
                var grade = SoldiersSleeve.chevrons(facts);
                if (grade.isPresent()) {
                    wish = wish.adding(new Addition.Chevrons(grade.get()));
                }
            }
            for (String piece : out) {
                wish = wish.without(piece);
            }
            for (var one : moved.entrySet()) {
                wish = wish.moving(
                        one.getKey(),
                        Inches.parse(one.getValue().x()),
                        Inches.parse(one.getValue().y()));
            }
            return wish;
        } catch (IllegalArgumentException e) {
            throw new InputFault(String.valueOf(e.getMessage()), List.of());
        }
    }
}
