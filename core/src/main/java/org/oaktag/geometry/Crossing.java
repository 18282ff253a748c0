package org.oaktag.geometry;

import java.util.Objects;

/**
 * A place where two paths meet: a single point, or a stretch that they share.
 *
 * <pre>{@code
 * Path styleLine = Path.polyline(Point.of(-10, 150), Point.of(300, 180));
 * for (Crossing crossing : Crossings.between(front.outline().path(), styleLine)) {
 *     crossing.kind();     // CROSS: the line goes right through
 *     crossing.first();    // how far along the outline, mm
 * }
 * }</pre>
 *
 * @param kind whether they pass through each other there, only touch, or run along each other
 * @param from the point, or the start of the shared stretch along the first path
 * @param to the same as {@code from} for a point, else the end of the shared stretch
 */
public record Crossing(Kind kind, Place from, Place to) {
    /** Refuses null. */
    public Crossing {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
    }

    /** How two paths meet. */
    public enum Kind {
        /** The second path passes from one side of the first to the other. */
        CROSS,
        /** The second path comes up to the first and stays on its side, or one of the two ends there. */
        TOUCH,
        /** The two run along each other from one place to another. */
        OVERLAP
    }

    /**
     * A point that two paths have in common.
     *
     * @param point where it is
     * @param first its distance along the first path, mm
     * @param second its distance along the second path, mm
     */
    public record Place(Point point, double first, double second) {
        /** Refuses null. */
        public Place {
            Objects.requireNonNull(point, "point");
        }
    }

    /** Returns where the paths meet, or start to run along each other. */
    public Point point() {
        return from.point();
    }

    /** Returns the distance of {@link #point()} along the first path, mm. */
    public double first() {
        return from.first();
    }

    /** Returns the distance of {@link #point()} along the second path, mm. */
    public double second() {
        return from.second();
    }
}
