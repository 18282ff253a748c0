package org.oaktag.geometry;

/**
 * The parallel of a cubic at a distance d to the left of travel, on a stretch without a cusp: {@code r + d n}, n the
 * left normal.
 *
 * <p>With y down a clockwise turn is positive and leads away from the left, so {@code (r + d n)' = r' (1 + curvature
 * d)}. Where the factor is negative the parallel runs backwards. Where the curve stands still the parallel need not: it
 * moves at d times the rate at which the tangent turns.
 */
final class ParallelTarget implements SmoothTarget {
    private final Cubic cubic;
    private final double distance;
    private final double sense;

    ParallelTarget(Cubic cubic, double distance, boolean backwards) {
        this.cubic = cubic;
        this.distance = distance;
        this.sense = backwards ? -1 : 1;
    }

    @Override
    public void frameAt(double t, double[] frame) {
        cubic.fillFrame(t, frame);
        double tx = frame[2];
        double ty = frame[3];
        frame[0] += distance * ty;
        frame[1] -= distance * tx;
        frame[2] = sense * tx;
        frame[3] = sense * ty;
    }

    @Override
    public double speedAt(double t) {
        return Math.abs(cubic.speedAt(t) + distance * Tangents.turningRate(cubic, t));
    }
}
