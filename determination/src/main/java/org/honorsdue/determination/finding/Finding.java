package org.honorsdue.determination.finding;

import java.util.List;

/**
 * What was decided about one award.
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
        grounds = List.copyOf(grounds);
        needs = List.copyOf(needs);
        cautions = List.copyOf(cautions);
    }
}
