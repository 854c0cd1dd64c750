package org.honorsdue.determination.award;

import java.util.ArrayList;
import java.util.List;
import org.honorsdue.determination.law.Rule;
import org.honorsdue.determination.law.Statutes;

/** Every rule, award by award. */
public final class TheLaw {
    private TheLaw() {}

    /**
     * The rules, written against the clauses of the tables.
     *
     * @throws IllegalStateException when a rule names an award or a clause that the tables do not hold
     */
    public static List<Rule> rules(Statutes law) {
        var rules = new ArrayList<Rule>(56);
        rules.addAll(Decorations.rules(law));
        rules.add(BronzeStarMedal.rule(law));
        rules.add(PurpleHeart.rule(law));
        rules.add(CommendationMedal.rule(law));
        rules.add(PrisonerOfWarMedal.rule(law));
        rules.add(GoodConductMedal.rule(law));
        rules.add(AmericanDefenseMedal.rule(law));
        rules.add(WomensArmyCorpsMedal.rule(law));
        rules.addAll(TheaterMedals.rules(law));
        rules.add(VictoryMedal.rule(law));
        rules.add(OccupationMedal.rule(law));
        rules.addAll(NeverOfThisWar.rules(law));
        rules.addAll(UnitAwards.rules(law));
        rules.addAll(ForeignUnitAwards.rules(law));
        rules.addAll(ForeignDecorations.rules(law));
        rules.addAll(PhilippineAwards.rules(law));
        rules.addAll(CombatBadges.rules(law));
        rules.addAll(SkillBadges.rules(law));
        rules.addAll(SleeveInsignia.rules(law));
        return List.copyOf(rules);
    }
}
