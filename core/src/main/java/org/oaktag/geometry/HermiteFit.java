package org.oaktag.geometry;

/**
 * Fits one cubic to a stretch of a smooth curve: ends and end directions are the curve's own, and the two handle
 * lengths are those that make the sum of the squared distances along the curve's normals least (Levenberg-Marquardt,
 * two unknowns).
 *
 * <p>The distances are taken on {@link #NORMALS} normals; on each, Newton's method finds the parameter at which the
 * cubic passes through it. The first handles are those that give the cubic the stretch's curvatures at both ends, if
 * there are any. One handle longer and the other shorter hardly moves an arc, so a step that does not make the greatest
 * distance smaller is damped in that direction, then given up. The error of such a fit falls with the sixth power of
 * the stretch's length. An instance is a workspace for one fit after another; it is not thread-safe.
 */
final class HermiteFit {
    static final int NORMALS = 16;

    private static final int STEPS = 6;

    /** How much the direction in which the handles hardly matter is damped, try by try, in its own softness. */
    private static final double[] DAMPINGS = {0, 4, 30};

    /** A step that promises to take off less than this share of the sum of squares is not taken. */
    private static final double LITTLE = 0.001;

    private static final int NEWTON_STEPS = 6;

    /** Once a step changes the parameter by less than this the next would change the distance by less than rounding. */
    private static final double SETTLED = 1e-5;

    /** Cosine of the greatest turn from normal to normal; beyond it anything may hide between them. */
    private static final double STEADY = 0.9;

    /** Cosine of the greatest turn from normal to normal that is not looked into further. */
    private static final double EVEN = 0.998;

    /** The same of the way from normal to normal, in greatest distances from the start. */
    private static final double LONG = 0.1;

    private static final int QUARTERS = 4;

    /** Longest first guess of a handle, in greatest distances from the start; that of half a circle is two thirds. */
    private static final double LONGEST_GUESS = 0.7;

    /** Handles that give the curvatures need be no nearer than this share of their length: they are a start. */
    private static final double NEAR_ENOUGH = 1e-6;

    /** Further from the guess than this share of it, they belong to another cubic than is looked for. */
    private static final double ASTRAY = 0.7;

    private final SmoothTarget target;
    private final double[] x = new double[NORMALS];
    private final double[] y = new double[NORMALS];
    private final double[] tx = new double[NORMALS];
    private final double[] ty = new double[NORMALS];
    private final double[] u = new double[NORMALS];
    private final double[] off = new double[NORMALS];
    private final double[] triedU = new double[NORMALS];
    private final double[] triedOff = new double[NORMALS];
    private final double[] start = new double[4];
    private final double[] end = new double[4];
    private final double[] frame = new double[4];
    private final CurvedHandles curved = new CurvedHandles();
    private double startHandle;
    private double endHandle;

    HermiteFit(SmoothTarget target) {
        this.target = target;
    }

    /**
     * Fits the stretch and returns the greatest distance on the normals, mm. A stretch that cannot be fitted because it
     * is mere rounding gets the chord, and the greatest distance of its points from its start.
     */
    double fit(double t0, double t1) {
        return fit(t0, t1, Double.MAX_VALUE);
    }

    /** Does the same, but goes into a fit no further once it is plain that its error will be above the limit. */
    double fit(double t0, double t1, double limit) {
        double spread = load(t0, t1);
        double error = turnsTooFar() ? Double.POSITIVE_INFINITY : fitHandles(t0, t1, spread, limit);
        if (error <= limit) {
            error = Math.max(error, between(t0, t1, spread));
        }
        if (error > spread) {
            startHandle = 0;
            endHandle = 0;
            return spread;
        }
        return error;
    }

    private double fitHandles(double t0, double t1, double spread, double limit) {
        double a = Math.min(target.speedAt(t0) * (t1 - t0) / 3, LONGEST_GUESS * spread);
        double b = Math.min(target.speedAt(t1) * (t1 - t0) / 3, LONGEST_GUESS * spread);
        double error = Double.POSITIVE_INFINITY;
        if (isCurvedAlike(a, b)) {
            error = settle(curved.first(), curved.last());
            adopt(curved.first(), curved.last());
        }
        if (!Double.isFinite(error)) {
            error = settle(a, b);
            adopt(a, b);
        }
        for (int step = 0; step < STEPS && Double.isFinite(error); step++) {
            double improved = improve(error, step == 0 ? Double.MAX_VALUE : limit);
            if (improved > 0.97 * error) {
                return improved;
            }
            error = improved;
        }
        return error;
    }

    /** Looks for handles near the guess with which the cubic has the target's curvatures at both ends. */
    private boolean isCurvedAlike(double a, double b) {
        double x1 = end[0] - start[0];
        double y1 = end[1] - start[1];
        return curved.find(
                        1.5 * bend(0) - 0.5 * bend(1),
                        1.5 * bend(NORMALS) - 0.5 * bend(NORMALS - 1),
                        start[2] * y1 - start[3] * x1,
                        x1 * end[3] - y1 * end[2],
                        start[2] * end[3] - start[3] * end[2],
                        a,
                        b,
                        NEAR_ENOUGH * (a + b))
                && Math.abs(curved.first() - a) < ASTRAY * a
                && Math.abs(curved.last() - b) < ASTRAY * b;
    }

    /** Returns the curvature half way from a normal to the next: the turn over the chord. */
    private double bend(int gap) {
        boolean first = gap == 0;
        boolean last = gap == NORMALS;
        double fromX = first ? start[0] : x[gap - 1];
        double fromY = first ? start[1] : y[gap - 1];
        double turn = (first ? start[2] : tx[gap - 1]) * (last ? end[3] : ty[gap])
                - (first ? start[3] : ty[gap - 1]) * (last ? end[2] : tx[gap]);
        return turn / norm((last ? end[0] : x[gap]) - fromX, (last ? end[1] : y[gap]) - fromY);
    }

    /**
     * Returns the greatest distance on three normals more between any two between which the target turns by some
     * degrees or runs through much of its length, as it does where its pace is uneven, or the cubic has a whole handle.
     * Beside the greatest on a normal it counts by the share by which that may be exceeded anyhow.
     */
    private double between(double t0, double t1, double spread) {
        double error = 0;
        int worst = 0;
        for (int i = 1; i < NORMALS; i++) {
            worst = Math.abs(off[i]) > Math.abs(off[worst]) ? i : worst;
        }
        for (int gap = 0; gap <= NORMALS; gap++) {
            boolean first = gap == 0;
            boolean last = gap == NORMALS;
            double turn = (first ? start[2] : tx[gap - 1]) * (last ? end[2] : tx[gap])
                    + (first ? start[3] : ty[gap - 1]) * (last ? end[3] : ty[gap]);
            double length = norm(
                    (last ? end[0] : x[gap]) - (first ? start[0] : x[gap - 1]),
                    (last ? end[1] : y[gap]) - (first ? start[1] : y[gap - 1]));
            double from = first ? 0 : u[gap - 1];
            double to = last ? 1 : u[gap];
            // A handle shorter than the gap makes the cubic turn within it, whatever the target does.
            boolean turns = (first && startHandle < length) || (last && endHandle < length);
            boolean uneven = turn < EVEN || length > LONG * spread || turns;
            for (int k = 1; (uneven || gap == worst || gap == worst + 1) && k < QUARTERS; k++) {
                double share = (double) k / QUARTERS;
                target.frameAt(t0 + (t1 - t0) * (gap + share) / (NORMALS + 1), frame);
                error = Math.max(error, (uneven ? 1 : SmoothRun.BETWEEN) * across(from + share * (to - from)));
            }
        }
        return error;
    }

    /** Returns how far the cubic passes by the point in the frame, on its normal. */
    private double across(double guess) {
        double c1x = start[0] + startHandle * start[2];
        double c1y = start[1] + startHandle * start[3];
        double c2x = end[0] - endHandle * end[2];
        double c2y = end[1] - endHandle * end[3];
        double v = guess;
        double px = 0;
        double py = 0;
        for (int k = 0; k < NEWTON_STEPS; k++) {
            double w = 1 - v;
            px = w * w * (w * start[0] + 3 * v * c1x) + v * v * (3 * w * c2x + v * end[0]) - frame[0];
            py = w * w * (w * start[1] + 3 * v * c1y) + v * v * (3 * w * c2y + v * end[1]) - frame[1];
            double sx = 3 * (w * w * (c1x - start[0]) + 2 * w * v * (c2x - c1x) + v * v * (end[0] - c2x));
            double sy = 3 * (w * w * (c1y - start[1]) + 2 * w * v * (c2y - c1y) + v * v * (end[1] - c2y));
            double step = (frame[2] * px + frame[3] * py) / (frame[2] * sx + frame[3] * sy);
            v = Math.min(Math.max(v - step, 0.25 * v), 1 - 0.25 * w);
        }
        return norm(px, py);
    }

    /** Returns the cubic of the last fit between the given ends, which are the target's own but for rounding. */
    Cubic cubic(Point from, Point to) {
        return new Cubic(
                from,
                new Point(from.x() + startHandle * start[2], from.y() + startHandle * start[3]),
                new Point(to.x() - endHandle * end[2], to.y() - endHandle * end[3]),
                to);
    }

    Point startPoint() {
        return new Point(start[0], start[1]);
    }

    Point endPoint() {
        return new Point(end[0], end[1]);
    }

    /** Reads the frames, and returns the greatest distance of their points from the start. */
    private double load(double t0, double t1) {
        target.frameAt(t0, start);
        target.frameAt(t1, end);
        double spread = norm(end[0] - start[0], end[1] - start[1]);
        for (int i = 0; i < NORMALS; i++) {
            u[i] = (i + 1.0) / (NORMALS + 1);
            target.frameAt(t0 + (t1 - t0) * u[i], frame);
            x[i] = frame[0];
            y[i] = frame[1];
            tx[i] = frame[2];
            ty[i] = frame[3];
            spread = Math.max(spread, norm(x[i] - start[0], y[i] - start[1]));
        }
        return spread;
    }

    private static double norm(double x, double y) {
        return Math.sqrt(x * x + y * y);
    }

    private boolean turnsTooFar() {
        boolean steady = start[2] * tx[0] + start[3] * ty[0] > STEADY
                && end[2] * tx[NORMALS - 1] + end[3] * ty[NORMALS - 1] > STEADY;
        for (int i = 1; i < NORMALS; i++) {
            steady &= tx[i - 1] * tx[i] + ty[i - 1] * ty[i] > STEADY;
        }
        return !steady;
    }

    /**
     * Takes one step, damped if need be, and returns the new error; or the old one if none is better, if there is
     * little to gain, or if what would be left is above the limit.
     */
    private double improve(double error, double limit) {
        double aa = 0;
        double ab = 0;
        double bb = 0;
        double ra = 0;
        double rb = 0;
        double squares = 0;
        for (int i = 0; i < NORMALS; i++) {
            double v = u[i];
            double w = 1 - v;
            double a = 3 * w * w * v * (tx[i] * start[3] - ty[i] * start[2]);
            double b = -3 * w * v * v * (tx[i] * end[3] - ty[i] * end[2]);
            aa += a * a;
            ab += a * b;
            bb += b * b;
            ra += a * off[i];
            rb += b * off[i];
            squares += off[i] * off[i];
        }
        double determinant = aa * bb - ab * ab;
        double gain = (ra * (bb * ra - ab * rb) + rb * (aa * rb - ab * ra)) / determinant;
        if (!Double.isFinite(gain) || gain < LITTLE * squares || squares - gain > NORMALS * limit * limit) {
            return error;
        }
        double soft = determinant / (aa + bb);
        for (double damping : DAMPINGS) {
            double p = aa + damping * soft;
            double q = bb + damping * soft;
            double damped = p * q - ab * ab;
            double a = Math.max(startHandle - (q * ra - ab * rb) / damped, 0);
            double b = Math.max(endHandle - (p * rb - ab * ra) / damped, 0);
            double tried = settle(a, b);
            if (tried < error) {
                adopt(a, b);
                return tried;
            }
        }
        return error;
    }

    private void adopt(double a, double b) {
        startHandle = a;
        endHandle = b;
        System.arraycopy(triedU, 0, u, 0, NORMALS);
        System.arraycopy(triedOff, 0, off, 0, NORMALS);
    }

    /** Finds where the cubic with these handles passes through each normal, and returns the greatest distance there. */
    private double settle(double a, double b) {
        double c1x = start[0] + a * start[2];
        double c1y = start[1] + a * start[3];
        double c2x = end[0] - b * end[2];
        double c2y = end[1] - b * end[3];
        double error = 0;
        for (int i = 0; i < NORMALS; i++) {
            double v = u[i];
            double step = 1;
            double across = 0;
            for (int k = 0; k < NEWTON_STEPS && Math.abs(step) > SETTLED; k++) {
                double w = 1 - v;
                double px = w * w * (w * start[0] + 3 * v * c1x) + v * v * (3 * w * c2x + v * end[0]) - x[i];
                double py = w * w * (w * start[1] + 3 * v * c1y) + v * v * (3 * w * c2y + v * end[1]) - y[i];
                double sx = 3 * (w * w * (c1x - start[0]) + 2 * w * v * (c2x - c1x) + v * v * (end[0] - c2x));
                double sy = 3 * (w * w * (c1y - start[1]) + 2 * w * v * (c2y - c1y) + v * v * (end[1] - c2y));
                double next = v - (tx[i] * px + ty[i] * py) / (tx[i] * sx + ty[i] * sy);
                next = Math.min(Math.max(next, 0.25 * v), 1 - 0.25 * w);
                step = next - v;
                // To first order in the step, where the cubic will be on the normal.
                across = tx[i] * (py + sy * step) - ty[i] * (px + sx * step);
                v = next;
            }
            if (!(Math.abs(step) <= SETTLED)) {
                return Double.POSITIVE_INFINITY;
            }
            triedU[i] = v;
            triedOff[i] = across;
            error = Math.max(error, Math.abs(across));
        }
        return error;
    }
}
