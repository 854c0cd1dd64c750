package org.honorsdue.determination.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.honorsdue.reference.Theater.ASIATIC_PACIFIC;
import static org.honorsdue.reference.Theater.EAME;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.honorsdue.determination.LawExaminer;
import org.honorsdue.determination.crosscheck.Soldier;
import org.honorsdue.reference.DateSpan;
import org.honorsdue.reference.Reference;
import org.honorsdue.service.fact.Tour;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("Service line")
@DisplayNameGeneration(ReplaceUnderscores.class)
class ServiceLineTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final List<String> REGIMENT_OF_THE_83RD = List.of("infantry-regiment-331", "infantry-division-83");

    private final Reference reference = Reference.published();
    private final LawExaminer examiner = new LawExaminer(reference);

    private static Soldier rifleman() {
        return Soldier.enlisted("1943-02-03", "1945-11-11")
                .arm("Infantry")
                .abroad("1944-04-08", "1944-04-19", "ETO", EAME, "1945-11-01", "1945-11-09")
                .campaigns("EA-NOR", "EA-RHI")
                .ribbon("eame-campaign-medal", 2);
    }

    private ServiceLine of(Soldier soldier) {
        var facts = soldier.facts();
        return ServiceLine.of(facts, examiner.examine(facts, TODAY, Set.of()), reference);
    }

    private static DateSpan days(String first, String last) {
        return new DateSpan(LocalDate.parse(first), LocalDate.parse(last));
    }

    @Test
    void it_runs_from_the_first_known_day_to_the_last() {
        assertThat(of(rifleman()).extent()).contains(days("1943-02-03", "1945-11-11"));
        assertThat(of(rifleman().inducted("1943-01-20")).extent()).contains(days("1943-01-20", "1945-11-11"));
    }

    /** Normandy, 6 June to 24 July 1944, lies wholly in his stay; Rhineland is named too. */
    @Test
    void of_each_campaign_it_shows_the_days_that_are_his() {
        var line = of(rifleman());
        assertThat(line.campaigns())
                .extracting(ServiceLine.CampaignTime::campaign)
                .containsExactly("EA-NOR", "EA-RHI");
        assertThat(line.campaigns().get(0).his()).containsExactly(days("1944-06-06", "1944-07-24"));
        assertThat(line.campaigns().get(0).credited()).isEmpty();
    }

    @Test
    void days_as_a_prisoner_are_taken_out_of_a_campaign() {
        // Rhineland ran 15 September 1944 to 21 March 1945; captured 20 December, freed 10 March.
        var line = of(rifleman().captive("1944-12-20", "1945-03-10"));
        assertThat(line.campaigns())
                .filteredOn(campaign -> campaign.campaign().equals("EA-RHI"))
                .singleElement()
                .satisfies(campaign -> assertThat(campaign.his())
                        .containsExactly(days("1944-09-15", "1944-12-20"), days("1945-03-10", "1945-03-21")));
        assertThat(line.captivity()).hasSize(1);
    }

    @Test
    void a_campaign_the_unit_has_and_the_paper_lacks_is_shown_as_not_named() {
        var line = of(rifleman().assigned("Co B 331st Inf", REGIMENT_OF_THE_83RD, "1944-06-01", "1945-10-01"));
        assertThat(line.campaigns())
                .filteredOn(campaign -> !campaign.named())
                .extracting(ServiceLine.CampaignTime::campaign)
                .contains("EA-NFR");
        assertThat(line.campaigns()).allMatch(campaign -> campaign.credited().isPresent());
    }

    @Test
    void a_campaign_he_cannot_have_seen_has_no_day_of_his() {
        var line = of(Soldier.enlisted("1943-02-03", "1945-11-11")
                .abroad("1944-08-22", "1944-08-29", "ETO", EAME, "1945-11-01", "1945-11-09")
                .campaigns("EA-NOR"));
        assertThat(line.campaigns().get(0).his()).isEmpty();
        assertThat(line.contradictions())
                .extracting(ServiceLine.Contradiction::check)
                .contains("campaign-dates");
        assertThat(ServiceLineText.write(line, 80)).contains("Normandy ?", "? named, and no day of it is his");
    }

    @Test
    void the_windows_of_the_medals_he_served_in_are_drawn_and_no_others() {
        assertThat(of(rifleman()).windows())
                .extracting(ServiceLine.Window::award)
                .containsExactly("eame-campaign-medal", "ww2-victory-medal", "army-of-occupation-medal");
        assertThat(of(Soldier.enlisted("1943-02-03", "1944-11-11")).windows())
                .extracting(ServiceLine.Window::award)
                .containsExactly("ww2-victory-medal");
    }

    @Test
    void events_stand_in_order_of_time_with_the_characters_they_rest_on() {
        var events = of(rifleman().wounded("1944-12-20", "Belgium")).events();
        assertThat(events).extracting(ServiceLine.Event::when).isSorted();
        assertThat(events)
                .filteredOn(event -> event.kind() == ServiceLine.Event.Kind.WOUNDED)
                .singleElement()
                .satisfies(event -> {
                    assertThat(event.says()).isEqualTo("wounded, Belgium");
                    assertThat(event.origins()).isNotEmpty();
                });
    }

    /** Thirty-one days without a known unit are a gap, thirty are a voyage or a depot. */
    @Test
    void a_month_abroad_without_a_known_unit_is_a_gap() {
        var month = of(rifleman().assigned("Co B 331st Inf", REGIMENT_OF_THE_83RD, "1944-05-20", "1945-11-01"));
        assertThat(month.gaps()).singleElement().satisfies(gap -> {
            assertThat(gap.kind()).isEqualTo(ServiceLine.Gap.Kind.NO_UNIT);
            assertThat(gap.days()).isEqualTo(days("1944-04-19", "1944-05-19"));
        });
        var less = of(rifleman().assigned("Co B 331st Inf", REGIMENT_OF_THE_83RD, "1944-05-19", "1945-11-01"));
        assertThat(less.gaps()).isEmpty();
    }

    @Test
    void the_time_between_two_services_is_a_gap() {
        var line = of(rifleman().paper(Tour.Category.ENLISTED, "1946-02-01", "1948-01-31"));
        assertThat(line.segments()).hasSize(2);
        assertThat(line.gaps())
                .filteredOn(gap -> gap.kind() == ServiceLine.Gap.Kind.BETWEEN_SERVICES)
                .singleElement()
                .satisfies(gap -> assertThat(gap.days()).isEqualTo(days("1945-11-12", "1946-01-31")));
    }

    @Test
    void no_date_at_all_is_said_and_not_drawn() {
        var line = of(Soldier.undated().ribbon("eame-campaign-medal", 1));
        assertThat(line.extent()).isEmpty();
        assertThat(ServiceLineText.write(line, 80)).isEqualTo("No date of the service is known.\n");
    }

    @Test
    void no_line_of_text_is_wider_than_the_terminal() {
        var line = of(rifleman()
                .inducted("1943-01-20")
                .wounded("1944-12-20", "a village in Belgium whose name nobody could read on the paper")
                .captive("1944-12-21", "1945-04-29")
                .paper(Tour.Category.ENLISTED, "1946-02-01", "1948-01-31")
                .abroad("1946-05-01", "1946-05-20", "Japan", ASIATIC_PACIFIC, "1947-11-01", "1947-11-20"));
        for (int width = 40; width <= 200; width++) {
            int most = width;
            assertThat(ServiceLineText.write(line, width).lines())
                    .as("at %d columns", width)
                    .allMatch(text -> text.length() <= most)
                    .allMatch(text -> text.chars().allMatch(c -> c >= ' ' && c < 127));
        }
    }

    /** Drawn once, looked at, and kept. Two years of 26 columns each, a column 14.06 days: 20 June 1944 is the 13th. */
    @Test
    void the_drawing_is_the_one_that_was_looked_at() {
        var line = of(Soldier.enlisted("1944-01-10", "1945-11-11")
                .abroad("1944-06-20", "1944-07-01", "ETO", EAME, "1945-10-20", "1945-11-01")
                .campaigns("EA-NOR")
                .ribbon("eame-campaign-medal", 1));
        assertThat(ServiceLineText.write(line, 79).lines().limit(9).collect(Collectors.joining("\n")))
                .isEqualTo("""
                                                      1944                      1945
                                                      |     '     '      '      |     '     '      '
                           service                    =================================================
                           ETO                                    ====================================
                             Normandy                            .###
                             EAME Campaign Medal      ............###################################..
                             Victory Medal            #################################################...
                             Occupation, Germany                                         ############.....
                           events                     +           %                                 ><-""".stripTrailing());
    }

    @Test
    void the_tree_holds_only_maps_lists_and_plain_values() {
        var tree = ServiceLineTree.of(of(rifleman().wounded("1944-12-20", "Belgium")));
        assertThat(tree.keySet())
                .containsExactly(
                        "extent",
                        "segments",
                        "stays",
                        "units",
                        "captivity",
                        "campaigns",
                        "windows",
                        "events",
                        "gaps",
                        "contradictions");
        assertPlain(tree);
        assertThat(tree.toString()).contains("from=1943-02-03", "campaign=EA-NOR", "kind=wounded");
    }

    private static void assertPlain(Object value) {
        if (value instanceof Map<?, ?> map) {
            map.keySet().forEach(key -> assertThat(key).isInstanceOf(String.class));
            map.values().forEach(ServiceLineTest::assertPlain);
        } else if (value instanceof List<?> list) {
            list.forEach(ServiceLineTest::assertPlain);
        } else {
            assertThat(value).isInstanceOfAny(String.class, Integer.class, Boolean.class);
        }
    }
}
