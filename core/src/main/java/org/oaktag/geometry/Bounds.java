package org.oaktag.geometry;

/**
 * An upright box, mm, y down; it may be flat or a single point. Immutable and thread-safe.
 *
 * <pre>{@code
 * Bounds box = Bounds.of(Point.of(0, -20), Point.of(240, 600)).expanded(10);
 * box.width();                          // = 260.0
 * box.contains(Point.of(-10, 300));     // = true
 * }</pre>
 *
 * <p>A box of points is exact; that of a curve is as exact as the curve's extrema, see {@link Curve#bounds()}.
 *
 * @param minX left
 * @param minY top
 * @param maxX right
 * @param maxY bottom
 */
public record Bounds(double minX, double minY, double maxX, double maxY) {
    /** @throws IllegalArgumentException if a coordinate is out of range or a minimum exceeds its maximum */
    public Bounds {
        minX = Plane.coordinate("minX", minX);
        minY = Plane.coordinate("minY", minY);
        maxX = Plane.coordinate("maxX", maxX);
        maxY = Plane.coordinate("maxY", maxY);
        if (minX > maxX || minY > maxY) {
            throw new IllegalArgumentException(
                    "bounds must not be inside out, got x " + minX + " to " + maxX + ", y " + minY + " to " + maxY);
        }
    }

    /**
     * Returns the smallest box that holds the points.
     *
     * @throws IllegalArgumentException if there are none
     */
    public static Bounds of(Point... points) {
        if (points.length == 0) {
            throw new IllegalArgumentException("bounds need at least one point, got none");
        }
        double minX = points[0].x();
        double minY = points[0].y();
        double maxX = minX;
        double maxY = minY;
        for (Point p : points) {
            minX = Math.min(minX, p.x());
            minY = Math.min(minY, p.y());
            maxX = Math.max(maxX, p.x());
            maxY = Math.max(maxY, p.y());
        }
        return new Bounds(minX, minY, maxX, maxY);
    }

    public double width() {
        return maxX - minX;
    }

    public double height() {
        return maxY - minY;
    }

    public Point center() {
        return new Point(0.5 * (minX + maxX), 0.5 * (minY + maxY));
    }

    /** Returns the smallest box that holds both. */
    public Bounds union(Bounds other) {
        return new Bounds(
                Math.min(minX, other.minX),
                Math.min(minY, other.minY),
                Math.max(maxX, other.maxX),
                Math.max(maxY, other.maxY));
    }

    /** Tells whether the point lies in the box or on its rim. */
    public boolean contains(Point point) {
        return point.x() >= minX && point.x() <= maxX && point.y() >= minY && point.y() <= maxY;
    }

    /** Tells whether the other box lies inside or on the rim. */
    public boolean contains(Bounds other) {
        return other.minX >= minX && other.maxX <= maxX && other.minY >= minY && other.maxY <= maxY;
    }

    /** Tells whether the boxes share a point, rims included. */
    public boolean overlaps(Bounds other) {
        return minX <= other.maxX && other.minX <= maxX && minY <= other.maxY && other.minY <= maxY;
    }

    /**
     * Returns the box grown by {@code margin} mm on each side, shrunk if it is negative.
     *
     * @throws IllegalArgumentException if the box would be turned inside out
     */
    public Bounds expanded(double margin) {
        return new Bounds(minX - margin, minY - margin, maxX + margin, maxY + margin);
    }
}
