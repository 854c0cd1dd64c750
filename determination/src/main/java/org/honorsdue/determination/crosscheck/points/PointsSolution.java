package org.honorsdue.determination.crosscheck.points;

/**
 * One life that gives the score.
 *
 * @param serviceRounding how part-months of service were counted
 * @param overseasRounding how part-months overseas were counted
 * @param items items of five points: decorations and campaign stars
 * @param unlisted items beyond those the paper lists; negative when the paper lists more
 * @param childrenAllowed whether the entry on dependents leaves room for so many children
 */
public record PointsSolution(
        RatingDate asOf,
        MonthRounding serviceRounding,
        MonthRounding overseasRounding,
        boolean lostTimeDeducted,
        int serviceMonths,
        int overseasMonths,
        int children,
        int items,
        int unlisted,
        boolean childrenAllowed) {
    /** Nothing listed is missing from the score and nothing in the score is missing from the list. */
    public boolean fits() {
        return unlisted == 0 && childrenAllowed;
    }

    public boolean sameRounding() {
        return serviceRounding == overseasRounding;
    }

    /** {@code 31 months + 15 overseas + 5 x 3 + 12 x 1}. */
    public String sum() {
        var text = new StringBuilder();
        text.append(serviceMonths).append(" months of service + ");
        text.append(overseasMonths).append(" overseas + 5 x ").append(items);
        if (children > 0) {
            text.append(" + 12 x ").append(children).append(children == 1 ? " child" : " children");
        }
        return text.toString();
    }
}
