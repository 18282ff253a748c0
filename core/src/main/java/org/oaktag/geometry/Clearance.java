package org.oaktag.geometry;

import java.util.Arrays;
import java.util.List;

/**
 * Whether a point keeps its distance from every edge of a run, and lies on the left of it if it is closed.
 *
 * <p>Beside an edge, on its left, its own distance counts. Where an end of the edge is the nearest point it is the
 * lesser of the distances of the two edges that meet there, for the parallels step from one to the other there; where
 * the greater is carried round the corner, that one. The straight prolongation of an edge at distance 0 is where its
 * neighbours end, and keeps no distance from them.
 */
final class Clearance {
    private final List<Path> edges;
    private final double[] distances;
    private final double slack;
    private final double besideCorners;
    private final Path ring;
    private final boolean closed;
    private final int windingOnTheLeft;
    private final double[] atCornerAfter;
    private final int[] edgeOf;
    private final int[] firstOf;

    /** No curve further off than this matters, mm. */
    private final double reach;

    Clearance(List<Path> edges, double[] distances, OffsetCorners corners, boolean closed, double slack) {
        this(edges, distances, corners, closed, slack, slack);
    }

    /**
     * @param slack how much nearer than required is near enough, mm
     * @param besideCorners how near to a corner the foot of a point may lie to count as at the corner, mm
     */
    Clearance(
            List<Path> edges,
            double[] distances,
            OffsetCorners corners,
            boolean closed,
            double slack,
            double besideCorners) {
        this.besideCorners = besideCorners;
        this.edges = edges;
        this.distances = distances;
        this.slack = slack;
        this.closed = closed;
        this.ring = Path.of(edges.stream().flatMap(e -> e.curves().stream()).toList());
        this.windingOnTheLeft = Area.signed(ring) > 0 ? 0 : -1;
        this.reach = Math.max(greatest(), slack);
        this.edgeOf = new int[ring.curves().size()];
        this.firstOf = new int[edges.size()];
        int count = 0;
        for (int i = 0; i < edges.size(); i++) {
            firstOf[i] = count;
            count += edges.get(i).curves().size();
            Arrays.fill(edgeOf, firstOf[i], count, i);
        }
        this.atCornerAfter = new double[distances.length];
        for (int i = 0; i < distances.length; i++) {
            int next = (i + 1) % distances.length;
            boolean carried = corners.carries(
                    edges.get(i).endDirection(), edges.get(next).startDirection(), distances[i], distances[next]);
            atCornerAfter[i] =
                    carried ? Math.max(distances[i], distances[next]) : Math.min(distances[i], distances[next]);
        }
    }

    double slack() {
        return slack;
    }

    /** Returns the greatest distance that is to be kept, mm. */
    double greatest() {
        return Arrays.stream(distances).max().orElse(0);
    }

    /** Tells whether a point of the parallel of the edge keeps its distance from all the edges. */
    boolean isKeptBy(Point point, int edge) {
        boolean prolonged =
                closed && distances[edge] == 0 && edges.get(edge).nearest(point).distance() > slack;
        double nearest = Double.POSITIVE_INFINITY;
        CurveTree tree = ring.tree();
        int node = 0;
        while (node < tree.nodes()) {
            if (tree.isBeside(node, point, reach)) {
                node = tree.after(node);
                continue;
            }
            int curve = tree.from(node);
            boolean concerned = tree.isCurve(node) && !(prolonged && isNextTo(edgeOf[curve], edge));
            node++;
            if (!concerned) {
                continue;
            }
            Curve source = ring.curves().get(curve);
            int i = edgeOf[curve];
            if (isBeyond(CurveContacts.hull(source), point, Math.max(Math.min(distances[i], nearest), slack))) {
                continue;
            }
            Nearest on = source.nearest(point);
            nearest = Math.min(nearest, on.distance());
            if (on.distance() < required(i, curve - firstOf[i], source, on.point()) - slack
                    && !isBehind(source, on, point)) {
                return false;
            }
        }
        return !closed || nearest <= slack || Winding.number(ring, point) == windingOnTheLeft;
    }

    private boolean isNextTo(int i, int edge) {
        int apart = Math.floorMod(i - edge, edges.size());
        return apart == 1 || apart == edges.size() - 1;
    }

    /**
     * Tells whether the point lies square off the inside of the curve to the right: an edge keeps its distance on its
     * own side only.
     */
    private boolean isBehind(Curve curve, Nearest on, Point point) {
        return closed && on.t() > 0 && on.t() < 1 && curve.directionAt(on.t()).cross(point.minus(on.point())) > 0;
    }

    /** At a corner what is required there. */
    private double required(int edge, int index, Curve curve, Point on) {
        double required = distances[edge];
        if (closed && index == 0 && on.isCloseTo(curve.start(), besideCorners)) {
            required = atCornerAfter[(edge + edges.size() - 1) % edges.size()];
        }
        if (closed && index == edges.get(edge).curves().size() - 1 && on.isCloseTo(curve.end(), besideCorners)) {
            required = atCornerAfter[edge];
        }
        return required;
    }

    private static boolean isBeyond(Bounds hull, Point p, double distance) {
        return p.x() < hull.minX() - distance
                || p.x() > hull.maxX() + distance
                || p.y() < hull.minY() - distance
                || p.y() > hull.maxY() + distance;
    }
}
