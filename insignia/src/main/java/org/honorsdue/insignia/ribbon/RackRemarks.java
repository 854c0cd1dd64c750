package org.honorsdue.insignia.ribbon;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.reference.insignia.WearOrder;

/** Gathers what a reader of a rack should know. */
final class RackRemarks {
    private static final Set<String> EXCHANGED = Set.of("purple-heart", "air-medal", "army-commendation-medal");

    private final RackStyle style;
    private final Set<String> exchanged = new LinkedHashSet<>();
    private final List<String> campaigns = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();

    RackRemarks(RackStyle style) {
        this.style = style;
    }

    void leftOut(Finding finding) {
        if (finding.standing() != Standing.NOT_AUTHORIZED) {
            remarks.add("%s is %s and not drawn."
                    .formatted(finding.name(), finding.standing().id()));
        }
    }

    void wreath() {
        remarks.add("Wartime practice: the meritorious service unit award is a golden wreath on the right sleeve; no"
                + " emblem is drawn.");
    }

    void drawn(Finding finding, WearOrder order) {
        if (EXCHANGED.contains(finding.award())) {
            exchanged.add(finding.award());
        }
        if (finding.award().endsWith("campaign-medal") && !style.serviceOrder().contains(finding.award())) {
            campaigns.add(finding.award());
        }
        if (order.award().equals("meritorious-unit-commendation")) {
            remarks.add(
                    "Present practice: the meritorious unit award is drawn as the later framed emblem; in the war it"
                            + " was a golden wreath on the right sleeve.");
        }
    }

    List<String> all() {
        if (exchanged.contains("purple-heart") && exchanged.size() > 1) {
            remarks.add(
                    style.practice() == RackStyle.Practice.PRESENT
                            ? "Present practice: the Purple Heart stands right after the Bronze Star Medal. In the war it"
                                    + " stood after the Air Medal (from memory)."
                            : "Wartime practice: the Purple Heart stands after the Air Medal (from memory). Today it"
                                    + " stands right after the Bronze Star Medal.");
        }
        if (campaigns.size() > 1) {
            remarks.add("Service medals are worn in the order earned. The dates were not given here, so campaign medals"
                    + " stand in the usual order.");
        }
        return remarks;
    }
}
