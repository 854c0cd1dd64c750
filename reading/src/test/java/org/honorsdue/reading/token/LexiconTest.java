package org.honorsdue.reading.token;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.paper.Abbreviation;
import org.honorsdue.reference.table.TableFaults;
import org.honorsdue.reference.table.TableSource;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayName("The lexicon of what clerks typed")
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LexiconTest {
    private static final Reference REFERENCE = Reference.published();
    private static final Lexicon LEXICON = Lexicon.of(REFERENCE);

    private static final String WORDS = "word,spellings,source,grade\n";
    private static final String PHRASES = "kind,id,pattern,words,standing,note,source,grade\n";

    private static Lexicon of(String words, String phrases) {
        Map<String, String> tables = Map.of("words.csv", WORDS + words, "phrases.csv", PHRASES + phrases);
        TableSource source = path -> Optional.ofNullable(tables.get(path))
                .map(table -> new ByteArrayInputStream(table.getBytes(StandardCharsets.UTF_8)));
        return Lexicon.of(REFERENCE, source);
    }

    @Test
    void knows_no_award_campaign_or_place_that_the_reference_lacks() {
        var strange = new TreeSet<String>();
        for (String typed : everythingTyped()) {
            for (Sense sense : LEXICON.meanings(typed)) {
                boolean known = switch (sense.kind()) {
                    case AWARD -> REFERENCE.award(sense.id()).isPresent();
                    case CAMPAIGN -> REFERENCE.campaign(sense.id()).isPresent();
                    case PLACE, THEATER ->
                        sense.id().isEmpty() || REFERENCE.place(sense.id()).isPresent();
                    default -> true;
                };
                if (!known) {
                    strange.add(sense.kind() + " " + sense.id());
                }
            }
        }
        assertThat(strange).isEmpty();
    }

    private static Set<String> everythingTyped() {
        var typed = new HashSet<String>();
        REFERENCE.abbreviations().forEach(row -> typed.add(row.token()));
        REFERENCE.awards().forEach(award -> {
            typed.add(award.name());
            typed.addAll(award.otherNames());
        });
        REFERENCE.campaigns().forEach(campaign -> {
            typed.add(campaign.name());
            typed.addAll(campaign.variants());
        });
        REFERENCE.places().forEach(place -> {
            typed.add(place.name());
            typed.addAll(place.aliases());
        });
        return typed;
    }

    @Test
    void knows_every_campaign_by_its_official_name() {
        assertThat(REFERENCE.campaigns())
                .allSatisfy(campaign -> assertThat(LEXICON.meanings(campaign.name()))
                        .as(campaign.name())
                        .anySatisfy(sense -> assertThat(sense.id()).isEqualTo(campaign.id())));
    }

    @Test
    void leaves_no_award_badge_device_or_campaign_of_the_table_of_abbreviations_unread() {
        var decorations = Preference.of(Preference.group(SenseKind.AWARD));
        List<String> unread = REFERENCE.abbreviations().stream()
                .filter(row -> Set.of("award", "badge", "device", "campaign").contains(row.kind()))
                .map(Abbreviation::token)
                .filter(token -> Pieces.of(LEXICON, token, decorations).stream()
                        .anyMatch(piece -> piece.type() == Piece.Type.UNREAD))
                .toList();
        assertThat(unread).isEmpty();
    }

    @Test
    void reads_letters_typed_apart_with_stops_or_blanks_as_one_word() {
        for (String typed : List.of("EAME", "E.A.M.E.", "E A M E", "E. A. M. E.")) {
            assertThat(LEXICON.meanings(typed))
                    .as(typed)
                    .anySatisfy(sense -> assertThat(sense.id()).isEqualTo("eame-campaign-medal"));
        }
    }

    @Test
    void does_not_mind_capitals_and_hyphens() {
        for (String typed : List.of("Asiatic-Pacific Ribbon", "asiatic pacific ribbon", "ASIATIC PACIFIC RIBBON")) {
            assertThat(LEXICON.meanings(typed))
                    .extracting(Sense::id)
                    .as(typed)
                    .contains("asiatic-pacific-campaign-medal");
        }
    }

    @Test
    void refuses_faulty_tables_with_all_their_faults_together() {
        assertThatThrownBy(() -> of("medal,MDL;MDL,memory,memory\n", """
                        award,x,[medal],Medal,name,,memory,memory
                        prize,x,medal,Medal,name,,memory,memory
                        award,x,medal (a|b,Medal,name,,memory,memory
                        award,x,medal,Medal,nickname,,memory,memory
                        award,,medal,Medal,name,,memory,memory
                        """))
                .isInstanceOfSatisfying(
                        TableFaults.class,
                        refused -> assertThat(refused.faults())
                                .extracting(fault -> fault.what())
                                .contains(
                                        "\"MDL\" stands twice in the list.",
                                        "\"prize\" is not one of the words for this column.",
                                        "\"nickname\" is not one of the words for this column.",
                                        "The cell is empty.")
                                .anySatisfy(what -> assertThat(what).contains("may be left out"))
                                .anySatisfy(what -> assertThat(what).contains("lacks a closing )")));
    }

    @Test
    void spells_a_pattern_out_in_full() {
        assertThat(Pattern.expand("[army] good conduct (medal|ribbon)"))
                .containsExactlyInAnyOrder(
                        List.of("army", "good", "conduct", "medal"),
                        List.of("good", "conduct", "medal"),
                        List.of("army", "good", "conduct", "ribbon"),
                        List.of("good", "conduct", "ribbon"));
    }

    @Test
    void counts_letters_changed_added_left_out_and_swapped() {
        assertThat(Spelling.distance("RHINELAND", "RHINELAND", 2)).isZero();
        assertThat(Spelling.distance("RHINLAND", "RHINELAND", 2)).isEqualTo(1);
        assertThat(Spelling.distance("RHNIELAND", "RHINELAND", 2)).isEqualTo(1);
        assertThat(Spelling.distance("RHTNELND", "RHINELAND", 2)).isEqualTo(2);
        assertThat(Spelling.distance("RXXXELAND", "RHINELAND", 2)).isEqualTo(3);
        assertThat(Spelling.distance("RHINE", "RHINELAND", 2)).isEqualTo(3);
    }
}
