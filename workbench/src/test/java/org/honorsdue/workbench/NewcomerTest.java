package org.honorsdue.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("Somebody who has never seen the room")
@DisplayNameGeneration(ReplaceUnderscores.class)
class NewcomerTest {
    @Test
    void is_led_by_the_first_page_to_the_tour_and_through_its_folders() {
        try (var room = Room.open()) {
            assertThat(room.textOf("main")).contains("Nothing is kept here yet");
            room.picture("first-run");
            room.click("form[action='/tour'] button");
            room.see("h1", "Seven soldiers");
            assertThat(room.browserItself().findElements(org.openqa.selenium.By.cssSelector(".tour a.press")))
                    .hasSize(7);
            room.click(".tour li:first-child a.press");
            room.see("h1", "Fairweather");
            assertThat(room.textOf(".tour-strip")).contains("box 33");
            room.click(".tour-strip a");
            room.see("h1", "Seven soldiers");
        }
    }

    @Test
    void takes_a_paper_to_findings_a_rack_next_steps_and_a_letter_without_a_manual() {
        try (var room = Room.open()) {
            room.click("a[href='/new']");
            room.type("#name", "Fernhill, Casper D").click(".stack button.first");
            room.see("h1", "Fernhill");
            room.see("#margin", "Nothing is found yet");
            room.type("#t-1-grade", "Pfc");
            room.type("#t-1-arm", "Inf");
            room.type("#t-1-organization", "Co F 999th Inf");
            room.type("#t-1-separated", "6 Dec 45");
            room.type("#t-1-inducted", "12 Jan 43");
            room.type("#t-1-entered_active_service", "19 Jan 43");
            room.type("#t-1-battles_and_campaigns", "NORMANDY RHINELAND");
            room.see("#r-1-battles_and_campaigns", "Normandy");
            room.type("#t-1-decorations_and_citations", "EAME THEATER RIBBON W/2 BRONZE STARS PURPLE HEART");
            room.see("#r-1-decorations_and_citations", "Purple Heart");
            room.type("#e-1-service_outside_us .leg:nth-of-type(2) input:nth-child(1)", "8 Apr 44");
            room.type("#e-1-service_outside_us .leg:nth-of-type(2) input:nth-child(2)", "ETO");
            room.type("#e-1-service_outside_us .leg:nth-of-type(2) input:nth-child(3)", "19 Apr 44");
            room.type("#e-1-service_outside_us .leg:nth-of-type(3) input:nth-child(1)", "12 Nov 45");
            room.type("#e-1-service_outside_us .leg:nth-of-type(3) input:nth-child(2)", "USA");
            room.type("#e-1-service_outside_us .leg:nth-of-type(3) input:nth-child(3)", "24 Nov 45");
            room.see("#margin", "European-African-Middle Eastern Campaign Medal");
            room.see("#margin", "World War II Victory Medal");
            room.saved();
            room.click(".leaves a[href$='/findings']");
            room.see("#left-out", "World War II Victory Medal");
            room.click("#ww2-victory-medal summary");
            assertThat(room.textOf("#ww2-victory-medal .cite")).contains("578");
            room.click(".leaves a[href$='/rack']");
            room.see(".cloth svg");
            room.click(".leaves a[href$='/steps']");
            assertThat(room.textOf("main")).contains("look for");
            room.click(".leaves a[href$='/letters']");
            room.click("button[value='all']");
            room.see("#kept", "made ");
            assertThat(room.has("#kept a[href$='/pdf']")).isTrue();
        }
    }
}
