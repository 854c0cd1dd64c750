package org.honorsdue.reference.unit;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;
import org.honorsdue.reference.unit.UnitHistory.Credited;

/**
 * Everything the tables say of one unit.
 *
 * @param unit what it is
 * @param part the part asked about, in words; empty for the unit as a whole
 * @param battalion the battalion a lettered company fell into, where the tables of organization fix it
 * @param parents to whom it belonged directly, and when
 * @param largerUnits its usual line of parents, nearest first
 * @param campaigns with the unit they are credited to
 * @param whereabouts where it stood May to November 1945 or September 1945 to March 1946
 * @param overseas of the division it belonged to, or its own
 * @param sameNumber other units of that number
 */
public record UnitCard(
        Unit unit,
        String part,
        Optional<LetteredCompanies> battalion,
        List<Membership> parents,
        List<Unit> largerUnits,
        List<Held<Credited>> campaigns,
        List<Held<UnitAssault>> assaults,
        List<Held<UnitAward>> awards,
        List<Held<Whereabouts>> whereabouts,
        Optional<OverseasHistory> overseas,
        Optional<Held<Patch>> patch,
        List<Unit> sameNumber) {
    public UnitCard {
        parents = List.copyOf(parents);
        largerUnits = List.copyOf(largerUnits);
        campaigns = List.copyOf(campaigns);
        assaults = List.copyOf(assaults);
        awards = List.copyOf(awards);
        whereabouts = List.copyOf(whereabouts);
        sameNumber = List.copyOf(sameNumber);
    }

    /** The name of a unit in its line of parents; its id in words when it is not of that line. */
    public String nameOf(String id) {
        return largerUnits.stream()
                .filter(larger -> larger.id().equals(id))
                .map(Unit::name)
                .findFirst()
                .orElse(id.replace('-', ' '));
    }

    /** The publications its lines were read in, each once, in the order of the card. What rests on memory has none. */
    public List<Provenance> sources() {
        var sources = new LinkedHashSet<Provenance>();
        sources.add(unit.provenance());
        parents.forEach(tie -> sources.add(tie.provenance()));
        overseas.ifPresent(history -> sources.add(history.provenance()));
        for (var rows : List.of(campaigns, assaults, awards, whereabouts)) {
            rows.forEach(held -> sources.addAll(held.restsOn()));
        }
        patch.ifPresent(held -> sources.addAll(held.restsOn()));
        sources.removeIf(source -> source.grade() == Grade.MEMORY);
        return List.copyOf(sources);
    }

    /** Citations of the United States. */
    public List<Held<UnitAward>> citations() {
        return awards.stream().filter(held -> !held.row().award().foreign()).toList();
    }

    public List<Held<UnitAward>> foreignAwards() {
        return awards.stream().filter(held -> held.row().award().foreign()).toList();
    }
}
