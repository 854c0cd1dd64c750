package org.honorsdue.insignia.print;

import org.honorsdue.reference.insignia.Inches;

/** The sheets people print on. */
public enum Paper {
    LETTER(Inches.of(17, 2), Inches.of(11)),
    A4(Inches.ofMillimetres(210), Inches.ofMillimetres(297));

    private final Inches width;
    private final Inches height;

    Paper(Inches width, Inches height) {
        this.width = width;
        this.height = height;
    }

    public Inches width() {
        return width;
    }

    public Inches height() {
        return height;
    }
}
