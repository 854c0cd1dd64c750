package org.honorsdue.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.StringLength;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.paper.Abbreviation;
import org.honorsdue.service.Casefile;
import org.honorsdue.service.fact.Conflict;
import org.honorsdue.service.fact.Origin;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.Unread;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Form;
import org.honorsdue.service.paper.Paper;
import org.honorsdue.service.paper.Typed;

/** What holds for any text whatever: nothing crashes, no character is lost, no order of papers matters. */
class ReadingPropertiesTest {
    private static final List<String> PIECES = List.of(
            "w/3",
            "w/1",
            "w/",
            "&",
            "and",
            "GO 33 WD 45",
            "GO 12 Hq 999 Inf 44",
            "SO 5",
            "15 Dec 44",
            "Dec 43",
            "6/3/45",
            "1-6-17",
            "(2)",
            "2d",
            "1st",
            "three",
            "None",
            "N/A",
            "---",
            ";",
            ",",
            "\n",
            "SS",
            "MM",
            "Exp",
            "Rifle",
            "M1",
            "Carbine",
            "BAR",
            "V",
            "Silver",
            "Bronze",
            "Star",
            "Stars",
            "OLC",
            "clasp",
            "2 loops",
            "No",
            "not",
            "issued",
            "Lapel Button",
            "ASR Score",
            "(2 Sep 45)",
            "71",
            "days lost",
            "under AW 107",
            "POW",
            "Germany",
            "to",
            "ERC from",
            "ETO",
            "USA",
            "22 Aug 44",
            "9 Nov 45",
            "Aust",
            "yrs",
            "mos",
            "AR 615-365",
            "$300",
            "745",
            "xqz",
            "####",
            "½");

    private static final List<String> TYPED = Reference.published().abbreviations().stream()
            .map(Abbreviation::token)
            .toList();

    @Provide
    Arbitrary<String> splices() {
        return Arbitraries.frequencyOf(
                        net.jqwik.api.Tuple.of(2, Arbitraries.of(PIECES)),
                        net.jqwik.api.Tuple.of(3, Arbitraries.of(TYPED)))
                .list()
                .ofMinSize(1)
                .ofMaxSize(12)
                .flatMap(
                        parts -> Arbitraries.of(" ", "  ", "; ", ", ", "").map(between -> String.join(between, parts)));
    }

    @Provide
    Arbitrary<Paper> papers() {
        Arbitrary<Map<Entry, Typed>> entries = Combinators.combine(Arbitraries.of(Entry.values()), splices())
                .as(Map::entry)
                .list()
                .ofMaxSize(8)
                .map(list -> {
                    var typed = new EnumMap<Entry, Typed>(Entry.class);
                    list.forEach(each -> typed.put(
                            each.getKey(),
                            each.getValue().isBlank() ? new Typed.Blank() : new Typed.Text(each.getValue())));
                    return typed;
                });
        return Combinators.combine(Arbitraries.of(Form.values()), entries)
                .as((form, typed) -> new Paper(form, form.title(), typed, List.of()));
    }

    @Property(tries = 2000)
    void any_text_is_read_without_losing_a_character(@ForAll Entry entry, @ForAll @StringLength(max = 80) String text) {
        holdsTogether(ReadAs.entry(entry, text));
    }

    @Property(tries = 4000)
    void any_splice_of_what_clerks_typed_is_read_without_losing_a_character(
            @ForAll Entry entry, @ForAll("splices") String text) {
        holdsTogether(ReadAs.entry(entry, text));
    }

    @Property(tries = 1000)
    void so_is_a_line_of_which_nobody_says_where_it_stands(@ForAll("splices") String text) {
        holdsTogether(ReadAs.line(text));
    }

    @Property(tries = 500)
    void the_same_text_is_read_the_same_way_every_time(@ForAll Entry entry, @ForAll("splices") String text) {
        assertThat(ReadAs.entry(entry, text)).isEqualTo(ReadAs.entry(entry, text));
    }

    /** Tokens and unread parts lie side by side, say the characters they point to, and leave none out. */
    private static void holdsTogether(EntryReading reading) {
        String text = reading.text();
        boolean[] covered = new boolean[text.length()];
        for (ReadToken token : reading.tokens()) {
            assertThat(token.text()).isEqualTo(text.substring(token.start(), token.end()));
            assertThat(token.meaning()).as("meaning of \"%s\"", token.text()).isNotBlank();
            cover(covered, token.start(), token.end());
        }
        for (Unread unread : reading.unread()) {
            assertThat(unread.text()).isEqualTo(text.substring(unread.start(), unread.end()));
            cover(covered, unread.start(), unread.end());
        }
        for (int i = 0; i < text.length(); i++) {
            if (Character.isLetterOrDigit(text.charAt(i))) {
                assertThat(covered[i])
                        .as("character %d of \"%s\" is read or listed as unread", i, text)
                        .isTrue();
            }
        }
        for (ServiceFact fact : reading.facts()) {
            assertThat(fact.basis().origins()).isNotEmpty();
            for (Origin origin : fact.basis().origins()) {
                var place = (Origin.OnPaper) origin;
                assertThat(place.text()).isEqualTo(text.substring(place.start(), place.end()));
            }
        }
    }

    private static void cover(boolean[] covered, int start, int end) {
        for (int i = start; i < end; i++) {
            assertThat(covered[i]).as("character %d is read once", i).isFalse();
            covered[i] = true;
        }
    }

    @Property(tries = 300)
    void the_order_of_the_papers_changes_nothing_that_is_known(
            @ForAll("papers") Paper one, @ForAll("papers") Paper two, @ForAll("papers") Paper three) {
        var inOrder = List.of(one, two, three);
        var reversed = new ArrayList<>(inOrder);
        Collections.reverse(reversed);
        assertThat(known(reversed, new int[] {3, 2, 1})).isEqualTo(known(inOrder, new int[] {1, 2, 3}));
    }

    /** Everything known, each paper under a name of its own instead of its number. */
    private static Set<String> known(List<Paper> papers, int[] names) {
        ServiceFacts facts = ReadAs.reader().read(new Casefile(Optional.empty(), Optional.empty(), papers, List.of()));
        var known = new HashSet<String>();
        facts.all().forEach(fact -> known.add(named(fact.toString(), names)));
        facts.unread().forEach(unread -> known.add(named(unread.toString(), names)));
        for (Conflict conflict : facts.conflicts()) {
            known.add(conflict.says() + " "
                    + conflict.origins().stream()
                            .map(origin -> named(origin.toString(), names))
                            .sorted()
                            .collect(Collectors.joining()));
        }
        return known;
    }

    private static String named(String text, int[] names) {
        var out = new StringBuilder();
        for (String part : text.split("paper=", -1)) {
            if (out.isEmpty() && text.indexOf("paper=") != 0) {
                out.append(part);
            } else {
                int end = 0;
                while (end < part.length() && Character.isDigit(part.charAt(end))) {
                    end++;
                }
                out.append("paper ")
                        .append(end == 0 ? "" : names[Integer.parseInt(part.substring(0, end)) - 1])
                        .append(part.substring(end));
            }
        }
        return out.toString();
    }
}
