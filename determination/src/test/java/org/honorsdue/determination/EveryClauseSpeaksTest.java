package org.honorsdue.determination;

import static org.assertj.core.api.Assertions.assertThat;
import static org.honorsdue.determination.Case.enlisted;
import static org.honorsdue.determination.Case.ofNoPaper;
import static org.honorsdue.determination.Case.officer;
import static org.honorsdue.determination.Case.with;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.honorsdue.determination.finding.Ground;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.law.LawClause;
import org.honorsdue.service.evidence.Evidence;
import org.honorsdue.service.fact.Device;
import org.honorsdue.service.fact.Qualification;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/** A clause that a rule holds and no soldier ever hears would be decoration: each must appear in somebody's proof. */
@DisplayName("Every clause held speaks in the proof of some soldier")
@DisplayNameGeneration(ReplaceUnderscores.class)
class EveryClauseSpeaksTest {
    private static final List<String> BY_ORDER = List.of(
            "medal-of-honor",
            "distinguished-service-cross",
            "distinguished-service-medal",
            "silver-star",
            "legion-of-merit",
            "distinguished-flying-cross",
            "soldiers-medal",
            "air-medal",
            "army-commendation-medal",
            "purple-heart",
            "bronze-star-medal",
            "distinguished-unit-citation");

    @Test
    void each_tested_clause_and_each_device() {
        Set<String> heard = new TreeSet<>();
        for (var soldier : soldiers()) {
            soldier.findings()
                    .findings()
                    .forEach(finding ->
                            finding.grounds().stream().map(Ground::clause).forEach(heard::add));
        }
        Set<String> held = new TreeSet<>();
        for (var rule : new LawBook(Reference.published()).rules()) {
            rule.routes()
                    .forEach(route -> route.clauses()
                            .forEach(clause -> held.add(clause.law().id())));
            rule.bars().forEach(bar -> held.add(bar.law().id()));
            rule.devices().stream().map(LawClause::id).forEach(held::add);
        }
        assertThat(heard).containsAll(held);
    }

    private static List<Case> soldiers() {
        var all = new ArrayList<Case>();
        var everything = new LawBook(Reference.published())
                .rules().stream().map(rule -> rule.award().id()).toArray(String[]::new);
        all.add(enlisted("1943-02-03", "1945-11-11").asks(everything));
        all.add(officer("1943-02-03", "1945-11-11").asks(everything));
        all.add(enlisted("1947-02-03", "1948-05-11").asks(everything));
        all.add(ofNoPaper().asks(everything));
        var decorated = enlisted("1940-02-03", "1945-11-11");
        BY_ORDER.forEach(award -> decorated.claims(award, 2, with(Device.LETTER_V, 1)));
        all.add(decorated);
        var combat = enlisted("1940-02-03", "1945-11-11")
                .arm("Infantry")
                .overseas("ETO", "1942-10-20", "1942-11-08", "1945-10-01", "1945-10-12")
                .badge("combat-infantryman-badge", "GO 12 HQ 999 Inf 44")
                .badge("expert-infantryman-badge", "")
                .claims("combat-infantryman-badge", 2)
                .claims("combat-medical-badge", 2)
                .order("bronze-star-medal", "GO 55", "1945-02-10", true)
                .campaigns("EA-TUN", "EA-SIC", "EA-NOR", "EA-RHI", "EA-CEN")
                .landed("EA-SIC", "amphibious", "1943-07-10")
                .landed("EA-NOR", "parachute", "1944-06-06")
                .landed("EA-NOR", "glider", "1944-06-06")
                .claims("army-good-conduct-medal", 2)
                .claims("ww2-victory-medal", 1, with(Device.BRONZE_SERVICE_STAR, 1))
                .claims("glider-badge", 1, with(Device.BRONZE_SERVICE_STAR, 1))
                .claims("philippine-presidential-unit-citation", 2)
                .claims("meritorious-unit-commendation", 2)
                .typed("driver-and-mechanic-badge", "Driver and Mechanic", "", Entry.QUALIFICATIONS)
                .typed("aviation-badge", "Avn Bdg Gnr", "", Entry.QUALIFICATIONS)
                .qualified(Qualification.Level.EXPERT, "Rifle", "1941-03-01")
                .qualified(Qualification.Level.MARKSMAN, "Rifle", "1943-03-01")
                .wounded("1943-03-01", "Tunisia")
                .wounded("1944-03-01", "Italy")
                .captive("1943-08-19", "1943-09-10", "Italy")
                .captive("1944-12-19", "1945-01-29", "Germany")
                .order("french-croix-de-guerre", "Decision 000", "1945-05-02")
                .order("belgian-croix-de-guerre", "Decision 000", "1945-05-02");
        all.add(combat);
        all.add(enlisted("1943-02-03", "1945-11-11")
                .overseas("ETO", "1944-08-22", "1944-08-29", "1945-10-01", "1945-10-09")
                .captive("1944-12-10", "1945-01-26", "Germany")
                .campaigns("EA-ARD")
                .badge("combat-infantryman-badge", "")
                .claims("bronze-star-medal", 1, with(Device.LETTER_V, 1)));
        all.add(enlisted("1943-02-03", "1945-11-11")
                .overseas("SWPA", "1943-08-22", "1943-09-09", "1945-10-01", "1945-10-19")
                .captive("1944-10-10", "1945-08-26", "Philippine Islands")
                .campaigns("AP-NGU", "AP-NSO", "AP-BIS", "AP-LEY", "AP-LUZ", "AP-RYU")
                .landed("AP-LEY", "amphibious", "1944-10-20")
                .landed("AP-LUZ", "amphibious", "1945-01-09")
                .stationed("Leyte", "1944-10-20", "1944-12-01")
                .credited("999th Infantry", "philippine-presidential-unit-citation", "1944-10-17", "1945-07-04"));
        all.add(enlisted("1943-02-03", "1946-07-11")
                .overseas("ETO", "1944-08-22", "1944-08-29", "1946-06-01", "1946-06-09")
                .stationed("Germany", "1945-05-09", "1945-07-01")
                .stationed("Austria", "1945-07-02", "1945-09-01")
                .stationed("Berlin", "1945-09-02", "1945-11-01"));
        for (var place : List.of("Austria", "Berlin", "Italy")) {
            all.add(enlisted("1943-02-03", "1946-07-11")
                    .overseas(place, "1944-08-22", "1944-08-29", "1946-06-01", "1946-06-09"));
        }
        for (var place : List.of("Japan", "Korea", "APTO")) {
            all.add(enlisted("1943-02-03", "1946-07-11")
                    .overseas(place, "1944-08-22", "1944-08-29", "1946-06-01", "1946-06-19"));
        }
        all.add(enlisted("1943-02-03", "1946-07-11")
                .overseas("Germany", "1945-11-20", "1945-11-29", "1946-06-01", "1946-06-09"));
        all.add(enlisted("1943-02-03", "1946-07-11")
                .overseas("Japan", "1946-03-02", "1946-03-22", "1946-06-01", "1946-06-19"));
        all.add(enlisted("1942-02-03", "1945-11-11")
                .arm("Air Corps")
                .overseas("Trinidad", "1942-11-04", "1942-11-08", "1943-08-20", "1943-08-24")
                .campaigns("AM-ASW")
                .claims("american-campaign-medal", 1, with(Device.ARROWHEAD, 1)));
        all.add(enlisted("1943-02-03", "1944-11-11")
                .stationed("Panama", "1943-05-01", "1943-07-01")
                .neverAbroad());
        for (var place : List.of("England", "Australia", "Panama")) {
            all.add(officer("1943-02-03", "1943-12-11")
                    .stationed(place, "1943-03-01", "1943-03-29")
                    .stationed(place, "1943-08-01", "1943-08-29")
                    .stationed(place, "1943-10-01", "1943-10-02"));
        }
        all.add(enlisted("1938-08-27", "1941-08-26"));
        all.add(enlisted("1943-02-03", "1945-11-11")
                .overseas("ETO", "1944-02-22", "1944-03-01", "1945-10-01", "1945-10-09")
                .assignedTo("16th Infantry", "1944-03-01", "1944-11-01", "infantry-regiment-16")
                .assignedTo("117th Infantry", "1944-11-02", "1945-09-01", "infantry-regiment-117"));
        all.add(enlisted("1943-02-03", "1945-11-11").conduct("excellent", 3));
        all.add(enlisted("1943-02-03", "1945-11-11").claims("army-good-conduct-medal", 2));
        all.add(enlisted("1943-02-03", "1945-11-11")
                .order("medal-of-honor", "WD GO 16", "1945-02-08")
                .order("medal-of-honor", "WD GO 20", "1945-03-08"));
        all.add(enlisted("1943-02-03", "1945-11-11")
                .overseas("SWPA", "1943-08-22", "1943-09-09", "1945-10-01", "1945-10-19")
                .campaigns("AP-NGU", "AP-NSO", "AP-BIS", "AP-LEY", "AP-LUZ")
                .claims("philippine-presidential-unit-citation", 2));
        all.add(enlisted("1944-01-03", "").died(Evidence.Death.Manner.KILLED_IN_ACTION, "1944-09-25"));
        all.add(enlisted("1944-07-11", "1945-04-12").conduct("excellent", 3).reason("disability"));
        all.add(ofNoPaper()
                .captive("1942-05-07", "1942-12-26", "Philippine Islands")
                .died(Evidence.Death.Manner.DIED_IN_CAPTIVITY, "1942-12-26"));
        all.add(ofNoPaper()
                .stationed("Corregidor", "1941-05-20", "1942-05-06")
                .stationed("Manila", "1946-07-04", "1946-07-04")
                .asOf("1950-01-01"));
        all.add(enlisted("1940-02-03", "1945-11-11")
                .campaigns("AP-PHI", "AP-LUZ")
                .assigned("999th Infantry", "1941-12-01", "1942-04-09")
                .credited("999th Infantry", "distinguished-unit-citation", "1941-12-08", "1942-04-09")
                .credited("999th Infantry", "philippine-presidential-unit-citation", "1941-12-07", "1942-05-10"));
        all.add(enlisted("1940-02-03", "1945-11-11")
                .stationed("Philippine Islands", "1944-11-08", "1945-01-01")
                .landed("AP-LEY", "amphibious", "1944-10-18"));
        all.add(enlisted("1940-02-03", "1945-11-11").landed("AP-LEY", "amphibious", "1944-10-18"));
        all.add(enlisted("1940-02-03", "1945-11-11").campaigns("AP-LUZ"));
        all.add(enlisted("1940-02-03", "1945-11-11").campaigns("AP-LEY"));
        all.add(enlisted("1943-02-03", "1945-11-11")
                .hospital(Evidence.HospitalAdmission.Cause.NON_BATTLE, "1944-12-24", "frostbite, severe"));
        all.add(enlisted("1943-02-03", "1945-11-11")
                .hospital(Evidence.HospitalAdmission.Cause.NON_BATTLE, "1944-12-24", "trench foot"));
        all.add(enlisted("1943-02-03", "1945-11-11")
                .hospital(Evidence.HospitalAdmission.Cause.NON_BATTLE, "1944-12-24", "fracture"));
        all.add(enlisted("1943-02-03", "1945-11-11")
                .captive("1944-12-19", "1945-04-29", "Germany")
                .wounded("1945-02-10", "Germany"));
        all.add(enlisted("1943-02-03", "1945-11-11").wounded("1945-02-10", "Germany"));
        all.add(enlisted("1940-02-03", "1945-11-11").order("purple-heart", "GO 9", "1942-09-01"));
        all.add(enlisted("1943-02-03", "1945-11-11").interned("1944-06-13", "1944-10-05", "Switzerland"));
        all.add(enlisted("1942-11-03", "1945-12-02")
                .woman()
                .arm("Women's Army Corps")
                .claims("wac-service-medal", 1, with(Device.BRONZE_SERVICE_STAR, 1)));
        all.add(officer("1942-11-03", "1945-12-02").woman().arm("Army Nurse Corps"));
        all.add(enlisted("1943-02-03", "1945-11-11")
                .arm("Medical Department")
                .badge("combat-infantryman-badge", "")
                .badge("combat-medical-badge", ""));
        all.add(enlisted("1943-02-03", "1945-11-11").school("Parachute School"));
        all.add(enlisted("1943-02-03", "1945-11-11")
                .landed("EA-NOR", "parachute", "1944-06-06")
                .landed("EA-NOR", "glider", "1944-06-06"));
        for (var award : List.of("french-fourragere", "belgian-fourragere", "netherlands-orange-lanyard")) {
            all.add(enlisted("1943-02-03", "1945-11-11").claims(award));
        }
        for (var award : List.of("french-croix-de-guerre", "belgian-croix-de-guerre")) {
            all.add(enlisted("1943-02-03", "1945-11-11").credited("999th Infantry", award, "1944-09-02", "1944-09-16"));
        }
        all.add(enlisted("1940-01-01", "1942-12-31")
                .paper(Tour.Category.ENLISTED, "1943-01-01", "1945-12-31")
                .organization("Co B 999th Infantry")
                .asks("shoulder-sleeve-insignia"));
        return all;
    }
}
