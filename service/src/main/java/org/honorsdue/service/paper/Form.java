package org.honorsdue.service.paper;

/** The kinds of separation paper. */
public enum Form {
    /** WD AGO Form 53-55, Enlisted Record and Report of Separation, Honorable Discharge. */
    ENLISTED_53_55("WD AGO 53-55"),
    /** WD AGO Form 53-98, Military Record and Report of Separation, Certificate of Service (officers). */
    OFFICER_53_98("WD AGO 53-98"),
    /** War Department report of death. */
    REPORT_OF_DEATH("report of death"),
    /** Any other paper; its entries are addressed by name only, never by box number. */
    OTHER("other");

    private final String title;

    Form(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }
}
