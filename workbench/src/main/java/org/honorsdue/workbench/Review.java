package org.honorsdue.workbench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.honorsdue.scanning.ScannedPaper;
import org.honorsdue.service.paper.Entry;

/**
 * What the reading of a picture left for a person to look at; kept beside the picture, because the casefile has no place
 * for it.
 *
 * @param paper number of the paper in the casefile, from 1
 * @param picture checksum of the upright picture the boxes point into
 */
public record Review(int paper, String picture, Map<Entry, Item> items) {
    static final String MEDIA_TYPE = "application/vnd.honors-due.reading+json";
    private static final ObjectMapper JSON = new ObjectMapper();

    /**
     * One entry.
     *
     * @param read what was read; once the entry holds something else, a person has looked
     * @param confidence 0 to 1
     * @param says why a person should look
     * @param box left, top, width and height on the upright picture, in its pixels
     * @param inDoubt whether the reading itself is in doubt; else figures stand there, which are never taken unseen
     * @param seen whether a person looked and found it right as it was read
     */
    public record Item(
            String read,
            double confidence,
            List<String> says,
            List<String> alternatives,
            List<Integer> box,
            boolean inDoubt,
            boolean seen) {
        public Item {
            says = List.copyOf(says);
            alternatives = List.copyOf(alternatives);
            box = List.copyOf(box);
        }
    }

    static Review of(ScannedPaper scanned, int paper, String picture) {
        var items = new EnumMap<Entry, Item>(Entry.class);
        scanned.entries()
                .forEach((entry, read) -> items.put(
                        entry,
                        new Item(
                                read.text(),
                                read.confidence(),
                                read.flags().stream().map(flag -> flag.says()).toList(),
                                read.alternatives(),
                                List.of(
                                        (int) read.crop().x(),
                                        (int) read.crop().y(),
                                        (int) read.crop().width(),
                                        (int) read.crop().height()),
                                read.inDoubt(),
                                false)));
        return new Review(paper, picture, items);
    }

    /** The same after a person found an entry right. */
    Review withSeen(Entry entry) {
        var marked = new EnumMap<Entry, Item>(Entry.class);
        marked.putAll(items);
        marked.computeIfPresent(
                entry,
                (key, item) -> new Item(
                        item.read, item.confidence, item.says, item.alternatives, item.box, item.inDoubt, true));
        return new Review(paper, picture, marked);
    }

    byte[] write() {
        var root = JSON.createObjectNode();
        root.put("paper", paper);
        root.put("picture", picture);
        var all = root.putObject("entries");
        items.forEach((entry, item) -> {
            var node = all.putObject(entry.key());
            node.put("read", item.read);
            node.put("confidence", item.confidence);
            item.says.forEach(node.putArray("says")::add);
            item.alternatives.forEach(node.putArray("alternatives")::add);
            item.box.forEach(node.putArray("box")::add);
            node.put("in_doubt", item.inDoubt);
            node.put("seen", item.seen);
        });
        return root.toString().getBytes(java.nio.charset.StandardCharsets.UTF_8);
    }

    /** Empty when the bytes are not such a review. */
    static Optional<Review> read(byte[] bytes) {
        try {
            var root = JSON.readTree(bytes);
            var items = new EnumMap<Entry, Item>(Entry.class);
            for (Map.Entry<String, JsonNode> each : root.path("entries").properties()) {
                var node = each.getValue();
                Entry.ofKey(each.getKey())
                        .ifPresent(entry -> items.put(
                                entry,
                                new Item(
                                        node.path("read").asText(),
                                        node.path("confidence").asDouble(),
                                        texts(node.path("says")),
                                        texts(node.path("alternatives")),
                                        numbers(node.path("box")),
                                        node.path("in_doubt").asBoolean(),
                                        node.path("seen").asBoolean())));
            }
            return Optional.of(
                    new Review(root.path("paper").asInt(1), root.path("picture").asText(), items));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static List<String> texts(JsonNode array) {
        var texts = new ArrayList<String>();
        array.forEach(node -> texts.add(node.asText()));
        return texts;
    }

    private static List<Integer> numbers(JsonNode array) {
        var numbers = new ArrayList<Integer>();
        array.forEach(node -> numbers.add(node.asInt()));
        return numbers;
    }
}
