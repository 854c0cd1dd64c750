package org.honorsdue.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import org.honorsdue.service.fact.Basis.Certainty;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.paper.Entry;

/**
 * A letter wrong, left out, doubled or swapped in a long word, or a figure typed for a letter: the reading stays the same,
 * or says that something was corrected, is doubtful or was not read. Lines: of our own, in period style.
 */
class SlipsOfTheMachineTest {
    private record Line(Entry entry, String text) {}

    /** @param sound the line before the slip */
    private record Slip(Line sound, String typed) {}

    private static final List<Line> LINES = List.of(
            new Line(
                    Entry.DECORATIONS_AND_CITATIONS,
                    "EAME THEATER RIBBON WITH THREE BRONZE SERVICE STARS GOOD CONDUCT MEDAL"),
            new Line(
                    Entry.DECORATIONS_AND_CITATIONS,
                    "Asiatic-Pacific Theater Ribbon w/2 Bronze Stars; Philippine Liberation Ribbon"),
            new Line(
                    Entry.DECORATIONS_AND_CITATIONS,
                    "PURPLE HEART WITH OAK LEAF CLUSTER GO 12 HQ 999 GEN HOSP 44 AMERICAN DEFENSE RIBBON"),
            new Line(
                    Entry.DECORATIONS_AND_CITATIONS,
                    "World War II Victory Medal, American Theater Ribbon, Distinguished Unit Badge"),
            new Line(
                    Entry.DECORATIONS_AND_CITATIONS,
                    "SILVER STAR GO 40 HQ 999 INF DIV 44 BRONZE STAR MEDAL AIR MEDAL W/3 OLC"),
            new Line(
                    Entry.DECORATIONS_AND_CITATIONS,
                    "Meritorious Service Unit Plaque, Army of Occupation Medal w/Germany Clasp"),
            new Line(
                    Entry.BATTLES_AND_CAMPAIGNS,
                    "NORMANDY NORTHERN FRANCE RHINELAND ARDENNES CENTRAL EUROPE GO 33 WD 45"),
            new Line(
                    Entry.BATTLES_AND_CAMPAIGNS,
                    "Naples-Foggia; Rome-Arno; Southern France; North Apennines; Po Valley"),
            new Line(
                    Entry.BATTLES_AND_CAMPAIGNS,
                    "GUADALCANAL NORTHERN SOLOMONS BISMARCK ARCHIPELAGO LUZON SOUTHERN PHILIPPINES"),
            new Line(Entry.QUALIFICATIONS, "COMBAT INFANTRYMAN BADGE MARKSMAN RIFLE DEC 43 SHARPSHOOTER CARBINE"),
            new Line(Entry.QUALIFICATIONS, "Expert Rifle M1 4 May 43, Sharpshooter Submachine Gun, Parachutist Badge"));

    @Provide
    Arbitrary<Slip> slips() {
        return Combinators.combine(
                        Arbitraries.of(LINES),
                        Arbitraries.integers().between(0, 10_000),
                        Arbitraries.integers().between(0, 4),
                        Arbitraries.chars().range('A', 'Z'))
                .as(SlipsOfTheMachineTest::slip);
    }

    private static Slip slip(Line line, int where, int kind, char letter) {
        var inLongWords = new ArrayList<Integer>();
        String text = line.text();
        for (int i = 0; i < text.length(); i++) {
            if (Character.isLetter(text.charAt(i)) && wordLength(text, i) >= 5) {
                inLongWords.add(i);
            }
        }
        int at = inLongWords.get(where % inLongWords.size());
        char typed = text.charAt(at);
        String wrong = switch (kind) {
            case 0 -> "" + (Character.isLowerCase(typed) ? Character.toLowerCase(letter) : letter);
            case 1 -> "";
            case 2 -> "" + typed + typed;
            case 3 ->
                at + 1 < text.length() && Character.isLetter(text.charAt(at + 1))
                        ? text.charAt(at + 1) + "" + typed
                        : "" + typed;
            default ->
                switch (Character.toUpperCase(typed)) {
                    case 'O' -> "0";
                    case 'I', 'L' -> "1";
                    case 'S' -> "5";
                    default -> "" + typed;
                };
        };
        int skip = kind == 3 && wrong.length() == 2 ? 2 : 1;
        return new Slip(line, text.substring(0, at) + wrong + text.substring(at + skip));
    }

    private static int wordLength(String text, int at) {
        int from = at;
        int to = at;
        while (from > 0 && Character.isLetter(text.charAt(from - 1))) {
            from--;
        }
        while (to < text.length() && Character.isLetter(text.charAt(to))) {
            to++;
        }
        return to - from;
    }

    @Property(tries = 3000)
    void are_never_read_wrong_in_silence(@ForAll("slips") Slip slip) {
        EntryReading reading = ReadAs.entry(slip.sound().entry(), slip.typed());
        boolean marked = !reading.unread().isEmpty()
                || reading.tokens().stream().anyMatch(token -> token.certainty() != Certainty.PLAIN);
        if (!marked) {
            assertThat(kinds(reading))
                    .as(slip.typed())
                    .isEqualTo(kinds(
                            ReadAs.entry(slip.sound().entry(), slip.sound().text())));
        }
    }

    @Property(tries = 2000)
    void are_mostly_put_right(@ForAll("slips") Slip slip) {
        EntryReading reading = ReadAs.entry(slip.sound().entry(), slip.typed());
        boolean right = kinds(reading)
                .equals(kinds(ReadAs.entry(slip.sound().entry(), slip.sound().text())));
        Statistics.label("reading")
                .collect(right ? "right all the same" : "marked")
                .coverage(coverage -> coverage.check("right all the same").percentage(share -> share >= 85));
    }

    /** The facts without the characters and the certainty. */
    private static Map<String, Integer> kinds(EntryReading reading) {
        var kinds = new TreeMap<String, Integer>();
        for (ServiceFact fact : reading.facts()) {
            String said = fact.toString();
            int basis = said.indexOf("basis=");
            kinds.merge(said.substring(0, basis).replaceAll("asTyped=[^,\\]]*", "asTyped"), 1, Integer::sum);
        }
        return kinds;
    }
}
