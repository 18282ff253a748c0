package org.oaktag.geometry;

import java.util.Arrays;
import java.util.List;

/**
 * What cuts a run of parallels and is never part of it: the parallel on the other side of an open path, and round its
 * ends circles of the distance, a little less. Beside what the run crosses of itself, these are the places at which it
 * may come too near to the path.
 *
 * @param curves the parallel on the other side
 * @param centres the ends
 * @param radius that of the circles, mm
 */
record OffsetCutters(List<Curve> curves, List<Point> centres, double radius) {
    /**
     * The circles are smaller than the distance by this share of the tolerance, so that the parallel does not run along
     * them.
     */
    private static final double WITHIN = 0.75;

    /**
     * A path that turns less than this, radians, in all, does not come round to meet its own left side with its right.
     */
    private static final double HALF_ROUND = 0.9 * Math.PI;

    OffsetCutters {
        curves = List.copyOf(curves);
        centres = List.copyOf(centres);
    }

    static OffsetCutters none() {
        return new OffsetCutters(List.of(), List.of(), 0);
    }

    /** Returns what cuts the parallel to the left of a path. */
    static OffsetCutters of(Path path, double left, double tolerance) {
        double radius = left - WITHIN * tolerance;
        if (radius <= 0) {
            return none();
        }
        List<Point> ends = List.of(path.start(), path.end());
        if (path.curves().stream().mapToDouble(OffsetCutters::bend).sum() + corners(path) < HALF_ROUND) {
            return new OffsetCutters(List.of(), ends, radius);
        }
        List<Path> back = List.of(path.reversed());
        List<RawCurve> other = new RawOffset(
                        back, new double[] {left}, OffsetCorners.all(CornerStyle.round(), 1), tolerance)
                .openRun();
        return new OffsetCutters(
                other.stream().filter(raw -> !raw.link()).map(RawCurve::curve).toList(), ends, radius);
    }

    /** Returns the turns of a control polygon, none less than those of the curve. */
    private static double bend(Curve curve) {
        if (!(curve instanceof Cubic cubic)) {
            return 0;
        }
        Vector h0 = cubic.control1().minus(cubic.start());
        Vector h1 = cubic.control2().minus(cubic.control1());
        Vector h2 = cubic.end().minus(cubic.control2());
        return h1.equals(Vector.ZERO) ? Math.abs(h0.angleTo(h2)) : Math.abs(h0.angleTo(h1)) + Math.abs(h1.angleTo(h2));
    }

    private static double corners(Path path) {
        double sum = 0;
        for (int i = 1; i < path.curves().size(); i++) {
            Vector arriving = path.curves().get(i - 1).directionAt(1);
            sum += Math.abs(arriving.angleTo(path.curves().get(i).directionAt(0)));
        }
        return sum;
    }

    /** Returns where a curve enters or leaves the circles. */
    double[] onCircles(Curve curve) {
        Bounds hull = CurveContacts.hull(curve);
        double[] all = {};
        for (Point centre : centres) {
            if (!hull.expanded(radius).contains(centre)) {
                continue;
            }
            Cubic cubic = Cubic.from(curve);
            double[] x = new double[4];
            double[] y = new double[4];
            for (int i = 0; i < x.length; i++) {
                Vector arm = cubic.controls().get(i).minus(centre);
                x[i] = arm.x();
                y[i] = arm.y();
            }
            double[] square = Bernstein.plus(Bernstein.product(x, x), Bernstein.product(y, y));
            for (int i = 0; i < square.length; i++) {
                square[i] -= radius * radius;
            }
            double[] places = Polynomials.roots(square);
            double[] more = Arrays.copyOf(all, all.length + places.length);
            System.arraycopy(places, 0, more, all.length, places.length);
            all = more;
        }
        return all;
    }
}
