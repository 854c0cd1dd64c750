package org.honorsdue.service.paper;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The entries of a separation paper, by the trade's captions rather than by box number, because the same caption has
 * different numbers on the enlisted and on the officer form.
 *
 * <p>Captions and box numbers: common practice and memory of the two forms; the numbers boards quote were read in
 * published decisions of the Army Board for Correction of Military Records. The 53-55's box 37 (34 on the 53-98)
 * holds both totals; typed as one text it is {@link #LENGTH_OF_SERVICE}, typed apart it is the two entries after it.
 */
public enum Entry {
    NAME("name", "Last name - first name - middle initial", 1, 1),
    SERIAL_NUMBER("serial_number", "Army serial number", 2, 2),
    GRADE("grade", "Grade", 3, 3),
    ARM("arm", "Arm or service", 4, 4),
    COMPONENT("component", "Component", 5, 5),
    ORGANIZATION("organization", "Organization", 6, 6),
    SEPARATED("separated", "Date of separation", 7, 7),
    PLACE_OF_SEPARATION("place_of_separation", "Place of separation", 8, 8),
    PERMANENT_ADDRESS("permanent_address", "Permanent address for mailing purposes", 9, 9),
    DATE_OF_BIRTH("date_of_birth", "Date of birth", 10, 10),
    PLACE_OF_BIRTH("place_of_birth", "Place of birth", 11, 11),
    EMPLOYMENT_ADDRESS("employment_address", "Address from which employment will be sought", 12, 12),
    EYES("eyes", "Color eyes", 13, 13),
    HAIR("hair", "Color hair", 14, 14),
    HEIGHT("height", "Height", 15, 15),
    WEIGHT("weight", "Weight", 16, 16),
    DEPENDENTS("dependents", "No. of dependents", 17, 17),
    RACE("race", "Race", 18, 18),
    MARITAL_STATUS("marital_status", "Marital status", 19, 19),
    CITIZEN("citizen", "U.S. citizen", 20, 20),
    CIVILIAN_OCCUPATION("civilian_occupation", "Civilian occupation and no.", 21, 21),
    INDUCTED("inducted", "Date of induction", 22, 0),
    ENLISTED("enlisted", "Date of enlistment", 23, 0),
    ENTERED_ACTIVE_SERVICE("entered_active_service", "Date of entry into active service", 24, 26),
    PLACE_OF_ENTRY("place_of_entry", "Place of entry into service", 25, 0),
    SELECTIVE_SERVICE_REGISTERED("selective_service_registered", "Selective service data: registered", 26, 22),
    LOCAL_BOARD("local_board", "Local selective service board no.", 27, 23),
    COUNTY_AND_STATE("county_and_state", "County and state", 28, 24),
    HOME_ADDRESS("home_address", "Home address at time of entry", 29, 25),
    MILITARY_SPECIALTY("military_specialty", "Military occupational specialty and no.", 30, 27),
    QUALIFICATIONS("qualifications", "Military qualification and date", 31, 0),
    BATTLES_AND_CAMPAIGNS("battles_and_campaigns", "Battles and campaigns", 32, 28),
    DECORATIONS_AND_CITATIONS("decorations_and_citations", "Decorations and citations", 33, 29),
    WOUNDS("wounds", "Wounds received in action", 34, 30),
    IMMUNIZATIONS("immunizations", "Latest immunization dates", 35, 0),
    SERVICE_OUTSIDE_US("service_outside_us", "Service outside continental U.S. and return", 36, 32),
    LENGTH_OF_SERVICE("length_of_service", "Total length of service, continental and foreign together", 37, 34),
    CONTINENTAL_SERVICE("continental_service", "Length of continental service", 0, 0),
    FOREIGN_SERVICE("foreign_service", "Length of foreign service", 0, 0),
    HIGHEST_GRADE("highest_grade", "Highest grade held", 38, 0),
    PRIOR_SERVICE("prior_service", "Prior service", 39, 0),
    REASON("reason", "Reason and authority for separation", 40, 33),
    SERVICE_SCHOOLS("service_schools", "Service schools attended", 41, 31),
    EDUCATION("education", "Education (years)", 42, 35),
    LONGEVITY("longevity", "Longevity for pay purposes", 43, 0),
    MUSTERING_OUT_PAY("mustering_out_pay", "Mustering out pay", 44, 0),
    SOLDIER_DEPOSITS("soldier_deposits", "Soldier deposits", 45, 0),
    TRAVEL_PAY("travel_pay", "Travel pay", 46, 0),
    TOTAL_PAY("total_pay", "Total amount, name of disbursing officer", 47, 0),
    INSURANCE("insurance", "Insurance notice: kind of insurance", 48, 36),
    INSURANCE_PAID("insurance_paid", "How paid", 49, 37),
    ALLOTMENT_ENDS("allotment_ends", "Effective date of allotment discontinuance", 50, 38),
    NEXT_PREMIUM("next_premium", "Date of next premium due", 51, 39),
    PREMIUM("premium", "Premium due each month", 52, 40),
    INSURANCE_INTENTION("insurance_intention", "Intention of veteran to continue insurance", 53, 41),
    THUMB_PRINT("thumb_print", "Right thumb print", 54, 42),
    REMARKS("remarks", "Remarks", 55, 43),
    SIGNATURE("signature", "Signature of person being separated", 56, 44),
    PERSONNEL_OFFICER("personnel_officer", "Personnel officer", 57, 45),
    CHARACTER("character", "Character (certificate side or other edition)", 0, 0),
    EFFICIENCY("efficiency", "Efficiency rating (other edition)", 0, 0);

    private static final Map<String, Entry> BY_KEY =
            Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(Entry::key, Function.identity()));

    private final String key;
    private final String caption;
    private final int enlistedBox;
    private final int officerBox;

    Entry(String key, String caption, int enlistedBox, int officerBox) {
        this.key = key;
        this.caption = caption;
        this.enlistedBox = enlistedBox;
        this.officerBox = officerBox;
    }

    /** The name of the entry in a casefile, as in {@code decorations_and_citations}. */
    public String key() {
        return key;
    }

    /** The caption in words. */
    public String caption() {
        return caption;
    }

    /** The box that holds this entry on that form; empty where the form has no such box. */
    public Optional<Integer> box(Form form) {
        int number = switch (form) {
            case ENLISTED_53_55 -> enlistedBox;
            case OFFICER_53_98 -> officerBox;
            case REPORT_OF_DEATH, OTHER -> 0;
        };
        return number == 0 ? Optional.empty() : Optional.of(number);
    }

    public static Optional<Entry> ofKey(String key) {
        return Optional.ofNullable(BY_KEY.get(key));
    }

    /** The entry printed with that box number on that form. */
    public static Optional<Entry> ofBox(Form form, int box) {
        return Arrays.stream(values())
                .filter(entry -> entry.box(form).equals(Optional.of(box)))
                .findFirst();
    }
}
