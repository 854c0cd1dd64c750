package org.honorsdue.insignia.drawing;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;

/** Writes one drawing as SVG. The user unit is a thousandth of an inch. */
final class SvgWriter {
    private final Drawing drawing;
    private final String title;
    private final String description;
    private final StringBuilder body = new StringBuilder(4096);
    private final List<String> definitions = new ArrayList<>();

    SvgWriter(Drawing drawing, String title, String description) {
        this.drawing = drawing;
        this.title = title;
        this.description = description;
    }

    String write() {
        drawing.marks().forEach(this::mark);
        var text = new StringBuilder(body.length() + 1024);
        // Ids are unique in a page that holds many drawings as long as no drawing stands in it twice.
        String key = key();
        text.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"")
                .append(inches(drawing.width()))
                .append("in\" height=\"")
                .append(inches(drawing.height()))
                .append("in\" viewBox=\"0 0 ");
        number(text, drawing.width());
        text.append(' ');
        number(text, drawing.height());
        text.append("\" role=\"img\" aria-labelledby=\"")
                .append(key)
                .append("t ")
                .append(key)
                .append("d\" alt=\"")
                .append(escaped(title))
                .append("\"><title id=\"")
                .append(key)
                .append("t\">")
                .append(escaped(title))
                .append("</title><desc id=\"")
                .append(key)
                .append("d\">")
                .append(escaped(description))
                .append("</desc>");
        if (!definitions.isEmpty()) {
            text.append("<defs>");
            for (int i = 0; i < definitions.size(); i++) {
                text.append(definitions.get(i).replace("@", key + i));
            }
            text.append("</defs>");
        }
        return text.append(body.toString().replace("url(#@", "url(#" + key))
                .append("</svg>\n")
                .toString();
    }

    private String key() {
        var sum = new CRC32();
        sum.update((title + '\n' + description + '\n' + body).getBytes(StandardCharsets.UTF_8));
        return "h" + Long.toHexString(sum.getValue());
    }

    private void mark(Mark mark) {
        if (mark instanceof Mark.Area area) {
            String fill = paint(area.paint());
            body.append("<path d=\"");
            outline(body, area.outline());
            body.append("\" fill=\"").append(fill).append("\" fill-rule=\"evenodd\"");
            opacity("fill-opacity", area.opacity());
            body.append("/>");
        } else if (mark instanceof Mark.Line line) {
            line(line);
        } else if (mark instanceof Mark.Words words) {
            words(words);
        } else if (mark instanceof Mark.Group group) {
            group(group);
        }
    }

    private void line(Mark.Line line) {
        body.append("<path d=\"");
        outline(body, line.outline());
        body.append("\" fill=\"none\" stroke=\"").append(shade(line.rgb())).append("\" stroke-width=\"");
        number(body, line.width());
        body.append('"');
        if (line.ends() == Mark.Ends.ROUND) {
            body.append(" stroke-linecap=\"round\" stroke-linejoin=\"round\"");
        } else if (line.ends() == Mark.Ends.SQUARE) {
            body.append(" stroke-linecap=\"square\" stroke-miterlimit=\"1.6\"");
        }
        if (!line.dashes().isEmpty()) {
            body.append(" stroke-dasharray=\"");
            for (int i = 0; i < line.dashes().size(); i++) {
                if (i > 0) {
                    body.append(' ');
                }
                number(body, line.dashes().get(i));
            }
            body.append('"');
        }
        opacity("stroke-opacity", line.opacity());
        body.append("/>");
    }

    private void words(Mark.Words words) {
        body.append("<text x=\"");
        number(body, words.x());
        body.append("\" y=\"");
        number(body, words.baseline());
        body.append("\" font-family=\"'Source Serif 4', 'Source Serif Pro', Georgia, serif\" font-size=\"");
        number(body, words.size());
        body.append('"');
        if (words.face() == Mark.Face.BOLD) {
            body.append(" font-weight=\"600\"");
        }
        switch (words.anchor()) {
            case MIDDLE -> body.append(" text-anchor=\"middle\"");
            case END -> body.append(" text-anchor=\"end\"");
            case START -> {}
        }
        body.append(" fill=\"")
                .append(shade(words.rgb()))
                .append("\">")
                .append(escaped(words.text()))
                .append("</text>");
    }

    private void group(Mark.Group group) {
        body.append("<g");
        Placement p = group.placement();
        if (!p.equals(Placement.HERE)) {
            body.append(" transform=\"");
            if (p.a() == 1 && p.b() == 0 && p.c() == 0 && p.d() == 1) {
                body.append("translate(");
                number(body, p.e());
                body.append(' ');
                number(body, p.f());
            } else {
                body.append("matrix(").append(factor(p.a())).append(' ');
                body.append(factor(p.b())).append(' ').append(factor(p.c())).append(' ');
                body.append(factor(p.d())).append(' ');
                number(body, p.e());
                body.append(' ');
                number(body, p.f());
            }
            body.append(")\"");
        }
        group.clip().ifPresent(clip -> {
            var definition = new StringBuilder("<clipPath id=\"@\"><path clip-rule=\"evenodd\" d=\"");
            outline(definition, clip);
            body.append(" clip-path=\"")
                    .append(define(definition.append("\"/></clipPath>").toString()))
                    .append('"');
        });
        body.append('>');
        group.marks().forEach(this::mark);
        body.append("</g>");
    }

    private String paint(Paint paint) {
        if (paint instanceof Paint.Plain plain) {
            return shade(plain.rgb());
        }
        var definition = new StringBuilder();
        if (paint instanceof Paint.Along along) {
            definition.append("<linearGradient id=\"@\" gradientUnits=\"userSpaceOnUse\" x1=\"");
            number(definition, along.x1());
            definition.append("\" y1=\"");
            number(definition, along.y1());
            definition.append("\" x2=\"");
            number(definition, along.x2());
            definition.append("\" y2=\"");
            number(definition, along.y2());
            stops(definition, along.stops());
            definition.append("</linearGradient>");
        } else if (paint instanceof Paint.Outward outward) {
            definition.append("<radialGradient id=\"@\" gradientUnits=\"userSpaceOnUse\" cx=\"");
            number(definition, outward.cx());
            definition.append("\" cy=\"");
            number(definition, outward.cy());
            definition.append("\" r=\"");
            number(definition, outward.radius());
            stops(definition, outward.stops());
            definition.append("</radialGradient>");
        }
        return define(definition.toString());
    }

    private static void stops(StringBuilder definition, List<Paint.Stop> stops) {
        definition.append("\">");
        for (Paint.Stop stop : stops) {
            definition
                    .append("<stop offset=\"")
                    .append(factor(stop.at()))
                    .append("\" stop-color=\"")
                    .append(shade(stop.rgb()))
                    .append("\"/>");
        }
    }

    /** The reference to a definition; the same definition is written once. */
    private String define(String definition) {
        int known = definitions.indexOf(definition);
        if (known < 0) {
            known = definitions.size();
            definitions.add(definition);
        }
        return "url(#@" + known + ")";
    }

    private void opacity(String attribute, double opacity) {
        if (opacity < 1) {
            body.append(' ')
                    .append(attribute)
                    .append("=\"")
                    .append(factor(opacity))
                    .append('"');
        }
    }

    private static void outline(StringBuilder out, Outline outline) {
        for (Outline.Step step : outline.steps()) {
            if (step instanceof Outline.Move to) {
                out.append('M');
                pair(out, to.x(), to.y());
            } else if (step instanceof Outline.Straight to) {
                out.append('L');
                pair(out, to.x(), to.y());
            } else if (step instanceof Outline.Curve to) {
                out.append('C');
                pair(out, to.x1(), to.y1());
                out.append(' ');
                pair(out, to.x2(), to.y2());
                out.append(' ');
                pair(out, to.x(), to.y());
            } else {
                out.append('Z');
            }
        }
    }

    private static void pair(StringBuilder out, double x, double y) {
        number(out, x);
        out.append(' ');
        number(out, y);
    }

    /** Inches as thousandths with at most two decimals: a quarter of a micrometre. */
    private static void number(StringBuilder out, double inches) {
        decimal(out, Math.round(inches * 100_000), 2);
    }

    private static String inches(double inches) {
        var out = new StringBuilder();
        decimal(out, Math.round(inches * 100_000), 5);
        return out.toString();
    }

    private static String factor(double value) {
        var out = new StringBuilder();
        decimal(out, Math.round(value * 1_000_000), 6);
        return out.toString();
    }

    private static void decimal(StringBuilder out, long scaled, int places) {
        if (scaled < 0) {
            out.append('-');
            scaled = -scaled;
        }
        long unit = 1;
        for (int i = 0; i < places; i++) {
            unit *= 10;
        }
        out.append(scaled / unit);
        long rest = scaled % unit;
        if (rest == 0) {
            return;
        }
        out.append('.');
        while (rest > 0) {
            unit /= 10;
            out.append((char) ('0' + rest / unit));
            rest %= unit;
        }
    }

    private static String shade(int rgb) {
        var out = new StringBuilder(7).append("#");
        for (int shift = 20; shift >= 0; shift -= 4) {
            out.append(Character.forDigit(rgb >> shift & 15, 16));
        }
        return out.toString();
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
