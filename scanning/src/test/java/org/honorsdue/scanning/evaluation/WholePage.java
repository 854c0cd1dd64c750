package org.honorsdue.scanning.evaluation;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.nio.charset.StandardCharsets;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.tesseract.ETEXT_DESC;
import org.bytedeco.tesseract.TessBaseAPI;
import org.bytedeco.tesseract.global.tesseract;
import org.honorsdue.scanning.recognition.LanguageData;

/** Tesseract on the whole picture with its own page layout: what one gets without this module. */
final class WholePage implements AutoCloseable {
    private final TessBaseAPI engine = new TessBaseAPI();

    WholePage(LanguageData data) {
        if (engine.Init(data.folder().toString(), "eng", tesseract.OEM_LSTM_ONLY) != 0) {
            throw new IllegalStateException("The reading data cannot be used.");
        }
        engine.SetPageSegMode(tesseract.PSM_AUTO);
    }

    String read(BufferedImage gray) {
        var bytes = ((DataBufferByte) gray.getRaster().getDataBuffer()).getData();
        try (var pixels = new BytePointer(bytes)) {
            engine.SetImage(pixels, gray.getWidth(), gray.getHeight(), 1, gray.getWidth());
            engine.SetSourceResolution(300);
            engine.Recognize((ETEXT_DESC) null);
            try (var text = engine.GetUTF8Text()) {
                return text == null || text.isNull() ? "" : text.getString(StandardCharsets.UTF_8);
            }
        } finally {
            engine.Clear();
        }
    }

    @Override
    public void close() {
        engine.End();
        engine.close();
    }
}
