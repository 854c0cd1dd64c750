package org.honorsdue.reading.unit;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;

/** Ways in which one clerk's line differs from another's without meaning anything else. */
final class Perturbations {
    private Perturbations() {}

    static Map<String, UnaryOperator<String>> all() {
        var ways = new LinkedHashMap<String, UnaryOperator<String>>();
        ways.put("capitals", line -> line.toUpperCase(Locale.ROOT));
        ways.put("small letters", line -> line.toLowerCase(Locale.ROOT));
        ways.put(
                "full stops",
                line -> line.replaceAll("\\b(Co|Btry|Bn|Inf|Engr|Regt|Sq|Gp|Tk|Div|Armd|Hosp)\\b", "$1."));
        ways.put("commas", line -> line.replaceAll(" (?=\\d+(st|nd|rd|th|d)\\b)", ", "));
        ways.put("blanks doubled", line -> line.replace(" ", "  "));
        ways.put("APO after", line -> line + " APO 758");
        ways.put("endings dropped", line -> line.replaceAll("\\b(\\d+)(st|nd|rd|th|d|ST|ND|RD|TH|D)\\b", "$1"));
        ways.put("0 as O", line -> line.replaceAll("(?<=\\d)0(?=\\d*(st|nd|rd|th|d|ST|ND|RD|TH|D)\\b)", "O"));
        ways.put("1 as l", line -> line.replaceAll("(?<=\\d)1(?=\\d*(st|nd|rd|th|d|ST|ND|RD|TH|D)\\b)", "l"));
        ways.put("number sign", line -> line.replaceAll("\\b(?=\\d+(st|nd|rd|th)\\b)", "#"));
        ways.put("Inf in full", line -> line.replaceAll("(?i)\\bInf\\b", "Infantry"));
        ways.put("Co in full", line -> line.replaceAll("\\bCo\\b", "Company").replaceAll("\\bBtry\\b", "Battery"));
        ways.put(
                "run together",
                line -> line.matches("[A-Za-z]+ [A-Za-z]? ?\\d+(st|nd|rd|th) [A-Za-z ]+")
                        ? line.replace(" ", "")
                        : line);
        return ways;
    }
}
