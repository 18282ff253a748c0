package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Takes out of a path what no eye or knife follows: dust, needless corners, more curves than its shape needs.
 *
 * <pre>{@code
 * Path traced = Path.polyline(
 *         Point.of(0, 0), Point.of(50, 0.001), Point.of(50.0004, 0.001), Point.of(100, 0), Point.of(100, 80));
 * Simplify.clean(traced, 0.01);   // = Path[Line[start=Point[x=0.0, y=0.0], end=Point[x=100.0, y=0.0]], Line[start=Point[x=100.0, y=0.0], end=Point[x=100.0, y=80.0]]]
 * }</pre>
 *
 * <p>No place of the result is further from the path than the distance, and none of the path further from the result.
 * Ends stay where they are, but for a path that all but closes.
 */
public final class Simplify {
    private Simplify() {}

    /**
     * Returns the path without curves whose control polygon is shorter than half the distance, with one segment for
     * segments that lie within half the distance of it, and closed if its ends are that near to each other and it is
     * four times as long as the distance. Other curves stay, their ends moved to where the dust beside them began.
     *
     * @throws IllegalArgumentException if the distance is not positive and finite
     */
    public static Path clean(Path path, double distance) {
        double half = 0.5 * Plane.positive("distance", distance);
        List<Curve> swept = withoutDust(path.curves(), half);
        Point start = path.start();
        Point end = swept.get(swept.size() - 1).end();
        if (!end.equals(start) && end.distanceTo(start) <= half && path.length() >= 4 * distance) {
            swept = Joined.to(start, swept);
        }
        return Path.of(withFewerCorners(swept, half));
    }

    /**
     * Returns a path within the distance of the given one, of as few segments and cubics as are found: cleaned,
     * segments taken together as long as no corner between them is off, and smooth runs fitted anew ({@link
     * Fit#refit}).
     *
     * @throws IllegalArgumentException if the distance is not positive and finite
     */
    public static Path simplify(Path path, double distance) {
        Plane.positive("distance", distance);
        return Fit.refit(clean(path, 0.5 * distance), 0.5 * distance);
    }

    private static List<Curve> withoutDust(List<Curve> curves, double least) {
        List<Curve> kept = new ArrayList<>();
        Point pen = curves.get(0).start();
        for (int i = 0; i < curves.size(); i++) {
            Curve curve = curves.get(i);
            boolean dust =
                    new CubicPiece(Cubic.from(curve), 0, 1).size() < least && pen.distanceTo(curve.end()) < least;
            if (!dust) {
                kept.add(Joined.withEnds(curve, pen, curve.end()));
                pen = curve.end();
            }
        }
        if (kept.isEmpty()) {
            return List.of(new Line(pen, curves.get(curves.size() - 1).end()));
        }
        return pen.equals(curves.get(curves.size() - 1).end())
                ? kept
                : Joined.to(curves.get(curves.size() - 1).end(), kept);
    }

    private static List<Curve> withFewerCorners(List<Curve> curves, double distance) {
        List<Curve> fewer = new ArrayList<>();
        List<Point> corners = new ArrayList<>();
        for (Curve curve : curves) {
            if (curve instanceof Line line) {
                if (corners.isEmpty()) {
                    corners.add(line.start());
                }
                corners.add(line.end());
            } else {
                addLines(corners, distance, fewer);
                fewer.add(curve);
            }
        }
        addLines(corners, distance, fewer);
        return fewer;
    }

    /** Adds the segments between the corners that are needed, and forgets the corners. */
    private static void addLines(List<Point> corners, double distance, List<Curve> lines) {
        if (!corners.isEmpty()) {
            Point pen = corners.get(0);
            for (int i : needed(corners, distance)) {
                lines.add(new Line(pen, corners.get(i)));
                pen = corners.get(i);
            }
        }
        corners.clear();
    }

    /**
     * Returns the corners after the first that are needed: the one furthest from a segment, as long as that is too far
     * (Douglas, Peucker).
     */
    private static List<Integer> needed(List<Point> corners, double distance) {
        List<Integer> open = new ArrayList<>(List.of(corners.size() - 1));
        List<Integer> needed = new ArrayList<>();
        int from = 0;
        while (!open.isEmpty()) {
            int to = open.get(open.size() - 1);
            Line chord = new Line(corners.get(from), corners.get(to));
            int furthest = from;
            double most = distance;
            for (int i = from + 1; i < to; i++) {
                double off = chord.nearest(corners.get(i)).distance();
                if (off > most) {
                    most = off;
                    furthest = i;
                }
            }
            if (furthest == from) {
                needed.add(to);
                from = to;
                open.remove(open.size() - 1);
            } else {
                open.add(furthest);
            }
        }
        return needed;
    }
}
