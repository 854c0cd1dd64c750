package org.honorsdue.reference.unit;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * A part of a unit: a battalion by number, a company, battery or troop by letter, a platoon, or a named one such as
 * {@code headquarters-company}.
 *
 * @param id as in {@code battalion-2}, {@code company-f}, {@code medical-detachment}, {@code elements}
 */
public record UnitPart(String id) {
    private static final Pattern SHAPE = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*(/[a-z0-9]+(-[a-z0-9]+)*)?");
    private static final Pattern LETTERED =
            Pattern.compile("(company|battery|troop|squadron|section|flight|detachment|combat-command)-[a-z]");
    private static final Pattern NUMBERED =
            Pattern.compile("(battalion|squadron|platoon|company|battery|troop|section|regiment|squad)-[0-9]+");

    /** Some part that the source does not name. */
    public static final UnitPart ELEMENTS = new UnitPart("elements");

    public UnitPart {
        if (!SHAPE.matcher(id).matches()) {
            throw new IllegalArgumentException(
                    "\"%s\" is not a part of a unit. Write it as in battalion-2 or company-f.".formatted(id));
        }
    }

    public static UnitPart battalion(int number) {
        return new UnitPart("battalion-" + number);
    }

    /** A company, battery or troop by letter, also the squadrons and combat commands that bore letters. */
    public boolean isLettered() {
        return LETTERED.matcher(id).matches();
    }

    public boolean isBattalion() {
        return NUMBERED.matcher(id).matches() && (id.startsWith("battalion-") || id.startsWith("squadron-"));
    }

    /** The letter of a lettered part, else empty. */
    public String letter() {
        return isLettered() ? id.substring(id.length() - 1).toUpperCase(Locale.ROOT) : "";
    }

    /** In words: {@code Company F}, {@code 2nd Battalion}, {@code Medical Detachment}. */
    public String text() {
        if (isLettered()) {
            return words(id.substring(0, id.length() - 2)) + " " + letter();
        }
        if (NUMBERED.matcher(id).matches()) {
            int dash = id.indexOf('-');
            return Ordinal.text(Integer.parseInt(id.substring(dash + 1))) + " " + capital(id.substring(0, dash));
        }
        if (id.indexOf('/') > 0) {
            var halves = id.split("/", 2);
            return new UnitPart(halves[1]).text() + ", " + new UnitPart(halves[0]).text();
        }
        return words(id);
    }

    private static String words(String id) {
        var words = new StringBuilder();
        for (String word : id.split("-")) {
            if (word.equals("womens")) {
                words.append("Women's");
                continue;
            }
            words.append(words.isEmpty() ? "" : " ")
                    .append(word.equals("and") || word.equals("of") ? word : capital(word));
        }
        return words.toString();
    }

    private static String capital(String word) {
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }
}
