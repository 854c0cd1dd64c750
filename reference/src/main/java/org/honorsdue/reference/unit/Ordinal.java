package org.honorsdue.reference.unit;

/** Numbers as units bear them. */
public final class Ordinal {
    private Ordinal() {}

    /** {@code 1st}, {@code 22nd}, {@code 83rd}, {@code 111th}. */
    public static String text(int number) {
        int tens = number % 100;
        if (tens >= 11 && tens <= 13) {
            return number + "th";
        }
        return number
                + switch (number % 10) {
                    case 1 -> "st";
                    case 2 -> "nd";
                    case 3 -> "rd";
                    default -> "th";
                };
    }
}
