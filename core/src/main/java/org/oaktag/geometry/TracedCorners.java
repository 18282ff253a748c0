package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The corners in a row of points: where the lines of least squares through a window before and one after turn by more
 * than an angle, and by more than anywhere within a window.
 *
 * @param indices of the points at which they are, in order
 * @param places where they are drawn
 */
record TracedCorners(List<Integer> indices, List<Point> places) {
    /** A line of least squares: a place on it and its direction. */
    private record Fitted(Point middle, Vector along) {}

    private record Turn(int index, double angle, Point place) {}

    static TracedCorners of(List<Point> points, boolean closed, double window, double angle, double tolerance) {
        int n = points.size();
        double[] at = new double[n + 1];
        for (int i = 1; i <= n; i++) {
            at[i] = at[i - 1] + points.get(i % n).distanceTo(points.get(i - 1));
        }
        double length = closed ? at[n] : at[n - 1];
        double reach = Math.min(window, 0.25 * length);
        List<Turn> turns = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            if (closed || Math.min(at[i], length - at[i]) >= 0.5 * reach) {
                Fitted before = fitted(points, at, closed, i, -1, reach);
                Fitted after = fitted(points, at, closed, i, 1, reach);
                double turn = Math.abs(before.along().angleTo(after.along()));
                if (turn > angle) {
                    turns.add(new Turn(i, turn, place(points.get(i), before, after, tolerance)));
                }
            }
        }
        turns.sort(Comparator.comparingDouble((Turn turn) -> -turn.angle()).thenComparingInt(Turn::index));
        List<Turn> corners = new ArrayList<>();
        for (Turn turn : turns) {
            if (corners.stream()
                    .allMatch(other -> apart(at[turn.index()], at[other.index()], length, closed) > reach)) {
                corners.add(turn);
            }
        }
        corners.sort(Comparator.comparingInt(Turn::index));
        return new TracedCorners(
                corners.stream().map(Turn::index).toList(),
                corners.stream().map(Turn::place).toList());
    }

    private static double apart(double a, double b, double length, boolean closed) {
        double straight = Math.abs(a - b);
        return closed ? Math.min(straight, length - straight) : straight;
    }

    /** Returns the line through the points from this one on, one way, as far as a window goes; two at the least. */
    private static Fitted fitted(List<Point> points, double[] at, boolean closed, int i, int way, double window) {
        int n = points.size();
        List<Point> near = new ArrayList<>(List.of(points.get(i)));
        double gone = 0;
        for (int k = i + way; closed || (k >= 0 && k < n); k += way) {
            int here = Math.floorMod(k, n);
            int back = way > 0 ? Math.floorMod(k - 1, n) : here;
            gone += at[back + 1] - at[back];
            if (near.size() == n || (near.size() > 1 && gone > window)) {
                break;
            }
            near.add(points.get(here));
        }
        double x = near.stream().mapToDouble(Point::x).average().orElseThrow();
        double y = near.stream().mapToDouble(Point::y).average().orElseThrow();
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (Point point : near) {
            xx += (point.x() - x) * (point.x() - x);
            xy += (point.x() - x) * (point.y() - y);
            yy += (point.y() - y) * (point.y() - y);
        }
        Vector along = Vector.polar(1, 0.5 * Math.atan2(2 * xy, xx - yy));
        Vector chord = near.get(near.size() - 1).minus(near.get(0)).times(way);
        return new Fitted(Point.of(x, y), along.dot(chord) < 0 ? along.negated() : along);
    }

    private static Point place(Point point, Fitted before, Fitted after, double tolerance) {
        double cross = before.along().cross(after.along());
        if (Math.abs(cross) < 1e-6) {
            return point;
        }
        double way = after.middle().minus(before.middle()).cross(after.along()) / cross;
        Point met = before.middle().plus(before.along().times(way));
        return met.isCloseTo(point, tolerance) ? met : point;
    }
}
