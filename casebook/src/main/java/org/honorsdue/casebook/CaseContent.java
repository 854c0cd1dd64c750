package org.honorsdue.casebook;

/**
 * What a person works on in a case.
 *
 * @param title how the casebook lists it, usually the soldier's name
 * @param casefile the casefile's text, kept letter by letter even while it cannot be read
 * @param notes free text of whoever works on it
 * @param display how the display case is wished for, in the words of whoever lays it out; empty when nobody did
 */
public record CaseContent(String title, Stage stage, String casefile, String notes, String display) {
    private static final int LONGEST_TITLE = 400;

    public CaseContent {
        if (title.isBlank() || title.length() > LONGEST_TITLE) {
            throw new IllegalArgumentException("A case needs a title of 1 to %d characters; this one has %d."
                    .formatted(LONGEST_TITLE, title.length()));
        }
    }

    /** A case just opened: nobody has laid out its display yet. */
    public CaseContent(String title, Stage stage, String casefile, String notes) {
        this(title, stage, casefile, notes, "");
    }

    public CaseContent withStage(Stage next) {
        return new CaseContent(title, next, casefile, notes, display);
    }

    public CaseContent withCasefile(String newTitle, String text) {
        return new CaseContent(newTitle, stage, text, notes, display);
    }

    public CaseContent withNotes(String text) {
        return new CaseContent(title, stage, casefile, text, display);
    }

    public CaseContent withDisplay(String wish) {
        return new CaseContent(title, stage, casefile, notes, wish);
    }
}
