package org.honorsdue.insignia.badge;

import java.util.List;
import java.util.Optional;
import org.honorsdue.insignia.drawing.Drawing;
import org.honorsdue.reference.insignia.BadgeDesign;
import org.honorsdue.reference.insignia.InsigniaTables;

/** Draws badges, sleeve bars and cords in their size. */
public final class BadgeDrawing {
    private final InsigniaTables tables;

    public BadgeDrawing(InsigniaTables tables) {
        this.tables = tables;
    }

    /**
     * A badge that comes in one form. Those with grades, ratings or numbers have methods of their own.
     *
     * @return empty for a badge that is not drawn
     */
    public Optional<Drawing> of(String badge) {
        Optional<BadgeDesign> design = tables.badge(badge);
        if (design.isEmpty()) {
            return switch (badge) {
                case "french-fourragere" -> Optional.of(cord(0x1F5A3A, 0xB3202C));
                case "belgian-fourragere" -> Optional.of(cord(0xB01F30, 0x2E7D4A));
                case "netherlands-orange-lanyard" -> Optional.of(cord(0xE57A1F, 0xF0932B));
                default -> Optional.empty();
            };
        }
        double width = design.get().width().decimal();
        double height = design.get().height().decimal();
        return switch (badge) {
            case "combat-infantryman-badge" -> Optional.of(BadgeArt.infantryman(width, height, true));
            case "expert-infantryman-badge" -> Optional.of(BadgeArt.infantryman(width, height, false));
            case "combat-medical-badge" -> Optional.of(BadgeArt.medical(width, height));
            case "parachutist-badge" -> Optional.of(BadgeArt.parachutist(width, height, 0));
            case "glider-badge" -> Optional.of(BadgeArt.glider(width, height));
            case "driver-and-mechanic-badge" -> Optional.of(BadgeArt.driver(width, height));
            case "honorable-service-lapel-button" -> Optional.of(BadgeArt.lapelEagle(width, height));
            case "honorable-discharge-emblem" -> Optional.of(BadgeArt.dischargeEmblem(width, height));
            case "meritorious-service-wreath" -> Optional.of(BadgeArt.meritoriousWreath(width));
            default -> Optional.empty();
        };
    }

    private Drawing cord(int first, int second) {
        BadgeDesign design = design("fourragere");
        return BadgeArt.cord(design.width().decimal(), design.height().decimal(), first, second);
    }

    /** The parachutist badge with a bronze star for each combat jump, 0 to 4. */
    public Drawing parachutist(int stars) {
        BadgeDesign design = design("parachutist-badge");
        return BadgeArt.parachutist(design.width().decimal(), design.height().decimal(), Math.min(4, stars));
    }

    /** The wings of a flyer. */
    public Drawing aviation(AviationRating rating) {
        BadgeDesign design = design("aviation-badge");
        return BadgeArt.aviation(design.width().decimal(), design.height().decimal(), rating);
    }

    /**
     * A marksmanship badge.
     *
     * @param bars what the bars say, the first one uppermost
     */
    public Drawing marksmanship(MarksmanshipClass level, List<String> bars) {
        BadgeDesign badge = design("marksmanship-badge");
        BadgeDesign bar = design("qualification-bar");
        return BadgeArt.marksmanship(
                badge.width().decimal(), bar.width().decimal(), bar.height().decimal(), level, bars);
    }

    /** Overseas service bars on their cloth, at least one. */
    public Drawing overseasBars(int bars) {
        BadgeDesign design = design("overseas-service-bars");
        return BadgeArt.overseasBars(design.width().decimal(), design.height().decimal(), Math.max(1, bars));
    }

    /** Service stripes on their cloth, at least one. */
    public Drawing serviceStripes(int stripes) {
        BadgeDesign design = design("service-stripes");
        return BadgeArt.serviceStripes(design.width().decimal(), design.height().decimal(), Math.max(1, stripes));
    }

    /** One chevron of a pair. */
    public Drawing chevrons(EnlistedGrade grade) {
        return ChevronArt.of(grade, design("chevrons").width().decimal());
    }

    private BadgeDesign design(String id) {
        return tables.badge(id)
                .orElseThrow(() -> new IllegalStateException("badges.csv has no row \"%s\".".formatted(id)));
    }
}
