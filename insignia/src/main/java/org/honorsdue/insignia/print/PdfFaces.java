package org.honorsdue.insignia.print;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.honorsdue.insignia.drawing.Mark;

/** The embedded faces of one document. */
final class PdfFaces {
    private final PDDocument document;
    private final Map<String, PDFont> loaded = new HashMap<>();

    PdfFaces(PDDocument document) {
        this.document = document;
    }

    /** Embedded whole: a form of PDFBox cannot tell its document which letters it used. */
    private PDFont face(String name) {
        return loaded.computeIfAbsent(name, face -> {
            try {
                TrueTypeFont read = new TTFParser().parse(new RandomAccessReadBuffer(Faces.open(face)));
                // Letters that are joined for looks could not be searched or copied as text.
                read.setEnableGsub(false);
                return PDType0Font.load(document, read, false);
            } catch (IOException e) {
                throw new UncheckedIOException("The face %s cannot be read.".formatted(face), e);
            }
        });
    }

    /** A stretch of text that one face has every letter of. */
    record Run(PDFont face, String text) {}

    /** Text in runs; a letter that no face has becomes a question mark. */
    List<Run> runs(String text, Mark.Face face) {
        PDFont first = face(face == Mark.Face.BOLD ? Faces.BOLD : Faces.REGULAR);
        var runs = new ArrayList<Run>();
        var run = new StringBuilder();
        PDFont current = first;
        for (int i = 0; i < text.length(); ) {
            int letter = text.codePointAt(i);
            String one = new String(Character.toChars(letter));
            PDFont owner = has(first, one) ? first : other(face, one, first);
            if (owner != current && run.length() > 0) {
                runs.add(new Run(current, run.toString()));
                run.setLength(0);
            }
            current = owner;
            run.append(has(owner, one) ? one : "?");
            i += Character.charCount(letter);
        }
        if (run.length() > 0) {
            runs.add(new Run(current, run.toString()));
        }
        return runs;
    }

    /** The face with the letters of more languages, if it has this one. */
    private PDFont other(Mark.Face face, String letter, PDFont first) {
        PDFont more = face(face == Mark.Face.BOLD ? Faces.BOLD_MORE : Faces.REGULAR_MORE);
        return has(more, letter) ? more : first;
    }

    private static boolean has(PDFont face, String letter) {
        try {
            face.encode(letter);
            return true;
        } catch (IllegalArgumentException | IOException e) {
            // PDFBox tells by refusing that a face lacks a letter; there is no gentler question to ask it.
            return false;
        }
    }

    /** Width of text at a size, in the same unit as the size. */
    double width(String text, Mark.Face face, double size) throws IOException {
        double width = 0;
        for (Run run : runs(text, face)) {
            width += run.face().getStringWidth(run.text()) / 1000 * size;
        }
        return width;
    }
}
