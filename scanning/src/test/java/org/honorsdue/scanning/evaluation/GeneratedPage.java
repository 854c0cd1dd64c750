package org.honorsdue.scanning.evaluation;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import org.honorsdue.scanning.form.FormLayout;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Form;

/** One page of the evaluation set, with what stands on it. The same number, face and wear give the same page. */
record GeneratedPage(
        long number, TypeFace face, Wear wear, Form form, Map<Entry, String> truth, BufferedImage picture) {
    /** How far the rules of the drawn form may stand from the table, in hundredths of the page. */
    static final double RULE_SHIFT = 0.8;

    static GeneratedPage draw(long number, TypeFace face, Wear wear) {
        var dice = new Random(number * 104_729 + 3);
        var paper = InventedPaper.number(number);
        var blank = new BlankForm(FormLayout.of(paper.form()), RULE_SHIFT, dice);
        var machine = wear.machine(face, dice);
        var typist = new Typist(blank, paper, machine, dice);
        var picture = wear.photograph(blank, typist, machine.blur(), dice);
        return new GeneratedPage(number, face, wear, paper.form(), typist.truth, picture);
    }

    Path save(Path folder) throws IOException {
        Files.createDirectories(folder);
        var file = folder.resolve(
                "%03d-%s-%s.jpg".formatted(number, face.name(), wear.name().toLowerCase()));
        var writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        try (var out = ImageIO.createImageOutputStream(Files.newOutputStream(file))) {
            var settings = writer.getDefaultWriteParam();
            settings.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            settings.setCompressionQuality(wear.jpegQuality() / 100f);
            writer.setOutput(out);
            writer.write(null, new IIOImage(picture, null, null), settings);
        } finally {
            writer.dispose();
        }
        return file;
    }
}
