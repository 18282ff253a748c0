package org.oaktag.geometry;

import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * The greatest distance of a place on one path from a place on another. It is greatest between two control points of
 * two stretches that hold them; the pair that may be furthest apart is halved first.
 */
final class WidestDistance {
    private final double tolerance;
    private final PriorityQueue<Pair> open =
            new PriorityQueue<>(Comparator.comparingDouble(Pair::most).reversed());
    private Distances.Apart best;

    private record Pair(PathPiece a, PathPiece b, double most) {}

    WidestDistance(Path first, Path second, double tolerance) {
        this.tolerance = tolerance;
        this.best = apart(PathPiece.of(first, 0), 0, PathPiece.of(second, 0), 0);
        List<Curve> others = second.curves();
        for (int i = 0; i < first.curves().size(); i++) {
            PathPiece a = PathPiece.of(first, i);
            for (int j = 0; j < others.size(); j++) {
                if (mayReach(CurveContacts.hull(first.curves().get(i)), CurveContacts.hull(others.get(j)))) {
                    add(a, PathPiece.of(second, j));
                }
            }
        }
    }

    private boolean mayReach(Bounds a, Bounds b) {
        double x = Math.max(a.maxX() - b.minX(), b.maxX() - a.minX());
        double y = Math.max(a.maxY() - b.minY(), b.maxY() - a.minY());
        return Math.sqrt(x * x + y * y) > best.distance() + tolerance;
    }

    Distances.Apart found() {
        while (!open.isEmpty() && open.peek().most() > best.distance() + tolerance) {
            Pair pair = open.remove();
            PathPiece.halve(pair.a(), pair.b(), this::add);
        }
        return best;
    }

    private void add(PathPiece a, PathPiece b) {
        double most = 0;
        for (Point control : b.cubic().controls()) {
            most = Math.max(most, a.reachFrom(control));
        }
        if (most <= best.distance() + tolerance) {
            return;
        }
        for (double t = 0; t <= 1; t += 0.5) {
            for (double u = 0; u <= 1; u += 0.5) {
                Distances.Apart apart = apart(a, t, b, u);
                best = apart.distance() > best.distance() ? apart : best;
            }
        }
        if (!a.isSpent() || !b.isSpent()) {
            open.add(new Pair(a, b, most));
        }
    }

    private static Distances.Apart apart(PathPiece a, double t, PathPiece b, double u) {
        Point p = a.cubic().pointAt(t);
        Point q = b.cubic().pointAt(u);
        return new Distances.Apart(p.distanceTo(q), at(a, t), p, at(b, u), q);
    }

    private static Path.Location at(PathPiece stretch, double t) {
        CubicPiece piece = stretch.piece();
        return new Path.Location(stretch.curve(), t == 1 ? piece.to() : piece.from() + t * (piece.to() - piece.from()));
    }
}
