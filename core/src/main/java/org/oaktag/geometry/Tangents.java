package org.oaktag.geometry;

/**
 * Direction, curvature and turning of a cubic, where its derivative may vanish.
 *
 * <p><b>Formulas.</b> The direction is r' / |r'|, the curvature {@code (r' x r'') / |r'|³}, the rate of turning with t
 * {@code (r' x r'') / |r'|²}. Where r' vanishes the first derivative that does not leads: with e the step from t,
 * {@code r(t + e) - r(t) = r' e + r'' e²/2 + r''' e³/6}. The curvature is infinite there, with the sign of {@code r'' x
 * r'''}, that on both sides of it; the rate tends to {@code r'' x r''' / (2 |r''|²)}.
 *
 * <p><b>Turning</b> is the angle that the hodograph, a quadratic, sweeps at the origin; it is halved until three
 * controls lie within a right angle, when the angle from first to last is exact to rounding. A hodograph through the
 * origin is a cusp: half a turn.
 *
 * <p><b>Limits.</b> A derivative shorter than 1e-12 of the greatest side of the control polygon counts as none; the
 * halving stops at 2^-48 of the curve.
 */
final class Tangents {
    /** A derivative shorter than this share of the curve's size is rounding, not direction. */
    static final double STILL = 1e-12;

    private static final int MAX_DEPTH = 48;

    private Tangents() {}

    static Vector direction(Cubic cubic, double t) {
        double still = STILL * size(cubic);
        if (still == 0) {
            throw new IllegalStateException("a curve that is the single point " + cubic.start() + " has no direction");
        }
        Vector first = cubic.derivativeAt(t);
        if (first.length() > still) {
            return first.unit();
        }
        // r(t + e) - r(t) = r' e + r'' e²/2 + r''' e³/6: the first term that does not vanish leads, before t with its
        // own sign.
        Vector second = cubic.secondDerivativeAt(t);
        if (second.length() > still) {
            return (t < 1 ? second : second.negated()).unit();
        }
        return cubic.thirdDerivative().unit();
    }

    static double curvature(Cubic cubic, double t) {
        Vector first = cubic.derivativeAt(t);
        Vector second = cubic.secondDerivativeAt(t);
        double speed = first.length();
        if (speed > STILL * size(cubic)) {
            return first.cross(second) / (speed * speed * speed);
        }
        double turn = second.cross(cubic.thirdDerivative());
        return turn == 0 ? 0 : Math.copySign(Double.POSITIVE_INFINITY, turn);
    }

    /**
     * Returns how fast the tangent turns with t, r' x r'' / |r'|²; where the curve stands still its limit r'' x r''' /
     * (2 |r''|²).
     */
    static double turningRate(Cubic cubic, double t) {
        Vector first = cubic.derivativeAt(t);
        Vector second = cubic.secondDerivativeAt(t);
        if (first.length() > STILL * size(cubic)) {
            return first.cross(second) / first.dot(first);
        }
        double square = 2 * second.dot(second);
        return square > 0 ? second.cross(cubic.thirdDerivative()) / square : 0;
    }

    static double turning(Cubic cubic) {
        return turning(
                cubic.control1().minus(cubic.start()),
                cubic.control2().minus(cubic.control1()),
                cubic.end().minus(cubic.control2()),
                MAX_DEPTH);
    }

    /**
     * The angle at the origin swept by the hodograph, a quadratic with these controls. While the three fit in a right
     * angle's cone it is the angle from first to last; else the hodograph is halved, which ends but where it passes
     * through the origin: at a cusp.
     */
    private static double turning(Vector h0, Vector h1, Vector h2, int depth) {
        boolean still = h1.equals(Vector.ZERO) && (h0.equals(Vector.ZERO) || h2.equals(Vector.ZERO));
        boolean narrow = h0.dot(h1) > 0 && h1.dot(h2) > 0 && h0.dot(h2) > 0;
        if (still || narrow || depth == 0) {
            return h0.angleTo(h2);
        }
        Vector left = h0.plus(h1).times(0.5);
        Vector right = h1.plus(h2).times(0.5);
        Vector middle = left.plus(right).times(0.5);
        // Where the curve stands still at the cut itself neither half sees the tangent reverse: half a turn, in the
        // sense
        // of the tangents beside it, so that the same curve run backwards turns back.
        Vector bend = h0.plus(h2).minus(h1.times(2));
        double reversal = middle.equals(Vector.ZERO) ? Math.copySign(Math.PI, right.cross(bend)) : 0;
        return turning(h0, left, middle, depth - 1) + reversal + turning(middle, right, h2, depth - 1);
    }

    /** The greatest side of the control polygon's derivative, 0 only for a point. */
    private static double size(Cubic cubic) {
        return 3
                * Math.max(
                        Math.max(
                                cubic.start().distanceTo(cubic.control1()),
                                cubic.control1().distanceTo(cubic.control2())),
                        cubic.control2().distanceTo(cubic.end()));
    }
}
