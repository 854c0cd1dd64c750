package org.honorsdue.insignia.medal;

import java.util.List;
import java.util.Optional;
import org.honorsdue.insignia.drawing.Mark;
import org.honorsdue.insignia.drawing.Placement;

/** Which sketch belongs to which award. */
final class Pendants {
    private Pendants() {}

    /** The sketch; empty where the award has no medal or none is drawn. */
    static Optional<Pendant> of(String award) {
        return switch (award) {
            case "medal-of-honor" -> hung(larger(ShapedPendants.medalOfHonor(), 1.1), -78, 54.5);
            case "distinguished-service-cross" -> hung(ShapedPendants.distinguishedServiceCross(), -55.2, 55.2);
            case "distinguished-service-medal" -> hung(ShapedPendants.distinguishedServiceMedal(), -50, 50);
            case "silver-star" -> hung(ShapedPendants.silverStar(), -50, 40.5);
            case "legion-of-merit" -> hung(larger(ShapedPendants.legionOfMerit(), 0.94), -47, 47);
            case "distinguished-flying-cross" -> hung(ShapedPendants.distinguishedFlyingCross(), -50, 50);
            case "soldiers-medal" -> hung(ShapedPendants.soldiersMedal(), -50, 50);
            case "bronze-star-medal" -> hung(ShapedPendants.bronzeStar(), -50, 40.5);
            case "purple-heart" -> hung(ShapedPendants.purpleHeart(), -64, 58.7);
            case "air-medal" -> hung(ShapedPendants.airMedal(), -50, 50);
            case "army-commendation-medal" -> hung(ShapedPendants.armyCommendation(), -57.7, 57.7);
            case "prisoner-of-war-medal" -> hung(RoundPendants.prisonerOfWar(), -50, 50);
            case "army-good-conduct-medal" -> hung(RoundPendants.goodConduct(), -50, 50);
            case "american-defense-service-medal" -> hung(RoundPendants.americanDefense(), -50, 50);
            case "wac-service-medal" -> hung(RoundPendants.womensArmyCorps(), -50, 50);
            case "american-campaign-medal" -> hung(RoundPendants.americanCampaign(), -50, 50);
            case "asiatic-pacific-campaign-medal" -> hung(RoundPendants.asiaticPacific(), -50, 50);
            case "eame-campaign-medal" -> hung(RoundPendants.europeanAfricanMiddleEastern(), -50, 50);
            case "ww2-victory-medal" -> hung(RoundPendants.worldWarTwoVictory(), -50, 50);
            case "army-of-occupation-medal" -> hung(RoundPendants.occupation(), -50, 50);
            case "medal-for-humane-action" -> hung(RoundPendants.humaneAction(), -50, 50);
            case "ww1-victory-medal" -> hung(RoundPendants.firstWorldWarVictory(), -50, 50);
            case "army-of-occupation-of-germany-medal" -> hung(RoundPendants.occupationOfGermany(), -50, 50);
            case "french-croix-de-guerre" -> hung(ShapedPendants.frenchWarCross(), -50, 50);
            case "belgian-croix-de-guerre" -> hung(ShapedPendants.belgianWarCross(), -70, 48);
            case "philippine-defense-ribbon" -> hung(RoundPendants.philippineDefense(), -50, 50);
            case "philippine-liberation-ribbon" -> hung(ShapedPendants.philippineLiberation(), -46, 50);
            case "philippine-independence-ribbon" -> hung(RoundPendants.philippineIndependence(), -50, 50);
            default -> Optional.empty();
        };
    }

    private static Optional<Pendant> hung(List<Mark> marks, double top, double foot) {
        return Optional.of(new Pendant(marks, top, foot));
    }

    /** A sketch brought to the width it is described with. */
    private static List<Mark> larger(List<Mark> marks, double factor) {
        return List.of(Mark.group(Placement.scaled(factor), marks));
    }
}
