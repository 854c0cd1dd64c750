package org.honorsdue.scanning.evaluation;

import java.io.BufferedOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Random;
import java.util.zip.GZIPOutputStream;
import javax.imageio.ImageIO;
import org.honorsdue.scanning.form.FormLayout;
import org.honorsdue.scanning.form.FormPage;
import org.honorsdue.scanning.picture.Gray;
import org.honorsdue.scanning.recognition.GlyphNet;
import org.honorsdue.scanning.typing.LetterCell;
import org.honorsdue.scanning.typing.LetterGrid;
import org.honorsdue.scanning.typing.TypedLine;
import org.honorsdue.scanning.typing.TypedLines;

/**
 * Letters cut from drawn pages by the reader's own way of finding them, with what was typed there: what the net of
 * letter shapes is trained on. Arguments: folder of faces (all are used; the unseen ones must not be in it), output
 * file, number of pages, first number.
 */
final class LetterSamples {
    private static final String FAVOURED =
            "ABCDEFGHIJKLMNOPQRSTUVWXYZABCDEFGHIJKLMNOPQRSTUVWXYZ012345678901234567890123456789abcdefghijklmnopqrstuvwxyz.,-/'\"&()$:;%+.,-/()";

    private LetterSamples() {}

    public static void main(String[] args) throws Exception {
        var faces = new ArrayList<TypeFace>();
        try (var files = Files.list(Path.of(args[0]))) {
            for (var file : files.sorted().toList()) {
                faces.add(TypeFace.of(file, false));
            }
        }
        int pages = Integer.parseInt(args[2]);
        int first = Integer.parseInt(args[3]);
        int kept = 0;
        try (var out = new DataOutputStream(
                new GZIPOutputStream(new BufferedOutputStream(Files.newOutputStream(Path.of(args[1])))))) {
            for (int i = first; i < first + pages; i++) {
                var wears = Wear.values();
                kept += page(i, faces.get(i % faces.size()), wears[(i / faces.size()) % wears.length], out);
                System.out.println(i + " " + kept);
            }
        }
    }

    private static int page(long number, TypeFace face, Wear wear, DataOutputStream out) throws IOException {
        var dice = new Random(number * 15_485_863 + 11);
        var invented = InventedPaper.number(number + 1_000_000);
        var paper = dice.nextInt(10) < 7 ? shuffled(invented, dice) : invented;
        var blank = new BlankForm(FormLayout.of(paper.form()), GeneratedPage.RULE_SHIFT, dice);
        var machine = wear.machine(face, dice);
        var typist = new Typist(blank, paper, machine, dice);
        var picture = wear.photograph(blank, typist, machine.blur(), dice);
        var file = new GeneratedPage(number, face, wear, paper.form(), typist.truth, picture)
                .save(Files.createTempDirectory("letters"));
        var found = FormPage.find(Gray.of(ImageIO.read(file.toFile())));
        Files.delete(file);
        Files.delete(file.getParent());
        if (found.isEmpty()) {
            return 0;
        }
        var lines = new TypedLines(found.get().upright(), found.get().places().values());
        var all = new ArrayList<TypedLine>();
        var truth = new ArrayList<String>();
        for (var part : found.get().places().keySet()) {
            var typed = typist.lines.getOrDefault(part.id(), List.of());
            var seen = typed.isEmpty()
                    ? List.<TypedLine>of()
                    : lines.in(found.get().places().get(part));
            if (!typed.isEmpty() && seen.size() == typed.size()) {
                all.addAll(seen);
                truth.addAll(typed);
            }
        }
        var grid = LetterGrid.of(all);
        int kept = 0;
        for (int i = 0; i < all.size(); i++) {
            kept += line(all.get(i), truth.get(i), grid, dice, out);
        }
        return kept;
    }

    /** The same paper with letters at random, so that no word is learnt. */
    private static InventedPaper shuffled(InventedPaper paper, Random dice) {
        var typed = new LinkedHashMap<String, String>();
        paper.typed().forEach((part, text) -> {
            var changed = new StringBuilder();
            for (char letter : text.toCharArray()) {
                changed.append(letter == ' ' ? ' ' : FAVOURED.charAt(dice.nextInt(FAVOURED.length())));
            }
            typed.put(part, changed.toString());
        });
        return new InventedPaper(paper.form(), typed, paper.columns(), paper.ticks(), paper.truth());
    }

    private static int line(TypedLine line, String truth, LetterGrid grid, Random dice, DataOutputStream out)
            throws IOException {
        var middles = grid.middles(line);
        var inked = new boolean[middles.size()];
        for (int i = 0; i < inked.length; i++) {
            var cell = LetterCell.of(line, middles.get(i), grid.step());
            int dark = 0;
            for (int y = 3; y < LetterCell.HEIGHT - 2; y++) {
                for (int x = 4; x < LetterCell.WIDTH - 4; x++) {
                    dark += cell[y * LetterCell.WIDTH + x] > 0.6 ? 1 : 0;
                }
            }
            inked[i] = dark > 4;
        }
        int bestShift = 0;
        double best = -1;
        double second = -1;
        for (int shift = -2; shift < inked.length - truth.length() + 3; shift++) {
            int agree = 0;
            for (int k = 0; k < truth.length(); k++) {
                int at = k + shift;
                boolean ink = at >= 0 && at < inked.length && inked[at];
                agree += ink == (truth.charAt(k) != ' ') ? 1 : 0;
            }
            for (int at = 0; at < inked.length; at++) {
                agree -= inked[at] && (at < shift || at >= shift + truth.length()) ? 1 : 0;
            }
            double share = agree / (double) truth.length();
            if (share > best) {
                second = best;
                best = share;
                bestShift = shift;
            } else if (share > second) {
                second = share;
            }
        }
        if (best < 0.85 || second >= best - 0.02) {
            return 0;
        }
        int kept = 0;
        for (int k = -1; k <= truth.length(); k++) {
            int at = k + bestShift;
            if (at < 0 || at >= middles.size()) {
                continue;
            }
            char letter = k < 0 || k == truth.length() ? ' ' : truth.charAt(k);
            int label = GlyphNet.LETTERS.indexOf(letter);
            if (label < 0 || (label == 0 && dice.nextInt(4) > 0)) {
                continue;
            }
            // Somewhat off the middle, as the reader's own grid will be.
            double off = dice.nextGaussian() * 0.045 * grid.step();
            double step = grid.step() * (1 + dice.nextGaussian() * 0.02);
            var moved = new TypedLine(
                    line.picture(), line.place(), line.baseline() + dice.nextGaussian() * 1.2, line.grain());
            var cell = LetterCell.of(moved, middles.get(at) + off, step);
            out.writeByte(label);
            for (float value : cell) {
                out.writeByte(Math.round(value * 255));
            }
            kept++;
        }
        return kept;
    }
}
