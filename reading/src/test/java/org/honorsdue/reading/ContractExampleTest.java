package org.honorsdue.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.honorsdue.reference.Theater;
import org.honorsdue.service.fact.ArmFact;
import org.honorsdue.service.fact.AwardClaim;
import org.honorsdue.service.fact.CampaignClaim;
import org.honorsdue.service.fact.Conduct;
import org.honorsdue.service.fact.Device;
import org.honorsdue.service.fact.DeviceCount;
import org.honorsdue.service.fact.LapelButton;
import org.honorsdue.service.fact.MusteringOutPay;
import org.honorsdue.service.fact.Origin;
import org.honorsdue.service.fact.OverseasStay;
import org.honorsdue.service.fact.PointsScore;
import org.honorsdue.service.fact.Qualification;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.ServiceTotal;
import org.honorsdue.service.fact.Specialty;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Expected values: the casefile in the description of the input, read by hand; no outside source. */
@DisplayName("The casefile of the contract")
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ContractExampleTest {
    private static final String CASEFILE = """
            soldier: { name: "Fairweather, Orrin T", sex: male }
            papers:
              - form: WD AGO 53-55
                entries:
                  grade: Tec 5
                  arm: FA
                  component: AUS
                  organization: Btry B 391st AFA Bn
                  separated: 11 Nov 45
                  entered_active_service: 3 Feb 43
                  inducted: 20 Jan 43
                  enlisted:
                  military_specialty: Cannoneer 844
                  qualifications: MM Rifle Dec 43
                  battles_and_campaigns: Rhineland Ardennes Central Europe GO 33 WD 45
                  decorations_and_citations: EAMET Rib w/3 Br Stars; Good Conduct Medal
                  wounds: None
                  service_outside_us:
                    - { departed: 22 Aug 44, destination: ETO, arrived: 29 Aug 44 }
                    - { departed: 1 Nov 45, destination: USA, arrived: 9 Nov 45 }
                  continental_service: 1-6-17
                  foreign_service: 1-2-18
                  prior_service: None
                  highest_grade: Tec 5
                  reason: AR 615-365 15 Dec 44 RR 1-1 Conv of Govt
                  character: Excellent
                  service_schools: None
                  mustering_out_pay: 300
                  remarks: Lapel button issued. ASR score (2 Sept 45) 60. No days lost under AW 107
            """;

    private final ServiceFacts facts = ReadAs.reader().read(ReadAs.casefile(CASEFILE));

    @Test
    void leaves_nothing_unread_and_finds_no_conflict() {
        assertThat(facts.unread()).isEmpty();
        assertThat(facts.conflicts()).isEmpty();
    }

    @Test
    void gives_the_tour_of_an_enlisted_man() {
        var tour = facts.first(Tour.class).orElseThrow();
        assertThat(tour.category()).isEqualTo(Tour.Category.ENLISTED);
        assertThat(tour.inducted()).map(Object::toString).contains("1943-01-20");
        assertThat(tour.entered()).map(Object::toString).contains("1943-02-03");
        assertThat(tour.separated()).map(Object::toString).contains("1945-11-11");
        assertThat(tour.enlisted()).isEmpty();
        assertThat(facts.supplied(1, Entry.ENLISTED))
                .as("a blank box was still shown")
                .isTrue();
        assertThat(facts.supplied(1, Entry.DEPENDENTS)).isFalse();
    }

    @Test
    void claims_the_ribbon_with_its_stars_and_points_to_the_characters() {
        var claims = facts.every(AwardClaim.class);
        assertThat(claims)
                .extracting(AwardClaim::award)
                .containsExactly("eame-campaign-medal", "army-good-conduct-medal");
        assertThat(claims.get(0).devices()).containsExactly(new DeviceCount(Device.BRONZE_SERVICE_STAR, 3));
        assertThat(claims.get(0).basis().origins())
                .containsExactly(
                        new Origin.OnPaper(1, Entry.DECORATIONS_AND_CITATIONS, 0, 22, "EAMET Rib w/3 Br Stars"));
    }

    @Test
    void names_the_campaigns() {
        assertThat(facts.every(CampaignClaim.class))
                .extracting(CampaignClaim::campaign)
                .containsExactly("EA-RHI", "EA-ARD", "EA-CEN");
    }

    @Test
    void makes_one_stay_of_the_two_crossings() {
        var stay = facts.every(OverseasStay.class);
        assertThat(stay).hasSize(1);
        assertThat(stay.get(0).departed()).map(Object::toString).contains("1944-08-22");
        assertThat(stay.get(0).returned()).map(Object::toString).contains("1945-11-09");
        assertThat(stay.get(0).theaters()).containsExactly(Theater.EAME);
    }

    @Test
    void reads_the_short_entries() {
        assertThat(facts.first(ArmFact.class)).map(ArmFact::arm).contains("Field Artillery");
        assertThat(facts.first(Specialty.class)).flatMap(Specialty::number).contains("844");
        assertThat(facts.first(MusteringOutPay.class))
                .map(MusteringOutPay::dollars)
                .contains(300);
        var shot = facts.first(Qualification.class).orElseThrow();
        assertThat(shot.level()).isEqualTo(Qualification.Level.MARKSMAN);
        assertThat(shot.weapon()).contains("Rifle");
        assertThat(shot.date()).map(Object::toString).contains("1943-12");
    }

    @Test
    void reads_the_totals() {
        assertThat(facts.every(ServiceTotal.class))
                .extracting(total -> List.of(total.kind(), total.years(), total.months(), total.days()))
                .containsExactlyInAnyOrder(
                        List.of(ServiceTotal.Kind.CONTINENTAL, 1, 6, 17), List.of(ServiceTotal.Kind.FOREIGN, 1, 2, 18));
    }

    @Test
    void reads_the_remarks() {
        assertThat(facts.first(LapelButton.class)).map(LapelButton::issued).contains(true);
        var score = facts.first(PointsScore.class).orElseThrow();
        assertThat(score.points()).isEqualTo(60);
        assertThat(score.asOf()).map(Object::toString).contains("1945-09-02");
        assertThat(facts.every(Conduct.class))
                .extracting(Conduct::lostDays)
                .containsExactlyInAnyOrder(OptionalInt.empty(), OptionalInt.of(0));
        assertThat(facts.every(Conduct.class)).extracting(Conduct::character).contains(Optional.of("excellent"));
    }
}
