package org.honorsdue.documents;

import static org.honorsdue.documents.InventedSoldier.man;
import static org.honorsdue.documents.InventedSoldier.unnamed;
import static org.honorsdue.documents.InventedSoldier.woman;

import java.util.List;
import org.honorsdue.service.evidence.Evidence.Death.Manner;
import org.honorsdue.service.evidence.Evidence.HospitalAdmission.Cause;
import org.honorsdue.service.fact.Device;
import org.honorsdue.service.fact.DeviceCount;
import org.honorsdue.service.fact.Qualification;
import org.honorsdue.service.fact.ServiceTotal;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Form;

/**
 * Twelve invented soldiers, one for each situation a letter has to find words for. People, orders and 999th units are
 * invented; campaigns and dates are those of the war.
 */
public final class InventedSoldiers {
    private InventedSoldiers() {}

    public static List<InventedSoldier> all() {
        return List.of(
                artilleryman(),
                infantryman(),
                airman(),
                womanOfTheCorps(),
                aidMan(),
                neverAbroad(),
                killed(),
                officer(),
                twoPapers(),
                bareWords(),
                crowdedPaper(),
                noPaper());
    }

    public static InventedSoldier ofId(String id) {
        return all().stream()
                .filter(soldier -> soldier.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** An order no paper names, a medal of later law, an occupation with its proof. */
    private static InventedSoldier artilleryman() {
        return man("artilleryman", "Tallowby, Edwin T")
                .paper(
                        Form.ENLISTED_53_55,
                        "name",
                        "TALLOWBY EDWIN T",
                        "serial_number",
                        "35 000 101",
                        "grade",
                        "Tec 5",
                        "arm",
                        "FA",
                        "component",
                        "AUS",
                        "organization",
                        "Btry B 999th AFA Bn",
                        "separated",
                        "11 Nov 45",
                        "place_of_separation",
                        "Sep Cen Cp Atterbury Ind",
                        "permanent_address",
                        "12 Sample Rd Anytown Ohio",
                        "date_of_birth",
                        "9 Apr 23",
                        "place_of_birth",
                        "Anytown Ohio",
                        "race",
                        "Zrace",
                        "entered_active_service",
                        "3 Feb 43",
                        "military_specialty",
                        "Cannoneer 844",
                        "qualifications",
                        "MM Rifle Dec 43",
                        "battles_and_campaigns",
                        "Rhineland Ardennes Central Europe GO 33 WD 45",
                        "decorations_and_citations",
                        "EAMET Rib w/3 Br Stars; Good Conduct Medal",
                        "wounds",
                        "None",
                        "service_outside_us",
                        "22 Aug 44 ETO 29 Aug 44\n1 Nov 45 USA 9 Nov 45",
                        "continental_service",
                        "1-6-21",
                        "foreign_service",
                        "1-2-18",
                        "remarks",
                        "Lapel button issued. ASR score (2 Sept 45) 63. No days lost under AW 107. Xqzl notation",
                        "character",
                        "Excellent")
                .served(Tour.Category.ENLISTED, "1943-02-03", "1945-11-11")
                .grade("Technician Fifth Grade", Tour.Category.ENLISTED)
                .arm("Field Artillery")
                .component("Army of the United States")
                .organization("Btry B 999th AFA Bn")
                .born("1923-04-09")
                .specialty("844", "Cannoneer")
                .qualified(Qualification.Level.MARKSMAN, "Rifle", "1943-12", "MM Rifle Dec 43")
                .campaigns("EA-RHI", "Rhineland", "EA-ARD", "Ardennes", "EA-CEN", "Central Europe")
                .claims("eame-campaign-medal", 1, "EAMET Rib w/3 Br Stars", stars(3))
                .claims("army-good-conduct-medal", 1, "Good Conduct Medal")
                .overseas("ETO", "1944-08-22", "1944-08-29", "1945-11-01", "1945-11-09")
                .total(ServiceTotal.Kind.CONTINENTAL, 1, 6, 21)
                .total(ServiceTotal.Kind.FOREIGN, 1, 2, 18)
                .lapelButton("Lapel button issued")
                .points(63, "1945-09-02", "ASR score (2 Sept 45) 63")
                .noDaysLost("No days lost under AW 107")
                .character("excellent")
                .unread(Entry.REMARKS, "Xqzl notation")
                .order("silver-star", "GO 40 HQ 999th Inf Div", "1944-12-03", true, "carbon copy among his letters")
                .assigned(
                        "Btry B 999th AFA Bn",
                        "1944-09-20",
                        "1945-10-10",
                        "morning reports, National Archives at St. Louis")
                .stationed("Germany", "1945-05-09", "1945-09-30", "morning reports, National Archives at St. Louis");
    }

    /** Two wounds and one medal for them, a badge that brings another, everything typed in capitals. */
    private static InventedSoldier infantryman() {
        return man("infantryman", "Ostergren, Hollis E")
                .paper(
                        Form.ENLISTED_53_55,
                        "name",
                        "OSTERGREN HOLLIS E",
                        "serial_number",
                        "37 000 202",
                        "grade",
                        "S/Sgt",
                        "arm",
                        "Inf",
                        "component",
                        "AUS",
                        "organization",
                        "Co F 999th Inf",
                        "separated",
                        "6 Dec 45",
                        "entered_active_service",
                        "19 Jan 43",
                        "military_specialty",
                        "Squad Leader 653",
                        "qualifications",
                        "CMBT INF BDG GO 7 HQ 999TH INF 44; RIFLE M1 EXP MAY 43",
                        "battles_and_campaigns",
                        "NORMANDY NO FRANCE RHINELAND CENTRAL EUROPE GO 33 & 40 WD 45",
                        "decorations_and_citations",
                        "EAME THEATER RIBBON W/4 BRONZE STARS GOOD CONDUCT MEDAL PURPLE HEART GO 31 HQ 999 GEN HOSP 44",
                        "wounds",
                        "FRANCE 12 JUL 44 GERMANY 22 NOV 44",
                        "service_outside_us",
                        "8 Apr 44 ETO 19 Apr 44\n12 Nov 45 USA 24 Nov 45",
                        "remarks",
                        "LAPEL BUTTON ISSUED ASR SCORE (2 SEP 45) 77 NO DAYS LOST UNDER AW 107",
                        "character",
                        "Excellent")
                .served(Tour.Category.ENLISTED, "1943-01-19", "1945-12-06")
                .grade("Staff Sergeant", Tour.Category.ENLISTED)
                .arm("Infantry")
                .component("Army of the United States")
                .organization("Co F 999th Inf")
                .specialty("653", "Squad Leader")
                .qualified(Qualification.Level.EXPERT, "Rifle", "1943-05", "RIFLE M1 EXP MAY 43")
                .campaigns(
                        "EA-NOR", "NORMANDY", "EA-NFR", "NO FRANCE", "EA-RHI", "RHINELAND", "EA-CEN", "CENTRAL EUROPE")
                .claims(
                        Entry.QUALIFICATIONS,
                        "combat-infantryman-badge",
                        1,
                        "CMBT INF BDG GO 7 HQ 999TH INF 44",
                        "GO 7 HQ 999TH INF 44")
                .claims("eame-campaign-medal", 1, "EAME THEATER RIBBON W/4 BRONZE STARS", stars(4))
                .claims("army-good-conduct-medal", 1, "GOOD CONDUCT MEDAL")
                .claims(
                        Entry.DECORATIONS_AND_CITATIONS,
                        "purple-heart",
                        1,
                        "PURPLE HEART GO 31 HQ 999 GEN HOSP 44",
                        "GO 31 HQ 999 GEN HOSP 44")
                .wounded("1944-07-12", "FRANCE", "FRANCE 12 JUL 44")
                .wounded("1944-11-22", "GERMANY", "GERMANY 22 NOV 44")
                .overseas("ETO", "1944-04-08", "1944-04-19", "1945-11-12", "1945-11-24")
                .lapelButton("LAPEL BUTTON ISSUED")
                .points(77, "1945-09-02", "ASR SCORE (2 SEP 45) 77")
                .noDaysLost("NO DAYS LOST UNDER AW 107")
                .character("excellent")
                .hospital(Cause.BATTLE, "1944-11-22", "fragment wound, right forearm", "hospital admission cards")
                .assigned("Co F 999th Inf", "1944-05-02", "1945-10-30", "morning reports");
    }

    /** Oak leaf clusters, a unit citation earned by being there, one star too few. */
    private static InventedSoldier airman() {
        return man("airman", "Quillfeather, Victor A")
                .paper(
                        Form.ENLISTED_53_55,
                        "name",
                        "QUILLFEATHER VICTOR A",
                        "serial_number",
                        "13 000 303",
                        "grade",
                        "T/Sgt",
                        "arm",
                        "AAF",
                        "organization",
                        "3599th AAF Base Unit",
                        "separated",
                        "5 Oct 45",
                        "entered_active_service",
                        "20 Oct 42",
                        "military_specialty",
                        "Radio Opr Mech Gnr AAF 757",
                        "qualifications",
                        "Avn Badge \"Aerial Gunner\"",
                        "battles_and_campaigns",
                        "Air Offensive Europe Normandy",
                        "decorations_and_citations",
                        "Dist Flying Cross GO 260 Hq 3 Bomb Div 44; Air Medal w/3 OLC; EAMETO Ribbon w/1 Bronze Star",
                        "wounds",
                        "None",
                        "service_outside_us",
                        "28 Oct 43 ETO 8 Nov 43\n1 Jul 44 USA 12 Jul 44",
                        "remarks",
                        "No days lost under AW 107")
                .served(Tour.Category.ENLISTED, "1942-10-20", "1945-10-05")
                .grade("Technical Sergeant", Tour.Category.ENLISTED)
                .arm("Army Air Forces")
                .organization("3599th AAF Base Unit")
                .specialty("757", "Radio operator, mechanic and gunner")
                .campaigns("EA-AOE", "Air Offensive Europe", "EA-NOR", "Normandy")
                .claims(Entry.QUALIFICATIONS, "aviation-badge", 1, "Avn Badge \"Aerial Gunner\"", "")
                .claims(
                        Entry.DECORATIONS_AND_CITATIONS,
                        "distinguished-flying-cross",
                        1,
                        "Dist Flying Cross GO 260 Hq 3 Bomb Div 44",
                        "GO 260 Hq 3 Bomb Div 44")
                .claims("air-medal", 4, "Air Medal w/3 OLC", new DeviceCount(Device.BRONZE_OAK_LEAF_CLUSTER, 3))
                .claims("eame-campaign-medal", 1, "EAMETO Ribbon w/1 Bronze Star", stars(1))
                .overseas("ETO", "1943-10-28", "1943-11-08", "1944-07-01", "1944-07-12")
                .noDaysLost("No days lost under AW 107")
                .assigned("999th Bomb Gp", "1943-11-20", "1944-06-28", "squadron roster")
                .credited(
                        "999th Bomb Gp",
                        "distinguished-unit-citation",
                        "WD GO 000 1944",
                        "1944-01-11",
                        "1944-01-11",
                        "invented for the tests")
                .order("distinguished-flying-cross", "GO 260 Hq 3 Bomb Div", "1944-06-20", false, "");
    }

    /** A medal of the women's corps, a place that is asked about. */
    private static InventedSoldier womanOfTheCorps() {
        return woman("woman-of-the-corps", "Marrowfield, Lenora J")
                .paper(
                        Form.ENLISTED_53_55,
                        "name",
                        "MARROWFIELD LENORA J",
                        "serial_number",
                        "A-000 404",
                        "grade",
                        "Sgt",
                        "arm",
                        "WAC",
                        "component",
                        "AUS",
                        "organization",
                        "WAC Det Hq 999th Base Sec",
                        "separated",
                        "9 Nov 45",
                        "entered_active_service",
                        "1 Sep 43",
                        "military_specialty",
                        "Stenographer 213",
                        "qualifications",
                        "None",
                        "battles_and_campaigns",
                        "None",
                        "decorations_and_citations",
                        "EAME Theater Ribbon; Good Conduct Medal",
                        "wounds",
                        "None",
                        "service_outside_us",
                        "14 Jul 44 ETO 25 Jul 44\n18 Oct 45 USA 29 Oct 45",
                        "remarks",
                        "Lapel button issued. No days lost under AW 107. Service in WAAC 8 Feb 43 to 31 Aug 43",
                        "character",
                        "Excellent")
                .served(Tour.Category.ENLISTED, "1943-09-01", "1945-11-09")
                .grade("Sergeant", Tour.Category.ENLISTED)
                .arm("Women's Army Corps")
                .organization("WAC Det Hq 999th Base Sec")
                .specialty("213", "Stenographer")
                .claims("eame-campaign-medal", 1, "EAME Theater Ribbon")
                .claims("army-good-conduct-medal", 1, "Good Conduct Medal")
                .overseas("ETO", "1944-07-14", "1944-07-25", "1945-10-18", "1945-10-29")
                .lapelButton("Lapel button issued")
                .noDaysLost("No days lost under AW 107")
                .character("excellent")
                .stationed("Germany", "1945-06-02", "1945-10-05", "her letters home");
    }

    /** A landing, two conditions of the Philippines, a badge, a winter in Japan. */
    private static InventedSoldier aidMan() {
        return man("aid-man", "Winterbourne, Walter P")
                .paper(
                        Form.ENLISTED_53_55,
                        "name",
                        "WINTERBOURNE WALTER P",
                        "serial_number",
                        "36 000 505",
                        "grade",
                        "Tec 4",
                        "arm",
                        "MD",
                        "organization",
                        "Med Det 999th Inf",
                        "separated",
                        "14 Feb 46",
                        "entered_active_service",
                        "30 Jun 43",
                        "military_specialty",
                        "Surgical Technician 861",
                        "qualifications",
                        "MEDICAL BADGE GO 2 HQ 999 INF 45",
                        "battles_and_campaigns",
                        "NEW GUINEA LEYTE LUZON",
                        "decorations_and_citations",
                        "AP THEATER RIBBON W/3 BR STARS PHIL LIB RIBBON W/1 BR STAR GOOD CONDUCT MEDAL WW II VICTORY MEDAL",
                        "wounds",
                        "NONE",
                        "service_outside_us",
                        "2 May 44 SWPA 26 May 44\n19 Jan 46 USA 4 Feb 46",
                        "remarks",
                        "LAPEL BUTTON ISSUED NO DAYS LOST UNDER AW 107",
                        "character",
                        "Excellent")
                .served(Tour.Category.ENLISTED, "1943-06-30", "1946-02-14")
                .grade("Technician Fourth Grade", Tour.Category.ENLISTED)
                .arm("Medical Department")
                .organization("Med Det 999th Inf")
                .specialty("861", "Surgical Technician")
                .campaigns("AP-NGU", "NEW GUINEA", "AP-LEY", "LEYTE", "AP-LUZ", "LUZON")
                .claims(
                        Entry.QUALIFICATIONS,
                        "combat-medical-badge",
                        1,
                        "MEDICAL BADGE GO 2 HQ 999 INF 45",
                        "GO 2 HQ 999 INF 45")
                .claims("asiatic-pacific-campaign-medal", 1, "AP THEATER RIBBON W/3 BR STARS", stars(3))
                .claims("philippine-liberation-ribbon", 1, "PHIL LIB RIBBON W/1 BR STAR", stars(1))
                .claims("army-good-conduct-medal", 1, "GOOD CONDUCT MEDAL")
                .claims("ww2-victory-medal", 1, "WW II VICTORY MEDAL")
                .overseas("SWPA", "1944-05-02", "1944-05-26", "1946-01-19", "1946-02-04")
                .lapelButton("LAPEL BUTTON ISSUED")
                .noDaysLost("NO DAYS LOST UNDER AW 107")
                .character("excellent")
                .landed("Leyte", "amphibious", "1944-10-20", "order listing the assault landing")
                .stationed("Leyte", "1944-10-20", "1945-01-05", "")
                .stationed("Luzon", "1945-01-09", "1945-09-18", "")
                .stationed("Japan", "1945-09-25", "1946-01-12", "morning reports");
    }

    /** A bare paper of 1943; the family asks for a medal of a later war. */
    private static InventedSoldier neverAbroad() {
        return man("never-abroad", "Dunmoor, Amos L")
                .paper(
                        Form.ENLISTED_53_55,
                        "name",
                        "DUNMOOR AMOS L",
                        "serial_number",
                        "33 000 606",
                        "grade",
                        "Cpl",
                        "arm",
                        "CAC",
                        "organization",
                        "Btry D 999th CA",
                        "separated",
                        "18 Nov 43",
                        "entered_active_service",
                        "20 Oct 41",
                        "military_specialty",
                        "Gun Crewman AA 601",
                        "qualifications",
                        "MM Rifle Feb 42",
                        "battles_and_campaigns",
                        "None",
                        "decorations_and_citations",
                        "American Defense Service Ribbon",
                        "wounds",
                        "None",
                        "remarks",
                        "No days lost under AW 107",
                        "character",
                        "Excellent")
                .served(Tour.Category.ENLISTED, "1941-10-20", "1943-11-18")
                .grade("Corporal", Tour.Category.ENLISTED)
                .arm("Coast Artillery Corps")
                .organization("Btry D 999th CA")
                .qualified(Qualification.Level.MARKSMAN, "Rifle", "1942-02", "MM Rifle Feb 42")
                .claims("american-defense-service-medal", 1, "American Defense Service Ribbon")
                .noDaysLost("No days lost under AW 107")
                .character("excellent")
                .blameless("discharge certificate")
                .stated("family", "he should have the National Defense Service Medal")
                .asking("national-defense-service-medal");
    }

    /** No discharge at all: a report of death, captivity, everything from other evidence. */
    private static InventedSoldier killed() {
        return man("died-in-captivity", "Larkrise, Elias R")
                .paper(
                        Form.REPORT_OF_DEATH,
                        "name",
                        "LARKRISE ELIAS R",
                        "serial_number",
                        "32 000 707",
                        "grade",
                        "Pfc",
                        "arm",
                        "Inf",
                        "organization",
                        "Co C 999th Inf",
                        "entered_active_service",
                        "4 Aug 43",
                        "remarks",
                        "Died of wounds in captivity 26 Dec 44 Germany")
                .served(Tour.Category.ENLISTED, "1943-08-04", "")
                .grade("Private First Class", Tour.Category.ENLISTED)
                .arm("Infantry")
                .organization("Co C 999th Inf")
                .assigned("Co C 999th Inf", "1944-09-28", "1944-12-19", "morning reports")
                .stationed("Belgium", "1944-12-10", "1944-12-19", "morning reports")
                .captive("1944-12-19", "1944-12-26", "Germany", "prisoner of war card data, National Archives")
                .hospital(Cause.BATTLE, "1944-12-18", "gunshot wound, abdomen", "battalion aid station log")
                .died("1944-12-26", Manner.DIED_OF_WOUNDS, "War Department report of death")
                .order("combat-infantryman-badge", "GO 9 Hq 999th Inf", "1944-11-15", false, "");
    }

    /** The officers' form with its other box numbers; no Good Conduct Medal for an officer. */
    private static InventedSoldier officer() {
        return man("officer", "Stonehythe, Gregory M")
                .paper(
                        Form.OFFICER_53_98,
                        "name",
                        "STONEHYTHE GREGORY M",
                        "serial_number",
                        "O-1 000 808",
                        "grade",
                        "1st Lt",
                        "arm",
                        "Inf",
                        "organization",
                        "Hq 2d Bn 999th Inf",
                        "separated",
                        "2 Mar 46",
                        "entered_active_service",
                        "11 Jun 42",
                        "military_specialty",
                        "Inf Unit Comdr 1542",
                        "battles_and_campaigns",
                        "Naples-Foggia Rome-Arno Po Valley",
                        "decorations_and_citations",
                        "Bronze Star Medal GO 12 Hq 999 Inf Div 45; EAME Campaign Medal w/3 Bronze Stars; Good Conduct Medal; Mexican Border Rib",
                        "wounds",
                        "None",
                        "service_outside_us",
                        "3 Sep 43 MTO 14 Sep 43\n20 Nov 45 USA 2 Dec 45",
                        "remarks",
                        "")
                .served(Tour.Category.OFFICER, "1942-06-11", "1946-03-02")
                .grade("First Lieutenant", Tour.Category.OFFICER)
                .arm("Infantry")
                .organization("Hq 2d Bn 999th Inf")
                .specialty("1542", "Infantry Unit Commander")
                .campaigns("EA-NAF", "Naples-Foggia", "EA-ROM", "Rome-Arno", "EA-POV", "Po Valley")
                .claims(
                        Entry.DECORATIONS_AND_CITATIONS,
                        "bronze-star-medal",
                        1,
                        "Bronze Star Medal GO 12 Hq 999 Inf Div 45",
                        "GO 12 Hq 999 Inf Div 45")
                .claims("eame-campaign-medal", 1, "EAME Campaign Medal w/3 Bronze Stars", stars(3))
                .claims("army-good-conduct-medal", 1, "Good Conduct Medal")
                .overseas("MTO", "1943-09-03", "1943-09-14", "1945-11-20", "1945-12-02")
                .unread(Entry.DECORATIONS_AND_CITATIONS, "Mexican Border Rib");
    }

    /** Two papers that contradict each other on the day between them. */
    private static InventedSoldier twoPapers() {
        return man("two-papers", "Ravenscar, Dominic J")
                .paper(
                        Form.ENLISTED_53_55,
                        "name",
                        "RAVENSCAR DOMINIC J",
                        "serial_number",
                        "12 000 909",
                        "grade",
                        "Cpl",
                        "arm",
                        "QMC",
                        "organization",
                        "999th QM Trk Co",
                        "separated",
                        "12 Nov 45",
                        "entered_active_service",
                        "5 Mar 44",
                        "decorations_and_citations",
                        "EAME Campaign Medal; Good Conduct Medal",
                        "service_outside_us",
                        "2 Oct 44 ETO 12 Oct 44",
                        "remarks",
                        "Disch to reenlist in RA",
                        "character",
                        "Excellent")
                .served(Tour.Category.ENLISTED, "1944-03-05", "1945-11-12")
                .grade("Corporal", Tour.Category.ENLISTED)
                .arm("Quartermaster Corps")
                .organization("999th QM Trk Co")
                .claims("eame-campaign-medal", 1, "EAME Campaign Medal")
                .claims("army-good-conduct-medal", 1, "Good Conduct Medal")
                .overseas("ETO", "1944-10-02", "1944-10-12", "", "")
                .paper(
                        Form.ENLISTED_53_55,
                        "name",
                        "RAVENSCAR DOMINIC J",
                        "serial_number",
                        "12 000 909",
                        "grade",
                        "Sgt",
                        "arm",
                        "QMC",
                        "organization",
                        "999th QM Trk Co",
                        "separated",
                        "20 Jan 47",
                        "entered_active_service",
                        "15 Nov 45",
                        "decorations_and_citations",
                        "WW II Victory Medal; Army of Occupation Medal Germany",
                        "service_outside_us",
                        "28 Dec 46 USA 8 Jan 47",
                        "remarks",
                        "Prior serv 5 Mar 44 to 12 Nov 45",
                        "character",
                        "Excellent")
                .served(Tour.Category.ENLISTED, "1945-11-15", "1947-01-20")
                .grade("Sergeant", Tour.Category.ENLISTED)
                .claims("ww2-victory-medal", 1, "WW II Victory Medal")
                .claims(
                        "army-of-occupation-medal",
                        1,
                        "Army of Occupation Medal Germany",
                        new DeviceCount(Device.GERMANY_CLASP, 1))
                .stationed("Germany", "1945-06-01", "1946-12-20", "unit roster")
                .conflict(
                        "The first paper ends on 12 November 1945 and the second begins on 15 November 1945: three days"
                                + " are not covered.",
                        Entry.ENTERED_ACTIVE_SERVICE,
                        "15 Nov 45");
    }

    /** A paper with next to nothing on it and no name given. */
    private static InventedSoldier bareWords() {
        return unnamed("bare")
                .paper(Form.OTHER, "separated", "1945", "decorations_and_citations", "")
                .served(Tour.Category.NOT_SHOWN, "", "1945");
    }

    /** Names with accents, a word without a blank, a line of two hundred characters: nothing may push a page apart. */
    private static InventedSoldier crowdedPaper() {
        String line = "RHINELAND "
                + "CENTRAL EUROPE ARDENNES NORTHERN FRANCE NORMANDY ".repeat(4).strip();
        String unbroken = "GO33WD45ASAMENDEDBYGO40WD45ANDGO105WD45".repeat(3);
        return man("crowded", "Łukasiewicz-Måløy, José “Tex” Ángel")
                .paper(
                        Form.ENLISTED_53_55,
                        "name",
                        "LUKASIEWICZ-MALOY JOSE A",
                        "serial_number",
                        "38 001 010",
                        "grade",
                        "Pvt",
                        "arm",
                        "TC",
                        "organization",
                        "999th Port Bn (Provisional) attached 9999th Amphibian Truck Company, Détachement “Øst” of the Base Section",
                        "separated",
                        "30 Apr 46",
                        "entered_active_service",
                        "1 Mar 44",
                        "battles_and_campaigns",
                        line,
                        "decorations_and_citations",
                        "EAME Ribbon " + unbroken + " <&> \"quoted\"",
                        "service_outside_us",
                        "1 Oct 44 ETO 9 Oct 44\n1 Apr 46 USA 9 Apr 46",
                        "remarks",
                        "Żołnierz " + unbroken)
                .served(Tour.Category.ENLISTED, "1944-03-01", "1946-04-30")
                .grade("Private", Tour.Category.ENLISTED)
                .arm("Transportation Corps")
                .organization(
                        "999th Port Bn (Provisional) attached 9999th Amphibian Truck Company, Détachement “Øst” of the Base Section")
                .campaigns("EA-RHI", "RHINELAND", "EA-CEN", "CENTRAL EUROPE", "EA-NOR", "NORMANDY")
                .claims("eame-campaign-medal", 1, "EAME Ribbon " + unbroken)
                .overseas("ETO", "1944-10-01", "1944-10-09", "1946-04-01", "1946-04-09")
                .unread(Entry.REMARKS, "Żołnierz " + unbroken)
                .unread(Entry.DECORATIONS_AND_CITATIONS, "<&> \"quoted\"");
    }

    /** Known by a photograph and a story. */
    private static InventedSoldier noPaper() {
        return man("no-paper", "Heathcote, Orville")
                .stated("granddaughter", "he had the Silver Star and was wounded in Italy")
                .asking("silver-star")
                .asking("purple-heart");
    }

    private static DeviceCount stars(int count) {
        return new DeviceCount(Device.BRONZE_SERVICE_STAR, count);
    }
}
