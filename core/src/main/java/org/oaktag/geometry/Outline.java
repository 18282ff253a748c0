package org.oaktag.geometry;

import java.util.List;

/**
 * A watertight closed path: it ends at the very point where it starts. Run clockwise on the table its area is positive,
 * as it is for the outline of every piece. Immutable and thread-safe.
 *
 * <pre>{@code
 * Outline patch = Outline.of(
 *         Path.polyline(Point.of(0, 0), Point.of(120, 0), Point.of(120, 90), Point.of(0, 90), Point.of(0, 0)));
 * patch.signedArea();                     // = 10800.0
 * patch.centroid();                       // = Point[x=60.0, y=45.0]
 * patch.contains(Point.of(119.99, 45));   // = true
 * }</pre>
 *
 * <p><b>Area and centroid</b> are Green's integrals {@code A = 1/2 integral (x dy - y dx)}, {@code A cx = 1/2 integral
 * x² dy} and {@code A cy = -1/2 integral y² dx}, taken relative to the start and exact to rounding: against fine
 * polygons of JTS and the limit of ever finer ones they agree to the error of those.
 *
 * <p><b>Containment</b> counts the signed crossings of a ray with the curves themselves, which are halved only where
 * their boxes leave it open; points a hundred-millionth of a millimetre to either side of a line are told apart. Runs
 * of curves whose box does not hold the point are told by their ends, so that for n curves about O(log n) are looked
 * at. Off the line nothing is allocated.
 *
 * @param path the closed path
 */
public record Outline(Path path) {
    /** A point this near the line, mm, lies on it. */
    static final double ON_LINE = 1e-9;

    /**
     * Far out, where a double tells no billionths of a millimetre apart: so many units in the last place of the
     * greatest coordinate.
     */
    private static final double ON_LINE_ULPS = 8;

    /** @throws IllegalArgumentException if the path is not closed exactly */
    public Outline {
        if (!path.isClosed()) {
            throw new IllegalArgumentException(
                    "an outline must end where it starts, at " + path.start() + ", got " + path.end());
        }
    }

    /**
     * Returns the outline of the closed path.
     *
     * @throws IllegalArgumentException if the path is not closed exactly
     */
    public static Outline of(Path path) {
        return new Outline(path);
    }

    /**
     * Returns the enclosed area, mm², positive if the outline runs clockwise; exact to rounding (Green, no flattening).
     */
    public double signedArea() {
        return Area.signed(path);
    }

    /**
     * Returns the enclosed area, mm², never negative. An outline that crosses itself counts each part as often as it is
     * wound round.
     */
    public double area() {
        return Math.abs(signedArea());
    }

    /**
     * Returns the centre of gravity of the enclosed area.
     *
     * @throws IllegalStateException if the area is zero
     */
    public Point centroid() {
        return Area.centroid(path);
    }

    public Bounds bounds() {
        return path.bounds();
    }

    /** Tells whether the area is positive; an outline without area is not clockwise. */
    public boolean isClockwise() {
        return signedArea() > 0;
    }

    /** Returns the length all round, mm, to {@link Curve#DEFAULT_ACCURACY}. */
    public double perimeter() {
        return path.length();
    }

    /**
     * Tells whether the point is wound round or lies on the line: within 1e-9 mm, or, where the coordinates are so
     * large that a double is coarser, 8 units in the last place of the greatest. Decided on the curves themselves.
     */
    public boolean contains(Point point) {
        return Winding.holds(path, point, onLine());
    }

    /** Tells whether the point lies on the line, as near as {@link #contains} takes it. */
    boolean isOnLine(Point point) {
        return path.nearest(point).distance() <= onLine();
    }

    /**
     * Returns how far off a point may lie and be on the line, mm: {@value #ON_LINE}, more where a double is too coarse
     * for that.
     */
    private double onLine() {
        return Math.max(ON_LINE, ON_LINE_ULPS * Math.ulp(path.tree().reach()));
    }

    /**
     * Returns how often the outline runs round the point, clockwise positive. For a point on the line it means nothing.
     */
    public int windingNumber(Point point) {
        return Winding.number(path, point);
    }

    /**
     * Returns where the outline crosses, touches or runs along itself, other than at the joins of its curves; none for
     * a sound piece. {@link Crossing#first()} is less than {@link Crossing#second()}.
     */
    public List<Crossing> selfCrossings() {
        return Crossings.ofItself(path);
    }

    /**
     * Tells whether {@link #selfCrossings} finds any; for a plain outline, as nearly every piece has, at a fraction of
     * the cost.
     */
    public boolean meetsItself() {
        return !PlainlySimple.isSeenOf(path) && !selfCrossings().isEmpty();
    }

    public Outline reversed() {
        return new Outline(path.reversed());
    }

    public Outline transformed(Transform transform) {
        return new Outline(path.transformed(transform));
    }
}
