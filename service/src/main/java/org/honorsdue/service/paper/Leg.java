package org.honorsdue.service.paper;

/** One line of the entry on service outside the continental United States, as typed; parts may be empty. */
public record Leg(String departed, String destination, String arrived) {
    /** The line as one run of text, which is what origins within this entry point into. */
    public String text() {
        return (departed + " " + destination + " " + arrived).strip();
    }
}
