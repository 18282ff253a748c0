package org.oaktag.geometry;

import java.util.Locale;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * The cubic of a given length between two ends with given directions, its two handles equally long.
 *
 * <p>The length is a convex function of the handles' length, as an integral of norms that are, and at none it is the
 * chord, the least there is: so it grows with the handles, and one length has one cubic. Handles may be as long as two
 * chords, or until the cubic has a cusp or crosses itself.
 */
final class LengthFit {
    /** Shorter handles than this share of the chord give a cubic whose directions cannot be seen. */
    private static final double SHORTEST = 0.01;

    private static final double LONGEST = 2;
    private static final int STEPS = 64;
    private static final int HALVINGS = 50;
    private static final int MOST_EVALUATIONS = 200;

    /** The accuracy of the length, and that with which it is measured, mm. */
    private static final double ACCURACY = 1e-6;

    private static final double MEASURED = 1e-9;

    /** The share of its fastest below which a cubic stands still: a cusp. */
    private static final double STILL = 1e-3;

    private final Point start;
    private final Vector leaving;
    private final Point end;
    private final Vector arriving;
    private final double chord;

    LengthFit(Point start, Vector leaving, Point end, Vector arriving) {
        this.start = start;
        this.leaving = unit(leaving);
        this.end = end;
        this.arriving = unit(arriving);
        this.chord = start.distanceTo(end);
        if (chord == 0) {
            throw new IllegalArgumentException("a curve of a given length needs two ends, got one point " + start);
        }
    }

    private static Vector unit(Vector direction) {
        if (direction.equals(Vector.ZERO)) {
            throw new IllegalArgumentException("an end direction must not be the zero vector");
        }
        return direction.unit();
    }

    Cubic of(double length) {
        double shortest = SHORTEST * chord;
        double longest = longestHandle();
        double least = lengthOf(shortest);
        double most = Math.max(lengthOf(longest), least);
        if (!(length >= least - ACCURACY && length <= most + ACCURACY)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "a smooth cubic between these ends and directions is %s to %s mm long; got %s",
                    Math.ceil(least * 1e6 - 0.01) / 1e6,
                    Math.floor(most * 1e6 + 0.01) / 1e6,
                    length));
        }
        if (most - least <= ACCURACY) {
            return cubic(Math.min(chord / 3, longest));
        }
        if (length <= least) {
            return cubic(shortest);
        }
        if (length >= most) {
            return cubic(longest);
        }
        BrentSolver solver = new BrentSolver(1e-15, 1e-15 * chord, MEASURED);
        return cubic(solver.solve(MOST_EVALUATIONS, handle -> lengthOf(handle) - length, shortest, longest));
    }

    private Cubic cubic(double handle) {
        return Cubic.hermite(start, leaving.times(handle), end, arriving.times(handle));
    }

    private double lengthOf(double handle) {
        return cubic(handle).length(MEASURED);
    }

    /** Returns the longest handle up to which no cubic has a cusp or crosses itself. */
    private double longestHandle() {
        double good = SHORTEST * chord;
        for (int i = 1; i <= STEPS; i++) {
            double next = (SHORTEST + (LONGEST - SHORTEST) * i / STEPS) * chord;
            if (!isSmooth(cubic(next))) {
                double bad = next;
                for (int k = 0; k < HALVINGS; k++) {
                    double middle = 0.5 * (good + bad);
                    if (isSmooth(cubic(middle))) {
                        good = middle;
                    } else {
                        bad = middle;
                    }
                }
                return good;
            }
            good = next;
        }
        return good;
    }

    /** Tells whether it has neither a cusp nor a crossing, for which it would have to turn by more than half a turn. */
    private static boolean isSmooth(Cubic cubic) {
        double least = cubic.speedAt(0);
        double most = least;
        Vector before = cubic.directionAt(0);
        for (int i = 1; i <= STEPS; i++) {
            double t = (double) i / STEPS;
            double speed = cubic.speedAt(t);
            least = Math.min(least, speed);
            most = Math.max(most, speed);
            Vector direction = cubic.directionAt(t);
            if (direction.dot(before) <= 0) {
                return false;
            }
            before = direction;
        }
        return least > STILL * most
                && (Math.abs(cubic.turning()) <= Math.PI
                        || SelfContacts.of(cubic).isEmpty());
    }
}
