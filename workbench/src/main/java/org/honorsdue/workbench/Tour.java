package org.honorsdue.workbench;

import java.util.List;
import java.util.Optional;
import org.honorsdue.service.Casefile;

/** The guided tour: seven invented soldiers, and what to look at in each of their folders. */
public final class Tour {
    private Tour() {}

    /**
     * One stop of the tour.
     *
     * @param file of the casefile, as it comes with the program
     * @param soldier how the casebook lists him or her
     * @param says what this case shows
     * @param leaf where to look
     * @param look what to look at there
     */
    public record Stop(String file, String soldier, String says, String leaf, String look) {}

    /** The stops, in the order of the story. */
    public static final List<Stop> STOPS = List.of(
            new Stop(
                    "fairweather",
                    "Fairweather, Orrin T",
                    "An artilleryman's paper, as thousands are. Two awards are typed; more are due. His points come to"
                            + " five more than the paper explains, and an order among his letters shows why.",
                    "desk",
                    "Each entry stands as the clerk typed it, and under it how it is read. Change a character in box 33"
                            + " and watch the margin: it answers while you type."),
            new Stop(
                    "brandvold",
                    "Brandvold, Hollis E",
                    "An infantryman wounded twice. The combat badge on his paper brings a medal that later law tied to it,"
                            + " and the second wound a cluster that no clerk typed.",
                    "findings",
                    "Open a finding. Every line names the clause and its edition, and lights up the characters on the"
                            + " paper that it rests on."),
            new Stop(
                    "castellan",
                    "Castellan, Victor A",
                    "An airman of the Eighth. Clusters to count, a unit citation earned by being there, and fewer stars"
                            + " on the paper than his months in England allow.",
                    "line",
                    "His own dates lie above, the campaigns below. What overlaps can earn a star; the gaps can be seen."),
            new Stop(
                    "okonsky",
                    "Okonsky, Walter P",
                    "An aid man in the Pacific: a landing, two conditions for the Philippine ribbon, a winter in Japan.",
                    "rack",
                    "The ribbons are drawn from the published widths, devices in their order, to be printed at true size."),
            new Stop(
                    "marchbanks",
                    "Marchbanks, Lenora J",
                    "A woman of the Auxiliary Corps and then of the Army. The corps' own medal was left off, and nobody"
                            + " asked whether she was in Germany after the surrender.",
                    "steps",
                    "What is open, and the fewest documents that would settle all of it, the easiest first."),
            new Stop(
                    "pettigrew",
                    "Pettigrew, Amos L",
                    "He never left the country and was out by November 1943. His bare paper was right that day; the law"
                            + " came later. And the one medal the family asks for is not his, with the reason.",
                    "findings",
                    "Ask for the law as it stood on his last day, then for today's: the same paper, two answers."),
            new Stop(
                    "lindgate",
                    "Lindgate, Elias R",
                    "No discharge paper at all: taken in the Ardennes, dead of wounds in captivity. Everything comes from"
                            + " other evidence.",
                    "letters",
                    "Requests that name the records and why each is asked for, a sheet for the family, the proof to"
                            + " enclose. Made from the case, printed or as PDF."));

    /** What the tour says on a leaf of a folder; empty when the case is none of the tour, or the leaf no stop. */
    static Optional<String> at(Casefile casefile, String leaf) {
        return STOPS.stream()
                .filter(stop -> casefile.name().equals(Optional.of(stop.soldier)) && stop.leaf.equals(leaf))
                .map(Stop::look)
                .findFirst();
    }
}
