package org.honorsdue.insignia.print;

import java.awt.Color;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBoolean;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDFormContentStream;
import org.apache.pdfbox.pdmodel.common.function.PDFunctionType2;
import org.apache.pdfbox.pdmodel.common.function.PDFunctionType3;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.apache.pdfbox.pdmodel.graphics.shading.PDShading;
import org.apache.pdfbox.pdmodel.graphics.shading.PDShadingType2;
import org.apache.pdfbox.pdmodel.graphics.shading.PDShadingType3;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.util.Matrix;
import org.honorsdue.insignia.drawing.Drawing;
import org.honorsdue.insignia.drawing.Mark;
import org.honorsdue.insignia.drawing.Outline;
import org.honorsdue.insignia.drawing.Paint;
import org.honorsdue.insignia.drawing.Placement;

/** Draws marks into a form of a PDF, whose space is points with y upwards. */
final class PdfPen {
    private final PDFormContentStream stream;
    private final PdfFaces faces;
    private final Map<Double, PDExtendedGraphicsState> opacities = new HashMap<>();

    PdfPen(PDFormContentStream stream, PdfFaces faces) {
        this.stream = stream;
        this.faces = faces;
    }

    /** The whole drawing, its lower left corner at 0,0 of the form. */
    void draw(Drawing drawing) throws IOException {
        stream.saveGraphicsState();
        stream.transform(new Matrix(72, 0, 0, -72, 0, (float) (drawing.height() * 72)));
        marks(drawing.marks());
        stream.restoreGraphicsState();
    }

    private void marks(List<Mark> marks) throws IOException {
        for (Mark mark : marks) {
            if (mark instanceof Mark.Area area) {
                area(area);
            } else if (mark instanceof Mark.Line line) {
                line(line);
            } else if (mark instanceof Mark.Words words) {
                words(words);
            } else if (mark instanceof Mark.Group group) {
                group(group);
            }
        }
    }

    private void area(Mark.Area area) throws IOException {
        boolean clear = area.opacity() < 1;
        if (area.paint() instanceof Paint.Plain plain) {
            if (clear) {
                stream.saveGraphicsState();
                stream.setGraphicsStateParameters(opacity(area.opacity()));
            }
            stream.setNonStrokingColor(new Color(plain.rgb()));
            path(area.outline());
            stream.fillEvenOdd();
            if (clear) {
                stream.restoreGraphicsState();
            }
            return;
        }
        stream.saveGraphicsState();
        if (clear) {
            stream.setGraphicsStateParameters(opacity(area.opacity()));
        }
        path(area.outline());
        stream.clipEvenOdd();
        stream.shadingFill(shading(area.paint()));
        stream.restoreGraphicsState();
    }

    private void line(Mark.Line line) throws IOException {
        stream.saveGraphicsState();
        if (line.opacity() < 1) {
            stream.setGraphicsStateParameters(opacity(line.opacity()));
        }
        stream.setStrokingColor(new Color(line.rgb()));
        stream.setLineWidth((float) line.width());
        switch (line.ends()) {
            case BUTT -> {
                stream.setLineCapStyle(0);
                stream.setLineJoinStyle(0);
                stream.setMiterLimit(4);
            }
            case SQUARE -> {
                stream.setLineCapStyle(2);
                stream.setLineJoinStyle(0);
                stream.setMiterLimit(1.6f);
            }
            case ROUND -> {
                stream.setLineCapStyle(1);
                stream.setLineJoinStyle(1);
            }
        }
        if (!line.dashes().isEmpty()) {
            var dashes = new float[line.dashes().size()];
            for (int i = 0; i < dashes.length; i++) {
                dashes[i] = line.dashes().get(i).floatValue();
            }
            stream.setLineDashPattern(dashes, 0);
        }
        path(line.outline());
        stream.stroke();
        stream.restoreGraphicsState();
    }

    private void words(Mark.Words words) throws IOException {
        double width = faces.width(words.text(), words.face(), words.size());
        double x = words.x()
                - switch (words.anchor()) {
                    case START -> 0;
                    case MIDDLE -> width / 2;
                    case END -> width;
                };
        stream.setNonStrokingColor(new Color(words.rgb()));
        stream.beginText();
        // Upright letters in a space whose y runs down.
        stream.setTextMatrix(new Matrix(1, 0, 0, -1, (float) x, (float) words.baseline()));
        for (PdfFaces.Run run : faces.runs(words.text(), words.face())) {
            stream.setFont(run.face(), (float) words.size());
            stream.showText(run.text());
        }
        stream.endText();
    }

    private void group(Mark.Group group) throws IOException {
        stream.saveGraphicsState();
        Placement p = group.placement();
        if (!p.equals(Placement.HERE)) {
            stream.transform(new Matrix(
                    (float) p.a(), (float) p.b(), (float) p.c(), (float) p.d(), (float) p.e(), (float) p.f()));
        }
        if (group.clip().isPresent()) {
            path(group.clip().get());
            stream.clipEvenOdd();
        }
        marks(group.marks());
        stream.restoreGraphicsState();
    }

    private void path(Outline outline) throws IOException {
        for (Outline.Step step : outline.steps()) {
            if (step instanceof Outline.Move to) {
                stream.moveTo((float) to.x(), (float) to.y());
            } else if (step instanceof Outline.Straight to) {
                stream.lineTo((float) to.x(), (float) to.y());
            } else if (step instanceof Outline.Curve to) {
                stream.curveTo(
                        (float) to.x1(), (float) to.y1(), (float) to.x2(), (float) to.y2(), (float) to.x(), (float)
                                to.y());
            } else {
                stream.closePath();
            }
        }
    }

    private PDExtendedGraphicsState opacity(double opacity) {
        return opacities.computeIfAbsent(opacity, value -> {
            var state = new PDExtendedGraphicsState();
            state.setNonStrokingAlphaConstant(value.floatValue());
            state.setStrokingAlphaConstant(value.floatValue());
            return state;
        });
    }

    private static PDShading shading(Paint paint) throws IOException {
        var dictionary = new COSDictionary();
        var coords = new COSArray();
        PDShading shading;
        List<Paint.Stop> stops;
        if (paint instanceof Paint.Along along) {
            stops = along.stops();
            for (double value : new double[] {along.x1(), along.y1(), along.x2(), along.y2()}) {
                coords.add(new COSFloat((float) value));
            }
            var axial = new PDShadingType2(dictionary);
            axial.setShadingType(PDShading.SHADING_TYPE2);
            axial.setCoords(coords);
            axial.setExtend(both());
            axial.setFunction(function(stops));
            shading = axial;
        } else if (paint instanceof Paint.Outward outward) {
            stops = outward.stops();
            for (double value :
                    new double[] {outward.cx(), outward.cy(), 0, outward.cx(), outward.cy(), outward.radius()}) {
                coords.add(new COSFloat((float) value));
            }
            var radial = new PDShadingType3(dictionary);
            radial.setShadingType(PDShading.SHADING_TYPE3);
            radial.setCoords(coords);
            radial.setExtend(both());
            radial.setFunction(function(stops));
            shading = radial;
        } else {
            throw new IllegalArgumentException("A plain colour needs no shading.");
        }
        shading.setColorSpace(PDDeviceRGB.INSTANCE);
        return shading;
    }

    private static COSArray both() {
        var extend = new COSArray();
        extend.add(COSBoolean.TRUE);
        extend.add(COSBoolean.TRUE);
        return extend;
    }

    /** From stop to stop, each step straight. */
    private static PDFunctionType3 function(List<Paint.Stop> stops) {
        var functions = new COSArray();
        var bounds = new COSArray();
        var encode = new COSArray();
        for (int i = 1; i < stops.size(); i++) {
            var step = new COSDictionary();
            step.setInt(COSName.FUNCTION_TYPE, 2);
            step.setItem(COSName.DOMAIN, numbers(0, 1));
            step.setItem(COSName.C0, color(stops.get(i - 1).rgb()));
            step.setItem(COSName.C1, color(stops.get(i).rgb()));
            step.setItem(COSName.N, COSInteger.ONE);
            functions.add(new PDFunctionType2(step).getCOSObject());
            if (i < stops.size() - 1) {
                bounds.add(new COSFloat((float) stops.get(i).at()));
            }
            encode.add(COSInteger.ZERO);
            encode.add(COSInteger.ONE);
        }
        var whole = new COSDictionary();
        whole.setInt(COSName.FUNCTION_TYPE, 3);
        whole.setItem(COSName.DOMAIN, numbers(0, 1));
        whole.setItem(COSName.FUNCTIONS, functions);
        whole.setItem(COSName.BOUNDS, bounds);
        whole.setItem(COSName.ENCODE, encode);
        return new PDFunctionType3(whole);
    }

    private static COSArray color(int rgb) {
        return numbers((rgb >> 16 & 0xFF) / 255.0, (rgb >> 8 & 0xFF) / 255.0, (rgb & 0xFF) / 255.0);
    }

    private static COSArray numbers(double... values) {
        var array = new COSArray();
        for (double value : values) {
            array.add(new COSFloat((float) value));
        }
        return array;
    }
}
