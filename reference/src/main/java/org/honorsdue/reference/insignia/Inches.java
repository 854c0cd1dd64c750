package org.honorsdue.reference.insignia;

import java.math.BigInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A length in inches as an exact fraction in lowest terms; may be negative. An inch is 25.4 mm and 72 points, exactly.
 *
 * @param numerator carries the sign
 * @param denominator at least 1
 */
public record Inches(long numerator, long denominator) implements Comparable<Inches> {
    /** No length. */
    public static final Inches ZERO = new Inches(0, 1);

    private static final Pattern WRITTEN =
            Pattern.compile("(-?)(?:(\\d{1,6})(?: (\\d{1,6})/(\\d{1,6}))?|(\\d{1,6})/(\\d{1,6}))");

    public Inches {
        if (denominator == 0) {
            throw new IllegalArgumentException("A fraction of an inch cannot have 0 below the line.");
        }
        long divisor = BigInteger.valueOf(numerator)
                .gcd(BigInteger.valueOf(denominator))
                .longValueExact();
        long sign = denominator < 0 ? -1 : 1;
        numerator = sign * numerator / divisor;
        denominator = sign * denominator / divisor;
    }

    /** So many whole inches. */
    public static Inches of(long whole) {
        return new Inches(whole, 1);
    }

    /** A fraction of an inch, as in {@code of(3, 8)}. */
    public static Inches of(long numerator, long denominator) {
        return new Inches(numerator, denominator);
    }

    /** A whole number of millimetres as inches, exactly. */
    public static Inches ofMillimetres(long millimetres) {
        return new Inches(millimetres * 5, 127);
    }

    /**
     * Reads a length as a rule is marked: {@code 2}, {@code 3/8} or {@code 1 3/8}.
     *
     * @throws IllegalArgumentException for anything else; the message says what to write
     */
    public static Inches parse(String written) {
        Matcher parts = WRITTEN.matcher(written.strip());
        if (!parts.matches()) {
            throw new IllegalArgumentException(
                    "\"%s\" is not a length in inches. Write 2, 3/8 or 1 3/8.".formatted(written));
        }
        Inches length = parts.group(2) == null
                ? new Inches(Long.parseLong(parts.group(5)), Long.parseLong(parts.group(6)))
                : parts.group(3) == null
                        ? of(Long.parseLong(parts.group(2)))
                        : of(Long.parseLong(parts.group(2)))
                                .plus(new Inches(Long.parseLong(parts.group(3)), Long.parseLong(parts.group(4))));
        return parts.group(1).isEmpty() ? length : ZERO.minus(length);
    }

    public Inches plus(Inches other) {
        return new Inches(
                Math.addExact(
                        Math.multiplyExact(numerator, other.denominator),
                        Math.multiplyExact(other.numerator, denominator)),
                Math.multiplyExact(denominator, other.denominator));
    }

    public Inches minus(Inches other) {
        return plus(new Inches(-other.numerator, other.denominator));
    }

    public Inches times(long factor) {
        return new Inches(Math.multiplyExact(numerator, factor), denominator);
    }

    public Inches dividedBy(long divisor) {
        return new Inches(numerator, Math.multiplyExact(denominator, divisor));
    }

    public Inches half() {
        return dividedBy(2);
    }

    public Inches max(Inches other) {
        return compareTo(other) >= 0 ? this : other;
    }

    public Inches min(Inches other) {
        return compareTo(other) <= 0 ? this : other;
    }

    public boolean isLongerThan(Inches other) {
        return compareTo(other) > 0;
    }

    /** The nearest multiple of a step, halves upwards: what a rule marked in that step can show. */
    public Inches nearest(Inches step) {
        long doubled = Math.multiplyExact(2, Math.multiplyExact(numerator, step.denominator));
        long unit = Math.multiplyExact(denominator, step.numerator);
        return step.times(Math.floorDiv(doubled + unit, 2 * unit));
    }

    /** In inches, for drawing. */
    public double decimal() {
        return (double) numerator / denominator;
    }

    public double millimetres() {
        return numerator * 25.4 / denominator;
    }

    /** Points of 1/72 inch, as PDF counts. */
    public double points() {
        return numerator * 72.0 / denominator;
    }

    @Override
    public int compareTo(Inches other) {
        return BigInteger.valueOf(numerator)
                .multiply(BigInteger.valueOf(other.denominator))
                .compareTo(BigInteger.valueOf(other.numerator).multiply(BigInteger.valueOf(denominator)));
    }

    /** As on a rule: {@code 1 3/8}, {@code 3/8}, {@code 2}, {@code 0}. */
    public String text() {
        long whole = Math.abs(numerator) / denominator;
        long over = Math.abs(numerator) % denominator;
        String sign = numerator < 0 ? "-" : "";
        if (over == 0) {
            return sign + whole;
        }
        return sign + (whole == 0 ? "" : whole + " ") + over + "/" + denominator;
    }

    @Override
    public String toString() {
        return text() + " in";
    }
}
