package org.honorsdue.scanning.recognition;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.javacpp.IntPointer;
import org.bytedeco.javacpp.Pointer;
import org.bytedeco.tesseract.ETEXT_DESC;
import org.bytedeco.tesseract.TessBaseAPI;
import org.bytedeco.tesseract.global.tesseract;
import org.honorsdue.scanning.picture.Gray;

/** Tesseract through its native library, which comes with the build. */
public final class Tesseract implements LineReader {
    /**
     * What a clerk's machine could not type, and the number sign, which is read for a worn W. A list of what it could
     * type would be the natural setting, but with one the engine drops the spaces.
     */
    private static final String NOT_TYPED =
            "#|~`{}[]<>\\^_=@!?*\u20ac\u00a3\u00a5\u00a7\u00a9\u00ae\u00b0\u00ab\u00bb\u201c\u201d\u2018\u2019\u2014\u2013\u2022\u00e9";

    private final TessBaseAPI engine;

    private Tesseract(TessBaseAPI engine) {
        this.engine = engine;
    }

    /** @throws IllegalStateException if the data cannot be used or there is no native library for this machine */
    public static Tesseract with(LanguageData data) {
        TessBaseAPI engine;
        try {
            engine = new TessBaseAPI();
        } catch (LinkageError e) {
            // What the loader of native libraries throws depends on whether it was asked before.
            throw new IllegalStateException(
                    "This build carries no Tesseract for this kind of machine (" + System.getProperty("os.name") + ", "
                            + System.getProperty("os.arch") + "), so pictures cannot be read; typing the paper in works"
                            + " as ever.",
                    e);
        }
        if (engine.Init(data.folder().toString(), "eng", tesseract.OEM_LSTM_ONLY) != 0) {
            engine.close();
            throw new IllegalStateException("The reading data in " + data.folder()
                    + " cannot be used. Run scanning/fetch-language-data again.");
        }
        engine.SetVariable("tessedit_char_blacklist", NOT_TYPED);
        engine.SetVariable("load_system_dawg", "0");
        engine.SetVariable("load_freq_dawg", "0");
        engine.SetPageSegMode(tesseract.PSM_SINGLE_LINE);
        return new Tesseract(engine);
    }

    @Override
    public Recognized read(Gray line) {
        var glyphs = new ArrayList<Recognized.Glyph>();
        try (var pixels = new BytePointer(line.pixels())) {
            engine.SetImage(pixels, line.width(), line.height(), 1, line.width());
            engine.SetSourceResolution(300);
            if (engine.Recognize((ETEXT_DESC) null) != 0) {
                return new Recognized(glyphs);
            }
            var at = engine.GetIterator();
            if (at == null || at.isNull()) {
                return new Recognized(glyphs);
            }
            try (var left = new IntPointer(1);
                    var top = new IntPointer(1);
                    var right = new IntPointer(1);
                    var bottom = new IntPointer(1)) {
                do {
                    var letter = at.GetUTF8Text(tesseract.RIL_SYMBOL);
                    if (letter == null || letter.isNull()) {
                        continue;
                    }
                    boolean starts = at.IsAtBeginningOf(tesseract.RIL_WORD);
                    at.BoundingBox(tesseract.RIL_SYMBOL, left, top, right, bottom);
                    glyphs.add(new Recognized.Glyph(
                            letter.getString(StandardCharsets.UTF_8).strip(),
                            at.Confidence(tesseract.RIL_SYMBOL),
                            starts && !glyphs.isEmpty(),
                            left.get(),
                            right.get()));
                    tesseract.TessDeleteText(letter);
                } while (at.Next(tesseract.RIL_SYMBOL));
            } finally {
                at.close();
            }
        } finally {
            engine.Clear();
        }
        return new Recognized(glyphs);
    }

    @Override
    public String words(Gray page) {
        engine.SetPageSegMode(tesseract.PSM_AUTO);
        try (var pixels = new BytePointer(page.pixels())) {
            engine.SetImage(pixels, page.width(), page.height(), 1, page.width());
            engine.SetSourceResolution(150);
            try (var text = engine.GetUTF8Text()) {
                return text == null || text.isNull() ? "" : text.getString(StandardCharsets.UTF_8);
            }
        } finally {
            engine.Clear();
            engine.SetPageSegMode(tesseract.PSM_SINGLE_LINE);
        }
    }

    @Override
    public void close() {
        engine.End();
        engine.close();
        Pointer.deallocateReferences();
    }
}
