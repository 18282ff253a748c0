package org.oaktag.adjust;

import org.oaktag.garment.Name;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;

/**
 * A stretch of an outline while it is being cut up and put together again.
 *
 * @param edge the edge to which it belongs
 * @param path where it runs
 * @param from where on the uncut edge it began, in millimetres from the start
 */
record Fragment(Name edge, Path path, double from) {

    static Fragment drawn(Name edge, Path path) {
        return new Fragment(edge, path, Double.NaN);
    }

    /** Tells whether the place on the uncut edge lies on this stretch. */
    boolean covers(Name uncut, double distance, double rounding) {
        return edge.equals(uncut) && distance >= from - rounding && distance <= from + path.length() + rounding;
    }

    Fragment moved(Transform transform) {
        return new Fragment(edge, path.transformed(transform), from);
    }

    Fragment renamed(Name other) {
        return new Fragment(other, path, from);
    }

    /** The same stretch with its ends put on these points, from which only rounding parts them. */
    Fragment between(Point start, Point end) {
        return new Fragment(edge, path.withEnds(start, end), from);
    }

    Fragment startingAt(Point start) {
        return between(start, path.end());
    }

    Fragment endingAt(Point end) {
        return between(path.start(), end);
    }
}
