package org.honorsdue.determination.dossier;

import org.honorsdue.service.fact.Basis;
import org.honorsdue.service.fact.Tour;

/**
 * Active service under one paper.
 *
 * @param paper number of the paper; 0 for earlier service that a paper only mentions
 * @param category enlisted or officer, by the form or else by the grade typed on it
 * @param days from the entry into active service to the last day
 */
public record Duty(int paper, Tour.Category category, Stretch days, Basis basis) {
    public boolean enlisted() {
        return category == Tour.Category.ENLISTED;
    }

    public boolean mayBeEnlisted() {
        return category == Tour.Category.ENLISTED || category == Tour.Category.NOT_SHOWN;
    }
}
