package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * A cubic whose control points lie on one line may run to and fro on it. At its folds, the extrema of its place on the
 * line, it turns back; the runs between them go one way, so that what each has in common with another curve can be told
 * as one stretch.
 */
final class Folds {
    private static final double[] NONE = {};

    private Folds() {}

    /**
     * Returns the parameters in (0, 1), rising, at which the curve turns back on its line; none if it bends off it by
     * more.
     */
    static double[] of(Curve curve, double tolerance) {
        if (!(curve instanceof Cubic cubic)) {
            return NONE;
        }
        Vector longest = longest(cubic);
        if (longest.length() <= tolerance || !isStraight(cubic, tolerance)) {
            return NONE;
        }
        Vector along = longest.unit();
        double[] sides = {
            along.dot(cubic.control1().minus(cubic.start())),
            along.dot(cubic.control2().minus(cubic.control1())),
            along.dot(cubic.end().minus(cubic.control2()))
        };
        return Polynomials.changesOfSign(sides, Polynomials.roots(sides));
    }

    /** Tells whether all control points lie within the tolerance of one line through the start. */
    static boolean isStraight(Cubic cubic, double tolerance) {
        Vector longest = longest(cubic);
        if (longest.length() <= tolerance) {
            return true;
        }
        Vector along = longest.unit();
        double one = Math.abs(along.cross(cubic.control1().minus(cubic.start())));
        double two = Math.abs(along.cross(cubic.control2().minus(cubic.start())));
        return Math.max(Math.max(one, two), Math.abs(along.cross(cubic.end().minus(cubic.start())))) <= tolerance;
    }

    private static Vector longest(Cubic cubic) {
        Vector one = cubic.control1().minus(cubic.start());
        Vector two = cubic.control2().minus(cubic.start());
        Vector end = cubic.end().minus(cubic.start());
        Vector longer = one.length() > two.length() ? one : two;
        return end.length() > longer.length() ? end : longer;
    }

    /** Returns what two curves have in common, each of their runs by itself. */
    static List<Contact> between(Curve a, double[] foldsOfA, Curve b, double[] foldsOfB, double tolerance) {
        List<Contact> found = new ArrayList<>();
        for (int i = 0; i <= foldsOfA.length; i++) {
            for (int j = 0; j <= foldsOfB.length; j++) {
                found.addAll(ofRuns(run(a, foldsOfA, i), run(b, foldsOfB, j), tolerance));
            }
        }
        return found;
    }

    /** Returns the stretches that a curve runs over again. */
    static List<Contact> within(Curve curve) {
        double tolerance = CurveContacts.tolerance(curve, curve);
        double[] folds = of(curve, tolerance);
        List<Contact> found = new ArrayList<>();
        for (int i = 0; i <= folds.length; i++) {
            for (int j = i + 1; j <= folds.length; j++) {
                found.addAll(ofRuns(run(curve, folds, i), run(curve, folds, j), tolerance));
            }
        }
        found.removeIf(Contact::isPoint);
        return found;
    }

    /** The part of a curve from one parameter to another. */
    private record Run(Curve curve, double from, double to) {

        Curve part() {
            return curve.sub(from, to);
        }

        /** Exact at both ends, so that what two runs share at their fold is one place. */
        double onCurve(double share) {
            return share == 1 ? to : from + (to - from) * share;
        }
    }

    private static Run run(Curve curve, double[] folds, int i) {
        return new Run(curve, i == 0 ? 0 : folds[i - 1], i == folds.length ? 1 : folds[i]);
    }

    private static List<Contact> ofRuns(Run a, Run b, double tolerance) {
        List<Contact> found = new ArrayList<>();
        for (Contact contact : CurveContacts.ofRuns(a.part(), b.part(), tolerance)) {
            found.add(new Contact(
                    a.onCurve(contact.t0()),
                    a.onCurve(contact.t1()),
                    b.onCurve(contact.u0()),
                    b.onCurve(contact.u1())));
        }
        return found;
    }
}
