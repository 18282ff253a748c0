package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How many curves are looked at as outlines get more and more of them: counted. */
class CurveTreeWorkTest {
    private static final int[] COUNTS = {64, 256, 1024, 4096};

    /** A ring with waves, of so many cubics. */
    private static List<Curve> ring(int count) {
        List<Curve> curves = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            Point start = onRing(i, count);
            Point end = i == count - 1 ? onRing(0, count) : onRing(i + 1, count);
            Vector leaving = onRing(i + 1, count).minus(onRing(i - 1, count)).times(1.0 / 6);
            Vector arriving = onRing(i + 2, count).minus(onRing(i, count)).times(1.0 / 6);
            curves.add(Cubic.hermite(start, leaving, end, arriving));
        }
        return curves;
    }

    private static Point onRing(int i, int count) {
        double angle = 2 * Math.PI * i / count;
        return Point.of(400, 300).plus(Vector.polar(300 + 40 * Math.sin(5 * angle), angle));
    }

    @Test
    void a_point_is_placed_by_looking_at_a_few_curves() {
        for (int count : COUNTS) {
            CountedCurves counted = new CountedCurves(ring(count));
            Path path = counted.path();
            Outline outline = Outline.of(path);
            Point inside = Point.of(410.1, 310.2);
            outline.contains(inside);
            int most = 0;
            for (int i = 0; i < 200; i++) {
                Point point = Point.of(400, 300).plus(Vector.polar(4 * i % 401, 0.7 * i));
                most = Math.max(most, counted.takenBy(() -> outline.contains(point)));
                most = Math.max(most, counted.takenBy(() -> outline.windingNumber(point)));
            }
            assertThat(most).as("of %s", count).isLessThanOrEqualTo(4);
        }
    }

    @Test
    void nearest_place_is_found_by_looking_at_a_few_curves() {
        for (int count : COUNTS) {
            CountedCurves counted = new CountedCurves(ring(count));
            Path path = counted.path();
            path.nearest(Point.ORIGIN);
            int all = 0;
            for (int i = 0; i < 200; i++) {
                Point point = Point.of(400, 300).plus(Vector.polar(100 + 2 * i, 0.7 * i));
                all += counted.takenBy(() -> path.nearest(point));
            }
            assertThat(all / 200).as("of %s", count).isLessThanOrEqualTo((int) (2 * Math.log(count) / Math.log(2)));
        }
    }

    /** Each curve is a neighbour of two, and is looked at a few times on its own. */
    @Test
    void crossings_look_at_a_few_pairs_for_each_curve() {
        for (int count : COUNTS) {
            CountedCurves counted = new CountedCurves(ring(count));
            Path path = counted.path();
            assertThat(path.tree().pairsWithin(1e-7)).hasSize(count);
            int taken =
                    counted.takenBy(() -> assertThat(Crossings.ofItself(path)).isEmpty());
            assertThat(taken).as("of %s", count).isLessThanOrEqualTo(8 * count);

            Path moved = Path.of(ring(count)).transformed(Transform.translation(30, 7));
            path.length();
            List<Crossing> met = new ArrayList<>();
            int takenByBoth = counted.takenBy(() -> met.addAll(Crossings.between(path, moved)));
            assertThat(met).hasSize(4);
            assertThat(takenByBoth).as("of %s", count).isLessThanOrEqualTo(120);
        }
    }

    /**
     * Each parallel meets its two neighbours, and of the source each curve is looked at a dozen times, however many.
     */
    @Test
    void offset_looks_at_a_few_curves_and_pairs_for_each_edge() {
        CornerStyle mitre = CornerStyle.mitre(4);
        for (int count : COUNTS) {
            CountedCurves counted = new CountedCurves(ring(count));
            Outline outline = Outline.of(counted.path());
            for (double d : new double[] {10, -10}) {
                int taken = counted.takenBy(() -> OutlineOffset.outward(outline, d, mitre, 0.01));
                assertThat(taken).as("of %s, by %s mm", count, d).isLessThanOrEqualTo(16 * count);
            }
            List<Path> edges = ring(count).stream().map(Path::of).toList();
            double[] distances = new double[count];
            Arrays.fill(distances, 10);
            List<RawCurve> run = new RawOffset(edges, distances, OffsetCorners.all(mitre, count), 0.01).closedRun();
            CurveTree parallels = CurveTree.of(run.stream().map(RawCurve::curve).toList());
            assertThat(parallels.pairsWithin(1e-7)).hasSizeLessThanOrEqualTo(2 * run.size());
            assertThat(run).hasSizeLessThanOrEqualTo(2 * count);
        }
    }
}
