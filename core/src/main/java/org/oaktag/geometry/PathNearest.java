package org.oaktag.geometry;

import java.util.Objects;

/**
 * The point of a path that lies nearest to a given point; see {@link Nearest} for how exact it is.
 *
 * <pre>{@code
 * PathNearest notch = hem.path().nearest(hem.path().pointAt(60));
 * notch.distanceAlong();   // = 60.0
 * }</pre>
 *
 * @param distanceAlong from the start of the path, along it, mm
 * @param point the point on the path
 * @param distance from the given point, mm
 */
public record PathNearest(double distanceAlong, Point point, double distance) {
    /** Refuses null. */
    public PathNearest {
        Objects.requireNonNull(point, "point");
    }
}
