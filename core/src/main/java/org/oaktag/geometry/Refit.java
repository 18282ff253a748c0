package org.oaktag.geometry;

import java.util.List;

/**
 * Replaces a smooth run of curves by fewer within a tolerance.
 *
 * <p>The run is fitted ({@link SmoothRun}) and the distance of eight places on each of its curves from the result is measured; if one
 * misses the tolerance the fit is aimed at half of it, six times at the most. A run that turns nowhere and lies within the tolerance of
 * its chord becomes that. What is measured is the distance of the old from the new, not the other way round.
 */
final class Refit {
    private static final int SAMPLES = 8;
    private static final int TIGHTENINGS = 6;

    private Refit() {}

    /** Returns the run fitted anew, or the run itself if that takes no fewer curves. */
    static List<Curve> fewer(List<Curve> run, double tolerance) {
        Path path = Path.of(run);
        Line chord = new Line(path.start(), path.end());
        if (!chord.isPoint() && path.turning() == 0 && distance(path, Path.of(chord)) <= tolerance) {
            return List.of(chord);
        }
        double aim = tolerance;
        for (int i = 0; i < TIGHTENINGS; i++) {
            List<Curve> fitted = SmoothRun.of(new PathTarget(path), 0, path.length(), aim);
            fitted = Joined.to(path.end(), Joined.from(path.start(), fitted));
            if (fitted.size() >= run.size()) {
                break;
            }
            if (distance(path, Path.of(fitted)) <= tolerance) {
                return fitted;
            }
            aim *= 0.5;
        }
        return List.copyOf(run);
    }

    /** The greatest distance of places on each curve of the first path from the second. */
    private static double distance(Path path, Path other) {
        double distance = 0;
        for (Curve curve : path.curves()) {
            for (int i = 0; i < SAMPLES; i++) {
                distance = Math.max(
                        distance,
                        other.nearest(curve.pointAt((i + 0.5) / SAMPLES)).distance());
            }
        }
        return distance;
    }
}
