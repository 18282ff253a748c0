package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Crossings of curves drawn by lot, against segments that are cut with each other one by one. */
class CrossingsByLotTest {
    private static final int SEGMENTS = 240;

    private final SplittableRandom random = new SplittableRandom(2026);

    private Cubic cubic(double size) {
        double[] c = random.doubles(8, 0, size).toArray();
        return CubicTest.cubic(c);
    }

    private static List<Point> flattened(Curve curve) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= SEGMENTS; i++) {
            points.add(curve.pointAt((double) i / SEGMENTS));
        }
        return points;
    }

    /**
     * Where the segments cross, or nothing if that cannot be told for sure: at a small angle or near an end of the
     * curves.
     */
    private static List<Point> crossings(List<Point> a, List<Point> b, boolean[] unsure) {
        List<Point> found = new ArrayList<>();
        for (int i = 1; i < a.size(); i++) {
            Vector d = a.get(i).minus(a.get(i - 1));
            for (int j = 1; j < b.size(); j++) {
                Vector e = b.get(j).minus(b.get(j - 1));
                Vector gap = b.get(j - 1).minus(a.get(i - 1));
                double area = d.cross(e);
                double t = gap.cross(e) / area;
                double u = gap.cross(d) / area;
                boolean near = t > -0.5 && t < 1.5 && u > -0.5 && u < 1.5;
                unsure[0] |= near && Math.abs(area) < 0.1 * d.length() * e.length();
                unsure[0] |= near && (i < 3 || j < 3 || i > a.size() - 3 || j > b.size() - 3);
                if (t >= 0 && t < 1 && u >= 0 && u < 1) {
                    found.add(a.get(i - 1).plus(d.times(t)));
                }
            }
        }
        return found;
    }

    private static int assertAgree(Curve a, Curve b, double size) {
        boolean[] unsure = new boolean[1];
        List<Point> expected = crossings(flattened(a), flattened(b), unsure);
        List<Crossing> found = Crossings.between(a, b);
        for (Crossing crossing : found) {
            assertThat(a.nearest(crossing.point()).distance()).isLessThan(1e-9);
            assertThat(b.nearest(crossing.point()).distance()).isLessThan(2e-9);
            assertThat(Path.of(a).pointAt(crossing.first()).distanceTo(crossing.point()))
                    .isLessThan(2e-6);
            assertThat(Path.of(b).pointAt(crossing.second()).distanceTo(crossing.point()))
                    .isLessThan(2e-6);
        }
        assertThat(found).isSortedAccordingTo((x, y) -> Double.compare(x.first(), y.first()));
        List<Crossing> swapped = Crossings.between(b, a);
        assertThat(swapped).hasSameSizeAs(found);
        if (unsure[0]) {
            return 0;
        }
        assertThat(found).as("%s and %s", a, b).hasSameSizeAs(expected);
        for (Point point : expected) {
            assertThat(found).anyMatch(c -> c.point().distanceTo(point) < 2e-3 * size);
        }
        assertThat(found).allMatch(c -> c.kind() == Crossing.Kind.CROSS);
        return expected.size();
    }

    @Test
    void cubics_cross_where_their_segments_do() {
        int crossings = 0;
        for (int i = 0; i < 60; i++) {
            double size = new double[] {300, 300, 0.01, 1e5}[i % 4];
            crossings += assertAgree(cubic(size), cubic(size), size);
        }
        assertThat(crossings).isGreaterThan(20);
    }

    @Test
    void segments_and_cubics_cross_where_their_segments_do() {
        int crossings = 0;
        for (int i = 0; i < 60; i++) {
            double[] c = random.doubles(4, -100, 400).toArray();
            Line line = new Line(Point.of(c[0], c[1]), Point.of(c[2], c[3]));
            crossings += i % 2 == 0 ? assertAgree(line, cubic(300), 300) : assertAgree(cubic(300), line, 300);
        }
        assertThat(crossings).isGreaterThan(10);
    }

    @Test
    void segments_cross_where_their_equations_say() {
        int crossings = 0;
        for (int i = 0; i < 60; i++) {
            double[] c = random.doubles(8, 0, 300).toArray();
            Line a = new Line(Point.of(c[0], c[1]), Point.of(c[2], c[3]));
            Line b = new Line(Point.of(c[4], c[5]), Point.of(c[6], c[7]));
            crossings += assertAgree(a, b, 300);
        }
        assertThat(crossings).isGreaterThan(5);
    }

    /** An affine map leaves the parameters of the double point as they are. */
    @Test
    void loop_crosses_itself_at_its_double_point() {
        Cubic loop = CubicTest.cubic(0, 0, 20, 20, -10, 20, 10, 0);
        for (int i = 0; i < 20; i++) {
            double[] c = random.doubles(6, -5, 5).toArray();
            Transform map = new Transform(c[0], c[1], c[2], c[3], 100 * c[4], 100 * c[5]);
            Cubic image = loop.transformed(map);
            List<Crossing> found = Outline.of(Path.from(image.start())
                            .curveTo(image.control1(), image.control2(), image.end())
                            .lineTo(image.start())
                            .build())
                    .selfCrossings();
            double half = doublePoint();
            Point point = image.pointAt(0.5 - half);
            assertThat(point.distanceTo(image.pointAt(0.5 + half))).isLessThan(1e-9);
            assertThat(found).hasSize(1);
            assertThat(found.get(0).point().distanceTo(point)).isLessThan(1e-9);
            assertThat(found.get(0).kind()).isEqualTo(Crossing.Kind.CROSS);
            assertThat(found.get(0).first()).isCloseTo(image.lengthBetween(0, 0.5 - half, 1e-9), within(1e-5));
            assertThat(found.get(0).second()).isCloseTo(image.lengthBetween(0, 0.5 + half, 1e-9), within(1e-5));
        }
    }

    /**
     * From the control points x = 60 t - 150 t² + 100 t³, with v = t - 1/2 that is 5 + 100 v³ - 15 v, and y is even in
     * v: the loop meets itself where the odd part vanishes, at v² = 15 / 100.
     */
    private static double doublePoint() {
        return Math.sqrt(0.15);
    }

    /** Half the loop, cut at its middle, still meets the other half there and at the double point. */
    @Test
    void neighbours_that_cross_again_are_told() {
        Cubic loop = CubicTest.cubic(0, 0, 20, 20, -10, 20, 10, 0);
        Path halves = Path.of(loop.sub(0, 0.5), loop.sub(0.5, 1));
        List<Crossing> found = Crossings.ofItself(halves);
        assertThat(found).hasSize(1);
        assertThat(found.get(0).point().distanceTo(loop.pointAt(0.5 - doublePoint())))
                .isLessThan(1e-9);
        assertThat(found.get(0).kind()).isEqualTo(Crossing.Kind.CROSS);
    }

    /** Not a loop: the double point lies beyond the ends, or is a cusp. */
    @Test
    void arch_and_cusp_do_not_cross_themselves() {
        Cubic loop = CubicTest.cubic(0, 0, 20, 20, -10, 20, 10, 0);
        assertThat(Crossings.ofItself(Path.of(loop.sub(0.2, 1)))).isEmpty();
        assertThat(Crossings.ofItself(Path.of(loop.sub(0, 0.8)))).isEmpty();
        assertThat(Crossings.ofItself(Path.of(CubicTest.cubic(0, 0, 10, 10, 0, 10, 10, 0))))
                .isEmpty();
        assertThat(Crossings.ofItself(Path.of(CubicTest.cubic(0, 0, 0, 10, 10, 10, 10, 0))))
                .isEmpty();
        assertThat(Crossings.ofItself(Path.of(CubicTest.cubic(0, 0, 1, 0, 2, 0, 3, 0))))
                .isEmpty();
    }

    /**
     * Both curves bend so much that Newton's method, begun in the middle of pieces which meet once at most, leaves
     * them.
     */
    @Test
    void strongly_bent_cubics_cross_where_their_segments_do() {
        int crossings = 0;
        for (double[] c : new double[][] {
            {8, -5, -6, 1, -10, -12, 4, 10, 2, 7, 6, 0, -4, 6, -4, -4},
            {7, -4, -10, 1, -3, -12, -2, -3, -8, -4, 6, -2, 2, -2, 7, -8},
            {-7, -6, 2, 2, -4, 11, -2, 2, 11, -5, 10, 0, 7, 10, -4, 3},
            {12, -3, 6, -4, 12, 8, 4, 6, 3, 8, 2, -2, 1, 9, 11, 7},
            {-1, 0, 3, 6, 4, -12, 6, -6, -12, -9, 11, -5, -12, -2, 9, 11},
            {0, 6, -12, -7, 5, 5, 1, -2, -1, 0, -12, -5, 1, 8, 8, 10},
        }) {
            Cubic a = CubicTest.cubic(Arrays.copyOf(c, 8));
            Cubic b = CubicTest.cubic(Arrays.copyOfRange(c, 8, 16));
            crossings += assertAgree(a, b, 20);
        }
        assertThat(crossings).isGreaterThan(2);
    }
}
