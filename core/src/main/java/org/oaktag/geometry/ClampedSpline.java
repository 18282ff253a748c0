package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * The cubic spline over the chord lengths with given unit tangents at its ends.
 *
 * <p><b>Formula.</b> With h[i] the chords, s[i] their slopes (unit vectors) and m[i] the derivatives with respect to
 * the chord length, the second derivative is continuous at point i if {@code h[i] m[i-1] + 2 (h[i-1] + h[i]) m[i] +
 * h[i-1] m[i+1] = 3 (h[i] s[i-1] + h[i-1] s[i])}; m at the ends is given. The system is tridiagonal and diagonally
 * dominant, so elimination without pivots is stable and takes O(n) (de Boor, A Practical Guide to Splines, ch. 4; from
 * memory, and tested by the continuity itself). A stretch is the cubic with handles m h/3.
 */
final class ClampedSpline {
    private ClampedSpline() {}

    static Path through(List<Point> points, Vector startDirection, Vector endDirection) {
        if (points.size() < 2) {
            throw new IllegalArgumentException("a curve needs at least two points to go through, got " + points.size());
        }
        int n = points.size() - 1;
        double[] chords = new double[n];
        for (int i = 0; i < n; i++) {
            chords[i] = points.get(i).distanceTo(points.get(i + 1));
            if (chords[i] == 0) {
                throw new IllegalArgumentException(
                        "neighbouring points must differ, got " + points.get(i) + " at " + i + " and " + (i + 1));
            }
        }
        Vector[] tangents = tangents(points, chords, unit(startDirection), unit(endDirection));
        List<Curve> run = new ArrayList<>(n);
        for (int i = 0; i < n; i++) {
            double third = chords[i] / 3;
            run.add(Cubic.hermite(
                    points.get(i), tangents[i].times(third), points.get(i + 1), tangents[i + 1].times(third)));
        }
        return Path.of(run);
    }

    private static Vector unit(Vector direction) {
        if (direction.equals(Vector.ZERO)) {
            throw new IllegalArgumentException("an end direction must not be the zero vector");
        }
        return direction.unit();
    }

    /**
     * Solves h[i] m[i-1] + 2 (h[i-1] + h[i]) m[i] + h[i-1] m[i+1] = 3 (h[i] s[i-1] + h[i-1] s[i]), s the chords'
     * slopes.
     */
    private static Vector[] tangents(List<Point> points, double[] h, Vector first, Vector last) {
        int n = h.length;
        Vector[] m = new Vector[n + 1];
        double[] upper = new double[n + 1];
        m[0] = first;
        for (int i = 1; i < n; i++) {
            Vector arriving = points.get(i).minus(points.get(i - 1)).times(1 / h[i - 1]);
            Vector leaving = points.get(i + 1).minus(points.get(i)).times(1 / h[i]);
            Vector right = arriving.times(h[i]).plus(leaving.times(h[i - 1])).times(3);
            double pivot = 2 * (h[i - 1] + h[i]) - h[i] * upper[i - 1];
            upper[i] = h[i - 1] / pivot;
            m[i] = right.minus(m[i - 1].times(h[i])).times(1 / pivot);
        }
        m[n] = last;
        for (int i = n - 1; i > 0; i--) {
            m[i] = m[i].minus(m[i + 1].times(upper[i]));
        }
        return m;
    }
}
