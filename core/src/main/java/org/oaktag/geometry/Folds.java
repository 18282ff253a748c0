package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * A cubic whose control points lie on one line may run to and fro on it. At its folds, the extrema of its place on the line, it turns back; the
 * runs between them go one way, so that what each has in common with another curve can be told as one stretch.
 */
final class Folds {
    private static final double[] NONE = {};

    private Folds() {}

    /** Returns the parameters in (0, 1), rising, at which the curve may turn back on its line; none if it bends off it by more. */
    static double[] of(Curve curve, double tolerance) {
        if (!(curve instanceof Cubic cubic)) {
            return NONE;
        }
        Vector one = cubic.control1().minus(cubic.start());
        Vector two = cubic.control2().minus(cubic.start());
        Vector end = cubic.end().minus(cubic.start());
        Vector longest = one.length() > two.length() ? one : two;
        longest = end.length() > longest.length() ? end : longest;
        if (longest.length() <= tolerance) {
            return NONE;
        }
        Vector along = longest.unit();
        double off =
                Math.max(Math.abs(along.cross(one)), Math.max(Math.abs(along.cross(two)), Math.abs(along.cross(end))));
        return off > tolerance ? NONE : Polynomials.stationary(0, along.dot(one), along.dot(two), along.dot(end));
    }

    /** Returns what two curves have in common, each of their runs by itself. */
    static List<Contact> between(Curve a, double[] foldsOfA, Curve b, double[] foldsOfB) {
        List<Contact> found = new ArrayList<>();
        for (int i = 0; i <= foldsOfA.length; i++) {
            for (int j = 0; j <= foldsOfB.length; j++) {
                addRuns(a, at(foldsOfA, i - 1), at(foldsOfA, i), b, at(foldsOfB, j - 1), at(foldsOfB, j), found);
            }
        }
        return found;
    }

    /** Returns the stretches that a curve runs over again. */
    static List<Contact> within(Curve curve) {
        double[] folds = of(curve, CurveContacts.tolerance(curve, curve));
        List<Contact> found = new ArrayList<>();
        for (int i = 0; i <= folds.length; i++) {
            for (int j = i + 1; j <= folds.length; j++) {
                addRuns(curve, at(folds, i - 1), at(folds, i), curve, at(folds, j - 1), at(folds, j), found);
            }
        }
        found.removeIf(Contact::isPoint);
        return found;
    }

    private static double at(double[] folds, int i) {
        return i < 0 ? 0 : i < folds.length ? folds[i] : 1;
    }

    private static void addRuns(Curve a, double t0, double t1, Curve b, double u0, double u1, List<Contact> found) {
        for (Contact contact : CurveContacts.ofRuns(a.sub(t0, t1), b.sub(u0, u1))) {
            found.add(new Contact(
                    between(t0, t1, contact.t0()),
                    between(t0, t1, contact.t1()),
                    between(u0, u1, contact.u0()),
                    between(u0, u1, contact.u1())));
        }
    }

    /** Exact at both ends, so that what two runs share at their fold is one place. */
    private static double between(double from, double to, double share) {
        return share == 1 ? to : from + (to - from) * share;
    }
}
