package org.honorsdue.determination.finding;

/** Whether the papers show the award. */
public enum OnPaper {
    YES("yes"),
    NO("no"),
    /** The award is there; a device or a further award of it is not. */
    INCOMPLETE("incomplete");

    private final String id;

    OnPaper(String id) {
        this.id = id;
    }

    public String id() {
        return id;
    }
}
