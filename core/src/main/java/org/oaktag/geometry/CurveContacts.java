package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Everything that two curves have in common.
 *
 * <p>First the ends that lie on the other curve are found: they are reported exactly, and two of them may bound a
 * shared stretch. Different cubics meet in at most nine points (Bézout), so a stretch whose ends and eight points
 * between lie on the other curve is shared. What is left are points inside both curves, found by {@link LineContacts}
 * or {@link CubicContacts}; those between which the curves do not part are one ({@link FlatContacts}).
 */
final class CurveContacts {
    /** Curves nearer than this, mm, meet; it grows with the coordinates where a double is coarser. */
    static final double NEAR = 1e-9;

    /** Two meeting points nearer than this along both curves, mm, are one. */
    private static final double SAME = 1e-6;

    /** Curves run along each other as long as they stay within this many tolerances. */
    private static final double TOGETHER = 100;

    private static final int SAMPLES = 9;

    private static final Comparator<Contact> ALONG =
            Comparator.comparingDouble(Contact::t0).thenComparingDouble(Contact::u0);

    private CurveContacts() {}

    static double tolerance(Curve a, Curve b) {
        return tolerance(hull(a), hull(b));
    }

    private static double tolerance(Bounds a, Bounds b) {
        return Math.max(NEAR, 8 * Math.max(ulp(a), ulp(b)));
    }

    /**
     * Returns how near the boxes of two curves must be for the curves to have anything in common, mm; enough for every
     * pair.
     */
    static double near(CurveTree a, CurveTree b) {
        return TOGETHER * Math.max(NEAR, 8 * Math.ulp(Math.max(a.reach(), b.reach())));
    }

    private static double ulp(Bounds hull) {
        double reach = Math.max(
                Math.max(Math.abs(hull.minX()), Math.abs(hull.maxX())),
                Math.max(Math.abs(hull.minY()), Math.abs(hull.maxY())));
        return Math.ulp(reach);
    }

    static Bounds hull(Curve curve) {
        return curve instanceof Cubic cubic ? cubic.hull() : curve.bounds();
    }

    /** Returns the contacts in order along the first curve, each once. */
    static List<Contact> between(Curve a, Curve b) {
        Bounds hullA = hull(a);
        Bounds hullB = hull(b);
        double tolerance = tolerance(hullA, hullB);
        if (!hullA.expanded(TOGETHER * tolerance).overlaps(hullB)) {
            return List.of();
        }
        double[] foldsOfA = Folds.of(a, tolerance);
        double[] foldsOfB = Folds.of(b, tolerance);
        return foldsOfA.length + foldsOfB.length == 0
                ? ofRuns(a, b, tolerance)
                : Folds.between(a, foldsOfA, b, foldsOfB, tolerance);
    }

    /** Returns the contacts of curves of which neither turns back on a line. */
    static List<Contact> ofRuns(Curve a, Curve b, double tolerance) {
        double together = TOGETHER * tolerance;
        List<Contact> ends = ends(a, b, together);
        List<Contact> shared = shared(a, b, ends, together);
        List<Contact> points = new ArrayList<>(ends);
        points.removeIf(end -> !a.pointAt(end.t0()).isCloseTo(b.pointAt(end.u0()), tolerance));
        points.addAll(inner(a, b, shared, tolerance));
        List<Contact> apart = new ArrayList<>();
        for (Contact point : points) {
            if (shared.stream().noneMatch(known -> covers(a, b, known, point))
                    && apart.stream().noneMatch(known -> covers(a, b, known, point))) {
                apart.add(point);
            }
        }
        apart.sort(ALONG);
        List<Contact> found = new ArrayList<>(shared);
        found.addAll(new FlatContacts(a, b, tolerance).joined(apart));
        found.sort(ALONG);
        return found;
    }

    private static List<Contact> inner(Curve a, Curve b, List<Contact> shared, double tolerance) {
        if (a instanceof Line line) {
            return b instanceof Line other
                    ? LineContacts.between(line, other, tolerance)
                    : LineContacts.between(line, (Cubic) b, tolerance);
        }
        if (b instanceof Line line) {
            return LineContacts.between(line, (Cubic) a, tolerance).stream()
                    .map(c -> Contact.point(c.u0(), c.t0()))
                    .toList();
        }
        return CubicContacts.between((Cubic) a, (Cubic) b, shared, tolerance);
    }

    private static List<Contact> ends(Curve a, Curve b, double tolerance) {
        Set<Contact> ends = new LinkedHashSet<>();
        for (double end = 0; end <= 1; end++) {
            for (double u : places(b, end == 0 ? a.start() : a.end(), tolerance)) {
                ends.add(Contact.point(end, u));
            }
            for (double t : places(a, end == 0 ? b.start() : b.end(), tolerance)) {
                ends.add(Contact.point(t, end));
            }
        }
        return ends.stream().sorted(ALONG).toList();
    }

    /**
     * Where a curve passes the point: of all that is within the tolerance its very ends, both if it is closed, else
     * both branches of a double point, else the nearest.
     */
    private static List<Double> places(Curve curve, Point point, double tolerance) {
        if (!hull(curve).expanded(tolerance).contains(point)) {
            return List.of();
        }
        List<Double> candidates = new ArrayList<>(List.of(0.0, 1.0));
        if (curve instanceof Cubic cubic) {
            for (Contact knot : SelfContacts.of(cubic)) {
                candidates.add(knot.t0());
                candidates.add(knot.u0());
            }
        }
        // At a very end nothing is nearer than it, and neighbours on a path meet there.
        if (!point.equals(curve.start()) && !point.equals(curve.end())) {
            Nearest on = curve.nearest(point);
            if (on.distance() > tolerance) {
                return List.of();
            }
            candidates.add(on.t());
        }
        List<Double> places = new ArrayList<>();
        for (double t : candidates) {
            if (curve.pointAt(t).isCloseTo(point, tolerance)
                    && places.stream().noneMatch(known -> apart(curve, known, known, t) <= SAME)) {
                places.add(t);
            }
        }
        return places;
    }

    private static List<Contact> shared(Curve a, Curve b, List<Contact> ends, double tolerance) {
        List<Contact> shared = new ArrayList<>();
        for (int i = 0; i < ends.size(); i++) {
            for (int j = i + 1; j < ends.size(); j++) {
                Contact from = ends.get(i);
                Contact to = ends.get(j);
                Contact stretch = new Contact(from.t0(), to.t0(), from.u0(), to.u0());
                if (isShared(a, b, stretch, tolerance)) {
                    shared.add(stretch);
                }
            }
        }
        return shared;
    }

    private static boolean isShared(Curve a, Curve b, Contact stretch, double tolerance) {
        double u0 = Math.min(stretch.u0(), stretch.u1());
        double u1 = Math.max(stretch.u0(), stretch.u1());
        if (Math.min(a.lengthBetween(stretch.t0(), stretch.t1(), SAME), b.lengthBetween(u0, u1, SAME)) <= SAME) {
            return false;
        }
        return isAlong(a.sub(stretch.t0(), stretch.t1()), b.sub(u0, u1), tolerance, stretch.u0() < stretch.u1());
    }

    /**
     * Tells whether either curve keeps to the other, and both run forward or, if so asked, one forward and one back.
     */
    private static boolean isAlong(Curve a, Curve b, double tolerance, boolean forward) {
        double[] onB = new double[SAMPLES];
        for (int i = 1; i < SAMPLES; i++) {
            double share = (double) i / SAMPLES;
            Nearest on = b.nearest(a.pointAt(share));
            if (on.distance() > tolerance || a.nearest(b.pointAt(share)).distance() > tolerance) {
                return false;
            }
            onB[i] = on.t();
        }
        // A closed curve has each of its points in common with itself both ways round.
        return onB[1] < onB[SAMPLES - 1] == forward;
    }

    /** Tells whether the point is part of, or the same as, a contact that is known already. */
    private static boolean covers(Curve a, Curve b, Contact known, Contact point) {
        double u0 = Math.min(known.u0(), known.u1());
        double u1 = Math.max(known.u0(), known.u1());
        return Math.max(apart(a, known.t0(), known.t1(), point.t0()), apart(b, u0, u1, point.u0())) <= SAME;
    }

    private static double apart(Curve curve, double t0, double t1, double t) {
        return curve.lengthBetween(Math.min(t, t0), t0, SAME / 8) + curve.lengthBetween(t1, Math.max(t, t1), SAME / 8);
    }
}
