package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.garment.Name;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Line;
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
        return new Fragment(edge, pinned(path, start, end), from);
    }

    Fragment startingAt(Point start) {
        return between(start, path.end());
    }

    Fragment endingAt(Point end) {
        return between(path.start(), end);
    }

    static Path pinned(Path path, Point from, Point to) {
        if (path.start().equals(from) && path.end().equals(to)) {
            return path;
        }
        List<Curve> curves = new ArrayList<>(path.curves());
        int last = curves.size() - 1;
        curves.set(0, pinned(curves.get(0), from, curves.get(0).end()));
        curves.set(last, pinned(curves.get(last), curves.get(last).start(), to));
        return Path.of(curves);
    }

    private static Curve pinned(Curve curve, Point start, Point end) {
        return curve instanceof Cubic cubic
                ? Cubic.of(
                        start,
                        cubic.control1().plus(start.minus(cubic.start())),
                        cubic.control2().plus(end.minus(cubic.end())),
                        end)
                : new Line(start, end);
    }
}
