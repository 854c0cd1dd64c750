package org.honorsdue.casebook;

/**
 * What a person works on in a case.
 *
 * @param title how the casebook lists it, usually the soldier's name
 * @param casefile the casefile's text, kept letter by letter even while it cannot be read
 * @param notes free text of whoever works on it
 */
public record CaseContent(String title, Stage stage, String casefile, String notes) {
    private static final int LONGEST_TITLE = 400;

    public CaseContent {
        if (title.isBlank() || title.length() > LONGEST_TITLE) {
            throw new IllegalArgumentException("A case needs a title of 1 to %d characters; this one has %d."
                    .formatted(LONGEST_TITLE, title.length()));
        }
    }
}
