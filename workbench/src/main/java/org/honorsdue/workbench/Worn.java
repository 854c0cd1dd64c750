package org.honorsdue.workbench;

import java.util.ArrayList;
import java.util.Locale;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.service.fact.Device;

/** What a finding comes to, in a few words beside the name of the award. */
public final class Worn {
    private Worn() {}

    /** How many, and what is worn: {@code 3 bronze service stars: Rhineland, Ardennes-Alsace, Central Europe}. */
    public static String words(Finding finding) {
        var words = new ArrayList<String>();
        if (finding.count() > 1) {
            words.add(finding.count() + " awards");
        }
        for (var device : finding.devices()) {
            String name = name(device.device());
            String count = device.count() == 1 ? name : device.count() + " " + plural(name);
            String stands = device.standsFor().isEmpty() ? "" : ": " + String.join(", ", device.standsFor());
            words.add(count + stands);
        }
        return String.join(" · ", words);
    }

    private static String name(Device device) {
        return switch (device) {
            case LETTER_V -> "letter V";
            case GERMANY_CLASP -> "Germany clasp";
            case JAPAN_CLASP -> "Japan clasp";
            default -> device.id().replace('-', ' ');
        };
    }

    private static String plural(String name) {
        return name.endsWith("s") ? name : name + "s";
    }

    /** The standing, and what the paper lacks of it. */
    public static String standing(Finding finding) {
        String stands = finding.standing().id().replace('-', ' ').toLowerCase(Locale.ROOT);
        return switch (finding.onPaper()) {
            case YES -> stands + ", on the paper";
            case INCOMPLETE -> stands + ", on the paper in part";
            case NO -> stands;
        };
    }
}
