package org.honorsdue.insignia.print;

import java.awt.geom.GeneralPath;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** A ruler laid on a page of a PDF: every painted path as a rectangle in millimetres from the upper left corner. */
final class PaperRule extends PDFGraphicsStreamEngine {
    private final List<Rectangle2D> filled = new ArrayList<>();
    private final List<Rectangle2D> stroked = new ArrayList<>();
    private final GeneralPath path = new GeneralPath();
    private final double height;

    private PaperRule(PDPage page) {
        super(page);
        height = page.getMediaBox().getHeight();
    }

    static PaperRule on(PDPage page) throws IOException {
        var rule = new PaperRule(page);
        rule.processPage(page);
        return rule;
    }

    List<Rectangle2D> filled() {
        return filled;
    }

    List<Rectangle2D> stroked() {
        return stroked;
    }

    private void paint(List<Rectangle2D> into) {
        Rectangle2D points = path.getBounds2D();
        double mm = 25.4 / 72;
        into.add(new Rectangle2D.Double(
                points.getX() * mm, (height - points.getMaxY()) * mm, points.getWidth() * mm, points.getHeight() * mm));
        path.reset();
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        path.moveTo(p0.getX(), p0.getY());
        path.lineTo(p1.getX(), p1.getY());
        path.lineTo(p2.getX(), p2.getY());
        path.lineTo(p3.getX(), p3.getY());
        path.closePath();
    }

    @Override
    public void drawImage(PDImage image) {}

    @Override
    public void clip(int windingRule) {}

    @Override
    public void moveTo(float x, float y) {
        path.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        path.lineTo(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        path.curveTo(x1, y1, x2, y2, x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
        return path.getCurrentPoint();
    }

    @Override
    public void closePath() {
        path.closePath();
    }

    @Override
    public void endPath() {
        path.reset();
    }

    @Override
    public void strokePath() {
        paint(stroked);
    }

    @Override
    public void fillPath(int windingRule) {
        paint(filled);
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        paint(filled);
    }

    @Override
    public void shadingFill(COSName shadingName) {}
}
