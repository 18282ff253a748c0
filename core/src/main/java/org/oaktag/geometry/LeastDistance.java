package org.oaktag.geometry;

import java.util.Comparator;
import java.util.PriorityQueue;

/**
 * The least distance of two paths. Stretches are no nearer to each other than their chords are, less what each may be
 * off its own. The pair that may be nearest is halved first, until none may be nearer than the best found by more than
 * the tolerance.
 */
final class LeastDistance {
    private final Path first;
    private final Path second;
    private final double tolerance;
    private final PriorityQueue<Pair> open = new PriorityQueue<>(Comparator.comparingDouble(Pair::least));
    private Distances.Apart best;

    private record Pair(PathPiece a, PathPiece b, double least) {}

    LeastDistance(Path first, Path second, double tolerance) {
        this.first = first;
        this.second = second;
        this.tolerance = tolerance;
        this.best = from(new Path.Location(0, 0));
    }

    Distances.Apart found() {
        for (CurvePair pair : first.tree().pairsWith(second.tree(), best.distance())) {
            add(PathPiece.of(first, pair.first()), PathPiece.of(second, pair.second()));
        }
        while (!open.isEmpty() && open.peek().least() < best.distance() - tolerance) {
            Pair pair = open.remove();
            PathPiece.halve(pair.a(), pair.b(), this::add);
        }
        return best;
    }

    private void add(PathPiece a, PathPiece b) {
        double least = Math.max(PathPiece.betweenChords(a, b) - a.sag() - b.sag(), 0);
        if (least >= best.distance() - tolerance) {
            return;
        }
        if (a.middlePoint().distanceTo(b.middlePoint()) < best.distance()) {
            Distances.Apart better = from(a.middle());
            best = better.distance() < best.distance() ? better : best;
        }
        if (!a.isSpent() || !b.isSpent()) {
            open.add(new Pair(a, b, least));
        }
    }

    /** Goes from a place on the first path to the nearest on the second and back, as long as that is nearer. */
    private Distances.Apart from(Path.Location start) {
        Point point = first.curves().get(start.curve()).pointAt(start.t());
        Distances.Apart apart = Distances.Apart.between(start, point, second);
        while (true) {
            NearestCurve back = NearestCurve.of(first, apart.secondPoint());
            if (!(back.place().distance() < apart.distance() - 0.1 * tolerance)) {
                return apart;
            }
            apart = Distances.Apart.between(back.location(), back.place().point(), second);
        }
    }
}
