package org.honorsdue.reference;

import static java.util.stream.Collectors.groupingBy;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.honorsdue.reference.history.Campaign;
import org.honorsdue.reference.history.Place;
import org.honorsdue.reference.law.Award;
import org.honorsdue.reference.law.LawClause;
import org.honorsdue.reference.paper.Abbreviation;
import org.honorsdue.reference.paper.ProofDocument;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Walks the tables of the program for what loading does not already refuse. */
@DisplayName("In the tables of the program")
@DisplayNameGeneration(ReplaceUnderscores.class)
class PublishedTablesTest {
    private static final Pattern REGULATION = Pattern.compile("(32 CFR|AR|DoD) .*");

    private final Reference reference = Reference.published();

    @Test
    void every_table_tells_what_it_leaves_out_and_names_no_web_address() throws IOException, URISyntaxException {
        List<Path> tables;
        var awards = Objects.requireNonNull(Reference.class.getResource("law/awards.csv"));
        Path root = Path.of(awards.toURI()).getParent().getParent();
        try (Stream<Path> files = Files.walk(root)) {
            tables = files.filter(file -> file.toString().endsWith(".csv"))
                    .filter(file -> Stream.of("law", "history", "paper", "score")
                            .anyMatch(folder -> file.getParent().endsWith(folder)))
                    .toList();
        }
        assertThat(tables).hasSize(16);
        for (Path table : tables) {
            String text = Files.readString(table);
            assertThat(text).as(table.toString()).startsWith("# ").contains("Left out");
            assertThat(text).as(table.toString()).doesNotContain("http", "www.", "online copy");
        }
    }

    @Nested
    class the_law {
        @Test
        void tells_a_family_in_one_sentence_what_an_award_is() {
            assertThat(reference.awards())
                    .allSatisfy(award -> assertThat(award.meaning())
                            .as(award.id())
                            .endsWith(".")
                            .hasSizeBetween(30, 160));
        }

        @Test
        void has_one_name_for_each_award() {
            assertThat(reference.awards()).extracting(Award::name).doesNotHaveDuplicates();
        }

        @Test
        void wears_no_two_awards_in_the_same_place() {
            assertThat(reference.awards().stream()
                            .flatMap(award -> award.precedence().stream())
                            .toList())
                    .doesNotHaveDuplicates();
        }

        @Test
        void says_each_clause_in_a_sentence() {
            assertThat(reference.clauses())
                    .allSatisfy(clause -> assertThat(clause.text())
                            .as(clause.id())
                            .endsWith(".")
                            .hasSizeBetween(5, 260));
        }

        @Test
        void was_not_in_force_before_there_was_an_award() {
            assertThat(reference.clauses()).allSatisfy(clause -> {
                var established = reference.award(clause.award()).orElseThrow().established();
                if (established.isPresent() && clause.inForceFrom().isPresent()) {
                    assertThat(clause.inForceFrom().get()).as(clause.id()).isAfterOrEqualTo(established.get());
                }
            });
        }

        @Test
        void cites_every_regulation_with_its_edition() {
            assertThat(reference.clauses())
                    .filteredOn(clause -> REGULATION
                            .matcher(clause.citation().publication() + " ")
                            .matches())
                    .isNotEmpty()
                    .allSatisfy(clause -> assertThat(clause.citation().edition())
                            .as(clause.id())
                            .isNotBlank());
        }

        @Test
        void calls_nothing_read_that_has_only_memory_for_a_source() {
            assertThat(reference.clauses())
                    .filteredOn(clause -> clause.citation().grade() != Grade.MEMORY)
                    .extracting(LawClause::source)
                    .doesNotContain("memory");
        }

        @Test
        void has_a_condition_or_a_bar_for_every_award_that_can_be_decided() {
            assertThat(reference.awards())
                    .allSatisfy(award -> assertThat(reference.clausesOf(award.id()))
                            .as(award.id())
                            .anyMatch(clause -> clause.role() == LawClause.Role.CONDITION
                                    || clause.role() == LawClause.Role.EXCLUSION));
        }

        @Test
        void has_every_award_and_badge_that_a_finding_can_be_about() {
            assertThat(reference.awards())
                    .extracting(Award::id)
                    .contains(
                            "combat-infantryman-badge",
                            "expert-infantryman-badge",
                            "combat-medical-badge",
                            "parachutist-badge",
                            "glider-badge",
                            "driver-and-mechanic-badge",
                            "marksmanship-badge",
                            "aviation-badge",
                            "honorable-service-lapel-button",
                            "overseas-service-bars",
                            "service-stripes",
                            "shoulder-sleeve-insignia",
                            "national-defense-service-medal",
                            "post-1981-ribbons",
                            "commemorative-medals");
        }
    }

    @Nested
    class the_campaigns {
        @Test
        void have_one_name_each() {
            assertThat(reference.campaigns()).extracting(Campaign::name).doesNotHaveDuplicates();
        }

        @Test
        void leave_no_day_between_those_that_follow_each_other() {
            follow("EA-NAF", "EA-ROM", "EA-NAP", "EA-POV");
            follow("EA-NOR", "EA-NFR", "EA-RHI", "EA-CEN");
            follow("AP-PAP", "AP-NGU");
            follow("AP-GUA", "AP-NSO");
            follow("AP-INB", "AP-CBU");
            follow("AP-CHD", "AP-CHO");
        }

        private void follow(String... ids) {
            for (int i = 1; i < ids.length; i++) {
                Campaign before = reference.campaign(ids[i - 1]).orElseThrow();
                Campaign after = reference.campaign(ids[i]).orElseThrow();
                assertThat(after.ground().first())
                        .as("%s after %s", after.name(), before.name())
                        .isEqualTo(before.ground().last().plusDays(1));
            }
        }

        @Test
        void cover_every_day_of_the_war_in_the_pacific() {
            var window = reference.theater(Theater.ASIATIC_PACIFIC).orElseThrow();
            var named = reference.campaigns().stream()
                    .filter(campaign -> campaign.theater() == Theater.ASIATIC_PACIFIC && !campaign.blanket())
                    .toList();
            for (var day = window.dates().first(); !day.isAfter(LocalDate.of(1945, 9, 2)); day = day.plusDays(1)) {
                var today = day;
                assertThat(named)
                        .as("%s", day)
                        .anyMatch(campaign -> campaign.ground().contains(today));
            }
        }

        @Test
        void open_for_air_units_no_later_than_for_ground_units() {
            assertThat(reference.campaigns())
                    .allSatisfy(campaign -> assertThat(campaign.air().first())
                            .as(campaign.id())
                            .isBeforeOrEqualTo(campaign.ground().first()));
        }
    }

    @Nested
    class the_places {
        @Test
        void under_an_occupation_clasp_lie_in_its_theatre() {
            assertThat(reference.places()).allSatisfy(place -> {
                if (place.occupation() == Place.Occupation.GERMANY) {
                    assertThat(place.theaters()).as(place.name()).containsExactly(Theater.EAME);
                }
                if (place.occupation() == Place.Occupation.JAPAN) {
                    assertThat(place.theaters()).as(place.name()).containsExactly(Theater.ASIATIC_PACIFIC);
                }
            });
        }

        @Test
        void say_why_when_the_word_alone_does_not_tell_the_theatre() {
            assertThat(reference.places())
                    .filteredOn(place -> place.theaters().size() > 1)
                    .isNotEmpty()
                    .allSatisfy(
                            place -> assertThat(place.note()).as(place.name()).isNotBlank());
        }
    }

    @Nested
    class the_words {
        @Test
        void of_one_kind_and_token_are_marked_when_they_differ() {
            reference.abbreviations().stream()
                    .collect(groupingBy(abbreviation -> LoadedTables.plain(abbreviation.token())))
                    .forEach((token, rows) -> {
                        if (rows.size() > 1) {
                            assertThat(rows).as(token).allMatch(Abbreviation::ambiguous);
                        }
                    });
        }

        @Test
        void for_specialties_are_numbers_of_three_or_four_digits() {
            assertThat(reference.specialties())
                    .isNotEmpty()
                    .allSatisfy(specialty -> assertThat(specialty.number()).matches("\\d{3,4}"));
            assertThat(reference.specialty("745").orElseThrow().title()).containsIgnoringCase("rifleman");
        }

        @Test
        void for_documents_prove_every_kind_of_fact_with_at_least_one_that_did_not_burn() {
            var kinds = reference.documents().stream()
                    .flatMap(document -> document.proves().stream())
                    .distinct()
                    .toList();
            assertThat(kinds)
                    .isNotEmpty()
                    .allSatisfy(kind -> assertThat(reference.documents().stream()
                                    .filter(document -> document.proves().contains(kind))
                                    .filter(document -> !document.burned()))
                            .as(kind)
                            .isNotEmpty());
            assertThat(reference.documents())
                    .filteredOn(ProofDocument::burned)
                    .extracting(ProofDocument::id)
                    .containsExactly("personnel-file");
        }
    }

    @Nested
    class the_score {
        @Test
        void gave_one_and_one_and_five_and_twelve_points() {
            // Collectors' account of the points system: service 1, overseas 1, combat 5, children 12 up to three.
            assertThat(reference.scoreFactors())
                    .extracting("id", "points")
                    .containsExactly(
                            tuple("service", 1), tuple("overseas", 1), tuple("combat", 5), tuple("parenthood", 12));
            assertThat(reference.scoreFactors().get(3).maximum()).contains(3);
        }

        @Test
        void was_counted_twice_in_order() {
            assertThat(reference.ratingDays()).hasSize(2);
            assertThat(reference.ratingDays().get(0).day())
                    .isBefore(reference.ratingDays().get(1).day());
        }
    }
}
