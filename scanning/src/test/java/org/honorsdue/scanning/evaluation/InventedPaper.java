package org.honorsdue.scanning.evaluation;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Form;

/**
 * What a clerk typed about a soldier who never lived.
 *
 * @param typed what stands in each part of the form (by its id), not yet broken into lines
 * @param columns the lines of the box with columns: departed, destination, arrived
 * @param ticks ids of the places with a typed X
 * @param truth per entry the text that a perfect reader would hand in
 */
record InventedPaper(
        Form form,
        Map<String, String> typed,
        List<List<String>> columns,
        List<String> ticks,
        Map<Entry, String> truth) {

    private static final String[] MONTHS = {
        "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"
    };
    private static final String[] SURNAMES = {
        "Abelwhite",
        "Brandrup",
        "Carhop",
        "Dunmoor",
        "Eastlack",
        "Fennimont",
        "Garlowe",
        "Hobbesly",
        "Ivering",
        "Jarmusky",
        "Kettlebeck",
        "Lindquester",
        "McAndle",
        "Norbeckson",
        "Oswaldi",
        "Pettigrove",
        "Quillander",
        "Rostenko",
        "Sandquill",
        "Tollefsby",
        "Umberland",
        "Vandersloop",
        "Wickstrom",
        "Yarborne",
        "Zelenick"
    };
    private static final String[] GIVEN = {
        "John",
        "William",
        "Orrin",
        "Harold",
        "Clarence",
        "Walter",
        "Edward",
        "Frank",
        "Raymond",
        "Stanley",
        "Louis",
        "George",
        "Ernest",
        "Carl",
        "Earl",
        "Leroy",
        "Vernon",
        "Melvin",
        "Chester",
        "Joseph"
    };
    private static final String[] TOWNS = {
        "Elmswater Ohio", "Bendix Falls NY", "Port Larkin Wash", "Granger Hill Pa", "Millsap Tex", "Coldbrook Mich",
        "Sutter Bend Calif", "Fairhollow Ga", "Dunmore Lake Wis", "Pine Ferry Minn", "Red Gulch Colo", "Ashport Ill"
    };
    private static final String[] SEPARATION_CENTERS = {
        "Sep Cen Ft Dix NJ", "Sep Cen Camp McCoy Wis", "Ft Sheridan Ill", "Sep Cen Ft Leavenworth Kans",
        "Cp Atterbury Ind", "Sep Ctr Fort Bragg NC", "Indiantown Gap Mil Res Pa", "Camp Beale Calif"
    };
    private static final String[] STREETS = {
        "Birch St", "E Walnut Ave", "Harrow Rd", "RFD 2", "N 14th St", "Quarry Lane"
    };
    private static final String[] GRADES = {
        "Pvt", "Pfc", "Cpl", "Tec 5", "Tec 4", "Sgt", "S Sgt", "T Sgt", "1st Sgt", "M Sgt"
    };
    private static final String[][] ARMS = {
        {"Inf", "Co %c 999th Inf", "Rifleman 745"},
        {"Inf", "Hq Co 3d Bn 998th Inf Regt", "Light Mortar Crewman 607"},
        {"Inf", "Anti Tk Co 997th Inf", "Heavy Weapons Crewman 812"},
        {"FA", "Btry %c 989th FA Bn", "Cannoneer 844"},
        {"FA", "Hq Btry 991st AFA Bn", "Field Lineman 641"},
        {"CE", "Co %c 1999th Engr C Bn", "Combat Engineer 729"},
        {"MD", "Co %c 979th Med Bn", "Surgical Technician 861"},
        {"TC", "3999th QM Truck Co", "Truck Driver Light 345"},
        {"Ord", "1986th Ord MM Co", "Automotive Mechanic 014"},
        {"AC", "998th Bomb Sq 999th Bomb Gp (H)", "Airplane Mechanic Gunner 748"},
        {"Sig C", "992d Sig Co", "Radio Operator 776"},
        {"QMC", "999th QM Laundry Co", "Clerk Typist 405"},
        {"Cav", "Tr %c 996th Cav Rcn Sq Mecz", "Light Truck Driver 345"},
    };
    private static final String[][] THEATERS = {
        {
            "ETO",
            "EAME",
            "EAMET Rib",
            "European African Middle Eastern Theater Ribbon",
            "Normandy;Northern France;Ardennes;Rhineland;Central Europe"
        },
        {"MTO", "EAME", "EAMET Rib", "EAME Theater Ribbon", "Naples-Foggia;Rome-Arno;North Apennines;Po Valley"},
        {"ETO", "EAME", "EAME Campaign Medal", "EAME Theater Ribbon", "Southern France;Rhineland;Central Europe"},
        {"Pacific", "AP", "APT Ribbon", "Asiatic Pacific Theater Ribbon", "New Guinea;Southern Philippines;Luzon;Leyte"
        },
        {
            "SWPA",
            "AP",
            "Asiatic Pacific Campaign Medal",
            "Asiatic Pacific Theater Ribbon",
            "New Guinea;Luzon;Bismarck Archipelago"
        },
    };
    private static final String[] SCHOOLS = {
        "None",
        "None",
        "None",
        "Radio Opr Sch Cp Crowder Mo",
        "Motor Mech Sch Ft Knox Ky",
        "Cooks and Bakers School 8 wks",
        "Prcht Sch Ft Benning Ga"
    };
    private static final String[] JOBS = {
        "Farm Hand General 3-16.10", "Truck Driver Heavy 7-36.250", "Machinist 4-75.010", "Salesman 1-70.10",
        "Shipping Clerk 1-34.14", "Student X-02", "Tool Crib Attendant 1-38.01", "Coal Miner 5-21.010"
    };
    private static final String[] EYES = {"Blue", "Brown", "Hazel", "Gray", "Green"};
    private static final String[] HAIR = {"Brown", "Black", "Blonde", "Red", "Gray", "Dk Brn"};
    private static final String[] RIFLES = {
        "MM Rifle", "Rifle M1 SS", "Carbine Exp", "MM Carbine", "SS M1 Rifle", "Exp Rifle M1", "Cal 30 MG SS"
    };

    private static String pick(Random dice, String... from) {
        return from[dice.nextInt(from.length)];
    }

    private static int between(Random dice, int from, int to) {
        return from + dice.nextInt(to - from + 1);
    }

    private static String date(Random dice, int fromYear, int toYear) {
        return "%d %s %d".formatted(between(dice, 1, 28), MONTHS[dice.nextInt(12)], between(dice, fromYear, toYear));
    }

    private static String day(Random dice, int month, int year) {
        int shifted = Math.floorMod(month - 1, 12);
        return "%d %s %d".formatted(between(dice, 1, 28), MONTHS[shifted], year + Math.floorDiv(month - 1, 12));
    }

    /** The same number always gives the same soldier. */
    static InventedPaper number(long number) {
        var dice = new Random(number * 7919 + 17);
        boolean officer = dice.nextInt(8) == 0;
        var form = officer ? Form.OFFICER_53_98 : Form.ENLISTED_53_55;
        boolean capitals = dice.nextInt(10) < 7;
        var text = new EnumMap<Entry, String>(Entry.class);

        var arm = ARMS[dice.nextInt(ARMS.length)];
        var theater = THEATERS[dice.nextInt(THEATERS.length)];
        var grade = officer ? pick(dice, "1st Lt", "2d Lt", "Capt", "Major") : pick(dice, GRADES);
        text.put(Entry.NAME, pick(dice, SURNAMES) + " " + pick(dice, GIVEN) + " " + (char) ('A' + dice.nextInt(26)));
        text.put(
                Entry.SERIAL_NUMBER,
                officer
                        ? "O-%d %03d".formatted(between(dice, 400, 999), dice.nextInt(1000))
                        : switch (dice.nextInt(3)) {
                            case 0 ->
                                "%d%d %03d %03d"
                                        .formatted(
                                                between(dice, 1, 3),
                                                between(dice, 1, 9),
                                                dice.nextInt(1000),
                                                dice.nextInt(1000));
                            default -> "%d%07d".formatted(between(dice, 1, 3), between(dice, 1_000_000, 9_999_999));
                        });
        text.put(Entry.GRADE, grade);
        text.put(Entry.ARM, arm[0]);
        text.put(Entry.COMPONENT, pick(dice, "AUS", "AUS", "AUS", "RA", "NG", "ERC"));
        char letter = (char) ('A' + dice.nextInt(12));
        text.put(Entry.ORGANIZATION, arm[1].contains("%c") ? arm[1].formatted(letter) : arm[1]);
        int separationMonth = between(dice, 6, 15); // months of 1945 on
        text.put(Entry.SEPARATED, day(dice, separationMonth, 45));
        text.put(Entry.PLACE_OF_SEPARATION, pick(dice, SEPARATION_CENTERS));
        var home = "%d %s %s".formatted(between(dice, 11, 1999), pick(dice, STREETS), pick(dice, TOWNS));
        text.put(Entry.PERMANENT_ADDRESS, home);
        text.put(Entry.DATE_OF_BIRTH, date(dice, 8, 26));
        text.put(Entry.PLACE_OF_BIRTH, pick(dice, TOWNS));
        text.put(Entry.EMPLOYMENT_ADDRESS, "See " + 9);
        text.put(Entry.EYES, pick(dice, EYES));
        text.put(Entry.HAIR, pick(dice, HAIR));
        text.put(Entry.HEIGHT, "%d'%d\"".formatted(5, between(dice, 1, 11)));
        text.put(Entry.WEIGHT, between(dice, 118, 205) + (dice.nextBoolean() ? " lbs" : ""));
        text.put(Entry.DEPENDENTS, String.valueOf(dice.nextInt(4)));
        text.put(Entry.CIVILIAN_OCCUPATION, pick(dice, JOBS));
        int entryYear = between(dice, 41, 44);
        int entryMonth = between(dice, 1, 11);
        if (officer) {
            text.put(Entry.ENTERED_ACTIVE_SERVICE, day(dice, entryMonth, entryYear));
        } else {
            boolean volunteer = dice.nextInt(5) == 0;
            text.put(volunteer ? Entry.ENLISTED : Entry.INDUCTED, day(dice, entryMonth, entryYear));
            text.put(Entry.ENTERED_ACTIVE_SERVICE, day(dice, entryMonth + 1, entryYear));
            text.put(
                    Entry.PLACE_OF_ENTRY,
                    pick(
                            dice,
                            "Ft Sheridan Ill",
                            "Camp Upton NY",
                            "Ft Devens Mass",
                            "Ft Snelling Minn",
                            "Los Angeles Calif"));
            text.put(Entry.HIGHEST_GRADE, grade);
            text.put(
                    Entry.QUALIFICATIONS,
                    arm[0].equals("Inf")
                            ? "Cmbt Inf Bdg %s; %s %s %d"
                                    .formatted(date(dice, 44, 45), pick(dice, RIFLES), MONTHS[dice.nextInt(12)], 43)
                            : pick(dice, "None", pick(dice, RIFLES) + " " + date(dice, 42, 44)));
            text.put(Entry.LONGEVITY, "%d %d %d".formatted(between(dice, 1, 4), dice.nextInt(12), dice.nextInt(30)));
            text.put(Entry.MUSTERING_OUT_PAY, "300 / 100");
            text.put(Entry.SOLDIER_DEPOSITS, "None");
            text.put(Entry.TRAVEL_PAY, "%d.%02d".formatted(between(dice, 3, 45), dice.nextInt(100)));
            text.put(
                    Entry.TOTAL_PAY,
                    "%d.%02d %s %s %s"
                            .formatted(
                                    between(dice, 120, 390),
                                    dice.nextInt(100),
                                    pick(dice, GIVEN),
                                    (char) ('A' + dice.nextInt(26)),
                                    pick(dice, SURNAMES)));
        }
        text.put(Entry.LOCAL_BOARD, String.valueOf(between(dice, 1, 288)));
        text.put(Entry.COUNTY_AND_STATE, pick(dice, "Cook Ill", "Kings NY", "Larkin Ohio", "Wayne Mich", "Dane Wis"));
        text.put(Entry.HOME_ADDRESS, dice.nextBoolean() ? "See 9" : home);
        text.put(Entry.MILITARY_SPECIALTY, officer ? "Infantry Unit Commander " + between(dice, 1501, 1599) : arm[2]);
        var all = theater[4].split(";");
        int count = between(dice, 1, all.length);
        int first = dice.nextInt(all.length - count + 1);
        var campaigns = List.of(all).subList(first, first + count);
        text.put(
                Entry.BATTLES_AND_CAMPAIGNS,
                String.join(dice.nextBoolean() ? " " : ", ", campaigns) + " "
                        + pick(dice, "GO 33 WD 45", "GO 40 WD 45 as amended", "WD GO 33/45", "GO 105 WD 45"));
        var awards = new ArrayList<String>();
        awards.add((dice.nextBoolean() ? theater[2] : theater[3]) + " w/" + count + " "
                + pick(dice, "Brz Stars", "Bronze Stars", "Br Serv Stars", "Bronze Service Stars"));
        if (!officer) {
            awards.add(pick(dice, "Good Conduct Medal", "Gd Cond Mdl", "GC Medal"));
        }
        boolean wounded = dice.nextInt(4) == 0;
        var woundDate = date(dice, 44, 45);
        if (wounded) {
            awards.add("Purple Heart GO %d HQ 999th Inf Div %d".formatted(between(dice, 2, 140), 44));
        }
        if (dice.nextInt(3) == 0) {
            awards.add(pick(dice, "Bronze Star Medal GO %d Hq 998th Inf Div 45", "Air Medal w/2 OLC GO %d 45")
                    .formatted(between(dice, 3, 99)));
        }
        if (dice.nextInt(3) == 0) {
            awards.add(pick(dice, "American Theater Ribbon", "World War II Victory Medal", "Amer Def Serv Medal"));
        }
        text.put(Entry.DECORATIONS_AND_CITATIONS, String.join("; ", awards));
        text.put(Entry.WOUNDS, wounded ? pick(dice, "Germany", "France", "Luzon", "Italy") + " " + woundDate : "None");
        int departYear = Math.min(44, entryYear + 1);
        var legs = List.of(
                List.of(day(dice, 3, departYear), theater[0], day(dice, 4, departYear)),
                List.of(
                        day(dice, separationMonth - 1, 45),
                        pick(dice, "USA", "U S", "United States"),
                        day(dice, separationMonth, 45)));
        text.put(
                Entry.SERVICE_OUTSIDE_US,
                legs.stream()
                        .map(leg -> String.join(" ", leg))
                        .reduce((a, b) -> a + "\n" + b)
                        .orElseThrow());
        text.put(
                Entry.CONTINENTAL_SERVICE,
                "%d %d %d".formatted(between(dice, 0, 3), dice.nextInt(12), dice.nextInt(30)));
        text.put(Entry.FOREIGN_SERVICE, "%d %d %d".formatted(between(dice, 0, 3), dice.nextInt(12), dice.nextInt(30)));
        text.put(Entry.PRIOR_SERVICE, pick(dice, "None", "None", "None", "NG Ohio 3 Feb 38 to 2 Feb 39 Pvt"));
        text.put(
                Entry.REASON,
                pick(
                        dice,
                        "Convenience of the Govt RR 1-1 (Demobilization) AR 615-365 15 Dec 44",
                        "AR 615-365 15 Dec 44 RR 1-1 Conv of Govt",
                        "Demobilization AR 615-365 RR 1-1 Conv Govt 15 Dec 44"));
        if (officer) {
            text.put(Entry.REASON, "RR 1-5 Relief from Active Duty (Demobilization)");
        }
        text.put(Entry.SERVICE_SCHOOLS, pick(dice, SCHOOLS));
        text.put(Entry.EDUCATION, "8 %d %d".formatted(dice.nextInt(5), dice.nextInt(3)));
        text.put(Entry.PREMIUM, "%d.%02d".formatted(between(dice, 3, 8), between(dice, 10, 90)));
        text.put(Entry.ALLOTMENT_ENDS, day(dice, separationMonth, 45));
        text.put(Entry.NEXT_PREMIUM, day(dice, separationMonth + 1, 45));
        text.put(
                Entry.REMARKS,
                "Lapel Button issued. ASR Score (2 Sept 45) %d. %s%s"
                        .formatted(
                                between(dice, 35, 110),
                                pick(
                                        dice,
                                        "No days lost under AW 107.",
                                        "No time lost under AW 107.",
                                        "%d days lost under AW 107.".formatted(between(dice, 2, 30))),
                                pick(
                                        dice,
                                        "",
                                        " Inactive Service ERC 10 Nov 42 to 25 Jan 43.",
                                        " Entitled to Meritorious Unit Plaque GO 14 Hq 999th QM Bn %d."
                                                .formatted(45))));
        if (capitals) {
            text.replaceAll((entry, value) -> value.toUpperCase(Locale.ROOT));
        }
        return laidOut(form, text, legs, capitals, dice);
    }

    private static InventedPaper laidOut(
            Form form, Map<Entry, String> text, List<List<String>> legs, boolean capitals, Random dice) {
        var typed = new LinkedHashMap<String, String>();
        var truth = new EnumMap<Entry, String>(text);
        truth.keySet()
                .removeIf(entry -> entry.box(form).isEmpty()
                        && entry != Entry.CONTINENTAL_SERVICE
                        && entry != Entry.FOREIGN_SERVICE);
        for (var each : text.entrySet()) {
            each.getKey().box(form).ifPresent(box -> typed.put(String.valueOf(box), each.getValue()));
        }
        String crossings = form == Form.ENLISTED_53_55 ? "36" : "32";
        String totals = form == Form.ENLISTED_53_55 ? "37" : "34";
        typed.remove(crossings);
        spread(typed, totals + "a", text.get(Entry.CONTINENTAL_SERVICE));
        spread(typed, totals + "b", text.get(Entry.FOREIGN_SERVICE));
        if (form == Form.ENLISTED_53_55) {
            typed.remove("42");
            var years = text.get(Entry.EDUCATION).split(" ");
            typed.put("42a", years[0]);
            typed.put("42b", years[1]);
            typed.put("42c", years[2]);
            typed.remove("44");
            var pay = text.get(Entry.MUSTERING_OUT_PAY).split(" / ");
            typed.put("44a", pay[0]);
            typed.put("44b", pay[1]);
            spread(typed, "43", text.get(Entry.LONGEVITY));
        } else {
            spread(typed, "35", text.get(Entry.EDUCATION));
        }
        var columns = legs.stream()
                .map(leg -> leg.stream()
                        .map(part -> capitals ? part.toUpperCase(Locale.ROOT) : part)
                        .toList())
                .toList();
        var ticks = new ArrayList<String>();
        ticks.add("18" + "abc".charAt(dice.nextInt(3)));
        char marital = "ab".charAt(dice.nextInt(2));
        ticks.add("19" + marital);
        truth.put(Entry.MARITAL_STATUS, marital == 'a' ? "SINGLE" : "MARRIED");
        ticks.add("20a");
        truth.put(Entry.CITIZEN, "YES");
        ticks.add((form == Form.ENLISTED_53_55 ? "26" : "22") + "a");
        truth.put(Entry.SELECTIVE_SERVICE_REGISTERED, "YES");
        return new InventedPaper(form, typed, columns, ticks, truth);
    }

    /** Years, months and days stand apart, under their three headings. */
    private static void spread(Map<String, String> typed, String part, String numbers) {
        typed.put(part, String.join("   ", numbers.split(" ")));
    }
}
