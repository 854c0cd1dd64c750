package org.honorsdue.insignia.display;

import java.util.ArrayList;
import java.util.List;
import org.honorsdue.insignia.drawing.Drawing;
import org.honorsdue.insignia.drawing.Mark;
import org.honorsdue.insignia.drawing.Outline;
import org.honorsdue.insignia.drawing.Paint;
import org.honorsdue.insignia.drawing.Placement;
import org.honorsdue.insignia.ribbon.Metal;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.insignia.Inches;

/** Draws what the family adds, and the places kept for what is not settled. */
final class AddedPieces {
    private static final int INK = 0x4A443A;
    private static final int PAPER = 0xF3EDDF;

    private AddedPieces() {}

    /** An empty place with a dashed edge, a question mark and, where there is room, the name. */
    static Drawing place(Inches width, Inches height, String name) {
        double w = width.decimal();
        double h = height.decimal();
        double sign = Math.min(0.6, h * 0.55);
        boolean room = h > 1.2 && w > 1;
        var marks = new ArrayList<Mark>();
        marks.add(new Mark.Area(Outline.rounded(0, 0, w, h, Math.min(0.08, h / 6)), Paint.plain(0xFFFFFF), 0.14));
        marks.add(new Mark.Line(
                Outline.rounded(0.02, 0.02, w - 0.04, h - 0.04, Math.min(0.08, h / 6)),
                0xE9E2D2,
                0.02,
                0.9,
                Mark.Ends.BUTT,
                List.of(0.09, 0.06)));
        marks.add(new Mark.Words(
                "?", w / 2, h / 2 + sign * (room ? 0.1 : 0.35), sign, Mark.Anchor.MIDDLE, Mark.Face.BOLD, 0xE9E2D2));
        if (room) {
            double size = 0.12;
            double y = h / 2 + sign * 0.1 + 0.26;
            for (String line : lines(name, w - 0.2, size)) {
                marks.add(new Mark.Words(line, w / 2, y, size, Mark.Anchor.MIDDLE, Mark.Face.REGULAR, 0xE9E2D2));
                y += size * 1.2;
            }
        }
        return new Drawing(w, h, marks);
    }

    /** Words broken into lines that are at most so wide, by an average width of letters. */
    static List<String> lines(String words, double width, double size) {
        int most = Math.max(6, (int) (width / (size * 0.47)));
        var lines = new ArrayList<String>();
        var line = new StringBuilder();
        for (String word : words.split(" ")) {
            if (line.length() > 0 && line.length() + 1 + word.length() > most) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    static Piece photograph(int number, Addition.Photograph print) {
        double w = print.width().decimal();
        double h = print.height().decimal();
        var marks = new ArrayList<Mark>();
        marks.add(Mark.area(Outline.rectangle(0, 0, w, h), 0xFBF7EC));
        double edge = Math.min(0.16, w * 0.06);
        Outline picture = Outline.rectangle(edge, edge, w - 2 * edge, h - 2 * edge);
        marks.add(Mark.area(
                picture,
                new Paint.Along(0, 0, 0, h, List.of(new Paint.Stop(0, 0xC9BCA0), new Paint.Stop(1, 0x8F8164)))));
        double head = Math.min(w, h) * 0.15;
        double cx = w / 2;
        marks.add(Mark.within(
                picture,
                List.of(
                        Mark.area(Outline.ellipse(cx, h * 0.95, w * 0.32, h * 0.36), 0x6E6249),
                        Mark.area(Outline.ellipse(cx, h * 0.43, head, head * 1.25), 0xA89878),
                        Mark.area(
                                Outline.path("M-100 -18C-70 -88 30 -136 104 -92L98 -42C40 -70 -44 -52 -100 -18Z")
                                        .placed(Placement.scaled(head / 100).then(Placement.at(cx, h * 0.43))),
                                0x5D5138))));
        marks.add(Mark.line(Outline.rectangle(0.006, 0.006, w - 0.012, h - 0.012), 0x8A8068, 0.012));
        return new Piece(
                "photograph-" + number,
                Kind.PHOTOGRAPH,
                print.says().isBlank() ? "Photograph" : print.says(),
                print.width(),
                print.height(),
                new Drawing(w, h, marks),
                false,
                List.of(new Piece.Part(
                        "Photograph, a copy print: " + print.says(), 1, size(print.width(), print.height()))),
                "",
                Grade.TEXT);
    }

    static Piece paper(int number, Addition.Paper paper) {
        double w = paper.width().decimal();
        double h = paper.height().decimal();
        var marks = new ArrayList<Mark>();
        marks.add(Mark.area(Outline.rectangle(0, 0, w, h), PAPER));
        double margin = w * 0.08;
        double y = h * 0.08;
        marks.add(Mark.line(Outline.through(w * 0.25, y, w * 0.75, y), INK, h * 0.012));
        y += h * 0.06;
        int lines = 18;
        for (int i = 0; i < lines; i++) {
            double at = y + (h * 0.88 - y) * i / (lines - 1);
            marks.add(new Mark.Line(
                    Outline.through(margin, at, w - margin, at), INK, 0.008, 0.55, Mark.Ends.BUTT, List.of()));
            double begin = margin + w * 0.02 + (i * 37 % 11) * w * 0.02;
            marks.add(new Mark.Line(
                    Outline.through(
                            begin,
                            at - h * 0.014,
                            Math.min(w - margin, begin + w * (0.2 + (i * 53 % 7) * 0.06)),
                            at - h * 0.014),
                    INK,
                    h * 0.008,
                    0.5,
                    Mark.Ends.BUTT,
                    List.of()));
        }
        marks.add(Mark.line(Outline.rectangle(0.006, 0.006, w - 0.012, h - 0.012), 0xB3A88E, 0.012));
        return new Piece(
                "paper-" + number,
                Kind.PAPER,
                paper.says().isBlank() ? "Paper" : paper.says(),
                paper.width(),
                paper.height(),
                new Drawing(w, h, marks),
                false,
                List.of(new Piece.Part(
                        "Copy of a paper, the original stays in an acid-free folder: " + paper.says(),
                        1,
                        size(paper.width(), paper.height()))),
                "",
                Grade.TEXT);
    }

    static Piece nameplate(int number, Addition.Nameplate plate) {
        Inches width = Inches.of(4);
        double letters = 0.2;
        Inches height = CaseContents.up(Inches.of(plate.lines().size() * 28L + 20, 100));
        for (String line : plate.lines()) {
            long need = Math.round((line.length() * letters * 0.5 + 0.5) * 16);
            width = width.max(Inches.of(need, 16));
        }
        double w = width.decimal();
        double h = height.decimal();
        Metal metal = Metal.GOLD;
        var marks = new ArrayList<Mark>();
        marks.add(Mark.area(
                Outline.rounded(0, 0, w, h, 0.06),
                new Paint.Along(
                        0,
                        0,
                        w,
                        h,
                        List.of(
                                new Paint.Stop(0, metal.light()),
                                new Paint.Stop(0.4, metal.body()),
                                new Paint.Stop(0.7, metal.light()),
                                new Paint.Stop(1, metal.body())))));
        marks.add(Mark.line(Outline.rounded(0.05, 0.05, w - 0.1, h - 0.1, 0.03), metal.edge(), 0.012));
        double block = plate.lines().size() * 0.28;
        double y = (h - block) / 2 + 0.21;
        for (int i = 0; i < plate.lines().size(); i++) {
            marks.add(new Mark.Words(
                    plate.lines().get(i),
                    w / 2,
                    y,
                    i == 0 ? letters : letters * 0.85,
                    Mark.Anchor.MIDDLE,
                    i == 0 ? Mark.Face.BOLD : Mark.Face.REGULAR,
                    0x2A1F08));
            y += 0.28;
        }
        for (double x : new double[] {0.16, w - 0.16}) {
            marks.add(Mark.area(Outline.circle(x, h / 2, 0.045), metal.edge()));
            marks.add(Mark.area(Outline.circle(x, h / 2, 0.032), metal.light()));
        }
        return new Piece(
                "nameplate-" + number,
                Kind.NAMEPLATE,
                "Nameplate",
                width,
                height,
                new Drawing(w, h, marks),
                false,
                List.of(new Piece.Part("Nameplate: " + String.join(" / ", plate.lines()), 1, size(width, height))),
                "",
                Grade.TEXT);
    }

    static Piece dogTags(int number) {
        Inches width = Inches.of(3);
        Inches height = Inches.of(5, 2);
        double w = 3;
        double h = 2.5;
        Metal metal = Metal.SILVER;
        var marks = new ArrayList<Mark>();
        Outline chain =
                Outline.path("M80 100C20 80 20 10 150 12C280 10 280 80 220 100").placed(Placement.scaled(0.01));
        marks.add(new Mark.Line(chain, metal.edge(), 0.07, 1, Mark.Ends.ROUND, List.of()));
        marks.add(new Mark.Line(chain, metal.light(), 0.05, 1, Mark.Ends.BUTT, List.of(0.05, 0.035)));
        for (double x : new double[] {0.78, 2.22}) {
            Outline tag = Outline.rounded(x - 0.56, 0.95, 1.12, 1.5, 0.4);
            marks.add(Mark.area(tag, metal.lit(x - 0.56, 0.95, 1.12, 1.5)));
            marks.add(Mark.line(tag, metal.edge(), 0.02));
            marks.add(Mark.area(Outline.circle(x, 1.12, 0.06), metal.edge()));
            for (int i = 0; i < 4; i++) {
                marks.add(new Mark.Line(
                        Outline.through(x - 0.36, 1.42 + i * 0.22, x + 0.36 - 0.12 * (i % 2), 1.42 + i * 0.22),
                        metal.shade(),
                        0.06,
                        0.8,
                        Mark.Ends.BUTT,
                        List.of(0.05, 0.03)));
            }
        }
        return new Piece(
                "dog-tags-" + number,
                Kind.DOG_TAGS,
                "Identity tags",
                width,
                height,
                new Drawing(w, h, marks),
                false,
                List.of(new Piece.Part("Identity tags on their chain", 2, "2 x 1 1/8")),
                "",
                Grade.MEMORY);
    }

    /** A folded flag lies as a triangle, its long edge below. */
    static Piece flag(int number, Addition.Flag flag) {
        Inches width = flag.longEdge();
        Inches height = CaseContents.up(width.half());
        double w = width.decimal();
        double h = height.decimal();
        Outline triangle = Outline.polygon(0, h, w / 2, 0, w, h);
        var marks = new ArrayList<Mark>();
        marks.add(Mark.area(triangle, 0x24305E));
        var stars = new ArrayList<Mark>();
        int rows = 4;
        for (int row = 0; row < rows; row++) {
            for (int i = 0; i <= row; i++) {
                stars.add(Mark.area(
                        Outline.star(w / 2 + (i - row / 2.0) * w * 0.2, h * (0.3 + 0.18 * row), h * 0.065), 0xF4F2EA));
            }
        }
        marks.add(Mark.within(triangle, stars));
        marks.add(new Mark.Line(
                Outline.through(w / 2, h * 0.02, w * 0.5, h), 0x000000, 0.02, 0.25, Mark.Ends.BUTT, List.of()));
        marks.add(Mark.line(triangle, 0x131A36, 0.03));
        return new Piece(
                "flag-" + number,
                Kind.FLAG,
                "Folded flag",
                width,
                height,
                new Drawing(w, h, marks),
                false,
                List.of(new Piece.Part("Flag, folded to a triangle", 1, size(width, height))),
                "",
                Grade.MEMORY);
    }

    private static String size(Inches width, Inches height) {
        return width.text() + " x " + height.text();
    }
}
