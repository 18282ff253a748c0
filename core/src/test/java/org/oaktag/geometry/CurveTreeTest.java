package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Questions asked of the tree of boxes, against those asked of every curve in turn. */
class CurveTreeTest {
    private final SplittableRandom random = new SplittableRandom(20_261);

    private Point near(Point point, double step) {
        return point.plus(Vector.of(random.nextDouble(-step, step), random.nextDouble(-step, step)));
    }

    /** A closed scribble of lines, cubics and points, which crosses itself again and again. */
    private Path scribble(int count, double step) {
        List<Curve> curves = new ArrayList<>();
        Point pen = near(Point.of(100, -40), 50);
        Point start = pen;
        for (int i = 0; i < count; i++) {
            Point end = i == count - 1 ? start : i % 11 == 7 ? pen : near(pen, step);
            curves.add(
                    i % 3 == 0
                            ? new Line(pen, end)
                            : new Cubic(pen, i % 5 == 0 ? pen : near(pen, step), near(end, step), end));
            pen = end;
        }
        return Path.of(curves);
    }

    @Test
    void nearest_place_is_the_one_that_looking_at_every_curve_finds() {
        for (int count : new int[] {1, 2, 3, 7, 40, 200}) {
            Path path = scribble(count, 30);
            for (int i = 0; i < 100; i++) {
                Point point = i % 10 == 0
                        ? path.curves().get(random.nextInt(count)).end()
                        : near(path.start(), i % 2 == 0 ? 300 : 20);
                int best = 0;
                for (int k = 1; k < count; k++) {
                    double distance = path.curves().get(k).nearest(point).distance();
                    if (distance < path.curves().get(best).nearest(point).distance()) {
                        best = k;
                    }
                }
                Nearest expected = path.curves().get(best).nearest(point);
                PathNearest found = path.nearest(point);
                assertThat(found.point()).isEqualTo(expected.point());
                assertThat(found.distance()).isEqualTo(expected.distance());
                assertThat(found.distanceAlong()).isEqualTo(path.distanceAt(new Path.Location(best, expected.t())));
            }
        }
    }

    /**
     * The turns of the ray to a point that runs along 200 segments of each curve; sure beyond their sagitta, some 3e-3
     * mm.
     */
    @Test
    void containment_agrees_with_the_angle_summed_along_fine_segments() {
        int inside = 0;
        for (int count : new int[] {2, 3, 9, 50, 200}) {
            Path path = scribble(count, 60);
            for (int i = 0; i < 200; i++) {
                Point point = near(path.start(), i % 2 == 0 ? 40 : 250);
                if (path.nearest(point).distance() > 0.01) {
                    long turns = Math.round(angleAround(path, point) / (2 * Math.PI));
                    assertThat(Outline.of(path).windingNumber(point)).isEqualTo((int) turns);
                    assertThat(Outline.of(path).contains(point)).isEqualTo(turns != 0);
                    inside += turns != 0 ? 1 : 0;
                }
            }
        }
        assertThat(inside).isGreaterThan(100);
    }

    private static double angleAround(Path path, Point point) {
        double sum = 0;
        Vector ray = path.start().minus(point);
        for (Curve curve : path.curves()) {
            for (int i = 1; i <= 200; i++) {
                Vector next = curve.pointAt(i / 200.0).minus(point);
                sum += ray.angleTo(next);
                ray = next;
            }
        }
        return sum;
    }

    @Test
    void pairs_are_those_whose_boxes_come_near() {
        for (int count : new int[] {1, 2, 5, 64, 150}) {
            Path one = scribble(count, 40);
            Path other = scribble(count / 2 + 1, 70);
            for (double near : new double[] {0, 1e-7, 3}) {
                List<CurvePair> between = new ArrayList<>();
                List<CurvePair> within = new ArrayList<>();
                for (int i = 0; i < one.curves().size(); i++) {
                    Bounds box = CurveContacts.hull(one.curves().get(i)).expanded(near);
                    for (int j = 0; j < other.curves().size(); j++) {
                        if (box.overlaps(CurveContacts.hull(other.curves().get(j)))) {
                            between.add(new CurvePair(i, j));
                        }
                    }
                    for (int j = i + 1; j < one.curves().size(); j++) {
                        if (box.overlaps(CurveContacts.hull(one.curves().get(j)))) {
                            within.add(new CurvePair(i, j));
                        }
                    }
                }
                assertThat(one.tree().pairsWith(other.tree(), near)).isEqualTo(between);
                assertThat(one.tree().pairsWithin(near)).isEqualTo(within);
            }
        }
    }

    /**
     * Far out a double tells no billionths apart: the corners and middles of a square a million kilometres off are on
     * its line.
     */
    @Test
    void what_counts_as_on_the_line_grows_with_the_coordinates() {
        for (double far : new double[] {1e3, 1e9, 9e11}) {
            Point corner = Point.of(far, far / 3);
            Path path = Path.from(corner)
                    .curveTo(
                            corner.plus(Vector.of(10, -9)),
                            corner.plus(Vector.of(20, 9)),
                            corner.plus(Vector.of(30, 1)))
                    .lineTo(corner.plus(Vector.of(31, 37)))
                    .lineTo(corner.plus(Vector.of(-3, 31)))
                    .close()
                    .build();
            for (Curve curve : path.curves()) {
                for (double t = 0; t <= 1; t += 0.0625) {
                    assertThat(Outline.of(path).contains(curve.pointAt(t)))
                            .as("%s at %s", curve, t)
                            .isTrue();
                }
            }
            double off = Math.max(1e-8, 200 * Math.ulp(far));
            assertThat(Outline.of(path).contains(corner.plus(Vector.of(15, -off - 5))))
                    .isFalse();
            assertThat(Outline.of(path).contains(corner.plus(Vector.of(-off, -off))))
                    .isFalse();
        }
    }
}
