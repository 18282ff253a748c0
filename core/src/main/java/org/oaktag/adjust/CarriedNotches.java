package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.oaktag.garment.Edge;
import org.oaktag.garment.End;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.PathNearest;
import org.oaktag.geometry.Point;

/**
 * Puts notches where they belong after their edges were cut, moved or redrawn: on the nearest point of what the edge
 * has become.
 */
final class CarriedNotches {

    /** A notch that would move by less than this along its edge, in millimetres, stays where it is. */
    private static final double ROUNDING = 1e-6;

    private CarriedNotches() {}

    /** A notch, the edge on which it lay, and the point on paper to which it has come. */
    record Carried(Notch notch, Path was, Point point) {
        static Carried of(Piece piece, Notch notch, Point point) {
            return new Carried(notch, piece.path(notch.edge()), point);
        }

        private boolean isUntouched(Edge edge) {
            return edge.name().equals(notch.edge()) && edge.path().equals(was);
        }
    }

    /**
     * Returns the notches on the edges as they are now.
     *
     * @param notches the notches and where they have come to
     * @param edges the edges that there are now
     * @param became the names that an edge may have now, by the name that it had; the nearest of these edges is taken
     */
    static List<Notch> on(List<Carried> notches, List<Edge> edges, Function<Name, List<Name>> became) {
        List<Notch> all = new ArrayList<>();
        for (Carried carried : notches) {
            if (edges.stream().anyMatch(carried::isUntouched)) {
                all.add(carried.notch());
                continue;
            }
            List<Name> names = became.apply(carried.notch().edge());
            Edge best = null;
            PathNearest nearest = null;
            for (Edge edge : edges) {
                if (names.contains(edge.name())) {
                    PathNearest here = edge.path().nearest(carried.point());
                    if (nearest == null || here.distance() < nearest.distance()) {
                        nearest = here;
                        best = edge;
                    }
                }
            }
            if (best != null && nearest != null) {
                all.add(at(carried.notch(), best, nearest.distanceAlong()));
            }
        }
        return all;
    }

    private static Notch at(Notch notch, Edge edge, double along) {
        double length = edge.path().length();
        double distance = notch.from() == End.START ? along : Math.max(length - along, 0);
        boolean stays = Math.abs(distance - notch.distance()) <= ROUNDING;
        return new Notch(notch.name(), edge.name(), notch.from(), stays ? notch.distance() : distance, notch.count());
    }
}
