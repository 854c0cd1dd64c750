package org.honorsdue.insignia.ribbon;

/**
 * Widths and colours typed from the publications, apart from the tables of the program, for checks on pictures.
 *
 * @param stripes width and colour, from the viewer's left
 */
enum PublishedRibbon {
    /** 32 CFR 578.10(b), 2008 edition. */
    DISTINGUISHED_SERVICE_CROSS(
            "distinguished-service-cross", "1/8 old glory red,1/16 white,1 imperial blue,1/16 white,1/8 old glory red"),
    /** Institute of Heraldry description, Distinguished Service Medal. */
    DISTINGUISHED_SERVICE_MEDAL(
            "distinguished-service-medal",
            "5/16 scarlet,1/16 ultramarine blue,5/8 white,1/16 ultramarine blue,5/16 scarlet"),
    /** Institute of Heraldry description, Silver Star, as reproduced. */
    SILVER_STAR(
            "silver-star",
            "3/32 ultramarine blue,3/64 white,7/32 ultramarine blue,7/32 white,7/32 old glory red,7/32 white,"
                    + "7/32 ultramarine blue,3/64 white,3/32 ultramarine blue"),
    /** Institute of Heraldry description, Bronze Star Medal, as reproduced. */
    BRONZE_STAR(
            "bronze-star-medal",
            "1/32 white,9/16 scarlet,1/32 white,1/8 ultramarine blue,1/32 white,9/16 scarlet,1/32 white"),
    /** Institute of Heraldry description, Purple Heart, as reproduced. */
    PURPLE_HEART("purple-heart", "1/8 white,1 1/8 purple,1/8 white"),
    /** Institute of Heraldry description, Air Medal, as reproduced. */
    AIR_MEDAL(
            "air-medal",
            "1/8 ultramarine blue,1/4 golden orange,5/8 ultramarine blue,1/4 golden orange,1/8 ultramarine blue"),
    /** Institute of Heraldry description, Prisoner of War Medal. */
    PRISONER_OF_WAR(
            "prisoner-of-war-medal",
            "1/16 old glory red,3/32 white,1/16 old glory blue,1/8 white,11/16 black,1/8 white,1/16 old glory blue,"
                    + "3/32 white,1/16 old glory red"),
    /** Institute of Heraldry description, Good Conduct Medal, as reproduced. */
    GOOD_CONDUCT(
            "army-good-conduct-medal",
            "1/16 soldier red,1/16 white,1/16 soldier red,1/16 white,1/16 soldier red,1/16 white,5/8 soldier red,"
                    + "1/16 white,1/16 soldier red,1/16 white,1/16 soldier red,1/16 white,1/16 soldier red"),
    /** 32 CFR 578.52, 2008 edition: golden yellow with two groups of 1/8 inch, each parted in three. */
    AMERICAN_DEFENSE(
            "american-defense-service-medal",
            "3/16 golden yellow,1/24 old glory blue,1/24 white,1/24 scarlet,3/4 golden yellow,1/24 scarlet,1/24 white,"
                    + "1/24 old glory blue,3/16 golden yellow"),
    /** Institute of Heraldry description, American Campaign Medal. */
    AMERICAN_CAMPAIGN(
            "american-campaign-medal",
            "3/16 oriental blue,1/16 white,1/16 black,1/16 scarlet,1/16 white,3/16 oriental blue,1/24 old glory blue,"
                    + "1/24 white,1/24 scarlet,3/16 oriental blue,1/16 white,1/16 scarlet,1/16 black,1/16 white,"
                    + "3/16 oriental blue"),
    /** Institute of Heraldry description, Asiatic-Pacific Campaign Medal; inner yellow from what completes 1 3/8. */
    ASIATIC_PACIFIC(
            "asiatic-pacific-campaign-medal",
            "3/16 yellow,1/16 white,1/16 scarlet,1/16 white,1/4 yellow,1/24 old glory blue,1/24 white,1/24 scarlet,"
                    + "1/4 yellow,1/16 white,1/16 scarlet,1/16 white,3/16 yellow"),
    /** 32 CFR 578.46(a), 1999 edition. */
    EUROPEAN_AFRICAN_MIDDLE_EASTERN(
            "eame-campaign-medal",
            "3/16 brown,1/16 irish green,1/16 white,1/16 scarlet,1/4 irish green,1/24 old glory blue,1/24 white,"
                    + "1/24 scarlet,1/4 irish green,1/16 white,1/16 black,1/16 white,3/16 brown"),
    /** Institute of Heraldry description, Army of Occupation Medal. */
    ARMY_OF_OCCUPATION("army-of-occupation-medal", "3/16 white,1/2 black,1/2 scarlet,3/16 white");

    private final String id;
    private final String stripes;

    PublishedRibbon(String id, String stripes) {
        this.id = id;
        this.stripes = stripes;
    }

    String id() {
        return id;
    }

    /** Each as width in inches and colour, parted by the last blank of the width. */
    String[] stripes() {
        return stripes.split(",");
    }
}
