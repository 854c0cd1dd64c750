package org.honorsdue.determination.award;

import java.util.HashSet;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.law.Answer;
import org.honorsdue.determination.law.FactKind;
import org.honorsdue.determination.law.Tally;
import org.honorsdue.determination.unit.SoldierUnits;
import org.honorsdue.determination.unit.UnitClaim;
import org.honorsdue.reference.unit.UnitAward;

/** A citation or foreign award of his unit as the tables of units have it. What they only remember never decides. */
final class TableCitation {
    private TableCitation() {}

    /** Whether a unit of his holds it and he may have been there. */
    static boolean any(Dossier soldier, String award) {
        return SoldierUnits.of(soldier).surest(award).isPresent();
    }

    static Answer cited(UnitClaim<UnitAward> claim) {
        var rests = claim.stint().assignment().basis();
        return claim.fromMemory()
                ? Answer.open(FactKind.UNIT_CREDIT, () -> words(claim), rests)
                : Answer.met(() -> words(claim), rests);
    }

    private static String words(UnitClaim<UnitAward> claim) {
        var row = claim.held().row();
        return "%s for %s, %s%s (%s)"
                .formatted(
                        row.award().title(),
                        claim.held().holder().name(),
                        row.action(),
                        row.order().isEmpty() ? "" : ", " + row.order(),
                        claim.source());
    }

    /** Citations that count, each action once; every further one is named as a need. */
    static int counted(Dossier soldier, String award, Tally tally) {
        var kind = UnitAward.Kind.ofId(award);
        if (kind.isEmpty()) {
            return 0;
        }
        var actions = new HashSet<String>();
        int count = 0;
        for (var claim : SoldierUnits.of(soldier).awards(kind.get())) {
            if (claim.present().isNotMet() || !actions.add(action(claim))) {
                continue;
            }
            if (claim.counts()) {
                count++;
            }
            if (!claim.present().isMet() || claim.fromMemory()) {
                if (claim.fromMemory()) {
                    tally.further(FactKind.UNIT_CREDIT, () -> words(claim));
                } else {
                    tally.further(FactKind.UNIT_PRESENCE, () -> "the unit in the action of the " + words(claim));
                }
            }
        }
        return count;
    }

    /** A battalion and its regiment cited for the same days hold one citation. */
    private static String action(UnitClaim<UnitAward> claim) {
        var when = claim.held().row().when().words();
        return when.isEmpty() ? claim.held().row().action() : when;
    }
}
