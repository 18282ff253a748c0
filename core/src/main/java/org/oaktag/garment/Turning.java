package org.oaktag.garment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.oaktag.PatternException;
import org.oaktag.geometry.CornerStyle;
import org.oaktag.geometry.Crossing;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.OffsetPath;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;

/**
 * What is folded up along an edge: the parallel of the edge, and at either end the side of the piece mirrored through the
 * edge, or its tangent there. A side on the fold of the cloth runs straight on instead, for it must stay on the fold.
 *
 * @param first from the start of the edge out to the parallel
 * @param edge the parallel, between the two sides
 * @param last from the parallel back to the end of the edge
 */
record Turning(Path first, Path edge, Path last) {

    /**
     * A side of the piece beside the edge.
     *
     * @param path from the corner with the edge away from it
     * @param onFold whether it lies on the fold of the cloth
     */
    record Side(Path path, boolean onFold) {}

    /** How far the parallel is prolonged to meet a side that leans outwards, in depths. */
    private static final double BEYOND = 8;

    static Turning of(EdgeRef hem, Path edge, double depth, Side before, Side after) {
        Path parallel = prolonged(OffsetPath.of(edge, depth, CornerStyle.mitre(3), CutLine.TOLERANCE), BEYOND * depth);
        Path first = mirrored(before, edge.start(), edge.startDirection(), depth);
        Path last = mirrored(after, edge.end(), edge.endDirection(), depth);
        Crossing from = meeting(hem, first, parallel, edge.startDirection());
        Crossing to = meeting(hem, last, parallel, edge.endDirection());
        if (!(from.second() < to.second())) {
            throw PatternException.of(
                    "allowance of '" + hem + "'",
                    "must leave some width between the mirrored sides",
                    String.format(Locale.ROOT, "%.1f mm, at which they cross", depth),
                    "use a narrower one");
        }
        Path turned = parallel.sub(from.second(), to.second());
        return new Turning(
                between(first.sub(0, from.first()), edge.start(), turned.start()),
                turned,
                between(last.sub(0, to.first()), edge.end(), turned.end()).reversed());
    }

    private static Path mirrored(Side side, Point corner, Vector along, double depth) {
        if (side.onFold()) {
            Vector outwards = side.path().startDirection().negated();
            return Path.polyline(corner, corner.plus(outwards.times(BEYOND * depth)));
        }
        return side.path().transformed(Transform.mirror(corner, corner.plus(along.times(100))));
    }

    private static Crossing meeting(EdgeRef hem, Path side, Path parallel, Vector along) {
        return Crossings.between(side, parallel).stream()
                .min(Comparator.comparingDouble(Crossing::first))
                .orElseThrow(() -> PatternException.of(
                        "allowance of '" + hem + "'",
                        "must not be deeper than the side that is mirrored beside it",
                        "a side that ends before it",
                        String.format(
                                Locale.ROOT,
                                "use at most %.1f mm, or mitre it",
                                Math.floor(Math.abs(side.end()
                                                        .minus(side.start())
                                                        .cross(along))
                                                * 10)
                                        / 10)));
    }

    private static Path prolonged(Path path, double by) {
        Point before = path.start().plus(path.startDirection().times(-by));
        Point beyond = path.end().plus(path.endDirection().times(by));
        return Path.polyline(before, path.start()).then(path).then(Path.polyline(path.end(), beyond));
    }

    /** A mirror image meets its source only up to rounding, and so do paths that cross; an outline has its ends exactly. */
    private static Path between(Path path, Point start, Point end) {
        List<Curve> curves = new ArrayList<>(path.curves());
        int last = curves.size() - 1;
        curves.set(0, between(curves.get(0), start, curves.get(0).end()));
        curves.set(last, between(curves.get(last), curves.get(last).start(), end));
        return Path.of(curves);
    }

    private static Curve between(Curve curve, Point start, Point end) {
        return curve instanceof Cubic cubic
                ? Cubic.of(start, cubic.control1(), cubic.control2(), end)
                : Line.of(start, end);
    }
}
