package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * How a path bends: where most, where its curvature turns from rising to falling, where it changes sign, how its curves
 * meet, and a comb to see it all by. Immutable and thread-safe.
 *
 * <pre>{@code
 * // y = x² from (-1, 1) to (1, 1): its radius at the vertex is a half.
 * Cubic hollow = Cubic.of(Point.of(-1, 1), Point.of(-1 / 3.0, -1 / 3.0), Point.of(1 / 3.0, -1 / 3.0), Point.of(1, 1));
 * Curvature bends = Curvature.of(hollow);
 * bends.leastRadius().radius();    // = 0.5
 * bends.leastRadius().at().t();    // = 0.5
 * bends.signChanges(1e-3);         // = 0
 * }</pre>
 *
 * <p>Curvature is signed, in 1/mm, positive where the path turns clockwise on the table; angles are radians, clockwise
 * positive. A segment has curvature 0 and an infinite radius.
 *
 * <p><b>Method.</b> With D the sides of a cubic's control polygon, r' x r'' is a quadratic, whose roots are the
 * inflections, and the derivative of the curvature has the numerator {@code (r' x r'')' r'.r' - 3 (r' x r'') r'.r''}, a
 * quintic, whose roots are the extrema. All roots are isolated, none is found by sampling; they are exact to rounding.
 *
 * <p><b>Dust and degenerate cubics.</b> A handle shorter than a millionth of the control polygon counts as retracted:
 * the direction is that of the curve beyond it. A curve whose handle is retracted has an infinite curvature at that
 * end, unless it is straight there; so has one that stands still and turns back, at its cusp or fold. A cubic within
 * 1e-9 mm of its chord is straight.
 *
 * @param path whose bends these are; curves of it that are single points are let be
 */
public record Curvature(Path path) {
    private static final double MOST_TEETH = 1e5;

    /** Refuses null. */
    public Curvature {
        Objects.requireNonNull(path, "path");
    }

    /**
     * The curvature at a place of a path.
     *
     * @param at the curve and the parameter
     * @param distanceAlong from the start of the path, along it, mm
     * @param point where it is
     * @param curvature 1/mm, clockwise positive; infinite at a cusp
     */
    public record Bend(Path.Location at, double distanceAlong, Point point, double curvature) {
        /** Refuses null. */
        public Bend {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(point, "point");
        }

        /**
         * Returns the radius of the circle that fits the path here, mm, never negative; infinite where it is straight.
         */
        public double radius() {
            return 1 / Math.abs(curvature);
        }
    }

    /**
     * Where one curve of a path ends and the next begins.
     *
     * @param distanceAlong from the start of the path, along it, mm
     * @param point where it is
     * @param turn the angle from the arriving direction to the leaving one, radians, clockwise positive, within half a
     *     turn
     * @param arriving the curvature at the end of the curve before, 1/mm
     * @param leaving the curvature at the start of the curve after, 1/mm
     */
    public record Join(double distanceAlong, Point point, double turn, double arriving, double leaving) {
        /** Refuses null. */
        public Join {
            Objects.requireNonNull(point, "point");
        }

        /**
         * Returns by how much the curvature jumps, 1/mm, never negative; 0 if it is infinite, in one sense, on both
         * sides.
         */
        public double curvatureGap() {
            return arriving == leaving ? 0 : Math.abs(leaving - arriving);
        }
    }

    /**
     * A stretch of a path that turns one way.
     *
     * @param from distance along the path at which it begins, mm
     * @param to distance along the path at which it ends, mm
     * @param angle through which the direction turns on it, radians, clockwise positive
     */
    public record Turn(double from, double to, double angle) {}

    /**
     * A curvature comb: teeth that stand on the path along its normals, each as long as the path is bent there.
     *
     * @param teeth in order along the path, each from the path to its tip, on the outside of the bend
     * @param rim the segments from tip to tip; at a join where the curvature jumps it has a step
     */
    public record Comb(List<Line> teeth, Path rim) {
        /** Copies the list. */
        public Comb {
            teeth = List.copyOf(teeth);
            Objects.requireNonNull(rim, "rim");
        }
    }

    public static Curvature of(Path path) {
        return new Curvature(path);
    }

    /** Returns the bends of a path that is this one curve. */
    public static Curvature of(Curve curve) {
        return new Curvature(Path.of(curve));
    }

    /**
     * Returns the bend at this distance along the path, at a join that of the arriving curve.
     *
     * @throws IllegalArgumentException if the distance is not within 0 to the length
     */
    public Bend at(double distance) {
        Path.Location at = path.locate(distance);
        return new Bend(at, distance, path.pointAt(distance), bent(at.curve()).at(at.t()));
    }

    /**
     * Returns the sharpest bend inside the curves and at their ends, the first of several; corners at joins are {@link
     * #joins}.
     */
    public Bend leastRadius() {
        return sharpest(0, path.length());
    }

    /**
     * Returns the sharpest bend between two distances along the path, both included.
     *
     * @throws IllegalArgumentException unless {@code from} is at most {@code to} and both lie within 0 to the length
     */
    public Bend leastRadius(double from, double to) {
        if (!(from <= to)) {
            throw new IllegalArgumentException("from must not exceed to, got " + from + " and " + to + " mm");
        }
        return sharpest(from, to);
    }

    private Bend sharpest(double from, double to) {
        Path.Location first = path.locate(from);
        Path.Location last = path.locate(to);
        Path.Location sharpest = first;
        double curvature = bent(first.curve()).at(first.t());
        for (int i = first.curve(); i <= last.curve(); i++) {
            double t0 = i == first.curve() ? first.t() : 0;
            double t1 = i == last.curve() ? last.t() : 1;
            CurveBends bends = bent(i);
            for (double t : bends.candidates(t0, t1)) {
                double at = bends.at(t);
                if (Math.abs(at) > Math.abs(curvature)) {
                    sharpest = new Path.Location(i, t);
                    curvature = at;
                }
            }
        }
        return bend(sharpest, curvature);
    }

    /**
     * Returns the places inside the curves at which the signed curvature stops rising and begins to fall, or the other
     * way round, cusps included, in order along the path.
     */
    public List<Bend> extrema() {
        List<Bend> found = new ArrayList<>();
        for (int i = 0; i < path.curves().size(); i++) {
            CurveBends bends = bent(i);
            for (double t : bends.extrema()) {
                found.add(bend(new Path.Location(i, t), bends.at(t)));
            }
        }
        return List.copyOf(found);
    }

    /** Returns the places inside the curves at which the curvature changes sign, in order along the path. */
    public List<Bend> inflections() {
        List<Bend> found = new ArrayList<>();
        for (int i = 0; i < path.curves().size(); i++) {
            for (double t : bent(i).inflections()) {
                found.add(bend(new Path.Location(i, t), 0));
            }
        }
        return List.copyOf(found);
    }

    /** Returns how the curves meet, in order along the path, the end of a closed one with its start last. */
    public List<Join> joins() {
        return CurveBends.joins(path);
    }

    /**
     * Returns the stretches that turn one way, then the other, alternately, in order along the path, joins and corners
     * counted as they turn. A swing back through no more than the tolerance does not end a stretch, and is no stretch;
     * a straight stretch belongs to none where it lies between two. Where both meet in one place the curvature changes
     * sign there. None for what is straight.
     *
     * @param tolerance the greatest angle of a wiggle that does not count, radians
     * @throws IllegalArgumentException if the tolerance is not positive and finite
     */
    public List<Turn> turns(double tolerance) {
        return Turns.of(path, Plane.positive("tolerance", tolerance));
    }

    /**
     * Returns how often the path goes over from turning one way to turning the other: one less than it has {@link
     * #turns}.
     *
     * @throws IllegalArgumentException if the tolerance is not positive and finite
     */
    public int signChanges(double tolerance) {
        return Math.max(turns(tolerance).size() - 1, 0);
    }

    /**
     * Returns the curvature comb of the path, with teeth at both ends of every curve and, evenly in length, between.
     *
     * @param scale length of a tooth where the curvature is 1/mm, mm²: 1000 draws a radius of 50 mm as 20 mm
     * @param spacing greatest distance of neighbouring teeth along the path, mm
     * @param longest length at which a tooth is cut off, mm
     * @throws IllegalArgumentException if one of the three is not positive and finite, or if the spacing is so small
     *     that the comb would have more than a hundred thousand teeth
     */
    public Comb comb(double scale, double spacing, double longest) {
        Plane.positive("scale", scale);
        Plane.positive("spacing", spacing);
        Plane.positive("longest", longest);
        if (path.length() > MOST_TEETH * spacing) {
            throw new IllegalArgumentException("spacing of a comb on a path of " + path.length()
                    + " mm must be at least " + path.length() / MOST_TEETH + " mm, got " + spacing);
        }
        List<Line> teeth = new ArrayList<>();
        for (int i = 0; i < path.curves().size(); i++) {
            if (!path.curves().get(i).isPoint()) {
                bent(i).addTeeth(scale, spacing, longest, teeth);
            }
        }
        if (teeth.isEmpty()) {
            teeth.add(new Line(path.start(), path.start()));
        }
        List<Line> rim = new ArrayList<>();
        for (int i = 1; i < teeth.size(); i++) {
            rim.add(new Line(teeth.get(i - 1).end(), teeth.get(i).end()));
        }
        return new Comb(teeth, Path.of(rim.isEmpty() ? teeth : rim));
    }

    private CurveBends bent(int curve) {
        return path.bends(curve);
    }

    private Bend bend(Path.Location at, double curvature) {
        Point point = path.curves().get(at.curve()).pointAt(at.t());
        return new Bend(at, path.distanceAt(at), point, curvature);
    }
}
