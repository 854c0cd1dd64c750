package org.honorsdue.reading.casefile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.honorsdue.reading.casefile.YamlNode.Mapping;
import org.honorsdue.reading.casefile.YamlNode.Pair;
import org.honorsdue.reading.casefile.YamlNode.Scalar;
import org.honorsdue.reading.casefile.YamlNode.Sequence;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * YAML to nodes, from the events of the parser rather than by its composer: so depth and references can be limited
 * while reading, and a key given twice is one fault among the others instead of the end of the reading.
 */
final class YamlText {
    /** A casefile is four levels deep; the parser's own recursion is safe far beyond this. */
    private static final int DEEPEST = 20;

    private static final int MOST_NODES = 100_000;

    private static final LoadSettings SETTINGS = LoadSettings.builder()
            .setCodePointLimit(2 * CasefileFile.LARGEST)
            .setParseComments(false)
            .build();

    private final Iterator<Event> events;
    private final Faults faults;
    private final Map<String, Scalar> anchored = new HashMap<>();
    private int nodes;

    private YamlText(Iterator<Event> events, Faults faults) {
        this.events = events;
        this.faults = faults;
    }

    /** The one document of the text; empty after a fault that makes the rest unreadable, or when nothing stands in it. */
    static Optional<YamlNode> read(String text, Faults faults) {
        try {
            return new YamlText(
                            new Parse(SETTINGS)
                                    .parseString(withoutTabsOfJson(text))
                                    .iterator(),
                            faults)
                    .document();
        } catch (Unreadable e) {
            return Optional.empty();
        } catch (MarkedYamlEngineException e) {
            var mark = e.getProblemMark();
            faults.add(
                    mark.map(m -> m.getLine() + 1).orElse(0),
                    mark.map(m -> m.getColumn() + 1).orElse(0),
                    "This is not YAML: %s."
                            .formatted(Optional.ofNullable(e.getProblem()).orElse("it breaks off")),
                    "Check the indentation, the quotation marks, and that a blank follows each colon.");
            return Optional.empty();
        } catch (ReaderException e) {
            faults.add(
                    lineOf(text, e.getPosition()),
                    1,
                    "There is a character that no text holds (code %d).".formatted(e.getCodePoint()),
                    "Take it out; the file may not be a text at all.");
            return Optional.empty();
        } catch (YamlEngineException e) {
            faults.add(0, 0, "The file cannot be read as YAML: %s.".formatted(e.getMessage()), "Check the file.");
            return Optional.empty();
        }
    }

    /** JSON may be indented with tabs, which YAML does not take; blanks in their place leave all columns as they are. */
    private static String withoutTabsOfJson(String text) {
        if (text.indexOf('\t') < 0 || !text.stripLeading().startsWith("{")) {
            return text;
        }
        var out = new StringBuilder(text);
        boolean quoted = false;
        for (int i = 0; i < out.length(); i++) {
            char c = out.charAt(i);
            if (c == '\\' && quoted) {
                i++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (c == '\t' && !quoted) {
                out.setCharAt(i, ' ');
            }
        }
        return out.toString();
    }

    private static int lineOf(String text, int position) {
        return 1
                + (int) text.substring(0, Math.min(Math.max(position, 0), text.length()))
                        .chars()
                        .filter(c -> c == '\n')
                        .count();
    }

    private Optional<YamlNode> document() {
        Optional<YamlNode> root = Optional.empty();
        boolean second = false;
        while (events.hasNext()) {
            Event event = events.next();
            switch (event.getEventId()) {
                case StreamStart, StreamEnd, DocumentEnd, Comment -> {}
                case DocumentStart -> {
                    if (root.isPresent() && !second) {
                        second = true;
                        faults.add(
                                line(event),
                                column(event),
                                "A second document begins here.",
                                "One file holds one soldier; put the other soldier into a file of his own.");
                    }
                }
                default -> {
                    YamlNode node = node(event, 0);
                    root = root.isPresent() ? root : Optional.of(node);
                }
            }
        }
        return root;
    }

    private YamlNode node(Event event, int depth) {
        if (depth > DEEPEST || ++nodes > MOST_NODES) {
            faults.add(
                    line(event),
                    column(event),
                    "The file nests or repeats far more than a casefile does.",
                    "Check what this file is.");
            throw new Unreadable();
        }
        return switch (event.getEventId()) {
            case Scalar -> scalar((ScalarEvent) event);
            case SequenceStart -> sequence(event, depth);
            case MappingStart -> mapping(event, depth);
            case Alias -> alias((AliasEvent) event);
            default -> throw new IllegalStateException("The parser gave " + event + " where a value begins.");
        };
    }

    private Scalar scalar(ScalarEvent event) {
        var scalar = new Scalar(event.getValue(), event.isPlain(), line(event), column(event));
        event.getAnchor().ifPresent(anchor -> anchored.put(anchor.getValue(), scalar));
        return scalar;
    }

    private Sequence sequence(Event start, int depth) {
        refuseAnchor((NodeEvent) start);
        var items = new ArrayList<YamlNode>();
        for (Event event = events.next(); event.getEventId() != Event.ID.SequenceEnd; event = events.next()) {
            items.add(node(event, depth + 1));
        }
        return new Sequence(items, line(start), column(start));
    }

    private Mapping mapping(Event start, int depth) {
        refuseAnchor((NodeEvent) start);
        List<Pair> pairs = new ArrayList<>();
        Set<String> keys = new HashSet<>();
        for (Event event = events.next(); event.getEventId() != Event.ID.MappingEnd; event = events.next()) {
            YamlNode key = node(event, depth + 1);
            YamlNode value = node(events.next(), depth + 1);
            if (!(key instanceof Scalar word)) {
                faults.add(key, "A key is %s.".formatted(key.kind()), "Write a word before the colon.");
            } else if (!keys.add(word.text())) {
                faults.add(key, "\"%s\" stands twice.".formatted(word.text()), "Take one out.");
            } else {
                pairs.add(new Pair(word, value));
            }
        }
        return new Mapping(pairs, line(start), column(start));
    }

    /** References could make a small file huge. A casefile needs none but, at most, to a text. */
    private void refuseAnchor(NodeEvent event) {
        event.getAnchor()
                .ifPresent(anchor -> faults.add(
                        line(event),
                        column(event),
                        "The mark &%s names a whole list or set of keys.".formatted(anchor.getValue()),
                        "Only texts may be named and used again; write this one out."));
    }

    private Scalar alias(AliasEvent event) {
        String name = event.getAlias().getValue();
        Scalar named = anchored.get(name);
        if (named == null) {
            faults.add(
                    line(event),
                    column(event),
                    "*%s names no text given before.".formatted(name),
                    "Write the text out.");
            return new Scalar("", true, line(event), column(event));
        }
        return new Scalar(named.text(), named.bare(), line(event), column(event));
    }

    private static int line(Event event) {
        return event.getStartMark().map(mark -> mark.getLine() + 1).orElse(0);
    }

    private static int column(Event event) {
        return event.getStartMark().map(mark -> mark.getColumn() + 1).orElse(0);
    }

    /** The rest of the file is not worth reading; the fault is noted. */
    private static final class Unreadable extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Unreadable() {
            super(null, null, false, false);
        }
    }
}
