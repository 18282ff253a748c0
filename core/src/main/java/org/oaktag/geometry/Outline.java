package org.oaktag.geometry;

import java.util.List;

/**
 * A watertight closed path: it ends at the very point where it starts. Run clockwise on the table its area is positive, as it is for
 * the outline of every piece. Immutable and thread-safe.
 *
 * @param path the closed path
 */
public record Outline(Path path) {
    /** A point this near the line, mm, lies on it. */
    static final double ON_LINE = 1e-9;

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

    /** Returns the enclosed area, mm², positive if the outline runs clockwise; exact to rounding (Green, no flattening). */
    public double signedArea() {
        return Area.signed(path);
    }

    /** Returns the enclosed area, mm², never negative. An outline that crosses itself counts each part as often as it is wound round. */
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

    public boolean isClockwise() {
        return signedArea() > 0;
    }

    public double perimeter() {
        return path.length();
    }

    /** Tells whether the point is wound round or lies on the line (within 1e-9 mm); decided on the curves themselves. */
    public boolean contains(Point point) {
        return Winding.isOn(path, point, ON_LINE) || Winding.number(path, point) != 0;
    }

    /** Returns how often the outline runs round the point, clockwise positive; for a point off the line. */
    public int windingNumber(Point point) {
        return Winding.number(path, point);
    }

    /**
     * Returns where the outline crosses, touches or runs along itself, other than at the joins of its curves; none for a sound piece.
     * {@link Crossing#first()} is less than {@link Crossing#second()}.
     */
    public List<Crossing> selfCrossings() {
        return Crossings.ofItself(path);
    }

    public Outline reversed() {
        return new Outline(path.reversed());
    }

    public Outline transformed(Transform transform) {
        return new Outline(path.transformed(transform));
    }
}
