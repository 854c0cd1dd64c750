package org.honorsdue.reading.casefile;

import java.util.List;

/** A piece of the file with the place where it stands; lines and columns from 1. */
sealed interface YamlNode {
    int line();

    int column();

    /** What it is, in the words of a message. */
    String kind();

    /** @param bare typed without quotation marks, so that an empty one or {@code null} means nothing was given */
    record Scalar(String text, boolean bare, int line, int column) implements YamlNode {
        @Override
        public String kind() {
            return "a text";
        }

        boolean isNothing() {
            return bare && (text.isEmpty() || text.equals("~") || text.equalsIgnoreCase("null")) || text.isBlank();
        }
    }

    /** A list. */
    record Sequence(List<YamlNode> items, int line, int column) implements YamlNode {
        @Override
        public String kind() {
            return "a list";
        }
    }

    /** Keys and values, in the order of the file. */
    record Mapping(List<Pair> pairs, int line, int column) implements YamlNode {
        @Override
        public String kind() {
            return "a set of keys";
        }
    }

    /** One key with its value. */
    record Pair(Scalar key, YamlNode value) {}
}
