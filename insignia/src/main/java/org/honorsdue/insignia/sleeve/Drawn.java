package org.honorsdue.insignia.sleeve;

import java.util.Optional;

/** Which drawing belongs to which unit. */
final class Drawn {
    private Drawn() {}

    static Optional<Cloth> of(String unit) {
        if (unit.startsWith("armored-division-")) {
            return Optional.of(Commands.armored(unit.substring("armored-division-".length())));
        }
        return unit.startsWith("infantry-division-") ? infantry(unit) : others(unit);
    }

    private static Optional<Cloth> infantry(String unit) {
        return switch (unit.substring("infantry-division-".length())) {
            case "1" -> Optional.of(OldDivisions.first());
            case "3" -> Optional.of(OldDivisions.third());
            case "4" -> Optional.of(OldDivisions.fourth());
            case "5" -> Optional.of(OldDivisions.fifth());
            case "6" -> Optional.of(OldDivisions.sixth());
            case "7" -> Optional.of(OldDivisions.seventh());
            case "8" -> Optional.of(OldDivisions.eighth());
            case "9" -> Optional.of(OldDivisions.ninth());
            case "24" -> Optional.of(OldDivisions.twentyFourth());
            case "25" -> Optional.of(OldDivisions.twentyFifth());
            case "26" -> Optional.of(OldDivisions.twentySixth());
            case "27" -> Optional.of(OldDivisions.twentySeventh());
            case "28" -> Optional.of(OldDivisions.twentyEighth());
            case "29" -> Optional.of(OldDivisions.twentyNinth());
            case "30" -> Optional.of(OldDivisions.thirtieth());
            case "31" -> Optional.of(OldDivisions.thirtyFirst());
            case "32" -> Optional.of(OldDivisions.thirtySecond());
            case "33" -> Optional.of(OldDivisions.thirtyThird());
            case "34" -> Optional.of(OldDivisions.thirtyFourth());
            case "35" -> Optional.of(OldDivisions.thirtyFifth());
            case "36" -> Optional.of(OldDivisions.thirtySixth());
            case "37" -> Optional.of(OldDivisions.thirtySeventh());
            case "38" -> Optional.of(OldDivisions.thirtyEighth());
            case "40" -> Optional.of(OldDivisions.fortieth());
            case "41" -> Optional.of(OldDivisions.fortyFirst());
            case "42" -> Optional.of(OldDivisions.fortySecond());
            case "43" -> Optional.of(OldDivisions.fortyThird());
            case "44" -> Optional.of(OldDivisions.fortyFourth());
            case "45" -> Optional.of(OldDivisions.fortyFifth());
            case "65" -> Optional.of(WarDivisions.sixtyFifth());
            case "71" -> Optional.of(WarDivisions.seventyFirst());
            case "76" -> Optional.of(WarDivisions.seventySixth());
            case "78" -> Optional.of(WarDivisions.seventyEighth());
            case "79" -> Optional.of(WarDivisions.seventyNinth());
            case "80" -> Optional.of(WarDivisions.eightieth());
            case "83" -> Optional.of(WarDivisions.eightyThird());
            case "85" -> Optional.of(WarDivisions.eightyFifth());
            case "87" -> Optional.of(WarDivisions.eightySeventh());
            case "88" -> Optional.of(WarDivisions.eightyEighth());
            case "89" -> Optional.of(WarDivisions.eightyNinth());
            case "90" -> Optional.of(WarDivisions.ninetieth());
            case "91" -> Optional.of(WarDivisions.ninetyFirst());
            case "93" -> Optional.of(WarDivisions.ninetyThird());
            case "94" -> Optional.of(WarDivisions.ninetyFourth());
            case "95" -> Optional.of(WarDivisions.ninetyFifth());
            case "96" -> Optional.of(WarDivisions.ninetySixth());
            case "97" -> Optional.of(WarDivisions.ninetySeventh());
            case "99" -> Optional.of(WarDivisions.ninetyNinth());
            case "100" -> Optional.of(WarDivisions.hundredth());
            case "102" -> Optional.of(WarDivisions.hundredSecond());
            case "103" -> Optional.of(WarDivisions.hundredThird());
            default -> Optional.empty();
        };
    }

    private static Optional<Cloth> others(String unit) {
        return switch (unit) {
            case "mountain-division-10" -> Optional.of(OldDivisions.tenthMountain());
            case "americal-division" -> Optional.of(OldDivisions.americal());
            case "airborne-division-11" -> Optional.of(WarDivisions.eleventhAirborne());
            case "airborne-division-17" -> Optional.of(WarDivisions.seventeenthAirborne());
            case "airborne-division-82" -> Optional.of(WarDivisions.eightySecond());
            case "airborne-division-101" -> Optional.of(WarDivisions.hundredFirst());
            case "cavalry-division-1" -> Optional.of(WarDivisions.firstCavalry());
            case "cavalry-division-2" -> Optional.of(WarDivisions.secondCavalry());
            case "armored-corps-1" -> Optional.of(Commands.firstArmoredCorps());
            case "corps-1" -> Optional.of(Commands.firstCorps());
            case "corps-3" -> Optional.of(Commands.thirdCorps());
            case "corps-7" -> Optional.of(Commands.seventhCorps());
            case "corps-11" -> Optional.of(Commands.eleventhCorps());
            case "corps-21" -> Optional.of(Commands.twentyFirstCorps());
            case "corps-24" -> Optional.of(Commands.twentyFourthCorps());
            case "army-1" -> Optional.of(Commands.firstArmy());
            case "army-2" -> Optional.of(Commands.secondArmy());
            case "army-3" -> Optional.of(Commands.thirdArmy());
            case "army-4" -> Optional.of(Commands.fourthArmy());
            case "army-5" -> Optional.of(Commands.fifthArmy());
            case "army-6" -> Optional.of(Commands.sixthArmy());
            case "army-7" -> Optional.of(Commands.seventhArmy());
            case "army-8" -> Optional.of(Commands.eighthArmy());
            case "army-group-12" -> Optional.of(Commands.twelfthArmyGroup());
            case "army-ground-forces" -> Optional.of(Commands.armyGroundForces());
            case "army-service-forces" -> Optional.of(Commands.armyServiceForces());
            case "communications-zone-european-theater" -> Optional.of(Commands.communicationsZone());
            case "china-burma-india-theater" -> Optional.of(Commands.chinaBurmaIndia());
            case "allied-force-headquarters" -> Optional.of(Commands.alliedForceHeadquarters());
            case "airborne-command" -> Optional.of(Commands.airborneCommand());
            case "army-air-forces" -> Optional.of(Commands.armyAirForces());
            case "air-force-5" -> Optional.of(Commands.fifthAirForce());
            default -> Optional.empty();
        };
    }
}
