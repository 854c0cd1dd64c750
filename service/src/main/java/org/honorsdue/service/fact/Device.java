package org.honorsdue.service.fact;

import java.util.Arrays;
import java.util.Optional;

/** What is worn on a ribbon or badge. The ids are those of the findings. */
public enum Device {
    BRONZE_SERVICE_STAR("bronze-service-star"),
    SILVER_SERVICE_STAR("silver-service-star"),
    ARROWHEAD("arrowhead"),
    BRONZE_OAK_LEAF_CLUSTER("bronze-oak-leaf-cluster"),
    SILVER_OAK_LEAF_CLUSTER("silver-oak-leaf-cluster"),
    LETTER_V("letter-v"),
    FOREIGN_SERVICE_CLASP("foreign-service-clasp"),
    GERMANY_CLASP("germany-clasp"),
    JAPAN_CLASP("japan-clasp"),
    /** Counted in loops: two loops mark the second award. */
    GOOD_CONDUCT_CLASP("good-conduct-clasp"),
    BRONZE_STAR_ON_PARACHUTIST_BADGE("bronze-star-on-parachutist-badge"),
    /** Written on some papers as a palm on a foreign decoration. */
    PALM("palm"),
    /** A star whose metal and meaning the paper does not tell. */
    STAR_UNSPECIFIED("star"),
    /** The golden wreath of a unit citation on the sleeve. */
    WREATH("wreath"),
    /** A bar on a badge that names a weapon, a vehicle or a trade. */
    QUALIFICATION_BAR("qualification-bar");

    private final String id;

    Device(String id) {
        this.id = id;
    }

    public String id() {
        return id;
    }

    public static Optional<Device> ofId(String id) {
        return Arrays.stream(values()).filter(device -> device.id.equals(id)).findFirst();
    }
}
