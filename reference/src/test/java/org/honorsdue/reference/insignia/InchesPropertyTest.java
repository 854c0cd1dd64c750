package org.honorsdue.reference.insignia;

import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

@Label("Lengths in inches, whatever they are")
class InchesPropertyTest {
    @Property
    boolean survive_writing_and_reading(
            @ForAll @IntRange(min = 0, max = 99999) int numerator,
            @ForAll @IntRange(min = 1, max = 9999) int denominator) {
        Inches length = Inches.of(numerator, denominator);
        return Inches.parse(length.text()).equals(length);
    }
}
