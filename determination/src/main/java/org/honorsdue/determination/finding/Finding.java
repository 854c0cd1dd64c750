package org.honorsdue.determination.finding;

import java.util.List;

/**
 * What was decided about one award. Grounds, needs and cautions may be {@link Deferred}: written when first looked at.
 *
 * @param count number of awards of it; 0 when not authorized
 * @param whyNotOnPaper why an award that is due is not on the paper (created later, clerk's omission, order after the
 *     discharge, not yet earned that day); empty when it is on the paper or not due
 */
public record Finding(
        String award,
        String name,
        Standing standing,
        OnPaper onPaper,
        int count,
        List<WornDevice> devices,
        List<Ground> grounds,
        List<Need> needs,
        List<String> cautions,
        String whyNotOnPaper) {
    public Finding {
        devices = List.copyOf(devices);
        grounds = Deferred.keep(grounds);
        needs = Deferred.keep(needs);
        cautions = Deferred.keep(cautions);
    }
}
