package org.oaktag.geometry;

/**
 * The parameter of a cubic at a distance along it: solves s(t) = distance, without allocation.
 *
 * <p><b>Method.</b> A bracket in t is kept, with the residual s(t) - distance known at the present t. A Newton step divides it by
 * |r'(t)|; a step that leaves the bracket, or that failed to halve the residual, is replaced by bisection. Only the stretch between successive
 * t is measured, so each step is cheaper than the last, and the iteration stops on the <b>residual in mm</b>, never on the width in
 * t, which says nothing where the curve nearly stands still. If the bracket closes to neighbouring doubles first, that is the answer.
 */
final class InverseLength {
    /** Newton converges in a handful; bisection of the doubles from 0 to 1 needs some 1,074 at the very worst, in practice 60. */
    private static final int MAX_STEPS = 200;

    private InverseLength() {}

    /** Returns t with |s(t) - distance| at most the accuracy; the distance is already within 0 to the length. */
    static double parameterAt(Cubic cubic, double distance, double length, double accuracy) {
        double tolerance = Math.max(accuracy, 4e-16 * length);
        if (distance <= 0.5 * tolerance) {
            return 0;
        }
        if (distance >= length - 0.5 * tolerance) {
            return 1;
        }
        double measure = 0.125 * tolerance;
        double low = 0;
        double high = 1;
        double t = distance / length;
        double residual = ArcLength.between(cubic, 0, t, measure) - distance;
        double previous = Double.POSITIVE_INFINITY;
        for (int step = 0; step < MAX_STEPS && Math.abs(residual) > 0.5 * tolerance; step++) {
            if (residual > 0) {
                high = t;
            } else {
                low = t;
            }
            double next = t - residual / cubic.speedAt(t);
            if (!(next > low && next < high) || Math.abs(residual) > 0.5 * previous) {
                next = 0.5 * (low + high);
            }
            if (next <= low || next >= high) {
                return t;
            }
            previous = Math.abs(residual);
            residual +=
                    next > t ? ArcLength.between(cubic, t, next, measure) : -ArcLength.between(cubic, next, t, measure);
            t = next;
        }
        return t;
    }
}
