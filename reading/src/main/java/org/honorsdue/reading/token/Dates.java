package org.honorsdue.reading.token;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import org.honorsdue.reading.token.Vocabulary.Known;
import org.honorsdue.service.fact.Basis.Certainty;
import org.honorsdue.service.fact.PartialDate;
import org.jspecify.annotations.Nullable;

/** Dates in every style of the period: {@code 6 Mar 45}, {@code 15DEC44}, {@code Mar 44}, {@code Dec 15, 1944}, {@code 12/15/44}. */
final class Dates {
    private static final List<String> MONTHS = List.of(
            "JANUARY",
            "FEBRUARY",
            "MARCH",
            "APRIL",
            "MAY",
            "JUNE",
            "JULY",
            "AUGUST",
            "SEPTEMBER",
            "OCTOBER",
            "NOVEMBER",
            "DECEMBER");

    private final Lexicon lexicon;
    private final Words words;
    private final boolean only;
    private int ambiguous;
    private boolean monthFirstSeen;
    private boolean dayFirstSeen;

    /** @param only whether the text holds a date and nothing else */
    Dates(Lexicon lexicon, Words words, boolean only) {
        this.only = only;
        this.lexicon = lexicon;
        this.words = words;
    }

    /** The date that begins at a word; null when none does. */
    @Nullable
    TypedDate at(int word) {
        if (words.isNumber(word)) {
            TypedDate numeric = numeric(word);
            if (numeric == null) {
                numeric = monthAndYear(word);
            }
            return numeric != null ? numeric : dayFirst(word, words.number(word), null);
        }
        int month = month(word);
        return month > 0 ? monthFirst(word, month, null) : null;
    }

    /** A day whose figures were typed as letters: {@code lO Nov 45}. */
    @Nullable
    TypedDate slipFirst(int word) {
        boolean letters = words.isLetters(word) && words.length(word) <= 2;
        if (!letters
                || month(word + 1) == 0
                || year(word + 2) < 0
                || !only && !words.word(word).contains("l")) {
            return null;
        }
        int day = Words.slipOfNumber(words.plain(word));
        if (day < 1 || day > 31) {
            return null;
        }
        return dayFirst(word, day, "\"" + words.word(word) + "\" read as " + day);
    }

    private @Nullable TypedDate dayFirst(int word, int day, @Nullable String note) {
        if (day < 1 || day > 31 || words.length(word) > 2 && !words.isOrdinal(word)) {
            return null;
        }
        int at = word + 1;
        if (words.is(at, "OF")) {
            at++;
        }
        if (blocked(at, Words.SEMICOLON | Words.OPEN | Words.CLOSE)) {
            return null;
        }
        int month = month(at);
        String how = note;
        if (month == 0) {
            month = misspeltMonth(at);
            if (month == 0) {
                return null;
            }
            how = both(
                    note,
                    "\"" + words.word(at) + "\" read as "
                            + MONTHS.get(month - 1).toLowerCase(java.util.Locale.ROOT));
        }
        int year = blocked(at + 1, Words.SEMICOLON | Words.OPEN | Words.CLOSE) ? -1 : year(at + 1);
        if (year < 0) {
            return new TypedDate(at + 1, null, Certainty.DOUBTFUL, both(how, "no year is typed"), List.of());
        }
        return day(at + 2, year, month, day, how);
    }

    private @Nullable TypedDate monthFirst(int word, int month, @Nullable String note) {
        int at = word + 1;
        if (!words.isNumber(at) || blocked(at, Words.SEMICOLON | Words.OPEN | Words.CLOSE)) {
            return null;
        }
        int first = words.number(at);
        int figures = words.length(at);
        if (figures == 4 && !words.isOrdinal(at)) {
            return first >= 1860 && first <= 1955 ? month(at + 1, first, month, note) : null;
        }
        boolean dayPossible = first >= 1 && first <= 31 && (figures <= 2 || words.isOrdinal(at));
        if (dayPossible && !blocked(at + 1, Words.SEMICOLON | Words.OPEN | Words.CLOSE)) {
            int year = year(at + 1);
            if (year > 0 && month(at + 2) == 0) {
                return day(at + 2, year, month, first, note);
            }
        }
        if (figures != 2 || words.isOrdinal(at)) {
            return null;
        }
        if (first >= 32) {
            return month(at + 1, 1900 + first, month, note);
        }
        if (first >= 17) {
            var asYear = PartialDate.month(YearMonth.of(1900 + first, month));
            return new TypedDate(
                    at + 1,
                    asYear,
                    Certainty.DOUBTFUL,
                    both(note, "a day without a year, or a month and year"),
                    List.of(TypedDate.words(asYear), "day " + first + " of that month, year not typed"));
        }
        return new TypedDate(at + 1, null, Certainty.DOUBTFUL, both(note, "no year is typed"), List.of());
    }

    /** {@code 12/15/44}, {@code 15-12-44}, {@code 1944-12-15}; both readings are kept when both are days. */
    private @Nullable TypedDate numeric(int word) {
        if (!words.isNumber(word + 1) || !words.isNumber(word + 2)) {
            return null;
        }
        int mark = words.gap(word + 1);
        boolean sameMarks =
                mark == words.gap(word + 2) && (mark == Words.SLASH || mark == Words.HYPHEN || mark == Words.PERIOD);
        if (!sameMarks || words.gap(word + 3) == mark && words.isNumber(word + 3)) {
            return null;
        }
        int a = words.number(word);
        int b = words.number(word + 1);
        int c = words.number(word + 2);
        if (words.length(word) == 4 && a >= 1860 && a <= 1955) {
            return isDay(a, b, c) ? TypedDate.plain(word + 3, PartialDate.day(LocalDate.of(a, b, c))) : null;
        }
        int year = year(word + 2);
        if (year < 0 || words.length(word) > 2 || words.length(word + 1) > 2) {
            return null;
        }
        boolean monthFirst = isDay(year, a, b);
        boolean dayFirst = isDay(year, b, a);
        ambiguous += monthFirst && dayFirst && a != b ? 1 : 0;
        monthFirstSeen |= monthFirst && !dayFirst;
        dayFirstSeen |= dayFirst && !monthFirst;
        if (monthFirst && dayFirst && a != b) {
            LocalDate one = LocalDate.of(year, a, b);
            LocalDate other = LocalDate.of(year, b, a);
            var between = one.isBefore(other) ? new PartialDate(one, other) : new PartialDate(other, one);
            return new TypedDate(
                    word + 3,
                    between,
                    Certainty.DOUBTFUL,
                    "day first or month first cannot be told",
                    List.of(TypedDate.words(one), TypedDate.words(other)));
        }
        if (monthFirst) {
            return TypedDate.plain(word + 3, PartialDate.day(LocalDate.of(year, a, b)));
        }
        return dayFirst ? TypedDate.plain(word + 3, PartialDate.day(LocalDate.of(year, b, a))) : null;
    }

    /** {@code 12/43}: a month and a year that cannot be a day. */
    private @Nullable TypedDate monthAndYear(int word) {
        int mark = words.gap(word + 1);
        int month = words.number(word);
        int year = words.number(word + 1);
        boolean shaped = (mark == Words.SLASH || mark == Words.HYPHEN)
                && words.length(word) <= 2
                && words.isNumber(word + 1)
                && words.length(word + 1) == 2
                && !words.isOrdinal(word)
                && !words.isOrdinal(word + 1);
        if (!shaped
                || month < 1
                || month > 12
                || year < 32
                || words.gap(word + 2) == mark && words.isNumber(word + 2)) {
            return null;
        }
        return month(word + 2, 1900 + year, month, null);
    }

    /** Dates in figures that could be read both ways are read as the others of the same text must be. */
    void settleFigures(List<Piece> pieces) {
        if (ambiguous == 0 || monthFirstSeen == dayFirstSeen) {
            return;
        }
        for (Piece piece : pieces) {
            TypedDate date = piece.typedDate();
            if (date != null
                    && date.certainty() == Certainty.DOUBTFUL
                    && date.alternatives().size() == 2) {
                PartialDate settled = figures(piece.from(), monthFirstSeen);
                if (settled != null) {
                    piece.settle(settled, "settled by the other dates of the entry");
                }
            }
        }
    }

    private @Nullable PartialDate figures(int word, boolean monthFirst) {
        if (!words.isNumber(word) || !words.isNumber(word + 1) || year(word + 2) < 0) {
            return null;
        }
        int month = words.number(monthFirst ? word : word + 1);
        int day = words.number(monthFirst ? word + 1 : word);
        int year = year(word + 2);
        return isDay(year, month, day) ? PartialDate.day(LocalDate.of(year, month, day)) : null;
    }

    private TypedDate day(int to, int year, int month, int day, @Nullable String note) {
        if (!isDay(year, month, day)) {
            var inMonth = PartialDate.month(YearMonth.of(year, month));
            return new TypedDate(
                    to,
                    inMonth,
                    Certainty.DOUBTFUL,
                    both(note, "there is no such day; read as some day of that month"),
                    List.of());
        }
        var date = PartialDate.day(LocalDate.of(year, month, day));
        return note == null ? TypedDate.plain(to, date) : new TypedDate(to, date, Certainty.CORRECTED, note, List.of());
    }

    private static TypedDate month(int to, int year, int month, @Nullable String note) {
        var date = PartialDate.month(YearMonth.of(year, month));
        return note == null ? TypedDate.plain(to, date) : new TypedDate(to, date, Certainty.CORRECTED, note, List.of());
    }

    private static boolean isDay(int year, int month, int day) {
        return month >= 1
                && month <= 12
                && day >= 1
                && day <= YearMonth.of(year, month).lengthOfMonth();
    }

    private boolean blocked(int word, int marks) {
        return word >= words.count() || (words.gap(word) & marks) != 0;
    }

    /** A year of two or four figures; -1 when the word is none. */
    int year(int word) {
        int number = words.number(word);
        if (number < 0 || words.isOrdinal(word)) {
            return -1;
        }
        if (words.length(word) == 4) {
            return number >= 1860 && number <= 1955 ? number : -1;
        }
        return words.length(word) == 2 ? 1900 + number : -1;
    }

    /** 1 to 12 for the name of a month; 0 for anything else. */
    int month(int word) {
        if (word >= words.count()) {
            return 0;
        }
        Known known = words.known(word);
        return known == null ? 0 : lexicon.month(known);
    }

    /** A month one letter off between a day and a year; three letters suffice there, since nothing else can stand so. */
    private int misspeltMonth(int word) {
        boolean possible = words.isLetters(word)
                && words.length(word) >= 3
                && (only || words.known(word) == null)
                && year(word + 1) >= 0;
        if (!possible) {
            return 0;
        }
        String typed = words.plain(word);
        int found = 0;
        for (int i = 0; i < MONTHS.size(); i++) {
            String month = MONTHS.get(i);
            int limit = typed.length() < 8 ? 1 : 2;
            boolean near = typed.length() == 3
                    ? Spelling.distance(typed, month.substring(0, 3), 1) <= 1
                    : Spelling.distance(typed, month, limit) <= limit;
            if (near) {
                if (found > 0) {
                    return 0;
                }
                found = i + 1;
            }
        }
        return found;
    }

    /** Whether the word can mean months: {@code 3 MO}. */
    boolean isMonths(int word) {
        return words.is(word, "MO") || words.is(word, "MOS");
    }

    private static String both(@Nullable String a, String b) {
        return a == null ? b : a + "; " + b;
    }
}
