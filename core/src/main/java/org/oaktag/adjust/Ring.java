package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Name;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Vector;

/** Puts the stretches of an outline together to edges again. */
final class Ring {

    private static final double STRAIGHT = 1e-12;

    /** How near, in millimetres, the parts of one cubic come to what it is cut into again. */
    private static final double ONE_CUBIC = 1e-8;

    private Ring() {}

    /**
     * Returns the edges: neighbouring stretches of one name make one edge.
     *
     * @param fragments the stretches in order, closed
     * @param first the edge to begin with, where it is among them
     */
    static List<Edge> edges(List<Fragment> fragments, Name first) {
        List<Fragment> ring = new ArrayList<>(fragments);
        Collections.rotate(ring, -beginning(ring, first));
        List<Edge> edges = new ArrayList<>();
        List<Curve> curves = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            Fragment fragment = ring.get(i);
            append(curves, fragment.path());
            if (i + 1 == ring.size() || !ring.get(i + 1).edge().equals(fragment.edge())) {
                edges.add(fragment.whole().withPath(Path.of(curves)));
                curves.clear();
            }
        }
        return edges;
    }

    private static int beginning(List<Fragment> ring, Name first) {
        int any = 0;
        for (int i = ring.size() - 1; i >= 0; i--) {
            Name before = ring.get((i + ring.size() - 1) % ring.size()).edge();
            if (!before.equals(ring.get(i).edge())) {
                if (ring.get(i).edge().equals(first)) {
                    return i;
                }
                any = i;
            }
        }
        return any;
    }

    /**
     * Appends the curves; a straight line that only runs on is one line and not two, and so are both parts of one
     * cubic.
     */
    static void append(List<Curve> curves, Path next) {
        for (Curve curve : next.curves()) {
            int last = curves.size() - 1;
            if (last >= 0 && curves.get(last) instanceof Line before && curve instanceof Line after) {
                Vector a = before.end().minus(before.start());
                Vector b = after.end().minus(after.start());
                if (Math.abs(a.cross(b)) <= STRAIGHT * a.length() * b.length() && a.dot(b) > 0) {
                    curves.set(last, new Line(before.start(), after.end()));
                    continue;
                }
            }
            Optional<Cubic> whole =
                    last >= 0 && curves.get(last) instanceof Cubic before && curve instanceof Cubic after
                            ? whole(before, after)
                            : Optional.empty();
            if (whole.isPresent()) {
                curves.set(last, whole.get());
            } else {
                curves.add(curve);
            }
        }
    }

    /** The cubic of which two are the parts; empty where they are parts of none. */
    private static Optional<Cubic> whole(Cubic before, Cubic after) {
        double arriving = before.end().minus(before.control2()).length();
        double leaving = after.control1().minus(after.start()).length();
        double at = arriving / (arriving + leaving);
        if (!(at > 0 && at < 1)) {
            return Optional.empty();
        }
        Cubic whole = new Cubic(
                before.start(),
                before.start().plus(before.control1().minus(before.start()).times(1 / at)),
                after.end().plus(after.control2().minus(after.end()).times(1 / (1 - at))),
                after.end());
        return isSame(whole.sub(0, at), before) && isSame(whole.sub(at, 1), after)
                ? Optional.of(whole)
                : Optional.empty();
    }

    private static boolean isSame(Curve curve, Cubic other) {
        return curve instanceof Cubic cubic
                && cubic.control1().isCloseTo(other.control1(), ONE_CUBIC)
                && cubic.control2().isCloseTo(other.control2(), ONE_CUBIC)
                && cubic.start().isCloseTo(other.start(), ONE_CUBIC)
                && cubic.end().isCloseTo(other.end(), ONE_CUBIC);
    }
}
