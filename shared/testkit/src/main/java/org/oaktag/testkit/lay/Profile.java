package org.oaktag.testkit.lay;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Point;

/**
 * How much at least of each upright line on the cloth a shape takes, with half the gap all round it, where the lines
 * are a pitch apart and the shape begins somewhere between the first of them and the one before.
 */
final class Profile {

    /** Lengths are rounded down to whole ones of so many in a millimetre. */
    static final int FINE = 10;

    /** Chords of a curve cut into so many parts lie within 0.01 mm of it, for the pieces of a garment. */
    private static final int PARTS = 60;

    /** What the chords may add to a length, mm; more than they do. */
    private static final double CHORDS = 0.1;

    private static final double BESIDE = 1e-7;

    private final List<Point> corners = new ArrayList<>();
    private final TreeSet<Double> turns = new TreeSet<>();
    private final double gap;

    private Profile(Outline outline, boolean mirrored, double gap) {
        double left = outline.bounds().minX();
        double right = outline.bounds().maxX();
        this.gap = gap;
        for (Curve curve : outline.path().curves()) {
            int parts = curve instanceof Line ? 1 : PARTS;
            for (int i = 0; i < parts; i++) {
                Point at = curve.pointAt((double) i / parts);
                Point corner = Point.of(mirrored ? right - at.x() : at.x() - left, at.y());
                corners.add(corner);
                turns.add(corner.x());
            }
        }
    }

    /** Returns what the shape takes of each line, in tenths of a millimetre. */
    static int[] of(Outline outline, boolean mirrored, double gap, double pitch) {
        Profile profile = new Profile(outline, mirrored, gap);
        int lines = (int) Math.ceil((outline.bounds().width() + gap) / pitch) + 2;
        int[] least = new int[lines];
        for (int line = 0; line < lines; line++) {
            double from = (line - 1) * pitch - gap / 2;
            least[line] = (int) Math.floor(FINE * Math.max(0, profile.least(from, from + pitch) - CHORDS));
        }
        return trimmed(least);
    }

    private static int[] trimmed(int[] lengths) {
        int count = lengths.length;
        while (count > 0 && lengths[count - 1] == 0) {
            count--;
        }
        return Arrays.copyOf(lengths, count);
    }

    /** A disc of half the gap carries the outline half the gap up, down, to the left and to the right. */
    private double least(double from, double to) {
        double within = shortest(from, to);
        double beside = Math.max(shortest(from - gap / 2, to - gap / 2), shortest(from + gap / 2, to + gap / 2));
        return Math.max(within > 0 ? within + gap : 0, beside);
    }

    /** Between the corners of a polygon the length of an upright line in it changes steadily. */
    private double shortest(double from, double to) {
        double shortest = Math.min(length(from), length(to));
        for (double turn : turns.subSet(from, true, to, true)) {
            shortest = Math.min(shortest, Math.min(length(turn - BESIDE), length(turn + BESIDE)));
        }
        return shortest;
    }

    private double length(double x) {
        double[] crossings = new double[corners.size()];
        int count = 0;
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            if ((a.x() <= x) != (b.x() <= x)) {
                crossings[count++] = a.y() + (b.y() - a.y()) * (x - a.x()) / (b.x() - a.x());
            }
        }
        Arrays.sort(crossings, 0, count);
        double length = 0;
        for (int i = 1; i < count; i += 2) {
            length += crossings[i] - crossings[i - 1];
        }
        return length;
    }
}
