package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.PatternException;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.CornerStyle;
import org.oaktag.geometry.Crossing;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.OffsetPath;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * The parallel of an edge between its neighbours: outwards these are prolonged straight to meet it, inwards they are cut
 * where they meet it.
 *
 * @param path the parallel, in the direction of the edge
 * @param before the edge before, up to the parallel
 * @param after the edge after, from the parallel on
 */
record ParallelEdge(Path path, Path before, Path after) {

    private static final double TOLERANCE = 1e-4;
    private static final double MITRE = 4;

    /** So many times the distance the neighbours are prolonged; a corner sharper than 1 in 20 has no end worth having. */
    private static final double FAR = 20;

    /**
     * Draws the parallel.
     *
     * @param outward the distance in millimetres, negative for inwards, not zero
     */
    static ParallelEdge of(Piece piece, Name edge, double outward) {
        Path own = piece.path(edge);
        Path before = piece.before(edge).path();
        Path after = piece.after(edge).path();
        Path offset = OffsetPath.of(own, outward, CornerStyle.mitre(MITRE), TOLERANCE);
        double far = FAR * Math.abs(outward);
        Path line = prolonged(offset, far);
        if (outward > 0) {
            Point tip = before.end().plus(before.endDirection().times(far));
            Point root = after.start().plus(after.startDirection().times(-far));
            Crossing first = meeting(piece, edge, outward, line, Path.polyline(before.end(), tip), true);
            Crossing last = meeting(piece, edge, outward, line, Path.polyline(after.start(), root), true);
            Path between = between(piece, edge, outward, line, first, last);
            return new ParallelEdge(
                    between,
                    prolonged(before, between.start()),
                    prolonged(after.reversed(), between.end()).reversed());
        }
        Crossing first = meeting(piece, edge, outward, line, before, false);
        Crossing last = meeting(piece, edge, outward, line, after, true);
        Path between = between(piece, edge, outward, line, first, last);
        Path kept = before.sub(0, first.second());
        Path rest = after.sub(last.second(), after.length());
        return new ParallelEdge(Fragment.pinned(between, kept.end(), rest.start()), kept, rest);
    }

    /** Where a neighbour meets the parallel: nearest to the edge along the neighbour. */
    private static Crossing meeting(
            Piece piece, Name edge, double outward, Path line, Path neighbour, boolean nearestIsFirst) {
        return Crossings.between(line, neighbour).stream()
                .min((a, b) -> Double.compare(
                        nearestIsFirst ? a.second() : -a.second(), nearestIsFirst ? b.second() : -b.second()))
                .orElseThrow(() -> refused(piece, edge, outward));
    }

    private static Path between(Piece piece, Name edge, double outward, Path line, Crossing first, Crossing last) {
        if (last.first() - first.first() <= TOLERANCE) {
            throw refused(piece, edge, outward);
        }
        return line.sub(first.first(), last.first());
    }

    private static PatternException refused(Piece piece, Name edge, double outward) {
        double most = Math.min(
                piece.before(edge).path().length(), piece.after(edge).path().length());
        return PatternException.of(
                "parallel of edge '" + edge + "' of piece '" + piece.name() + "'",
                outward > 0
                        ? "must meet the neighbours of the edge when they are prolonged"
                        : "must meet both neighbours of the edge, which are at least "
                                + Length.mm(most).text() + " long",
                Length.mm(Math.abs(outward)).text() + (outward > 0 ? " outwards" : " inwards"),
                "use a smaller distance");
    }

    private static Path prolonged(Path path, double far) {
        List<Curve> curves = new ArrayList<>();
        Vector back = path.startDirection().times(-far);
        Ring.append(curves, Path.of(new Line(path.start().plus(back), path.start())));
        Ring.append(curves, path);
        Ring.append(
                curves,
                Path.of(new Line(path.end(), path.end().plus(path.endDirection().times(far)))));
        return Path.of(curves);
    }

    private static Path prolonged(Path path, Point end) {
        List<Curve> curves = new ArrayList<>(path.curves());
        Ring.append(curves, Path.polyline(path.end(), end));
        return Path.of(curves);
    }
}
