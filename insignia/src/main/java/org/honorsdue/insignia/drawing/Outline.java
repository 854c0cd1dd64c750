package org.honorsdue.insignia.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A line through points, in inches, y downwards; straight pieces and cubic curves, one or more runs. */
public record Outline(List<Step> steps) {
    private static final double ROUND = 0.552284749830793;
    private static final Pattern TOKEN = Pattern.compile("[MLHVCQSZmlhvcqsz]|-?\\d*\\.?\\d+");

    public Outline {
        steps = List.copyOf(steps);
    }

    /** One piece of the line. */
    public sealed interface Step {}

    /** Lift the pen and start a run here. */
    public record Move(double x, double y) implements Step {}

    public record Straight(double x, double y) implements Step {}

    public record Curve(double x1, double y1, double x2, double y2, double x, double y) implements Step {}

    /** Back to the start of the run. */
    public record Close() implements Step {}

    public static Outline rectangle(double x, double y, double width, double height) {
        return new Pen()
                .move(x, y)
                .line(x + width, y)
                .line(x + width, y + height)
                .line(x, y + height)
                .close()
                .outline();
    }

    public static Outline rounded(double x, double y, double width, double height, double radius) {
        double k = radius * (1 - ROUND);
        double right = x + width;
        double foot = y + height;
        return new Pen()
                .move(x + radius, y)
                .line(right - radius, y)
                .curve(right - k, y, right, y + k, right, y + radius)
                .line(right, foot - radius)
                .curve(right, foot - k, right - k, foot, right - radius, foot)
                .line(x + radius, foot)
                .curve(x + k, foot, x, foot - k, x, foot - radius)
                .line(x, y + radius)
                .curve(x, y + k, x + k, y, x + radius, y)
                .close()
                .outline();
    }

    public static Outline circle(double cx, double cy, double radius) {
        return ellipse(cx, cy, radius, radius);
    }

    public static Outline ellipse(double cx, double cy, double rx, double ry) {
        double kx = rx * ROUND;
        double ky = ry * ROUND;
        return new Pen()
                .move(cx + rx, cy)
                .curve(cx + rx, cy + ky, cx + kx, cy + ry, cx, cy + ry)
                .curve(cx - kx, cy + ry, cx - rx, cy + ky, cx - rx, cy)
                .curve(cx - rx, cy - ky, cx - kx, cy - ry, cx, cy - ry)
                .curve(cx + kx, cy - ry, cx + rx, cy - ky, cx + rx, cy)
                .close()
                .outline();
    }

    /** A closed figure through points given as x, y, x, y and so on. */
    public static Outline polygon(double... coordinates) {
        return run(coordinates, true);
    }

    /** An open line through points given as x, y, x, y and so on. */
    public static Outline through(double... coordinates) {
        return run(coordinates, false);
    }

    private static Outline run(double[] coordinates, boolean closed) {
        if (coordinates.length < 4 || coordinates.length % 2 != 0) {
            throw new IllegalArgumentException("A line needs at least two points of two coordinates each.");
        }
        var pen = new Pen().move(coordinates[0], coordinates[1]);
        for (int i = 2; i < coordinates.length; i += 2) {
            pen.line(coordinates[i], coordinates[i + 1]);
        }
        return closed ? pen.close().outline() : pen.outline();
    }

    /** A star with one point up. */
    public static Outline star(int points, double cx, double cy, double outer, double inner) {
        var corners = new double[points * 4];
        for (int i = 0; i < points * 2; i++) {
            double radius = i % 2 == 0 ? outer : inner;
            double angle = Math.PI * i / points;
            corners[2 * i] = cx + radius * Math.sin(angle);
            corners[2 * i + 1] = cy - radius * Math.cos(angle);
        }
        return polygon(corners);
    }

    /** A regular five-pointed star, one point up; its inner corners lie where its lines cross. */
    public static Outline star(double cx, double cy, double outer) {
        return star(5, cx, cy, outer, outer * 0.381966);
    }

    /** Part of a circle as an open line; degrees clockwise from the top. */
    public static Outline arc(double cx, double cy, double radius, double from, double to) {
        var pen = new Pen();
        pen.arc(cx, cy, radius, radius, from, to, true);
        return pen.outline();
    }

    /**
     * Reads path data: M L H V C Q S Z and their small letters, as in SVG.
     *
     * @throws IllegalArgumentException for anything else
     */
    public static Outline path(String data) {
        return new PathReader(TOKEN.matcher(data), data).read();
    }

    /** Both outlines as one; where they overlap is a hole. */
    public Outline and(Outline other) {
        var all = new ArrayList<Step>(steps);
        all.addAll(other.steps);
        return new Outline(all);
    }

    public Outline placed(Placement placement) {
        var moved = new ArrayList<Step>(steps.size());
        for (Step step : steps) {
            if (step instanceof Move at) {
                moved.add(new Move(placement.x(at.x, at.y), placement.y(at.x, at.y)));
            } else if (step instanceof Straight to) {
                moved.add(new Straight(placement.x(to.x, to.y), placement.y(to.x, to.y)));
            } else if (step instanceof Curve bend) {
                moved.add(new Curve(
                        placement.x(bend.x1, bend.y1),
                        placement.y(bend.x1, bend.y1),
                        placement.x(bend.x2, bend.y2),
                        placement.y(bend.x2, bend.y2),
                        placement.x(bend.x, bend.y),
                        placement.y(bend.x, bend.y)));
            } else {
                moved.add(step);
            }
        }
        return new Outline(moved);
    }

    /** Draws an outline piece by piece. */
    public static final class Pen {
        private final List<Step> steps = new ArrayList<>();

        public Pen move(double x, double y) {
            steps.add(new Move(x, y));
            return this;
        }

        public Pen line(double x, double y) {
            steps.add(new Straight(x, y));
            return this;
        }

        public Pen curve(double x1, double y1, double x2, double y2, double x, double y) {
            steps.add(new Curve(x1, y1, x2, y2, x, y));
            return this;
        }

        /**
         * Part of an ellipse; degrees clockwise from the top.
         *
         * @param fresh start a run at its beginning; otherwise a straight line leads there
         */
        public Pen arc(double cx, double cy, double rx, double ry, double from, double to, boolean fresh) {
            int pieces = Math.max(1, (int) Math.ceil(Math.abs(to - from) / 90 - 1e-9));
            double step = Math.toRadians((to - from) / pieces);
            double k = 4.0 / 3 * Math.tan(step / 4);
            double angle = Math.toRadians(from - 90);
            double x = cx + rx * Math.cos(angle);
            double y = cy + ry * Math.sin(angle);
            if (fresh) {
                move(x, y);
            } else {
                line(x, y);
            }
            for (int i = 0; i < pieces; i++) {
                double next = angle + step;
                double endX = cx + rx * Math.cos(next);
                double endY = cy + ry * Math.sin(next);
                curve(
                        x - k * rx * Math.sin(angle),
                        y + k * ry * Math.cos(angle),
                        endX + k * rx * Math.sin(next),
                        endY - k * ry * Math.cos(next),
                        endX,
                        endY);
                angle = next;
                x = endX;
                y = endY;
            }
            return this;
        }

        public Pen close() {
            steps.add(new Close());
            return this;
        }

        public Outline outline() {
            return new Outline(steps);
        }
    }

    /** Reads path data token by token. */
    private static final class PathReader {
        private final List<String> tokens = new ArrayList<>();
        private int next;
        private double x;
        private double y;
        private double startX;
        private double startY;
        private double handleX;
        private double handleY;
        private final Pen pen = new Pen();

        PathReader(Matcher matcher, String data) {
            int end = 0;
            while (matcher.find()) {
                if (!data.substring(end, matcher.start()).matches("[\\s,]*")) {
                    throw new IllegalArgumentException("Path data holds what is no path: " + data);
                }
                tokens.add(matcher.group());
                end = matcher.end();
            }
        }

        Outline read() {
            char command = 'M';
            while (next < tokens.size()) {
                String token = tokens.get(next);
                if (Character.isLetter(token.charAt(0))) {
                    command = token.charAt(0);
                    next++;
                }
                step(command);
                if (command == 'M') {
                    command = 'L';
                } else if (command == 'm') {
                    command = 'l';
                }
            }
            return pen.outline();
        }

        private void step(char command) {
            double fromX = Character.isLowerCase(command) ? x : 0;
            double fromY = Character.isLowerCase(command) ? y : 0;
            switch (Character.toUpperCase(command)) {
                case 'M' -> {
                    to(fromX + number(), fromY + number());
                    startX = x;
                    startY = y;
                    pen.move(x, y);
                }
                case 'L' -> {
                    to(fromX + number(), fromY + number());
                    pen.line(x, y);
                }
                case 'H' -> {
                    to(fromX + number(), y);
                    pen.line(x, y);
                }
                case 'V' -> {
                    to(x, fromY + number());
                    pen.line(x, y);
                }
                case 'C' -> bend(fromX + number(), fromY + number(), fromX, fromY);
                case 'S' -> bend(2 * x - handleX, 2 * y - handleY, fromX, fromY);
                case 'Q' -> {
                    double qx = fromX + number();
                    double qy = fromY + number();
                    double endX = fromX + number();
                    double endY = fromY + number();
                    pen.curve(
                            x + (qx - x) * 2 / 3,
                            y + (qy - y) * 2 / 3,
                            endX + (qx - endX) * 2 / 3,
                            endY + (qy - endY) * 2 / 3,
                            endX,
                            endY);
                    to(endX, endY);
                }
                default -> {
                    pen.close();
                    to(startX, startY);
                }
            }
        }

        private void bend(double x1, double y1, double fromX, double fromY) {
            double x2 = fromX + number();
            double y2 = fromY + number();
            double endX = fromX + number();
            double endY = fromY + number();
            pen.curve(x1, y1, x2, y2, endX, endY);
            to(endX, endY);
            handleX = x2;
            handleY = y2;
        }

        private void to(double newX, double newY) {
            x = newX;
            y = newY;
            handleX = newX;
            handleY = newY;
        }

        private double number() {
            if (next >= tokens.size()) {
                throw new IllegalArgumentException("Path data breaks off.");
            }
            return Double.parseDouble(tokens.get(next++));
        }
    }
}
