package org.honorsdue.reading.token;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.honorsdue.service.fact.OrderReference;
import org.honorsdue.service.fact.PartialDate;
import org.jspecify.annotations.Nullable;

/** Reads order citations: {@code GO 33 WD 45}, {@code WD GO 33 & 40/45}, {@code GO 16 HQ 999 Inf Div 44 as amended}. */
final class OrderCitation {
    private static final int FIRST_YEAR = 1940;
    private static final int LAST_YEAR = 1950;

    private final Words words;
    private final Matcher matcher;
    private final Dates dates;

    private int at;
    private String type = "";
    private final List<Integer> numbers = new ArrayList<>();
    private int issuerFrom = -1;
    private int issuerTo = -1;
    private int year = -1;
    private boolean glued;
    private String slip = "";

    OrderCitation(Words words, Matcher matcher, Dates dates) {
        this.words = words;
        this.matcher = matcher;
        this.dates = dates;
    }

    /** The citation that begins at a word; null when none does. */
    @Nullable
    Piece at(int word) {
        at = word;
        if (!head()) {
            return null;
        }
        return rest(word);
    }

    private static boolean yearInside(int number) {
        return number % 100 >= FIRST_YEAR % 100 && number % 100 <= LAST_YEAR % 100;
    }

    /** A second citation that leaves out the kind of order: {@code GO 33 WD 45 40 WD 45}. */
    @Nullable
    Piece following(int word, String typeBefore) {
        at = word;
        type = typeBefore;
        if (!words.isNumber(word) || !isIssuer(id(word + 1))) {
            return null;
        }
        return rest(word);
    }

    private @Nullable Piece rest(int word) {
        readNumbers();
        readIssuerAndYear();
        if (numbers.isEmpty() && year < 0 && issuerFrom < 0) {
            return null;
        }
        if (numbers.isEmpty() && !type.equals("LO") && !type.equals("MO") && year < 0) {
            return null;
        }
        String asTyped = words.text().substring(words.start(word), words.end(at - 1));
        Optional<String> issuer = issuerFrom < 0
                ? Optional.empty()
                : Optional.of(words.text().substring(words.start(issuerFrom), words.end(issuerTo - 1)));
        var orders = new ArrayList<OrderReference>();
        var optionalYear = year < 0 ? OptionalInt.empty() : OptionalInt.of(year);
        for (int number : numbers) {
            orders.add(new OrderReference(asTyped, Optional.of(type), OptionalInt.of(number), issuer, optionalYear));
        }
        while (isJoin(at)
                && words.isNumber(at + 1)
                && !words.isOrdinal(at + 1)
                && yearOf(at + 2) > 0
                && !isUnitNumber(at + 2)) {
            orders.add(new OrderReference(
                    asTyped,
                    Optional.of(type),
                    OptionalInt.of(words.number(at + 1)),
                    issuer,
                    OptionalInt.of(yearOf(at + 2))));
            at += 3;
        }
        if (orders.isEmpty()) {
            orders.add(new OrderReference(asTyped, Optional.of(type), OptionalInt.empty(), issuer, optionalYear));
        }
        Piece piece = Piece.order(words, word, at, orders);
        if (year < 0 && numbers.size() == 1 && numbers.get(0) > 999 && yearInside(numbers.get(0))) {
            piece.doubt("number and year may be run together", List.of());
        }
        if (!slip.isEmpty()) {
            piece.correct(slip);
        }
        if (glued) {
            piece.doubt("figures run into letters", List.of());
        }
        return piece;
    }

    /** The kind of order, with section, paragraph or issuer before it. */
    private boolean head() {
        for (int step = 0; step < 4 && at < words.count(); step++) {
            String id = id(at);
            int to = lastTo;
            switch (id) {
                case "GO", "SO", "LO", "MO", "MEMO", "CIR", "BUL" -> {
                    type = id;
                    at = to;
                    return true;
                }
                case "WDGO" -> {
                    type = "GO";
                    issuerFrom = at;
                    issuerTo = to;
                    at = to;
                    return true;
                }
                case "WD" -> {
                    issuerFrom = at;
                    issuerTo = to;
                    at = to;
                }
                case "SEC", "PAR" -> {
                    at = to;
                    skipPartNumber();
                }
                case "theater" -> {
                    if (!isType(id(to))) {
                        return false;
                    }
                    issuerFrom = at;
                    issuerTo = to;
                    at = to;
                }
                case "HQ" -> {
                    int typeAt = typeAfterHeadquarters(to);
                    if (typeAt < 0) {
                        return false;
                    }
                    issuerFrom = at;
                    issuerTo = typeAt;
                    at = typeAt;
                }
                default -> {
                    return false;
                }
            }
        }
        return false;
    }

    /** {@code Hq 7th Army GO 12}: the kind of order after at most five words that name the issuer. */
    private int typeAfterHeadquarters(int from) {
        for (int i = from; i < Math.min(words.count(), from + 6); i++) {
            if (isType(id(i))) {
                return i;
            }
            boolean issuerWord = words.isNumber(i) || isIssuerWord(i);
            if (!issuerWord || (words.gap(i) & (Words.SEMICOLON | Words.COMMA)) != 0) {
                return -1;
            }
        }
        return -1;
    }

    private int lastTo;

    /** The id of the order word at a place: a kind of order, an issuer, a part; empty for anything else. */
    private String id(int word) {
        if (word >= words.count()) {
            lastTo = word;
            return "";
        }
        var match = matcher.longest(word);
        if (match.isEmpty()) {
            lastTo = word;
            return "";
        }
        lastTo = match.get().to();
        for (Sense sense : match.get().senses()) {
            if (sense.kind() == SenseKind.ORDER && !sense.id().isEmpty()) {
                return sense.id();
            }
        }
        for (Sense sense : match.get().senses()) {
            if (sense.kind() == SenseKind.THEATER) {
                return "theater";
            }
        }
        return "";
    }

    private static boolean isType(String id) {
        return switch (id) {
            case "GO", "SO", "LO", "MO", "MEMO", "CIR", "BUL" -> true;
            default -> false;
        };
    }

    private static boolean isIssuer(String id) {
        return id.equals("WD") || id.equals("HQ");
    }

    private void skipPartNumber() {
        if (words.isNumber(at) || at < words.count() && isRoman(at)) {
            at++;
        }
    }

    private boolean isRoman(int word) {
        if (!words.isLetters(word) || words.length(word) > 5) {
            return false;
        }
        for (int i = words.start(word); i < words.end(word); i++) {
            if ("IVXL".indexOf(words.upper(i)) < 0) {
                return false;
            }
        }
        return true;
    }

    private void readNumbers() {
        skipNumberSign();
        if (words.isLetters(at) && words.length(at) <= 3 && !words.isNumber(at)) {
            int value = Words.slipOfNumber(words.plain(at));
            if (value > 0) {
                numbers.add(value);
                slip = "\"" + words.word(at) + "\" read as " + value;
                at++;
            }
        }
        boolean joined = false;
        while (words.isNumber(at) && !parted(at) && !words.isOrdinal(at)) {
            if (!numbers.isEmpty() && !joined && (isYearHere() || isUnitNumber(at) || dates.month(at + 1) > 0)) {
                takeYearIfIssued();
                return;
            }
            numbers.add(words.number(at));
            at++;
            glued |= at < words.count() && words.gap(at) == 0 && words.isLetters(at) && !isIssuer(id(at));
            int next = isJoin(at) ? at + 1 : at;
            joined = next > at && words.isNumber(next);
            at = joined ? next : at;
        }
    }

    /** Whether the figures after the number are the year: after a stroke, or because nothing but the year can follow. */
    private boolean isYearHere() {
        if (yearOf(at) < 0 || isUnitNumber(at) || (words.gap(at) & Words.COMMA) != 0) {
            return false;
        }
        boolean issuerNext = isIssuer(id(at + 1));
        boolean numberNext = words.isNumber(at + 1) && !parted(at + 1);
        boolean stroke = (words.gap(at) & (Words.SLASH | Words.HYPHEN)) != 0;
        return !issuerNext && (stroke || !numberNext && !isJoin(at + 1) || issuerFrom >= 0 && !numberNext);
    }

    private void takeYearIfIssued() {
        if (isYearHere()) {
            year = yearOf(at);
            at++;
            issuerAfterYear();
        }
    }

    /** {@code GO 40/44 3d Inf Div}: the issuer stands behind the year. */
    private void issuerAfterYear() {
        if (issuerFrom >= 0 || at >= words.count() || parted(at) || !(words.isNumber(at) && isUnitNumber(at))) {
            return;
        }
        issuerFrom = at;
        while (at < words.count() && (words.isNumber(at) && isUnitNumber(at) || isUnitWord(at)) && !parted(at)) {
            at++;
        }
        issuerTo = at;
    }

    private void skipNumberSign() {
        while (at < words.count()) {
            boolean sign = words.is(at, "#")
                    || words.is(at, "NO")
                    || words.is(at, "NR")
                    || words.is(at, "NUMBER")
                    || words.is(at, "NOS")
                    || words.is(at, "NUMBERS");
            if (!sign) {
                return;
            }
            at++;
        }
    }

    private boolean isJoin(int word) {
        return words.is(word, "&") || words.is(word, "AND");
    }

    private boolean parted(int word) {
        return (words.gap(word) & (Words.SEMICOLON | Words.CLOSE)) != 0;
    }

    private void readIssuerAndYear() {
        boolean issuerSeen = issuerFrom >= 0;
        while (at < words.count() && !parted(at)) {
            String id = id(at);
            int to = lastTo;
            boolean comma = (words.gap(at) & Words.COMMA) != 0;
            if (year < 0 && isIssuer(id)) {
                if (!issuerSeen) {
                    issuerFrom = at;
                    issuerSeen = true;
                }
                issuerTo = Math.max(issuerTo, to);
                at = to;
            } else if (id.equals("SEC") || id.equals("PAR")) {
                at = to;
                skipPartNumber();
            } else if (id.equals("DTD")) {
                at = to;
                TypedDate dated = at < words.count() ? dates.at(at) : null;
                if (dated != null) {
                    takeYear(dated.date());
                    at = dated.to();
                }
            } else if (id.equals("AMD") || id.equals("CS")) {
                at = to;
                if (year >= 0 || id.equals("AMD")) {
                    return;
                }
            } else if (year >= 0) {
                return;
            } else if (yearOf(at) > 0 && !isUnitNumber(at)) {
                year = yearOf(at);
                at++;
            } else {
                TypedDate dated = dates.at(at);
                int yearAt = dated == null ? yearAhead(at) : -1;
                if (dated != null && dated.date() != null) {
                    takeYear(dated.date());
                    at = dated.to();
                } else if (yearAt > at) {
                    issuerFrom = issuerFrom < 0 ? at : issuerFrom;
                    issuerTo = id(yearAt - 1).equals("DTD") ? yearAt - 1 : yearAt;
                    at = yearAt;
                    takeYearAt(yearAt);
                } else if (comma || !(words.isNumber(at) && isUnitNumber(at) || isIssuerWord(at))) {
                    return;
                } else {
                    if (!issuerSeen) {
                        issuerFrom = at;
                        issuerSeen = true;
                    }
                    int next = words.isNumber(at) ? at + 1 : Math.max(at + 1, lastTo);
                    issuerTo = next;
                    at = next;
                }
            }
        }
    }

    private void takeYearAt(int word) {
        TypedDate dated = dates.at(word);
        if (dated != null && dated.date() != null) {
            takeYear(dated.date());
            at = dated.to();
        } else {
            year = yearOf(word);
            at = word + 1;
        }
    }

    /**
     * The last figures that can be the year of the order after the words that name the issuer, known or not; -1 when an
     * award begins first. Words nobody knows count as the issuer's only beside a number, a word for a unit, or "Hq".
     */
    private int yearAhead(int from) {
        int found = -1;
        boolean issuerBegun = issuerFrom >= 0;
        for (int i = from; i < Math.min(words.count(), from + 10); i++) {
            if (parted(i) || found >= 0 && (words.gap(i) & Words.COMMA) != 0) {
                return found;
            }
            TypedDate dated = dates.at(i);
            if (dated != null && dated.date() != null) {
                return issuerBegun ? i : -1;
            }
            if (yearOf(i) > 0 && !isUnitNumber(i)) {
                found = issuerBegun ? i : found;
            } else if (words.isNumber(i)) {
                if (found >= 0 && !isUnitNumber(i)) {
                    return found;
                }
                issuerBegun |= isUnitNumber(i);
            } else if (isItem(i)) {
                return found;
            } else if (found >= 0 && !isIssuerWord(i)) {
                return found;
            } else if (isIssuerWord(i) || words.known(i) == null && i + 1 < words.count() && isUnitWord(i + 1)) {
                issuerBegun = true;
            } else if (!issuerBegun) {
                return -1;
            }
        }
        return found;
    }

    /** Whether an award, campaign, class or sentence of its own begins at a word. */
    private boolean isItem(int word) {
        var match = matcher.longest(word);
        if (match.isEmpty() || isUnitWord(word)) {
            return false;
        }
        for (Sense sense : match.get().senses()) {
            switch (sense.kind()) {
                case AWARD, DEVICE, CAMPAIGN, LEVEL -> {
                    return true;
                }
                case TERM -> {
                    if (match.get().to() - word > 1) {
                        return true;
                    }
                }
                default -> {}
            }
        }
        return false;
    }

    private void takeYear(@Nullable PartialDate date) {
        if (date != null) {
            year = date.earliest().getYear();
        }
    }

    private int yearOf(int word) {
        int number = words.number(word);
        if (number < 0 || words.isOrdinal(word)) {
            return -1;
        }
        int full = words.length(word) == 2 ? 1900 + number : words.length(word) == 4 ? number : -1;
        return full >= FIRST_YEAR && full <= LAST_YEAR ? full : -1;
    }

    /** A number that belongs to the name of a unit: a word for a unit follows. */
    private boolean isUnitNumber(int word) {
        if (words.isOrdinal(word)) {
            return true;
        }
        return word + 1 < words.count()
                && (words.gap(word + 1) & ~(Words.SPACE | Words.PERIOD)) == 0
                && isUnitWord(word + 1);
    }

    private boolean isUnitWord(int word) {
        var match = matcher.longest(word);
        if (match.isEmpty()) {
            return false;
        }
        boolean unit = false;
        for (Sense sense : match.get().senses()) {
            switch (sense.kind()) {
                case UNIT, ARM -> unit = true;
                case AWARD, DEVICE, CAMPAIGN, LEVEL -> {
                    if (match.get().to() - word > 1) {
                        return false;
                    }
                }
                default -> {}
            }
        }
        return unit;
    }

    private boolean isIssuerWord(int word) {
        var match = matcher.longest(word);
        if (match.isEmpty()) {
            lastTo = word + 1;
            return isRoman(word);
        }
        lastTo = match.get().to();
        boolean issuer = false;
        for (Sense sense : match.get().senses()) {
            switch (sense.kind()) {
                case UNIT, ARM, THEATER -> issuer = true;
                case ORDER -> issuer |= sense.id().isEmpty() || isIssuer(sense.id());
                case AWARD, DEVICE, CAMPAIGN, LEVEL, WEAPON, TERM -> {
                    if (match.get().to() - word > 1) {
                        return false;
                    }
                }
                default -> {}
            }
        }
        return issuer || words.length(word) == 1 && words.isLetters(word) || isRoman(word);
    }

    /** {@code General Orders 33, WD, 1945}. */
    static String words(List<OrderReference> orders) {
        if (orders.isEmpty()) {
            return "";
        }
        var first = orders.get(0);
        var text = new StringBuilder(
                switch (first.type().orElse("")) {
                    case "GO" -> "General Orders";
                    case "SO" -> "Special Orders";
                    case "LO" -> "Letter Orders";
                    case "MO" -> "Movement Orders";
                    case "MEMO" -> "Memorandum";
                    case "CIR" -> "Circular";
                    case "BUL" -> "Bulletin";
                    default -> "order";
                });
        for (int i = 0; i < orders.size(); i++) {
            if (orders.get(i).number().isPresent()) {
                text.append(i == 0 ? " " : " and ")
                        .append(orders.get(i).number().getAsInt());
            }
        }
        first.headquarters()
                .ifPresent(issuer -> text.append(", ")
                        .append(
                                issuer.equalsIgnoreCase("WD")
                                                || issuer.toUpperCase(java.util.Locale.ROOT)
                                                        .startsWith("WDGO")
                                        ? "War Department"
                                        : issuer));
        first.year().ifPresent(year -> text.append(", ").append(year));
        return text.toString();
    }
}
