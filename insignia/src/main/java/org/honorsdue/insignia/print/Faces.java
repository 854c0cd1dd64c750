package org.honorsdue.insignia.print;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/** The book face of the project, which the program carries with it: Source Serif 4, SIL Open Font License. */
final class Faces {
    static final String REGULAR = "source-serif-4-latin-400-normal";
    static final String BOLD = "source-serif-4-latin-600-normal";
    static final String REGULAR_MORE = "source-serif-4-latin-ext-400-normal";
    static final String BOLD_MORE = "source-serif-4-latin-ext-600-normal";

    private Faces() {}

    static InputStream open(String face) {
        InputStream stored = Faces.class.getResourceAsStream("/org/honorsdue/insignia/faces/" + face + ".ttf");
        if (stored == null) {
            throw new IllegalStateException("The face %s is missing from the program.".formatted(face));
        }
        return stored;
    }

    /** Lets pictures use the face; does nothing where the machine has it already. */
    static void register() {
        for (String face : List.of(REGULAR, BOLD, REGULAR_MORE, BOLD_MORE)) {
            try (InputStream stored = open(face)) {
                GraphicsEnvironment.getLocalGraphicsEnvironment()
                        .registerFont(Font.createFont(Font.TRUETYPE_FONT, stored));
            } catch (IOException e) {
                throw new UncheckedIOException("The face %s cannot be read.".formatted(face), e);
            } catch (FontFormatException e) {
                throw new IllegalStateException("The face %s is damaged.".formatted(face), e);
            }
        }
    }
}
