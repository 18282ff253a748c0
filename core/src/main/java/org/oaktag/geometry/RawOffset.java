package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * The parallels of a run of edges, each at a distance of its own to the left, joined at the corners but not yet
 * trimmed.
 *
 * <p>At a corner the tangents turn by an angle a, clockwise positive. The straight prolongations of the parallels meet
 * {@code (d2 - d1 cos a) / sin a} beyond the end of the first and {@code (d1 - d2 cos a) / sin a} before the start of
 * the second. Both positive: an outer corner, joined in the style asked for. Both negative: the parallels cross, and
 * links through the corner keep the run connected until it is trimmed. Of different sign, as with two very different
 * distances: a straight step from one to the other; beside an edge at distance 0 the other parallel is cut off at that
 * edge's prolongation instead, if they meet at 30 degrees or more. At an inner corner the greater of two different
 * distances is carried round in an arc.
 */
final class RawOffset {
    /** What parallels may take of the tolerance; the rest is left to the trim, to tell what comes too near. */
    private static final double SHARE = 0.35;

    /** Ends nearer than this share of the tolerance are made to meet. */
    private static final double SNAP = 0.1;

    /** A turn this near to half a turn is a turn back. */
    private static final double BACK = Math.PI - 1e-9;

    /**
     * Sine of the least turn at which a parallel is cut off at a prolongation; at a lesser one that would run beside
     * its edge for long.
     */
    private static final double SLANT = 0.5;

    private final double tolerance;
    private final OffsetCorners style;
    private final OffsetCorner within;
    private final List<OffsetCorner> corners;
    private final List<List<RawCurve>> chains = new ArrayList<>();
    private final List<Path> edges;
    private final double[] distances;

    RawOffset(List<Path> edges, double[] distances, OffsetCorners style, double tolerance) {
        this.edges = edges;
        this.distances = distances;
        this.tolerance = tolerance;
        this.style = style;
        this.within = new OffsetCorner(style.within(), tolerance);
        this.corners = style.after().stream()
                .map(each -> new OffsetCorner(each, tolerance))
                .toList();
        for (int i = 0; i < edges.size(); i++) {
            chains.add(chain(edges.get(i), i));
        }
    }

    /** Returns the run of a closed outline, whose last curve ends where the first starts. */
    List<RawCurve> closedRun() {
        for (int i = 0; i < edges.size(); i++) {
            joinEdges(i, (i + 1) % edges.size());
        }
        return chains.stream().flatMap(List::stream).toList();
    }

    /** Returns what the joins have cut off the parallels: beyond it the run may come too near all the same. */
    List<Curve> cutOff() {
        return corners.stream().flatMap(corner -> corner.cutOff().stream()).toList();
    }

    /** Returns the run of one open path. */
    List<RawCurve> openRun() {
        return chains.get(0);
    }

    private List<RawCurve> chain(Path edge, int i) {
        List<RawCurve> chain = new ArrayList<>();
        List<Curve> curves = edge.curves();
        for (int k = 0; k < curves.size(); k++) {
            List<RawCurve> next = new ArrayList<>();
            for (Curve parallel : OffsetCurve.curves(curves.get(k), distances[i], SHARE * tolerance)) {
                next.add(new RawCurve(parallel, i, k, false, false));
            }
            if (k > 0) {
                join(within, chain, curves.get(k - 1), next, curves.get(k), distances[i], distances[i]);
            }
            chain.addAll(next);
        }
        return chain;
    }

    private void joinEdges(int i, int j) {
        List<Curve> first = edges.get(i).curves();
        List<Curve> second = edges.get(j).curves();
        join(
                corners.get(i),
                chains.get(i),
                first.get(first.size() - 1),
                chains.get(j),
                second.get(0),
                distances[i],
                distances[j]);
    }

    private void join(
            OffsetCorner corner,
            List<RawCurve> head,
            Curve first,
            List<RawCurve> tail,
            Curve second,
            double d1,
            double d2) {
        Point from = head.get(head.size() - 1).curve().end();
        Curve next = tail.get(0).curve();
        if (from.isCloseTo(next.start(), SNAP * tolerance)) {
            tail.set(0, tail.get(0).with(Joined.withEnds(next, from, next.end())));
            return;
        }
        Vector arriving = first.directionAt(1);
        Vector leaving = second.directionAt(0);
        double turn = arriving.angleTo(leaving);
        double beyond = (d2 - d1 * Math.cos(turn)) / Math.sin(turn);
        double before = (d1 - d2 * Math.cos(turn)) / Math.sin(turn);
        if (style.carries(arriving, leaving, d1, d2)) {
            corner.carryRound(head, tail, first.end(), arriving, leaving, d1, d2);
        } else if (Math.abs(turn) > BACK) {
            corner.back(head, tail, first.end(), arriving, d1, d2);
        } else if (beyond >= 0 && before >= 0) {
            corner.outer(head, tail, first.end(), arriving, leaving, d1, d2);
        } else if (beyond <= 0 && before <= 0) {
            corner.inner(head, tail, first.end());
        } else if (d2 == 0 && Math.sin(turn) >= SLANT) {
            corner.cutEnd(head, tail, first.end(), leaving);
        } else if (d1 == 0 && Math.sin(turn) >= SLANT) {
            corner.cutStart(head, tail, first.end(), arriving);
        } else {
            corner.step(head, tail);
        }
    }
}
