package org.honorsdue.reading.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.honorsdue.reference.unit.LetteredCompanies;
import org.honorsdue.reference.unit.Unit;
import org.honorsdue.reference.unit.UnitPart;
import org.honorsdue.service.fact.Basis.Certainty;

/**
 * What a typed organization means.
 *
 * @param chain the designation in full from the smallest part to the largest parent, also of what is not in the
 *     tables; empty when nothing could be read
 * @param parts parts of the unit that were typed, the smallest first
 * @param impliedBattalion the battalion a lettered company fell into, where the tables of organization fix it and
 *     none was typed
 * @param unit the smallest unit of the tables that the line surely names
 * @param parents its parents, nearest first: those typed, then the usual ones of the tables
 * @param candidates the units it may mean when it names none surely
 * @param nearest units close to a designation that is not in the tables
 * @param notes what was put right, and what does not fit together
 * @param unread characters that found no meaning
 */
public record OrganizationReading(
        String typed,
        Outcome outcome,
        List<String> chain,
        List<UnitPart> parts,
        Optional<LetteredCompanies> impliedBattalion,
        Optional<Unit> unit,
        List<Unit> parents,
        List<Unit> candidates,
        List<NearUnit> nearest,
        List<String> notes,
        List<String> unread,
        Certainty certainty) {
    public OrganizationReading {
        chain = List.copyOf(chain);
        parts = List.copyOf(parts);
        parents = List.copyOf(parents);
        candidates = List.copyOf(candidates);
        nearest = List.copyOf(nearest);
        notes = List.copyOf(notes);
        unread = List.copyOf(unread);
    }

    /** The designation in one line: {@code Company B, 331st Infantry Regiment, 83rd Infantry Division}. */
    public String meaning() {
        var text = new StringBuilder();
        for (String link : chain) {
            boolean said = text.toString().endsWith(", " + link);
            text.append(text.isEmpty() || said ? "" : ", ").append(said ? "" : link);
        }
        return text.toString();
    }

    /** How far the reading came. */
    public enum Outcome {
        /** The unit is in the tables. */
        FOUND,
        /** A larger unit typed with it is in the tables, the unit itself is not. */
        PARENT_ONLY,
        /** Several units of the tables fit and nothing typed decides. */
        AMBIGUOUS,
        /** A designation was read that is not in our tables. */
        NOT_IN_TABLES,
        /** No designation stands there. */
        NO_UNIT
    }

    /**
     * Ids from the most specific to the largest parent: parts typed, the battalion implied, the unit, its parents.
     * Empty unless a unit was found; for {@link Outcome#PARENT_ONLY} the parent alone.
     */
    public List<String> ids() {
        var ids = new ArrayList<String>();
        unit.ifPresent(found -> {
            for (UnitPart part : parts) {
                ids.add(found.id() + "/" + part.id());
            }
            impliedBattalion.ifPresent(battalion -> ids.add(
                    found.id() + "/" + UnitPart.battalion(battalion.battalion()).id()));
            ids.add(found.id());
        });
        parents.forEach(parent -> ids.add(parent.id()));
        return List.copyOf(ids);
    }
}
