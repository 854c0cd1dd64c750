package org.honorsdue.reference.unit;

import java.util.List;
import org.honorsdue.reference.Provenance;

/**
 * The campaigns credited to a unit.
 *
 * @param campaigns ids of the campaigns, in the order of the war
 */
public record CampaignCredit(String unit, List<String> campaigns, String note, Provenance provenance) {
    public CampaignCredit {
        campaigns = List.copyOf(campaigns);
    }
}
