package org.honorsdue.service.fact;

import org.honorsdue.service.paper.Entry;

/**
 * A grade held, at separation or the highest.
 *
 * @param title the grade in full, as in {@code Technician Fifth Grade}
 */
public record MilitaryGrade(int paper, Entry entry, String title, Tour.Category category, Basis basis)
        implements ServiceFact {}
