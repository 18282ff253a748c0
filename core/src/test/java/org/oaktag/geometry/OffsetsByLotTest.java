package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Parallels of drawings by lot, held against distances from the ends of many short chords, which know nothing of how a
 * parallel is made. A hundred and twenty of each kind; the laws try others, and more.
 */
class OffsetsByLotTest {
    private static final double TOLERANCE = 0.01;

    /** Trims tell places apart that lie so far from where two parallels cross, mm. */
    private static final double ROOM = 3 * TOLERANCE;

    private final SplittableRandom random = new SplittableRandom(20);

    private static List<Point> chords(Path path) {
        List<Point> chords = new ArrayList<>(List.of(path.start()));
        for (Curve curve : path.curves()) {
            int count = curve instanceof Line ? 1 : 250;
            for (int i = 1; i <= count; i++) {
                chords.add(curve.pointAt((double) i / count));
            }
        }
        return chords;
    }

    private static double distance(List<Point> chords, Point point) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < chords.size(); i++) {
            Vector way = chords.get(i).minus(chords.get(i - 1));
            Vector arm = point.minus(chords.get(i - 1));
            double share = Math.min(Math.max(arm.dot(way) / way.dot(way), 0), 1);
            least = Math.min(least, arm.minus(way.times(share)).length());
        }
        return least;
    }

    /** Two to six curves that turn anywhere, so that the path comes back to its ends and sides. */
    private Path wandering() {
        List<Curve> curves = new ArrayList<>();
        Point at = Point.ORIGIN;
        double way = 0;
        for (int i = random.nextInt(2, 7); i > 0; i--) {
            double next = way + random.nextDouble(-3, 3);
            double length = random.nextDouble(10, 130);
            Point end = at.plus(Vector.polar(length, 0.5 * (way + next)));
            Point control1 = at.plus(Vector.polar(0.4 * length, way));
            boolean straight = random.nextInt(2) == 0;
            curves.add(
                    straight
                            ? new Line(at, end)
                            : new Cubic(at, control1, end.plus(Vector.polar(-0.4 * length, next)), end));
            at = end;
            way = random.nextInt(3) == 0 ? next : next + random.nextDouble(-2.5, 2.5);
        }
        return Path.of(curves);
    }

    private Outline star() {
        int count = random.nextInt(4, 10);
        Point[] at = new Point[count];
        for (int i = 0; i < count; i++) {
            at[i] = Point.ORIGIN.plus(Vector.polar(random.nextDouble(40, 200), 2 * Math.PI * i / count));
        }
        List<Curve> curves = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Point to = at[(i + 1) % count];
            Vector third = to.minus(at[i]).times(1.0 / 3);
            curves.add(
                    random.nextInt(3) == 0 ? new Line(at[i], to) : Cubic.hermite(at[i], bent(third), to, bent(third)));
        }
        Outline star = Outline.of(Path.of(curves));
        return star.meetsItself() ? star() : star;
    }

    private Vector bent(Vector handle) {
        return handle.rotated(random.nextDouble(-0.6, 0.6));
    }

    private static Point parallel(Curve curve, double t, double left, double further) {
        double off = left + Math.copySign(further, left);
        return curve.pointAt(t).plus(curve.directionAt(t).leftNormal().times(off));
    }

    private static void assertKeepsItsDistance(String which, Path result, List<Point> drawn, double distance) {
        for (Curve curve : result.curves()) {
            for (int i = 0; i <= 8; i++) {
                assertThat(distance(drawn, curve.pointAt(i / 8.0)))
                        .as(which)
                        .isBetween(distance - 1.35 * TOLERANCE, distance + 1.05 * TOLERANCE);
            }
        }
    }

    @Test
    void runs_beside_a_path_keep_their_distance_and_are_told_where_they_are_free() {
        for (int i = 0; i < 120; i++) {
            Path path = wandering();
            double left = random.nextDouble(-30, 30);
            OffsetRuns runs = OffsetRuns.of(path, left, CornerStyle.round(), TOLERANCE);
            List<Point> drawn = chords(path);
            String which = i + ", " + left + " beside " + path;
            runs.runs().forEach(run -> assertKeepsItsDistance(which, run, drawn, Math.abs(left)));
            double before = 0;
            for (Curve curve : path.curves()) {
                for (int k = 1; k < 20; k++) {
                    double along = before + curve.lengthBetween(0, k / 20.0, 1e-6);
                    assertIsTold(which, runs, drawn, curve, k / 20.0, along, left);
                }
                before += curve.length();
            }
        }
    }

    /** What is free, with some room beyond and on both sides, has a run beside it; what comes too near is left out. */
    private static void assertIsTold(
            String which, OffsetRuns runs, List<Point> drawn, Curve curve, double t, double along, double left) {
        boolean free = true;
        double step = Math.min(1 / curve.derivativeAt(t).length(), 0.02);
        for (int k = -2; k <= 2; k++) {
            double at = Math.min(Math.max(t + k * step / 2, 0), 1);
            free &= distance(drawn, parallel(curve, at, left, ROOM)) > Math.abs(left) + 0.8 * ROOM;
        }
        boolean leftOut = runs.leftOut().stream().anyMatch(each -> each.from() < along && along < each.to());
        Point here = parallel(curve, t, left, 0);
        if (free) {
            assertThat(runs.runs()).as(which).anyMatch(run -> run.nearest(here).distance() < 2 * TOLERANCE);
            assertThat(leftOut).as(which + " at " + along).isFalse();
        } else if (distance(drawn, here) < Math.abs(left) - ROOM) {
            assertThat(leftOut).as(which + " at " + along).isTrue();
        }
    }

    /** A grid of points is in the loops if it is in the drawing, or near it, as the distance asks. */
    @Test
    void loops_of_an_outline_hold_what_lies_within_the_distance_and_nothing_else() {
        for (int i = 0; i < 120; i++) {
            Outline star = star();
            double outward = random.nextDouble(-25, 25);
            List<OutlineOffset> loops = OffsetLoops.outward(star, outward, CornerStyle.round(), TOLERANCE)
                    .loops();
            List<Point> drawn = chords(star.path());
            String which = i + ", " + outward + " round " + star.path();
            loops.forEach(loop -> assertKeepsItsDistance(which, loop.outline().path(), drawn, Math.abs(outward)));
            for (int k = 0; k < 150; k++) {
                Point point = Point.of(random.nextDouble(-230, 230), random.nextDouble(-230, 230));
                double away = distance(drawn, point) * (star.contains(point) ? -1 : 1);
                if (Math.abs(away - outward) > ROOM) {
                    int winding = loops.stream()
                            .mapToInt(loop -> loop.outline().windingNumber(point))
                            .sum();
                    assertThat(winding != 0).as("%s, %s", which, point).isEqualTo(away < outward);
                }
            }
        }
    }
}
