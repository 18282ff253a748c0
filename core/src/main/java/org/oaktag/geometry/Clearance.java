package org.oaktag.geometry;

import java.util.List;

/**
 * Whether a point keeps its distance from every edge of a run, and lies on the left of it if it is closed.
 *
 * <p>Beside an edge its own distance counts; where an end of the edge is the nearest point, the lesser of the distances of the two
 * edges that meet there, for the parallels step from one to the other there.
 */
final class Clearance {
    private final List<Path> edges;
    private final double[] distances;
    private final double slack;
    private final Path ring;
    private final boolean closed;
    private final int windingOnTheLeft;

    Clearance(List<Path> edges, double[] distances, boolean closed, double slack) {
        this.edges = edges;
        this.distances = distances;
        this.slack = slack;
        this.closed = closed;
        this.ring = Path.of(edges.stream().flatMap(e -> e.curves().stream()).toList());
        this.windingOnTheLeft = Area.signed(ring) > 0 ? 0 : -1;
    }

    double slack() {
        return slack;
    }

    boolean isKeptBy(Point point) {
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < edges.size(); i++) {
            List<Curve> curves = edges.get(i).curves();
            for (int k = 0; k < curves.size(); k++) {
                Curve curve = curves.get(k);
                if (isBeyond(CurveContacts.hull(curve), point, Math.max(Math.min(distances[i], nearest), slack))) {
                    continue;
                }
                Nearest on = curve.nearest(point);
                nearest = Math.min(nearest, on.distance());
                if (on.distance() < required(i, k, curve, on.point()) - slack) {
                    return false;
                }
            }
        }
        return !closed || nearest <= slack || Winding.number(ring, point) == windingOnTheLeft;
    }

    /** Within the slack of a corner the lesser distance of its two edges is required. */
    private double required(int edge, int index, Curve curve, Point on) {
        int count = edges.size();
        double required = distances[edge];
        if (closed && index == 0 && on.isCloseTo(curve.start(), slack)) {
            required = Math.min(required, distances[(edge + count - 1) % count]);
        }
        if (closed && index == edges.get(edge).curves().size() - 1 && on.isCloseTo(curve.end(), slack)) {
            required = Math.min(required, distances[(edge + 1) % count]);
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
