package org.honorsdue.insignia.ribbon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.honorsdue.insignia.Found.authorized;
import static org.honorsdue.insignia.Found.findings;
import static org.honorsdue.insignia.Found.standing;
import static org.honorsdue.insignia.Found.worn;

import java.io.StringReader;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.insignia.print.Png;
import org.honorsdue.insignia.ribbon.RackStyle.Practice;
import org.honorsdue.reference.insignia.Inches;
import org.honorsdue.service.fact.Device;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;

/** Order: DA Pam 670-1, 26 January 2021, para 22-5. Rows: AR 670-1, 2005, wear of service ribbons. */
@DisplayName("The ribbon rack")
@DisplayNameGeneration(ReplaceUnderscores.class)
class RibbonRackTest {
    private static final Findings RIFLEMAN = findings(
            authorized("ww2-victory-medal"),
            authorized("eame-campaign-medal", worn(3, Device.BRONZE_SERVICE_STAR)),
            authorized("army-good-conduct-medal"),
            authorized("bronze-star-medal"),
            authorized("purple-heart", worn(1, Device.BRONZE_OAK_LEAF_CLUSTER)),
            authorized("distinguished-unit-citation"),
            authorized("combat-infantryman-badge"),
            authorized("american-campaign-medal"),
            authorized("army-of-occupation-medal", worn(1, Device.GERMANY_CLASP)));

    private static List<List<String>> awards(RibbonRack rack) {
        return rack.leftBreast().stream()
                .map(row -> row.stream().map(worn -> worn.design().id()).toList())
                .toList();
    }

    @Test
    void stands_in_the_order_of_wear_three_to_a_row_with_the_short_row_on_top() {
        assertThat(awards(RibbonRack.of(RIFLEMAN, RackStyle.standard())))
                .containsExactly(
                        List.of("bronze-star-medal"),
                        List.of("purple-heart", "army-good-conduct-medal", "american-campaign-medal"),
                        List.of("eame-campaign-medal", "ww2-victory-medal", "army-of-occupation-medal"));
    }

    @Test
    void stands_four_to_a_row_when_asked() {
        assertThat(awards(RibbonRack.of(RIFLEMAN, RackStyle.standard().withPerRow(4))))
                .containsExactly(
                        List.of("bronze-star-medal", "purple-heart", "army-good-conduct-medal"),
                        List.of(
                                "american-campaign-medal",
                                "eame-campaign-medal",
                                "ww2-victory-medal",
                                "army-of-occupation-medal"));
    }

    @Test
    void keeps_unit_awards_apart_on_the_other_breast_and_says_whose_side_is_meant() {
        var rack = RibbonRack.of(RIFLEMAN, RackStyle.standard());
        assertThat(rack.rightBreast())
                .singleElement()
                .satisfies(row -> assertThat(row)
                        .extracting(worn -> worn.design().id())
                        .containsExactly("distinguished-unit-citation"));
        assertThat(rack.description())
                .startsWith("As the viewer sees it.")
                .contains("Wearer's left breast, from the viewer's left")
                .contains("Wearer's right breast, at the viewer's left: Distinguished Unit Citation");
    }

    @Test
    void draws_the_purple_heart_where_the_chosen_practice_has_it_and_says_so() {
        var found = findings(authorized("purple-heart"), authorized("air-medal"), authorized("bronze-star-medal"));
        var present = RibbonRack.of(found, RackStyle.standard());
        var wartime = RibbonRack.of(found, RackStyle.standard().withPractice(Practice.WARTIME));
        assertThat(awards(present)).containsExactly(List.of("bronze-star-medal", "purple-heart", "air-medal"));
        assertThat(awards(wartime)).containsExactly(List.of("bronze-star-medal", "air-medal", "purple-heart"));
        assertThat(present.remarks()).anyMatch(remark -> remark.startsWith("Present practice: the Purple Heart"));
        assertThat(wartime.remarks()).anyMatch(remark -> remark.startsWith("Wartime practice: the Purple Heart"));
    }

    @Test
    void shows_no_emblem_for_a_meritorious_service_unit_in_wartime_practice() {
        var found = findings(authorized("meritorious-unit-commendation"));
        assertThat(RibbonRack.of(found, RackStyle.standard()).rightBreast()).hasSize(1);
        var wartime = RibbonRack.of(found, RackStyle.standard().withPractice(Practice.WARTIME));
        assertThat(wartime.isEmpty()).isTrue();
        assertThat(wartime.remarks()).anyMatch(remark -> remark.contains("golden wreath on the right sleeve"));
    }

    @Test
    void follows_the_order_in_which_service_medals_were_earned_when_told() {
        var found = findings(authorized("american-campaign-medal"), authorized("eame-campaign-medal"));
        assertThat(awards(RibbonRack.of(found, RackStyle.standard())))
                .containsExactly(List.of("american-campaign-medal", "eame-campaign-medal"));
        assertThat(awards(RibbonRack.of(
                        found,
                        RackStyle.standard()
                                .withServiceOrder(List.of("eame-campaign-medal", "american-campaign-medal")))))
                .containsExactly(List.of("eame-campaign-medal", "american-campaign-medal"));
    }

    @Test
    void draws_nothing_that_is_not_authorized_and_keeps_a_marked_place_for_what_is_presumed() {
        var found = findings(
                authorized("ww2-victory-medal"),
                standing(Standing.PRESUMED, "army-good-conduct-medal"),
                standing(Standing.UNSETTLED, "purple-heart"),
                standing(Standing.NOT_AUTHORIZED, "silver-star"));
        var rack = RibbonRack.of(found, RackStyle.standard());
        assertThat(awards(rack)).containsExactly(List.of("army-good-conduct-medal", "ww2-victory-medal"));
        assertThat(rack.leftBreast().get(0).get(0).isPlaceKept()).isTrue();
        assertThat(rack.description()).contains("Good Conduct Medal (Army) (not settled: place kept)");
        assertThat(rack.remarks()).contains("Purple Heart is unsettled and not drawn.");
        assertThat(rack.remarks()).noneMatch(remark -> remark.contains("Silver Star"));
    }

    @Test
    void gives_an_award_a_second_ribbon_when_its_clusters_do_not_fit_on_one() {
        var rack = RibbonRack.of(
                findings(authorized("air-medal", worn(9, Device.BRONZE_OAK_LEAF_CLUSTER))), RackStyle.standard());
        assertThat(rack.leftBreast().get(0)).hasSize(2);
        assertThat(rack.leftBreast().get(0).get(1).further()).isTrue();
    }

    @Test
    void is_well_formed_accessible_and_the_same_to_the_byte() throws Exception {
        var svg = RibbonRack.of(RIFLEMAN, RackStyle.standard()).svg();
        var read = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(svg.text())));
        var root = read.getDocumentElement();
        assertThat(root.getAttribute("role")).isEqualTo("img");
        assertThat(root.getAttribute("alt")).isEqualTo("Ribbon rack");
        assertThat(root.getElementsByTagName("title").item(0).getTextContent()).isEqualTo("Ribbon rack");
        assertThat(root.getElementsByTagName("desc").item(0).getTextContent())
                .contains("European-African-Middle Eastern Campaign Medal, 3 bronze service stars");
        assertThat(root.getAttribute("width")).endsWith("in");
        var again = RibbonRack.of(RIFLEMAN, RackStyle.standard());
        assertThat(again.svg().text()).isEqualTo(svg.text());
        assertThat(Png.ofWidth(again.svg(), 400)).isEqualTo(Png.ofWidth(svg, 400));
    }

    @Test
    void of_nobody_says_that_there_is_nothing() {
        var rack = RibbonRack.of(findings(), RackStyle.standard());
        assertThat(rack.isEmpty()).isTrue();
        assertThat(rack.svg().text()).contains("No ribbon is authorized");
    }

    @Test
    void is_true_to_size() {
        var rack = RibbonRack.of(
                findings(authorized("ww2-victory-medal"), authorized("american-campaign-medal")),
                RackStyle.standard().withCaptions(false));
        // Two bars of 1 3/8 and a margin of 1/8 on each side: hand arithmetic.
        assertThat(rack.drawing().width()).isEqualTo(3.0);
        assertThat(rack.drawing().height()).isEqualTo(0.625);
    }

    @Test
    void refuses_what_the_regulation_does_not_know() {
        assertThatThrownBy(() -> RackStyle.standard().withPerRow(5)).hasMessageContaining("three or four");
        assertThatThrownBy(() -> RackStyle.standard().withRowGap(Inches.of(1, 2)))
                .hasMessageContaining("1/8");
        assertThatThrownBy(() -> RackStyle.standard().withPlacesFor(List.of(Standing.NOT_AUTHORIZED)))
                .hasMessageContaining("still open");
    }
}
