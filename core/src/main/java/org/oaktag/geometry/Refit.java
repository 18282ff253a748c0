package org.oaktag.geometry;

import java.util.List;
import java.util.Optional;

/**
 * Replaces a smooth run of curves by fewer within a tolerance.
 *
 * <p>The run is fitted ({@link SmoothRun}) and measured: the distance of eight places on each of its curves from the
 * result and of sixteen on each curve of the result from the run, the directions at the ends, and those at the joins.
 * If one of them is off the fit is aimed at half the tolerance, six times at the most. A run on one line that lies
 * within the tolerance of its chord and goes the chord's way at both ends becomes that.
 */
final class Refit {
    private static final int SAMPLES = 8;
    private static final int SAMPLES_OF_FIT = 16;
    private static final int TIGHTENINGS = 6;

    /**
     * Directions that differ by no more than this, radians, are one: what rounding leaves of a handle a millionth of
     * the curve long.
     */
    private static final double SAME_DIRECTION = 1e-9;

    private Refit() {}

    /** Returns the run fitted anew, or the run itself if that takes no fewer curves. */
    static List<Curve> fewer(List<Curve> run, double tolerance) {
        Path path = Path.of(run);
        Line chord = new Line(path.start(), path.end());
        if (!chord.isPoint() && keeps(run, List.of(chord), path, tolerance)) {
            return List.of(chord);
        }
        double aim = tolerance;
        for (int i = 0; i < TIGHTENINGS; i++) {
            Optional<List<Curve>> found = SmoothRun.ofFewer(run.size(), new PathTarget(path), 0, path.length(), aim);
            if (found.isEmpty()) {
                break;
            }
            List<Curve> fitted = Joined.to(path.end(), Joined.from(path.start(), found.get()));
            if (keeps(run, fitted, path, tolerance)) {
                return fitted;
            }
            aim *= 0.5;
        }
        return List.copyOf(run);
    }

    private static boolean keeps(List<Curve> run, List<Curve> fitted, Path path, double tolerance) {
        Curve last = run.get(run.size() - 1);
        return isOneWay(run.get(0).directionAt(0), fitted.get(0), 0)
                && isOneWay(last.directionAt(1), fitted.get(fitted.size() - 1), 1)
                && isSmooth(fitted)
                && distance(path, Path.of(fitted), SAMPLES) <= tolerance
                && distance(Path.of(fitted), path, SAMPLES_OF_FIT) <= tolerance;
    }

    private static boolean isOneWay(Vector direction, Curve curve, double t) {
        return !curve.isPoint() && Math.abs(direction.angleTo(curve.directionAt(t))) <= SAME_DIRECTION;
    }

    private static boolean isSmooth(List<Curve> fitted) {
        for (int i = 1; i < fitted.size(); i++) {
            if (fitted.get(i - 1).isPoint() || !isOneWay(fitted.get(i - 1).directionAt(1), fitted.get(i), 0)) {
                return false;
            }
        }
        return true;
    }

    /** The greatest distance of places on each curve of the first path from the second. */
    private static double distance(Path path, Path other, int samples) {
        double distance = 0;
        for (Curve curve : path.curves()) {
            for (int i = 0; i < samples; i++) {
                Point place = curve.pointAt((i + 0.5) / samples);
                distance = Math.max(distance, other.nearest(place).distance());
            }
        }
        return distance;
    }
}
