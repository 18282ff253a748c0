package org.oaktag.geometry;

/**
 * A smooth curve by a parameter that runs slowly where it turns quickly: {@code t = still + width sinh(u)}.
 *
 * <p>Near its slowest place a cubic moves like {@code v + a (t - still)} with v square to a, so its tangent turns by
 * {@code atan((t - still) / width)} with {@code width = |v| / |a|}. In u that turn has an even pace, and far from it u
 * steps through distances that grow in proportion.
 */
final class SlowTarget implements SmoothTarget {
    private final SmoothTarget curve;
    private final double still;
    private final double width;
    private final double from;
    private final double to;
    private final double first;
    private final double last;

    private SlowTarget(SmoothTarget curve, double still, double width, double from, double to) {
        this.curve = curve;
        this.still = still;
        this.width = width;
        this.from = from;
        this.to = to;
        this.first = slowed(from);
        this.last = slowed(to);
    }

    /** Returns the curve as it moves from one t to another, slowed down as the cubic asks for at its start. */
    static SlowTarget of(SmoothTarget curve, Cubic cubic, double from, double to) {
        Vector speed = cubic.derivativeAt(0);
        Vector rate = cubic.secondDerivativeAt(0);
        double square = rate.dot(rate);
        return new SlowTarget(curve, -speed.dot(rate) / square, Math.abs(speed.cross(rate)) / square, from, to);
    }

    /** Returns u at the start. */
    double first() {
        return first;
    }

    /** Returns u at the end. */
    double last() {
        return last;
    }

    private double slowed(double t) {
        double x = (t - still) / width;
        return Math.copySign(StrictMath.log(Math.abs(x) + Math.sqrt(1 + x * x)), x);
    }

    private double t(double u) {
        if (u <= first) {
            return from;
        }
        return u >= last ? to : Math.min(Math.max(still + width * StrictMath.sinh(u), from), to);
    }

    @Override
    public void frameAt(double u, double[] frame) {
        curve.frameAt(t(u), frame);
    }

    @Override
    public double speedAt(double u) {
        return curve.speedAt(t(u)) * width * StrictMath.cosh(u);
    }
}
