package org.honorsdue.scanning.evaluation;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.honorsdue.scanning.form.FormPart;
import org.honorsdue.service.paper.Entry;

/**
 * Types an invented paper on a blank: letters of one width, each type slug with its own faults, a ribbon that fades.
 * What does not fit in a box is not typed, and then it is not in the truth either.
 */
final class Typist {
    /** How the machine and its ribbon are. */
    record Machine(
            TypeFace face,
            int lettersPerInch,
            double ribbon,
            double unevenness,
            double baselineShift,
            double struckOver,
            double blur) {}

    private static final double LINE = BlankForm.DPI / 6.0;

    private final BlankForm form;
    private final Machine machine;
    private final Random dice;
    /** 0 no ink, 1 full ink. */
    final float[] ink = new float[BlankForm.WIDTH * BlankForm.HEIGHT];

    private final Font font;
    private final double advance;
    private final Map<Character, double[]> slugs = new HashMap<>();
    final Map<Entry, String> truth;
    /** What stands in each part line by line, as it was fitted. */
    final Map<String, List<String>> lines = new HashMap<>();

    Typist(BlankForm form, InventedPaper paper, Machine machine, Random dice) {
        this.form = form;
        this.machine = machine;
        this.dice = dice;
        this.advance = (double) BlankForm.DPI / machine.lettersPerInch();
        var context = new FontRenderContext(null, true, true);
        double natural = machine.face()
                .font()
                .deriveFont(100f)
                .getStringBounds("N", context)
                .getWidth();
        this.font = machine.face().font().deriveFont((float) (100 * advance / natural));
        this.truth = new EnumMap<>(paper.truth());
        type(paper);
        truth.replaceAll((entry, text) -> machine.face().drawn(text));
    }

    private void type(InventedPaper paper) {
        for (var each : paper.typed().entrySet()) {
            var part = form.layout.part(each.getKey()).orElseThrow();
            var fitted = typeInto(part, each.getValue());
            var entry = part.entry();
            if (!fitted.equals(each.getValue()) && entry.isPresent()) {
                truth.put(entry.get(), fitted.replaceAll(" +", " ").strip());
            }
        }
        var columns = form.layout.every(part -> part.kind() == FormPart.Kind.COLUMN);
        double start = columns.stream().mapToDouble(this::firstBaseline).max().orElse(0);
        for (int row = 0; row < paper.columns().size(); row++) {
            for (int column = 0; column < columns.size(); column++) {
                var place = form.places.get(columns.get(column).id());
                line(paper.columns().get(row).get(column), place.x() + 14, start + row * LINE * 1.05);
            }
        }
        for (var tick : paper.ticks()) {
            var place = form.places.get(tick);
            double size = 8 * BlankForm.DPI / 72.0;
            line("X", place.x() + size / 2 - advance / 2, place.y() + size - 4);
        }
    }

    private double firstBaseline(FormPart part) {
        var place = form.places.get(part.id());
        double free = form.freeFrom.getOrDefault(part.id(), place.y());
        double capital = capitalHeight();
        double room = place.bottom() - free;
        int possible = Math.max(1, (int) (room / LINE));
        double slack = Math.max(0, room - possible * LINE) * 0.5;
        // A careful typist stays clear of the caption; some lines sit a little high or low all the same.
        return free + slack + (LINE - capital) / 2 + capital + dice.nextGaussian() * machine.baselineShift();
    }

    private double capitalHeight() {
        var context = new FontRenderContext(null, true, true);
        return font.createGlyphVector(context, "H").getVisualBounds().getHeight();
    }

    /** Returns the text that found room. */
    private String typeInto(FormPart part, String text) {
        var place = form.places.get(part.id());
        double free = form.freeFrom.getOrDefault(part.id(), place.y());
        int possible = Math.max(1, (int) ((place.bottom() - free) / LINE));
        int width = Math.max(1, (int) ((place.width() - 20) / advance));
        var fitted = new ArrayList<String>();
        var line = new StringBuilder();
        for (var word : text.split("(?<=\\S)(?= )")) {
            if (line.length() + word.length() > width && line.length() > 0) {
                fitted.add(line.toString());
                line.setLength(0);
                word = word.strip();
            }
            if (fitted.size() == possible || word.length() > width) {
                break;
            }
            line.append(word);
        }
        if (fitted.size() < possible && line.length() > 0) {
            fitted.add(line.toString());
        }
        double y = firstBaseline(part);
        double x = place.x() + 10 + dice.nextDouble() * Math.min(30, place.width() - 20 - width * advance + 1);
        for (var each : fitted) {
            line(each, x, y);
            y += LINE;
        }
        lines.put(part.id(), fitted);
        return String.join(" ", fitted);
    }

    private void line(String text, double x, double y) {
        double fade = 1 - dice.nextDouble() * machine.unevenness() * 0.4;
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            if (letter != ' ') {
                if (dice.nextDouble() < machine.struckOver()) {
                    strike((char) ('A' + dice.nextInt(26)), x, y, fade * 0.6);
                }
                strike(letter, x, y, fade);
            }
            x += advance;
        }
    }

    private void strike(char letter, double x, double y, double fade) {
        // Each type slug stands crooked in its own way: turn, drop, weak side.
        var slug = slugs.computeIfAbsent(letter, key -> new double[] {
            dice.nextGaussian() * 0.012,
            dice.nextGaussian() * 0.9,
            dice.nextGaussian() * 0.25,
            dice.nextGaussian() * 0.25
        });
        double strength =
                machine.ribbon() * fade * Math.max(0.25, 1 + dice.nextGaussian() * 0.35 * machine.unevenness());
        int size = (int) (advance * 3);
        var stamp = new BufferedImage(size, size, BufferedImage.TYPE_BYTE_GRAY);
        var pen = stamp.createGraphics();
        pen.setRenderingHint(java.awt.RenderingHints.KEY_ANTIALIASING, java.awt.RenderingHints.VALUE_ANTIALIAS_ON);
        double fractionX = x - Math.floor(x);
        double fractionY = y - Math.floor(y);
        var move = AffineTransform.getTranslateInstance(
                advance + fractionX + dice.nextGaussian() * 0.5,
                advance * 2 + fractionY + slug[1] + dice.nextGaussian() * 0.6);
        move.rotate(slug[0]);
        pen.setColor(java.awt.Color.WHITE);
        pen.fill(move.createTransformedShape(font.createGlyphVector(pen.getFontRenderContext(), String.valueOf(letter))
                .getOutline()));
        pen.dispose();
        var raster = stamp.getRaster();
        int left = (int) Math.floor(x) - (int) advance;
        int top = (int) Math.floor(y) - (int) (advance * 2);
        for (int j = 0; j < size; j++) {
            int row = top + j;
            if (row < 0 || row >= BlankForm.HEIGHT) {
                continue;
            }
            for (int i = 0; i < size; i++) {
                int value = raster.getSample(i, j, 0);
                int column = left + i;
                if (value == 0 || column < 0 || column >= BlankForm.WIDTH) {
                    continue;
                }
                double across = (i - size / 2.0) / advance;
                double down = (j - size * 0.6) / advance;
                double side = 1 + machine.unevenness() * (slug[2] * across + slug[3] * down);
                double weave = 1 - 0.35 * machine.unevenness() * dice.nextDouble();
                int at = row * BlankForm.WIDTH + column;
                double put = value / 255.0 * Math.min(1, Math.max(0, strength * side * weave));
                ink[at] = (float) (1 - (1 - ink[at]) * (1 - put));
            }
        }
    }
}
