package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Where paths meet. Each meeting is reported once, ends included, in order along the first path; a shared stretch is
 * reported as one overlap and not as points. Along an overlap the distances on the second path only rise or only fall:
 * where a path turns back, inside a cubic that lies on a line as well, and at the start of a closed one, the next
 * overlap begins.
 *
 * <pre>{@code
 * Path a = Path.polyline(Point.of(0, 0), Point.of(100, 100));
 * Path b = Path.polyline(Point.of(0, 100), Point.of(100, 0));
 * Crossing middle = Crossings.between(a, b).get(0);
 * middle.point();   // = Point[x=50.0, y=50.0]
 * middle.first();   // = 70.711
 * }</pre>
 *
 * <p>Curves that come within 1e-9 mm of each other meet (more where the coordinates are so large that a {@code double}
 * is coarser). Two meetings within 1e-6 mm of each other along both paths are one, and so are two between which the
 * curves do not part. Whether paths cross or touch is judged by the order in which the four branches leave the point,
 * at most a tenth of a millimetre away. A path that is a single point touches what it lies on.
 *
 * <p><b>Method.</b> Nothing is flattened. A segment meets a cubic at the roots of its distance from the line; two
 * cubics are halved until a pair of pieces provably stays apart or meets at most once, and then Newton's method finds
 * the place. Different cubics meet nine times at most (Bézout), which is how a shared stretch is told from near misses.
 *
 * <p><b>Cost.</b> Pairs of curves whose boxes come near each other are found in the paths' trees and looked at one by
 * one: for n curves in all, k of whose pairs are near, O(k + n log n) where long runs of the paths lie apart, and each
 * path's tree once.
 */
public final class Crossings {
    /** As far out as a line is looked at, mm: points lie within 1e12, and boxes about them need some room. */
    private static final double TABLE = 0.999999e12;

    private Crossings() {}

    /** Returns where two curves meet; distances are along each curve. */
    public static List<Crossing> between(Curve first, Curve second) {
        return between(Path.of(first), Path.of(second));
    }

    /** Returns where two paths meet. */
    public static List<Crossing> between(Path first, Path second) {
        CrossingCollector found = new CrossingCollector(first, second);
        double near = CurveContacts.near(first.tree(), second.tree());
        for (CurvePair pair : first.tree().pairsWith(second.tree(), near)) {
            Curve one = first.curves().get(pair.first());
            Curve other = second.curves().get(pair.second());
            for (Contact contact : CurveContacts.between(one, other)) {
                found.add(pair.first(), pair.second(), contact);
            }
        }
        return found.crossings();
    }

    /**
     * Returns where a path meets the endless line through a point; {@link Crossing#second()} is the signed distance in
     * mm from that point, in the direction of the vector. Beyond 0.999999e12 mm nothing is found.
     *
     * @throws IllegalArgumentException if the direction is the zero vector
     */
    public static List<Crossing> ofLine(Path path, Point through, Vector direction) {
        if (direction.equals(Vector.ZERO)) {
            throw new IllegalArgumentException("a line needs a direction, got the zero vector");
        }
        // A segment that reaches past the path on both sides crosses it wherever the endless line does.
        Bounds bounds = path.bounds();
        double reach =
                1 + 2 * (bounds.width() + bounds.height() + bounds.center().distanceTo(through));
        Vector unit = direction.unit();
        Path segment = Path.polyline(onTable(through, unit.negated(), reach), onTable(through, unit, reach));
        List<Crossing> crossings = new ArrayList<>();
        for (Crossing crossing : between(path, segment)) {
            crossings.add(new Crossing(
                    crossing.kind(), onLine(crossing.from(), through, unit), onLine(crossing.to(), through, unit)));
        }
        return crossings;
    }

    /**
     * Returns the points at which a path meets the endless line through a point, in order along the path, and does not
     * say how: some ten times as fast as {@link #ofLine}. A point where two curves join may come twice; of a stretch
     * that runs along the line come the ends.
     *
     * @throws IllegalArgumentException if the direction is the zero vector
     */
    public static List<Point> pointsOnLine(Path path, Point through, Vector direction) {
        if (direction.equals(Vector.ZERO)) {
            throw new IllegalArgumentException("a line needs a direction, got the zero vector");
        }
        Vector unit = direction.unit();
        List<Point> points = new ArrayList<>(2);
        for (Curve curve : path.curves()) {
            LineContacts.addPoints(curve, through, unit, points);
        }
        return points;
    }

    /** Returns the point so far along a line, or where it leaves the table. */
    private static Point onTable(Point from, Vector way, double reach) {
        double room = Math.min(room(from.x(), way.x()), room(from.y(), way.y()));
        return from.plus(way.times(Math.max(Math.min(reach, room), 0)));
    }

    private static double room(double from, double way) {
        return way == 0 ? Double.POSITIVE_INFINITY : (Math.copySign(TABLE, way) - from) / way;
    }

    private static Crossing.Place onLine(Crossing.Place place, Point through, Vector unit) {
        return new Crossing.Place(
                place.point(), place.first(), place.point().minus(through).dot(unit));
    }

    /** Returns where a path meets itself other than at the joins of neighbouring curves; first is less than second. */
    static List<Crossing> ofItself(Path path) {
        CrossingCollector found = new CrossingCollector(path, path);
        List<Curve> curves = path.curves();
        for (int i = 0; i < curves.size(); i++) {
            if (curves.get(i) instanceof Cubic cubic) {
                for (Contact contact : SelfContacts.of(cubic)) {
                    found.add(i, i, contact);
                }
                for (Contact contact : Folds.within(cubic)) {
                    found.add(i, i, contact);
                }
            }
        }
        int last = curves.size() - 1;
        for (CurvePair pair : path.tree().pairsWithin(CurveContacts.near(path.tree(), path.tree()))) {
            int i = pair.first();
            int j = pair.second();
            boolean joinedBack = path.isClosed() && i == 0 && j == last;
            for (Contact contact : SelfContacts.between(curves.get(i), curves.get(j), j == i + 1, joinedBack)) {
                found.add(i, j, contact);
            }
        }
        return found.crossings();
    }
}
