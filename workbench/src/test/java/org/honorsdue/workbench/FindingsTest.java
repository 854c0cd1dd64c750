package org.honorsdue.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.interactions.Actions;

@DisplayName("The findings")
@DisplayNameGeneration(ReplaceUnderscores.class)
class FindingsTest {
    @Test
    void light_up_the_characters_that_a_ground_rests_on() {
        try (var room = Room.open()) {
            room.go(room.tour("Fairweather") + "/findings#eame-campaign-medal");
            var ground = room.see("#eame-campaign-medal .ground[data-lights*='service_outside_us:']");
            new Actions(room.browserItself()).moveToElement(ground).perform();
            room.see("#p-1-service_outside_us.lit mark");
            room.picture("finding-lit");
        }
    }

    @Test
    void take_new_evidence_in_place_and_are_examined_again() {
        try (var room = Room.open()) {
            room.go("/new").type("#name", "Fernhill, Casper D").click(".stack button.first");
            room.type("#t-1-separated", "6 Dec 45");
            room.type("#t-1-entered_active_service", "19 Jan 43");
            room.type("#t-1-decorations_and_citations", "PURPLE HEART");
            room.saved();
            room.click(".leaves a[href$='/findings']");
            room.click("#purple-heart summary");
            String before = room.textOf("#purple-heart .stand");
            assertThat(before).doesNotContain("authorized");
            String form = "#purple-heart form:has(input[value='hospital-admission'])";
            var details = room.browserItself()
                    .findElement(By.cssSelector("#purple-heart details:has(input[value='hospital-admission'])"));
            details.findElement(By.tagName("summary")).click();
            // A wrong date is told in the form, and nothing is lost.
            room.type(form + " input[name='date']", "1944-02-31");
            room.type(form + " input[name='diagnosis']", "fragment wound");
            room.click(form + " button");
            room.see("#purple-heart [role='alert']", "1944-02-31");
            assertThat(room.see(form + " input[name='diagnosis']").getDomProperty("value"))
                    .isEqualTo("fragment wound");
            room.type(form + " input[name='date']", "1944-11-22");
            new org.openqa.selenium.support.ui.Select(room.see(form + " select[name='cause']")).selectByValue("battle");
            room.click(form + " button");
            room.see("#evidence", "fragment wound");
            room.see("#purple-heart .stand", "authorized");
            room.click("#evidence-1 button");
            room.see("#evidence", "Nothing is added yet");
            room.see("#purple-heart .stand", before);
        }
    }

    @Test
    void answer_as_the_law_stood_on_another_day() {
        try (var room = Room.open()) {
            room.go(room.tour("Pettigrew") + "/findings");
            assertThat(room.textOf(".found")).contains("American Campaign Medal");
            room.click("a[href*='as_of=1943-11-18']");
            room.see("#as-of");
            assertThat(room.path()).endsWith("/findings");
            assertThat(room.textOf("#not-due"))
                    .contains("World War II Victory Medal")
                    .contains("Not law on 18 November 1943");
        }
    }
}
