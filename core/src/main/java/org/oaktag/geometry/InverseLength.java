package org.oaktag.geometry;

/**
 * The parameter of a cubic at a distance along it: solves s(t) = distance, without allocation.
 *
 * <p><b>Method.</b> A first guess comes from the speeds at five places. The length up to it is measured once, from the
 * nearer end; after that only the short stretches between successive guesses are. A step is Halley's, from the residual
 * in mm, |r'| and its derivative; it converges cubically. A bracket in t is kept, and a step that leaves it, or that
 * does not halve the residual, is replaced by bisection.
 *
 * <p><b>Error.</b> The iteration stops on the residual |s(t) - distance| in mm, never on the width in t, which says
 * nothing where the curve nearly stands still. If the bracket closes to neighbouring doubles first, that is the answer.
 */
final class InverseLength {
    /** Halley's steps take a handful; bisection of the doubles from 0 to 1 hardly ever more than 60. */
    private static final int MAX_STEPS = 200;

    /** Shares of the accuracy: for the residual to stop at, and for each measurement. */
    private static final double STOP = 0.5;

    private static final double MEASURE = 0.125;

    private InverseLength() {}

    /** Returns t with |s(t) - distance| at most the accuracy. */
    static double parameterAt(Cubic cubic, double distance, double accuracy) {
        double stop = STOP * accuracy;
        double measure = MEASURE * accuracy;
        if (Math.abs(distance) <= stop) {
            return 0;
        }
        double chord = cubic.start().distanceTo(cubic.end());
        // Up to the length of the chord the distance cannot exceed that of the curve, which need not be known then.
        boolean sure = distance > 0 && distance <= chord;
        double length = sure ? Double.NaN : ArcLength.of(cubic, measure);
        if (!sure) {
            double inside = Plane.distance(distance, length, accuracy);
            if (inside <= stop) {
                return 0;
            }
            if (inside >= length - stop) {
                return 1;
            }
        }
        double t = guess(cubic, distance, length);
        double residual = !sure && t > 0.5
                ? length - distance - ArcLength.between(cubic, t, 1, measure)
                : ArcLength.between(cubic, 0, t, measure) - distance;
        return refined(cubic, t, residual, stop, measure);
    }

    private static double refined(Cubic cubic, double guess, double guessResidual, double stop, double measure) {
        double t = guess;
        double residual = guessResidual;
        double low = 0;
        double high = 1;
        double previous = Double.POSITIVE_INFINITY;
        for (int step = 0; step < MAX_STEPS && Math.abs(residual) > stop; step++) {
            if (residual > 0) {
                high = t;
            } else {
                low = t;
            }
            double next = halley(cubic, t, residual);
            if (!(next > low && next < high) || Math.abs(residual) > 0.5 * previous) {
                next = 0.5 * (low + high);
            }
            if (next <= low || next >= high) {
                return t;
            }
            previous = Math.abs(residual);
            residual +=
                    next > t ? ArcLength.ofShort(cubic, t, next, measure) : -ArcLength.ofShort(cubic, next, t, measure);
            t = next;
        }
        return t;
    }

    /** Returns t - residual / v / (1 - residual v' / (2 v²)), v the speed. */
    static double halley(Cubic cubic, double t, double residual) {
        double s = 1 - t;
        double d0x = cubic.control1().x() - cubic.start().x();
        double d0y = cubic.control1().y() - cubic.start().y();
        double d1x = cubic.control2().x() - cubic.control1().x();
        double d1y = cubic.control2().y() - cubic.control1().y();
        double d2x = cubic.end().x() - cubic.control2().x();
        double d2y = cubic.end().y() - cubic.control2().y();
        double vx = 3 * (s * s * d0x + 2 * s * t * d1x + t * t * d2x);
        double vy = 3 * (s * s * d0y + 2 * s * t * d1y + t * t * d2y);
        double wx = 6 * (s * (d1x - d0x) + t * (d2x - d1x));
        double wy = 6 * (s * (d1y - d0y) + t * (d2y - d1y));
        double square = vx * vx + vy * vy;
        double newton = residual / Math.sqrt(square);
        return t - newton / (1 - 0.5 * newton * (vx * wx + vy * wy) / square);
    }

    /** Returns where the distance is reached if the speed is taken to be linear between its values at the quarters. */
    static double guess(Cubic cubic, double distance, double length) {
        double v0 = cubic.speedAt(0);
        double v1 = cubic.speedAt(0.25);
        double v2 = cubic.speedAt(0.5);
        double v3 = cubic.speedAt(0.75);
        double v4 = cubic.speedAt(1);
        // Each quarter by the parabola through three of the values, times 96.
        double s1 = 10 * v0 + 16 * v1 - 2 * v2;
        double s2 = 8 * v0 + 32 * v1 + 8 * v2;
        double s3 = s2 + 10 * v2 + 16 * v3 - 2 * v4;
        double s4 = s2 + 8 * v2 + 32 * v3 + 8 * v4;
        double s = length > 0 ? distance / length * s4 : 96 * distance;
        if (s < s2) {
            return s < s1 ? within(0, s / s1, v0, v1) : within(0.25, (s - s1) / (s2 - s1), v1, v2);
        }
        return s < s3
                ? within(0.5, (s - s2) / (s3 - s2), v2, v3)
                : within(0.75, Math.min((s - s3) / (s4 - s3), 1), v3, v4);
    }

    /**
     * Returns the place in a quarter where this share of its length is reached: the root of v x + (w - v) x²/2 = share
     * (v + w)/2.
     */
    private static double within(double from, double share, double v, double w) {
        double whole = share * (v + w);
        double root = v + Math.sqrt(Math.max(v * v + (w - v) * whole, 0));
        return from + 0.25 * (root > 0 ? Math.min(Math.max(whole / root, 0), 1) : share);
    }
}
