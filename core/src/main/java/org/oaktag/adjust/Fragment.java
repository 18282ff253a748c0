package org.oaktag.adjust;

import org.oaktag.garment.Edge;
import org.oaktag.garment.Name;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;

/**
 * A stretch of an outline while it is being cut up and put together again.
 *
 * @param whole the edge to which it belongs
 * @param path where it runs
 * @param from where on the uncut edge it began, in millimetres from the start
 */
record Fragment(Edge whole, Path path, double from) {

    /** A stretch of an edge. */
    static Fragment of(Edge edge, Path path, double from) {
        return new Fragment(edge, path, from);
    }

    /** The name of the edge to which it belongs. */
    Name edge() {
        return whole.name();
    }

    /** A stretch that was on no uncut edge. */
    static Fragment drawn(Edge edge) {
        return of(edge, edge.path(), Double.NaN);
    }

    /** Tells whether the place on the uncut edge lies on this stretch. */
    boolean covers(Name uncut, double distance, double rounding) {
        return edge().equals(uncut) && distance >= from - rounding && distance <= from + path.length() + rounding;
    }

    Fragment moved(Transform transform) {
        return along(path.transformed(transform));
    }

    Fragment along(Path other) {
        return new Fragment(whole, other, from);
    }

    Fragment renamed(Name other) {
        return new Fragment(whole.withName(other), path, from);
    }

    /** The same stretch with its ends put on these points, from which only rounding parts them. */
    Fragment between(Point start, Point end) {
        return along(path.withEnds(start, end));
    }

    Fragment startingAt(Point start) {
        return between(start, path.end());
    }

    Fragment endingAt(Point end) {
        return between(path.start(), end);
    }
}
