package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A path as chords that keep within a distance of it, each corner with the place on the path that it is. Immutable and
 * thread-safe.
 *
 * <pre>{@code
 * Path neck = Path.from(Point.of(0, 0)).curveTo(Point.of(0, 40), Point.of(30, 75), Point.of(70, 75)).build();
 * Flattened chords = Flattened.of(neck, 0.1);
 * chords.corners().size();       // = 18
 * chords.path().chord();         // = 102.59
 * }</pre>
 *
 * <p><b>Error.</b> A cubic is cut at equal steps of the parameter, so many that the bound {@code |r''| / (8 n²)} on the
 * distance of a chord from its arc holds everywhere: no place of a chord is further from the path, and no place of the
 * path further from the chords, than was asked. A segment stays as it is.
 *
 * @param corners in order, the first at the start of the path and the last at its end
 */
public record Flattened(List<Corner> corners) {
    private static final double MOST = 1e6;

    /** Copies the list. */
    public Flattened {
        corners = List.copyOf(corners);
    }

    /**
     * An end of a chord.
     *
     * @param point on the path
     * @param at the curve that ends or passes there, and the parameter on it; of the first the start of the first curve
     */
    public record Corner(Point point, Path.Location at) {
        /** Refuses null. */
        public Corner {
            Objects.requireNonNull(point, "point");
            Objects.requireNonNull(at, "at");
        }
    }

    /**
     * Returns the chords of a path.
     *
     * @param error the greatest distance of a chord from the path, mm
     * @throws IllegalArgumentException if the error is not positive and finite, or so small that a curve would take
     *     more than a million chords
     */
    public static Flattened of(Path path, double error) {
        Plane.positive("error", error);
        List<Corner> corners = new ArrayList<>();
        corners.add(new Corner(path.start(), new Path.Location(0, 0)));
        for (int i = 0; i < path.curves().size(); i++) {
            Curve curve = path.curves().get(i);
            int count = curve instanceof Cubic cubic ? chords(cubic, error) : 1;
            for (int k = 1; k <= count; k++) {
                double t = (double) k / count;
                corners.add(new Corner(curve.pointAt(t), new Path.Location(i, t)));
            }
        }
        return new Flattened(corners);
    }

    private static int chords(Cubic cubic, double error) {
        double bend = Math.max(
                cubic.secondDerivativeAt(0).length(),
                cubic.secondDerivativeAt(1).length());
        double count = Math.ceil(Math.sqrt(bend / (8 * error)));
        if (count > MOST) {
            throw new IllegalArgumentException("chord error of " + cubic + " must be at least "
                    + bend / (8 * MOST * MOST) + " mm (a million chords), got " + error);
        }
        return (int) Math.max(count, 1);
    }

    /** Returns the path of the chords. */
    public Path path() {
        return Path.polyline(corners.stream().map(Corner::point).toArray(Point[]::new));
    }
}
