package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The stretches of a path that turn one way, then the other, told by following the angle of its direction up and down.
 *
 * <p>Between inflections, cusps and joins the angle only rises or only falls, so that it is known at finitely many
 * places. A greatest angle ends a stretch once the angle has fallen from it by more than the tolerance, a least one
 * once it has risen by more.
 */
final class Turns {
    /** Angles nearer than this, radians, are one: directions at a join agree to rounding only. */
    private static final double ROUNDING = 1e-9;

    private final double tolerance;
    private final List<Curvature.Turn> found = new ArrayList<>();

    private double angle;
    private double way;
    private Extreme start = new Extreme(0, 0, 0);
    private Extreme low = start;
    private Extreme high = start;

    /** An angle, and the places at which it is first reached and left. */
    private record Extreme(double angle, double reached, double left) {}

    private Turns(double tolerance) {
        this.tolerance = tolerance;
    }

    static List<Curvature.Turn> of(Path path, double tolerance) {
        Turns turns = new Turns(tolerance);
        @Nullable CurveBends before = null;
        for (int i = 0; i < path.curves().size(); i++) {
            if (path.curves().get(i).isPoint()) {
                continue;
            }
            CurveBends bends = path.bends(i);
            if (before != null) {
                double corner = before.directionAt(1).angleTo(bends.directionAt(0));
                turns.turn(corner, path.distanceAt(new Path.Location(i, 0)));
            }
            for (double[] turn : bends.turns()) {
                turns.turn(turn[2], path.distanceAt(new Path.Location(i, turn[1])));
            }
            before = bends;
        }
        return turns.all();
    }

    private void turn(double by, double distance) {
        angle += by;
        Extreme here = new Extreme(angle, distance, distance);
        low = angle < low.angle - ROUNDING ? here : prolonged(low, distance);
        high = angle > high.angle + ROUNDING ? here : prolonged(high, distance);
        if (way <= 0 && angle - low.angle > tolerance) {
            end(low);
            way = 1;
            start = low;
            high = here;
        } else if (way >= 0 && high.angle - angle > tolerance) {
            end(high);
            way = -1;
            start = high;
            low = here;
        }
    }

    /** A straight stretch at an extreme angle prolongs it. */
    private Extreme prolonged(Extreme extreme, double distance) {
        boolean same = Math.abs(angle - extreme.angle) <= ROUNDING;
        return same ? new Extreme(extreme.angle, extreme.reached, distance) : extreme;
    }

    private void end(Extreme at) {
        if (way != 0) {
            found.add(new Curvature.Turn(start.left, at.reached, at.angle - start.angle));
        }
    }

    private List<Curvature.Turn> all() {
        end(way > 0 ? high : low);
        return List.copyOf(found);
    }
}
