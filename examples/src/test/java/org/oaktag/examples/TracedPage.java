package org.oaktag.examples;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The drawn lines of a page of a PDF, as mutool (MuPDF) traces them, in millimetres from the upper left corner.
 *
 * @param lines the lines
 */
record TracedPage(List<Line> lines) {

    private static final double POINTS_PER_MM = 72 / 25.4;

    private static final Pattern STROKE = Pattern.compile("<stroke_path ([^>]*)>(.*?)</stroke_path>", Pattern.DOTALL);
    private static final Pattern ATTRIBUTE = Pattern.compile("(\\w+)=\"([^\"]*)\"");
    private static final Pattern OPERATOR = Pattern.compile("<(moveto|lineto|curveto) ([^>]*)/>");

    /** The control points of a line, ends included. */
    record Line(List<double[]> points) {
        double[] first() {
            return points.get(0);
        }

        double width() {
            return extent(0);
        }

        double height() {
            return extent(1);
        }

        private double extent(int axis) {
            double[] values =
                    points.stream().mapToDouble(each -> each[axis]).sorted().toArray();
            return values[values.length - 1] - values[0];
        }
    }

    static TracedPage of(Path pdf, int page) {
        String trace = Reader.MUTOOL.run(List.of("trace", pdf.toString(), "" + page));
        List<Line> lines = new ArrayList<>();
        Matcher stroke = STROKE.matcher(trace);
        while (stroke.find()) {
            lines.add(line(stroke.group(1), stroke.group(2)));
        }
        return new TracedPage(lines);
    }

    private static Line line(String head, String body) {
        double[] matrix = numbers(head, "transform");
        List<double[]> points = new ArrayList<>();
        Matcher operator = OPERATOR.matcher(body);
        while (operator.find()) {
            List<Double> operands = new ArrayList<>();
            Matcher attribute = ATTRIBUTE.matcher(operator.group(2));
            while (attribute.find()) {
                operands.add(Double.parseDouble(attribute.group(2)));
            }
            for (int i = 0; i + 1 < operands.size(); i += 2) {
                double x = operands.get(i);
                double y = operands.get(i + 1);
                points.add(new double[] {
                    (matrix[0] * x + matrix[2] * y + matrix[4]) / POINTS_PER_MM,
                    (matrix[1] * x + matrix[3] * y + matrix[5]) / POINTS_PER_MM
                });
            }
        }
        return new Line(points);
    }

    private static double[] numbers(String head, String name) {
        Matcher attribute = ATTRIBUTE.matcher(head);
        while (attribute.find()) {
            if (attribute.group(1).equals(name)) {
                return Pattern.compile(" ")
                        .splitAsStream(attribute.group(2))
                        .mapToDouble(Double::parseDouble)
                        .toArray();
            }
        }
        throw new AssertionError("no attribute '" + name + "' in: " + head);
    }
}
