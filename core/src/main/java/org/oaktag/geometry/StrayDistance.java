package org.oaktag.geometry;

import java.util.Comparator;
import java.util.PriorityQueue;

/**
 * How far one path strays from another: the greatest distance of its places from that path.
 *
 * <p>No place of a stretch strays further than its control points are from the place nearest to its middle. Where the
 * places nearest to its ends lie on one curve, neither does it further than its ends do by more than the two sags, as
 * the one chord can be laid on the other from end to end; nor further than the control points of the two parts are from
 * each other, one by one. The least holds, and the stretch that may stray most is halved first.
 */
final class StrayDistance {
    private final Path second;
    private final double tolerance;
    private final PriorityQueue<Open> open =
            new PriorityQueue<>(Comparator.comparingDouble(Open::most).reversed());
    private Distances.Apart best;

    private record Open(PathPiece stretch, Distances.Apart start, Distances.Apart end, double most) {}

    StrayDistance(Path first, Path second, double tolerance) {
        this.second = second;
        this.tolerance = tolerance;
        this.best = stray(new Path.Location(0, 0), first.start());
        for (int i = 0; i < first.curves().size(); i++) {
            PathPiece stretch = PathPiece.of(first, i);
            Distances.Apart start =
                    stray(new Path.Location(i, 0), stretch.cubic().start());
            add(stretch, start, stray(new Path.Location(i, 1), stretch.cubic().end()));
        }
    }

    Distances.Apart found() {
        while (!open.isEmpty() && open.peek().most() > best.distance() + tolerance) {
            Open widest = open.remove();
            PathPiece stretch = widest.stretch();
            Distances.Apart middle = stray(stretch.middle(), stretch.middlePoint());
            add(stretch.firstHalf(), widest.start(), middle);
            add(stretch.secondHalf(), middle, widest.end());
        }
        return best;
    }

    private void add(PathPiece stretch, Distances.Apart start, Distances.Apart end) {
        best = start.distance() > best.distance() ? start : best;
        best = end.distance() > best.distance() ? end : best;
        Point nearMiddle =
                NearestCurve.of(second, stretch.middlePoint()).place().point();
        double most = stretch.reachFrom(nearMiddle);
        if (start.second().curve() == end.second().curve()) {
            most = Math.min(most, mostBeside(stretch, start, end));
        }
        if (most > best.distance() + tolerance && !stretch.isSpent()) {
            open.add(new Open(stretch, start, end, most));
        }
    }

    /**
     * The bounds that follow from the part of the second path between the places nearest to the ends of the stretch.
     */
    private double mostBeside(PathPiece stretch, Distances.Apart start, Distances.Apart end) {
        double from = start.second().t();
        double to = end.second().t();
        Cubic source = Cubic.from(second.curves().get(start.second().curve()));
        Cubic part = source.sub(Math.min(from, to), Math.max(from, to));
        Cubic beside = from <= to ? part : part.reversed();
        double sags = stretch.sag() + new PathPiece(0, new CubicPiece(beside, 0, 1)).sag();
        double byParameter = 0;
        for (int i = 0; i < 4; i++) {
            byParameter = Math.max(
                    byParameter,
                    stretch.cubic()
                            .controls()
                            .get(i)
                            .distanceTo(beside.controls().get(i)));
        }
        return Math.min(Math.max(start.distance(), end.distance()) + sags, byParameter);
    }

    private Distances.Apart stray(Path.Location at, Point point) {
        return Distances.Apart.between(at, point, second);
    }
}
