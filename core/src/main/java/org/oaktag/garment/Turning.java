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
 * What is folded up along an edge: at either end the side of the piece mirrored through the edge, or through its
 * tangent there, and between them the parallel of the edge. A side on the fold of the cloth runs straight on instead,
 * for it must stay on the fold.
 *
 * <p>The sides reach beyond the parallel, so that the cut line beside them can be drawn first and cut off along it.
 *
 * @param first from the start of the edge outwards
 * @param beyond from the end of the first side to the start of the last
 * @param last from outside back to the end of the edge
 * @param parallel the parallel of the edge, prolonged at both ends
 */
record Turning(Path first, Path beyond, Path last, Path parallel) {

    /**
     * A side of the piece beside the edge.
     *
     * @param path from the corner with the edge away from it
     * @param onFold whether it lies on the fold of the cloth
     */
    record Side(Path path, boolean onFold) {}

    /**
     * How far parallels are prolonged to meet a side that leans outwards, in depths: enough for a corner of 4 degrees.
     */
    private static final double BEYOND = 20;

    static Turning of(EdgeRef hem, Path edge, double depth, double beside, Side before, Side after) {
        double far = depth + 3 * beside + 5;
        Path parallel = parallel(edge, depth, BEYOND * far);
        Path first = mirrored(before, edge.start(), edge.startDirection());
        Path last = mirrored(after, edge.end(), edge.endDirection());
        meeting(hem, before.onFold() ? prolonged(first, far) : first, parallel, edge.startDirection());
        meeting(hem, after.onFold() ? prolonged(last, far) : last, parallel, edge.endDirection());
        Path limit = parallel(edge, far, BEYOND * far);
        Crossing from = meeting(hem, prolonged(first, BEYOND * far), limit, edge.startDirection());
        Crossing to = meeting(hem, prolonged(last, BEYOND * far), limit, edge.endDirection());
        if (!(from.second() < to.second())) {
            throw PatternException.of(
                    "allowance of '" + hem + "'",
                    "must leave some width between the mirrored sides",
                    String.format(Locale.ROOT, "%.1f mm, at which they cross", depth),
                    "use a narrower one");
        }
        return new Turning(
                between(prolonged(first, BEYOND * far).sub(0, from.first()), edge.start(), from.point()),
                Path.polyline(from.point(), to.point()),
                between(prolonged(last, BEYOND * far).sub(0, to.first()), edge.end(), to.point())
                        .reversed(),
                parallel);
    }

    private static Path parallel(Path edge, double depth, double reach) {
        Path parallel = OffsetPath.of(edge, depth, CornerStyle.mitre(3), CutLine.TOLERANCE);
        Vector back = parallel.startDirection().times(-reach);
        return Path.polyline(parallel.start().plus(back), parallel.start()).then(prolonged(parallel, reach));
    }

    private static Path mirrored(Side side, Point corner, Vector along) {
        if (side.onFold()) {
            Vector outwards = side.path().startDirection().negated();
            return Path.polyline(corner, corner.plus(outwards));
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
        return path.then(
                Path.polyline(path.end(), path.end().plus(path.endDirection().times(by))));
    }

    /**
     * Returns a path with these very ends; mirror images and crossings agree only up to rounding, an outline exactly.
     */
    static Path between(Path path, Point start, Point end) {
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
