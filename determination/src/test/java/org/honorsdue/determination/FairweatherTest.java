package org.honorsdue.determination;

import static org.honorsdue.determination.Case.with;
import static org.honorsdue.determination.FindingAssert.assertThat;

import org.honorsdue.service.fact.Device;
import org.honorsdue.service.fact.Qualification;
import org.honorsdue.service.fact.ServiceTotal;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/** The soldier of the worked example: an artilleryman of the last year in Europe. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class FairweatherTest {
    static Case fairweather() {
        return Case.enlisted("1943-02-03", "1945-11-11")
                .arm("Field Artillery")
                .component("Army of the United States")
                .organization("Btry B 999th FA Bn")
                .specialty("844")
                .qualified(Qualification.Level.MARKSMAN, "Rifle", "1943-12")
                .campaigns("EA-RHI", "EA-ARD", "EA-CEN")
                .claims("eame-campaign-medal", 1, with(Device.BRONZE_SERVICE_STAR, 3))
                .claims("army-good-conduct-medal")
                .overseas("ETO", "1944-08-22", "1944-08-29", "1945-11-01", "1945-11-09")
                .total(ServiceTotal.Kind.CONTINENTAL, 1, 6, 17)
                .total(ServiceTotal.Kind.FOREIGN, 1, 2, 18)
                .conduct("excellent", 0)
                .lapelButton();
    }

    @Test
    void has_the_european_medal_with_three_stars() {
        assertThat(fairweather().on("eame-campaign-medal"))
                .isAuthorized()
                .isOnPaper()
                .wearsFor(Device.BRONZE_SERVICE_STAR, "Rhineland", "Ardennes-Alsace", "Central Europe");
    }

    @Test
    void has_the_medals_of_later_law() {
        assertThat(fairweather().on("ww2-victory-medal")).isAuthorized().isNotOnPaper();
        assertThat(fairweather().on("american-campaign-medal"))
                .isAuthorized()
                .isNotOnPaper()
                .saying("dates from 15 March 1946");
        assertThat(fairweather().on("army-of-occupation-medal"))
                .isPresumed()
                .wants("station")
                .settledBy("morning-reports");
        assertThat(fairweather().on("army-good-conduct-medal")).isAuthorized().isOnPaper();
        assertThat(fairweather().on("overseas-service-bars")).isAuthorized().counts(2);
        assertThat(fairweather().on("honorable-service-lapel-button"))
                .isAuthorized()
                .isOnPaper();
        assertThat(fairweather().on("marksmanship-badge")).isAuthorized().wears(Device.QUALIFICATION_BAR, 1);
    }
}
