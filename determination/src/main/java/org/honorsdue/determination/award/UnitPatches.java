package org.honorsdue.determination.award;

import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.law.Answer;
import org.honorsdue.determination.law.FactKind;
import org.honorsdue.determination.law.Tally;
import org.honorsdue.determination.unit.SoldierUnits;
import org.honorsdue.determination.unit.UnitClaim;
import org.honorsdue.reference.law.LawClause;
import org.honorsdue.reference.unit.Patch;

/** Which shoulder sleeve insignia his units give him, in words: the one he came home with, and those of former units. */
final class UnitPatches {
    private UnitPatches() {}

    /** Whether a command above his last unit had insignia; silent when the tables have none for his units. */
    static Answer authorized(Dossier soldier) {
        var patches = SoldierUnits.of(soldier).patches();
        if (patches.isEmpty()) {
            return Answer.no();
        }
        var last = patches.get(patches.size() - 1);
        var basis = last.stint().assignment().basis();
        return last.fromMemory()
                ? Answer.usually(FactKind.UNIT_CREDIT, () -> "an insigne: " + words(last), basis)
                : Answer.met(() -> words(last), basis);
    }

    /** How many different insignia his units give him. */
    static long count(Dossier soldier) {
        return SoldierUnits.of(soldier).patches().stream()
                .map(patch -> patch.held().holder().id())
                .distinct()
                .count();
    }

    static void told(Dossier soldier, Tally tally, LawClause current, LawClause former) {
        var patches = SoldierUnits.of(soldier).patches();
        for (var patch : patches) {
            boolean last = patch == patches.get(patches.size() - 1);
            tally.because(
                    last ? current : former,
                    Answer.met(() -> words(patch), patch.stint().assignment().basis()));
        }
        if (!patches.isEmpty()
                && patches.get(patches.size() - 1).stint().assignment().atSeparation()) {
            tally.caution(
                    () ->
                            "The last insigne is that of the unit on the paper, often only the one he came home with; that of the unit he fought with goes on the right sleeve.");
        }
    }

    private static String words(UnitClaim<Patch> claim) {
        return "%s: %s (%s)"
                .formatted(claim.held().holder().name(), claim.held().row().description(), claim.source());
    }
}
