package org.oaktag.testkit.curves;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;

/**
 * Pairs of closed outlines to lay over each other, drawn by a random hand: stars of curves, scribbles that cross
 * themselves, boxes.
 */
public final class Scribbles {
    private Scribbles() {}

    /**
     * Two outlines that may have something in common.
     *
     * @param first the one
     * @param second the other
     */
    public record Pair(Outline first, Outline second) {}

    /**
     * Stars and scribbles anywhere, shifted copies, copies with one edge redrawn, and boxes on one grid; they are not
     * shrunk.
     */
    public static Arbitrary<Pair> pairs() {
        return Arbitraries.randomValue(Scribbles::pair);
    }

    private static Pair pair(Random random) {
        Outline star = star(random, Point.of(200, 200));
        return switch (random.nextInt(5)) {
            case 0 -> new Pair(star, star(random, near(random, Point.of(200, 200), 200)));
            case 1 ->
                new Pair(
                        star,
                        star.transformed(Transform.translation(10.0 * random.nextInt(3), 10.0 * random.nextInt(3))));
            case 2 -> new Pair(star, redrawn(random, star));
            case 3 -> new Pair(scribble(random, Point.of(200, 200)), scribble(random, Point.of(260, 180)));
            default -> new Pair(box(random), box(random));
        };
    }

    private static Point near(Random random, Point point, double reach) {
        return point.plus(Vector.of(reach * (2 * random.nextDouble() - 1), reach * (2 * random.nextDouble() - 1)));
    }

    private static Outline star(Random random, Point center) {
        int count = 3 + random.nextInt(9);
        Point[] corners = new Point[count];
        for (int i = 0; i < count; i++) {
            double angle = 2 * Math.PI * (i + 0.6 * random.nextDouble()) / count;
            corners[i] = center.plus(Vector.polar(60 + 90 * random.nextDouble(), angle));
        }
        List<Curve> edges = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Point start = corners[i];
            Point end = corners[(i + 1) % count];
            Vector third = end.minus(start).times(1.0 / 3);
            edges.add(
                    random.nextInt(3) == 0
                            ? Line.of(start, end)
                            : Cubic.hermite(start, bent(random, third), end, bent(random, third)));
        }
        return Outline.of(Path.of(edges));
    }

    private static Vector bent(Random random, Vector handle) {
        return handle.rotated(2 * random.nextDouble() - 1);
    }

    private static Outline scribble(Random random, Point center) {
        int count = 2 + random.nextInt(5);
        Point start = near(random, center, 150);
        Point pen = start;
        List<Curve> edges = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Point end = i == count - 1 ? start : near(random, center, 150);
            edges.add(
                    i % 3 == 0
                            ? Line.of(pen, end)
                            : Cubic.of(pen, near(random, center, 150), near(random, center, 150), end));
            pen = end;
        }
        return Outline.of(Path.of(edges));
    }

    private static Outline redrawn(Random random, Outline outline) {
        List<Curve> edges = new ArrayList<>(outline.path().curves());
        int index = random.nextInt(edges.size());
        Curve edge = edges.get(index);
        Point over = near(random, edge.pointAt(0.5), 40);
        edges.set(index, Line.of(edge.start(), over));
        edges.add(index + 1, Line.of(over, edge.end()));
        Outline changed = Outline.of(Path.of(edges));
        return random.nextBoolean() ? changed : changed.reversed();
    }

    private static Outline box(Random random) {
        double x = 50.0 * random.nextInt(5);
        double y = 50.0 * random.nextInt(5);
        double right = x + 50 * (1 + random.nextInt(4));
        double bottom = y + 50 * (1 + random.nextInt(4));
        return Outline.of(Path.polyline(
                Point.of(x, y), Point.of(right, y), Point.of(right, bottom), Point.of(x, bottom), Point.of(x, y)));
    }
}
