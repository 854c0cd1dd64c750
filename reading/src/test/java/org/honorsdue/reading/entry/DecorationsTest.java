package org.honorsdue.reading.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.honorsdue.reading.EntryReading;
import org.honorsdue.reading.ReadAs;
import org.honorsdue.service.fact.AwardClaim;
import org.honorsdue.service.fact.Basis.Certainty;
import org.honorsdue.service.fact.CampaignClaim;
import org.honorsdue.service.fact.OrderReference;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expected readings: common practice of reading such papers, no published source. */
@DisplayName("Decorations and citations")
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class DecorationsTest {
    private static EntryReading read(String text) {
        return ReadAs.entry(Entry.DECORATIONS_AND_CITATIONS, text);
    }

    private static List<AwardClaim> claims(String text) {
        return ReadAs.facts(read(text), AwardClaim.class);
    }

    private static String said(String text) {
        return claims(text).stream()
                .map(claim -> (claim.basis().certainty() == Certainty.DOUBTFUL ? "?" : "")
                        + claim.award()
                        + (claim.count() > 1 ? " x" + claim.count() : "")
                        + claim.devices().stream()
                                .map(device -> " " + device.device().id() + "=" + device.count())
                                .collect(Collectors.joining()))
                .collect(Collectors.joining("; "));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            EAMET w/3 Br Serv Stars                   | eame-campaign-medal bronze-service-star=3
            E.A.M.E. Thtr Rib                         | eame-campaign-medal
            E A M E Theater Medal 2 stars             | eame-campaign-medal bronze-service-star=2
            EAME RIBBON WITH THREE (3) BRONZE STARS   | eame-campaign-medal bronze-service-star=3
            EAME Rib w/1 silver and 2 bronze stars    | eame-campaign-medal silver-service-star=1 bronze-service-star=2
            3 BRONZE STARS EAME RIBBON                | eame-campaign-medal bronze-service-star=3
            ATR                                       | american-campaign-medal
            AM THTR RIB                               | american-campaign-medal
            AP Th Ribbon w/1 br sv star               | asiatic-pacific-campaign-medal bronze-service-star=1
            PH LIB RIB W/1 STAR                       | philippine-liberation-ribbon bronze-service-star=1
            Am Def Rib w/Fgn Sv Clasp                 | american-defense-service-medal foreign-service-clasp=1
            GCMdl                                     | army-good-conduct-medal
            Gd Con Mdl                                | army-good-conduct-medal
            Good Conduct Medal w/clasp 2 loops        | army-good-conduct-medal x2 good-conduct-clasp=2
            Purple Ht w/1 OLC                         | purple-heart x2 bronze-oak-leaf-cluster=1
            PURPLE HEART WITH 2D OLC                  | purple-heart x3 bronze-oak-leaf-cluster=2
            1st OLC to Purple Heart                   | purple-heart x2 bronze-oak-leaf-cluster=1
            PH w/O.L.C.                               | purple-heart x2 bronze-oak-leaf-cluster=1
            Air Medal w/1 Silver & 2 Bronze OLC       | air-medal x8 silver-oak-leaf-cluster=1 bronze-oak-leaf-cluster=2
            AM W/3 OLC                                | air-medal x4 bronze-oak-leaf-cluster=3
            Bronze Star Medal w/V                     | bronze-star-medal letter-v=1
            Bronze Star                               | bronze-star-medal
            AOM (G)                                   | army-of-occupation-medal germany-clasp=1
            2 O/S BARS 1 SERV STRIPE                  | overseas-service-bars x2; service-stripes
            AMERICAN THEATER RIBBON W/1 OLC           | american-campaign-medal bronze-oak-leaf-cluster=1
            Prcht Badge w/1 Br Star                   | parachutist-badge bronze-star-on-parachutist-badge=1
            CROIX DE GUERRE (FR) AVEC PALME           | french-croix-de-guerre palm=1
            British DFC                               | other-foreign-individual
            """)
    void an_item_is_read_however_it_is_abbreviated(String typed, String expected) {
        assertThat(said(typed)).isEqualTo(expected);
    }

    @Test
    void items_without_anything_between_them_come_apart() {
        assertThat(said("EAMET W/3 BR STARS GCM PH W/1 OLC CIB GO 12 HQ 999 INF 44 DUB"))
                .isEqualTo("eame-campaign-medal bronze-service-star=3; army-good-conduct-medal;"
                        + " purple-heart x2 bronze-oak-leaf-cluster=1; combat-infantryman-badge;"
                        + " distinguished-unit-citation");
    }

    @Test
    void words_typed_together_come_apart_with_a_note() {
        var reading = read("GOODCONDUCTMEDAL");
        assertThat(said("GOODCONDUCTMEDAL")).isEqualTo("army-good-conduct-medal");
        assertThat(reading.tokens().get(0).certainty()).isEqualTo(Certainty.CORRECTED);
        assertThat(reading.tokens().get(0).note()).contains("typed together");
    }

    @Test
    void a_misspelling_is_read_with_a_note_that_says_how() {
        var token = read("Purpel Heart").tokens().get(0);
        assertThat(token.meaning()).isEqualTo("Purple Heart");
        assertThat(token.certainty()).isEqualTo(Certainty.CORRECTED);
        assertThat(token.note()).isEqualTo("\"Purpel\" read as purple");
    }

    @Test
    void figures_typed_for_letters_are_read_with_a_note() {
        var token = read("G00D C0NDUCT MEDAL").tokens().get(0);
        assertThat(token.meaning()).isEqualTo("Good Conduct Medal");
        assertThat(token.note()).contains("read as GOOD: figures typed for letters");
    }

    @Test
    void a_letter_typed_for_the_number_of_stars_is_read_with_a_note() {
        assertThat(said("EAME RIBBON W/l BRONZE STAR")).isEqualTo("eame-campaign-medal bronze-service-star=1");
    }

    @Test
    void a_bronze_star_right_behind_a_ribbon_is_kept_both_ways() {
        assertThat(said("EAME RIBBON BRONZE STAR"))
                .isEqualTo("eame-campaign-medal; ?eame-campaign-medal bronze-service-star=1; ?bronze-star-medal");
        var star = read("EAME RIBBON BRONZE STAR").tokens().get(1);
        assertThat(star.alternatives()).containsExactly("bronze service star");
    }

    @Test
    void a_bronze_star_behind_a_ribbon_that_has_its_stars_is_the_medal() {
        assertThat(said("EAME Ribbon w/3 Bronze Stars Bronze Star"))
                .isEqualTo("eame-campaign-medal bronze-service-star=3; bronze-star-medal");
    }

    @Test
    void SS_is_the_silver_star_here_and_a_class_beside_a_weapon() {
        assertThat(said("SS GO 12 HQ 36 INF DIV 44")).isEqualTo("silver-star");
        assertThat(said("SS RIFLE")).isEmpty();
    }

    @Test
    void an_order_stays_with_its_award_and_the_unit_in_it_with_the_order() {
        var claims = claims("Purple Heart GO 16 HQ 999 Inf Div 44 as amended; Good Conduct Medal");
        assertThat(claims.get(0).orders())
                .extracting(OrderReference::asTyped)
                .containsExactly("GO 16 HQ 999 Inf Div 44 as amended");
        assertThat(claims.get(1).orders()).isEmpty();
    }

    @Test
    void campaigns_named_behind_a_ribbon_are_campaigns() {
        var reading = read("EAME Ribbon w/2 stars for Rhineland and Central Europe");
        assertThat(ReadAs.facts(reading, CampaignClaim.class))
                .extracting(CampaignClaim::campaign)
                .containsExactly("EA-RHI", "EA-CEN");
    }

    @Test
    void what_nobody_can_read_is_listed_and_what_follows_it_is_not_given_to_the_award_before() {
        var reading = read("Silver Star; Qrxzt Hxxrt w/2 OLC");
        assertThat(said("Silver Star; Qrxzt Hxxrt w/2 OLC")).isEqualTo("silver-star");
        assertThat(reading.unread()).extracting(unread -> unread.text()).contains("Qrxzt Hxxrt");
        assertThat(reading.tokens())
                .filteredOn(token -> token.text().equals("OLC"))
                .allSatisfy(token -> assertThat(token.certainty()).isEqualTo(Certainty.DOUBTFUL));
    }

    @Test
    void marks_put_for_what_cannot_be_made_out_are_unread() {
        assertThat(read("####### VICTORY MEDAL").unread())
                .extracting(unread -> unread.text())
                .containsExactly("#######");
    }

    @Test
    void a_fourragere_without_a_country_is_kept_both_ways() {
        assertThat(said("Fourragere")).isEqualTo("?belgian-fourragere; ?french-fourragere");
    }

    @Test
    void a_unit_citation_that_is_not_named_is_doubtful() {
        assertThat(said("Unit Citation")).isEqualTo("?distinguished-unit-citation");
    }

    @Test
    void a_number_before_a_service_medal_is_not_a_number_of_medals() {
        assertThat(said("12 EAME RIBBON")).isEqualTo("eame-campaign-medal");
        assertThat(read("12 EAME RIBBON").unread()).hasSize(1);
    }

    @Test
    void None_is_not_a_blank() {
        var reading = read("None");
        assertThat(reading.tokens().get(0).meaning()).isEqualTo("nothing to enter");
        assertThat(claims("None")).isEmpty();
    }
}
