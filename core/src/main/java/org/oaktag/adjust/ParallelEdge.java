package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
 * The parallel of an edge between its neighbours: outwards these are prolonged straight to meet it, inwards they are
 * cut where they meet it.
 *
 * @param path the parallel, in the direction of the edge
 * @param before the edge before, up to the parallel
 * @param after the edge after, from the parallel on
 */
record ParallelEdge(Path path, Path before, Path after) {

    private static final double TOLERANCE = 1e-4;
    private static final double MITRE = 4;

    /** What an inward parallel leaves of either neighbour, in millimetres, or the edges beyond would meet it. */
    private static final double LEAST_LEFT = 1;

    /**
     * So many times the distance the neighbours are prolonged; a corner sharper than 1 in 20 has no end worth having.
     */
    private static final double FAR = 20;

    /**
     * Draws the parallel.
     *
     * @param outward the distance in millimetres, negative for inwards, not zero
     * @throws PatternException if it does not meet both neighbours or leaves nothing of one
     */
    static ParallelEdge of(Piece piece, Name edge, double outward) {
        return drawn(piece, edge, outward).orElseThrow(() -> refused(piece, edge, outward));
    }

    private static Optional<ParallelEdge> drawn(Piece piece, Name edge, double outward) {
        Path before = piece.before(edge).path();
        Path after = piece.after(edge).path();
        Path offset = OffsetPath.of(piece.path(edge), outward, CornerStyle.mitre(MITRE), TOLERANCE);
        double far = FAR * Math.abs(outward);
        Path line = prolonged(offset, far);
        if (outward > 0) {
            Point tip = before.end().plus(before.endDirection().times(far));
            Point root = after.start().plus(after.startDirection().times(-far));
            Optional<Crossing> first = meeting(line, Path.polyline(before.end(), tip), true);
            Optional<Crossing> last = meeting(line, Path.polyline(after.start(), root), true);
            return between(line, first, last)
                    .map(between -> new ParallelEdge(
                            between,
                            prolonged(before, between.start()),
                            prolonged(after.reversed(), between.end()).reversed()));
        }
        Optional<Crossing> first = meeting(line, before, false).filter(place -> place.second() > LEAST_LEFT);
        Optional<Crossing> last =
                meeting(line, after, true).filter(place -> after.length() - place.second() > LEAST_LEFT);
        return between(line, first, last).map(between -> {
            Path kept = before.sub(0, first.orElseThrow().second());
            Path rest = after.sub(last.orElseThrow().second(), after.length());
            return new ParallelEdge(between.withEnds(kept.end(), rest.start()), kept, rest);
        });
    }

    /** Where a neighbour meets the parallel: nearest to the edge along the neighbour. */
    private static Optional<Crossing> meeting(Path line, Path neighbour, boolean nearestIsFirst) {
        return Crossings.between(line, neighbour).stream()
                .min((a, b) -> Double.compare(
                        nearestIsFirst ? a.second() : -a.second(), nearestIsFirst ? b.second() : -b.second()));
    }

    private static Optional<Path> between(Path line, Optional<Crossing> first, Optional<Crossing> last) {
        if (first.isEmpty() || last.isEmpty()) {
            return Optional.empty();
        }
        double from = first.get().first();
        double to = last.get().first();
        return to - from <= TOLERANCE ? Optional.empty() : Optional.of(line.sub(from, to));
    }

    private static PatternException refused(Piece piece, Name edge, double outward) {
        Length asked = Length.mm(Math.abs(outward));
        Length most = Length.greatestTenth(
                asked,
                each -> drawn(piece, edge, Math.copySign(each.mm(), outward)).isPresent());
        return PatternException.of(
                "parallel of edge '" + edge + "' of piece '" + piece.name() + "'",
                outward > 0
                        ? "must meet the neighbours of the edge when they are prolonged"
                        : "must meet both neighbours of the edge and leave something of each",
                asked.text(),
                most.mm() > 0 ? "it can lie " + most.text() + " away at the most" : "work on another edge");
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
