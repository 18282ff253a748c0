package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Points that a straight segment has in common with a curve.
 *
 * <p>The signed distance of a cubic from a line is a cubic polynomial whose Bernstein coefficients are the distances of
 * the control points. Its roots are the crossings, and its extrema within the tolerance of zero the touches.
 */
final class LineContacts {
    private LineContacts() {}

    /**
     * Returns the crossing of two segments that are not parallel; the ends that lie on the other are found elsewhere.
     * Between parallels rounding may put a crossing anywhere, so it has to lie on both.
     */
    static List<Contact> between(Line a, Line b, double tolerance) {
        Vector d = a.end().minus(a.start());
        Vector e = b.end().minus(b.start());
        Vector gap = b.start().minus(a.start());
        double area = d.cross(e);
        double t = gap.cross(e) / area;
        double u = gap.cross(d) / area;
        boolean inside = t >= 0 && t <= 1 && u >= 0 && u <= 1;
        if (!inside) {
            return List.of();
        }
        if (a.pointAt(t).isCloseTo(b.pointAt(u), tolerance)) {
            return List.of(Contact.point(t, u));
        }
        Nearest on = b.nearest(a.pointAt(t));
        return on.distance() <= tolerance ? List.of(Contact.point(t, on.t())) : List.of();
    }

    /** Returns where the segment meets the cubic; its ends that lie on the cubic are found elsewhere as well. */
    static List<Contact> between(Line line, Cubic cubic, double tolerance) {
        double length = line.length();
        if (length == 0) {
            return List.of();
        }
        List<Contact> found = new ArrayList<>();
        for (double u : parameters(cubic, line.start(), line.directionAt(0), tolerance)) {
            double t = cubic.pointAt(u).minus(line.start()).dot(line.directionAt(0)) / length;
            if (t >= 0 && t <= 1) {
                found.add(Contact.point(t, u));
            }
        }
        return found;
    }

    /**
     * Adds the points at which a curve meets the endless line through a point in a unit direction, its ends included.
     */
    static void addPoints(Curve curve, Point through, Vector direction, List<Point> points) {
        double start = direction.cross(curve.start().minus(through));
        double end = direction.cross(curve.end().minus(through));
        double tolerance = CurveContacts.NEAR;
        if (misses(curve, through, direction, start, end)) {
            return;
        }
        if (Math.abs(start) <= tolerance) {
            points.add(curve.start());
        }
        if (curve instanceof Cubic cubic) {
            for (double t : parameters(cubic, through, direction, tolerance)) {
                if (t > 0 && t < 1) {
                    points.add(cubic.pointAt(t));
                }
            }
        } else if (start * end < 0) {
            points.add(curve.pointAt(start / (start - end)));
        }
        if (Math.abs(end) <= tolerance) {
            points.add(curve.end());
        }
    }

    /** Most curves lie with all their control points on one side of the line. */
    private static boolean misses(Curve curve, Point through, Vector direction, double start, double end) {
        double least = Math.min(start, end);
        double most = Math.max(start, end);
        if (curve instanceof Cubic cubic) {
            double one = direction.cross(cubic.control1().minus(through));
            double two = direction.cross(cubic.control2().minus(through));
            least = Math.min(least, Math.min(one, two));
            most = Math.max(most, Math.max(one, two));
        }
        return least > CurveContacts.NEAR || most < -CurveContacts.NEAR;
    }

    /**
     * Returns the parameters at which the cubic meets the endless line through a point in a unit direction; none if it
     * lies in it.
     */
    static double[] parameters(Cubic cubic, Point through, Vector direction, double tolerance) {
        double[] distances = {
            direction.cross(cubic.start().minus(through)),
            direction.cross(cubic.control1().minus(through)),
            direction.cross(cubic.control2().minus(through)),
            direction.cross(cubic.end().minus(through))
        };
        boolean within = true;
        for (double distance : distances) {
            within &= Math.abs(distance) <= tolerance;
        }
        if (within) {
            return new double[0];
        }
        double[] extrema = Polynomials.stationary(distances);
        double[] roots = Polynomials.roots(distances, extrema);
        double[] all = new double[roots.length + extrema.length];
        System.arraycopy(roots, 0, all, 0, roots.length);
        int count = roots.length;
        for (double t : extrema) {
            if (Math.abs(Polynomials.value(distances, t)) <= tolerance) {
                all[count++] = t;
            }
        }
        return Arrays.copyOf(all, count);
    }
}
