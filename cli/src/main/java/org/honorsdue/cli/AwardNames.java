package org.honorsdue.cli;

import java.util.Comparator;
import java.util.Locale;
import java.util.stream.Stream;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.law.Award;

/** Finds an award by its id or by any of its names. */
final class AwardNames {
    private AwardNames() {}

    /** @throws InputFault when no award bears that name; it names the nearest ones */
    static Award find(Reference reference, String named) {
        String wanted = fold(named);
        return reference.awards().stream()
                .filter(award -> names(award).anyMatch(name -> fold(name).equals(wanted)))
                .findFirst()
                .orElseThrow(() ->
                        new InputFault("honors: no award is called \"%s\". Near it: %s. \"honors law\" lists them all."
                                .formatted(named, nearest(reference, wanted))));
    }

    private static Stream<String> names(Award award) {
        return Stream.concat(Stream.of(award.id(), award.name()), award.otherNames().stream());
    }

    private static String nearest(Reference reference, String wanted) {
        return String.join(
                ", ",
                reference.awards().stream()
                        .sorted(Comparator.<Award>comparingInt(award -> names(award)
                                        .mapToInt(name -> distance(fold(name), wanted))
                                        .min()
                                        .orElse(Integer.MAX_VALUE))
                                .thenComparing(Award::id))
                        .limit(3)
                        .map(Award::id)
                        .toList());
    }

    private static String fold(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "");
    }

    /** Letters to insert, drop or change to turn one into the other. */
    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int above = row[j];
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? diagonal : diagonal + 1;
                row[j] = Math.min(change, Math.min(above, row[j - 1]) + 1);
                diagonal = above;
            }
        }
        return row[b.length()];
    }
}
