package org.honorsdue.reading.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.honorsdue.reading.ReadAs;
import org.honorsdue.service.fact.AwardClaim;
import org.honorsdue.service.fact.Basis.Certainty;
import org.honorsdue.service.fact.CampaignClaim;
import org.honorsdue.service.fact.OrderCited;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expected readings: the official names of the campaigns in the reference table; abbreviations by common practice. */
@DisplayName("Battles and campaigns")
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CampaignsTest {
    private static List<CampaignClaim> claims(String text) {
        return ReadAs.facts(ReadAs.entry(Entry.BATTLES_AND_CAMPAIGNS, text), CampaignClaim.class);
    }

    private static String said(String text) {
        return claims(text).stream()
                .map(claim -> switch (claim.basis().certainty()) {
                            case PLAIN -> "";
                            case CORRECTED -> "~";
                            case DOUBTFUL -> "?";
                        }
                        + claim.campaign())
                .collect(Collectors.joining(" "));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            NORMANDY NORTHERN FRANCE RHINELAND ARDENNES CENTRAL EUROPE | EA-NOR EA-NFR EA-RHI EA-ARD EA-CEN
            Normandy, N. France, Ardennes-Alsace & Cent Eur            | EA-NOR EA-NFR EA-ARD EA-CEN
            No Apennines; Po Val; R-A                                  | EA-NAP EA-POV EA-ROM
            AIR OFFENSIVE, EUROPE; A.O. JAPAN                          | EA-AOE AP-AOJ
            Alg Fr Mor, Tun, Sic, Nap-Fog, Anz                         | EA-ALG EA-TUN EA-SIC EA-NAF EA-ANZ
            No. Solomons; Bismarck Arch; So. Phils; W Pac              | AP-NSO AP-BIS AP-SPH AP-WPA
            NORMANDYNORTHERNFRANCERHINELAND                            | ~EA-NOR ~EA-NFR ~EA-RHI
            N0RMANDY RHTNELAND R0ME-ARN0                               | ~EA-NOR ~EA-RHI ~EA-ROM
            Battle of the Bulge; Okinawa                               | ~EA-ARD ~AP-RYU
            GERMANY                                                    | ?EA-RHI
            BURMA                                                      | ?AP-BUR ?AP-INB
            """)
    void are_named_in_every_way_that_clerks_had(String typed, String expected) {
        assertThat(said(typed)).isEqualTo(expected);
    }

    @Test
    void a_credit_for_a_whole_theater_is_settled_by_the_other_campaigns() {
        assertThat(said("AIR COMBAT ROME-ARNO")).isEqualTo("~EA-AIR EA-ROM");
    }

    @Test
    void a_credit_for_a_whole_theater_alone_may_be_of_any() {
        assertThat(said("AIR COMBAT")).isEqualTo("?AM-AIR ?EA-AIR ?AP-AIR");
    }

    @Test
    void the_dates_typed_behind_a_campaign_do_not_disturb() {
        assertThat(said("NORMANDY (6 JUN 44 - 24 JUL 44) RHINELAND (15 SEP 44 - 21 MAR 45)"))
                .isEqualTo("EA-NOR EA-RHI");
    }

    @Test
    void an_award_typed_among_them_is_an_award() {
        var reading = ReadAs.entry(Entry.BATTLES_AND_CAMPAIGNS, "Rhineland Purple Heart w/1 OLC");
        assertThat(ReadAs.facts(reading, AwardClaim.class))
                .singleElement()
                .satisfies(claim -> assertThat(claim.count()).isEqualTo(2));
    }

    @Test
    void the_orders_behind_them_are_kept() {
        var reading = ReadAs.entry(Entry.BATTLES_AND_CAMPAIGNS, "Rhineland GO 33 WD 45 Central Europe GO 40 WD 45");
        assertThat(ReadAs.facts(reading, OrderCited.class)).hasSize(2);
    }

    @Test
    void a_place_that_is_no_campaign_is_marked() {
        var reading = ReadAs.entry(Entry.BATTLES_AND_CAMPAIGNS, "BORNEO");
        assertThat(reading.facts()).isEmpty();
        assertThat(reading.tokens().get(0).certainty()).isEqualTo(Certainty.DOUBTFUL);
    }
}
