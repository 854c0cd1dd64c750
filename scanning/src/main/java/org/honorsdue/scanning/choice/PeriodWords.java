package org.honorsdue.scanning.choice;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.honorsdue.reference.Reference;

/** The words that the published tables know, in capitals, by their length. Words with figures are left out. */
public final class PeriodWords {
    private static final String[] MONTHS = {
        "JAN",
        "FEB",
        "MAR",
        "APR",
        "MAY",
        "JUN",
        "JUL",
        "AUG",
        "SEP",
        "SEPT",
        "OCT",
        "NOV",
        "DEC",
        "JANUARY",
        "FEBRUARY",
        "MARCH",
        "APRIL",
        "JUNE",
        "JULY",
        "AUGUST",
        "SEPTEMBER",
        "OCTOBER",
        "NOVEMBER",
        "DECEMBER"
    };
    /** States and territories as clerks shortened them: common practice, no source. */
    private static final String[] STATES = {
        "ALA", "ARIZ", "ARK", "CAL", "CALIF", "COLO", "CONN", "DEL", "FLA", "GA", "ILL", "IND", "IA", "IOWA", "KANS",
        "KY", "LA", "ME", "MD", "MASS", "MICH", "MINN", "MISS", "MO", "MONT", "NEBR", "NEV", "NH", "NJ", "NM", "NY",
        "NC", "ND", "OHIO", "OKLA", "ORE", "PA", "RI", "SC", "SD", "TENN", "TEX", "UTAH", "VT", "VA", "WASH", "WVA",
        "WIS", "WYO", "IDAHO", "MAINE", "TEXAS", "DC", "PR", "HAWAII", "ALASKA"
    };
    /** Words of the form's own business that the tables have no reason to hold: common practice, no source. */
    private static final String[] CLERKS = {
        "NONE",
        "SEE",
        "ISSUED",
        "LOST",
        "DAYS",
        "TIME",
        "UNDER",
        "SCORE",
        "LAPEL",
        "BUTTON",
        "INACTIVE",
        "SERVICE",
        "ENTITLED",
        "AMENDED",
        "CONVENIENCE",
        "CONV",
        "GOVERNMENT",
        "GOVT",
        "DEMOBILIZATION",
        "RELIEF",
        "ACTIVE",
        "DUTY",
        "FROM",
        "THE",
        "OF",
        "TO",
        "AND",
        "AS",
        "NO",
        "IN",
        "FOR",
        "WITH",
        "CENTER",
        "SEPARATION",
        "CAMP",
        "FORT",
        "REMARKS",
        "ITEM",
        "BLUE",
        "BROWN",
        "HAZEL",
        "GRAY",
        "GREEN",
        "BLACK",
        "BLONDE",
        "RED",
        "MERITORIOUS",
        "UNIT",
        "PLAQUE",
        "EXCELLENT",
        "SCHOOL",
        "WEEKS",
        "WKS",
        "LBS"
    };

    private final Map<Integer, List<String>> byLength = new HashMap<>();
    private final Set<String> all = new HashSet<>();

    private PeriodWords() {}

    /** The words of the tables that come with the program. */
    public static PeriodWords of(Reference reference) {
        var words = new PeriodWords();
        words.add(List.of(MONTHS));
        words.add(List.of(STATES));
        words.add(List.of(CLERKS));
        for (var each : reference.abbreviations()) {
            words.addText(each.token());
            words.addText(each.expansion());
        }
        for (var each : reference.campaigns()) {
            words.addText(each.name());
            each.variants().forEach(words::addText);
        }
        for (var each : reference.places()) {
            words.addText(each.name());
            each.aliases().forEach(words::addText);
        }
        for (var each : reference.awards()) {
            words.addText(each.name());
            each.otherNames().forEach(words::addText);
        }
        for (var each : reference.specialties()) {
            words.addText(each.title());
        }
        for (var each : reference.separationCodes()) {
            each.asWritten().forEach(words::addText);
        }
        return words;
    }

    private void addText(String text) {
        add(List.of(text.toUpperCase(Locale.ROOT).split("[^A-Z']+")));
    }

    private void add(Collection<String> words) {
        for (var word : words) {
            if (word.length() >= 2 && all.add(word)) {
                byLength.computeIfAbsent(word.length(), length -> new ArrayList<>())
                        .add(word);
            }
        }
    }

    /** All words of that many letters. */
    List<String> ofLength(int letters) {
        return byLength.getOrDefault(letters, List.of());
    }

    boolean has(String word) {
        return all.contains(word.toUpperCase(Locale.ROOT));
    }
}
