package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class SimplifyTest {
    private final SplittableRandom random = new SplittableRandom(11);

    /**
     * Segments and cubics, some a few thousandths of a millimetre long, some in line with the one before but for as
     * much.
     */
    private Path littered() {
        List<Curve> curves = new ArrayList<>();
        Point pen = Point.of(random.nextDouble(100), random.nextDouble(100));
        Vector way = Vector.polar(20, random.nextDouble(6));
        for (int i = 0; i < 30; i++) {
            int kind = random.nextInt(4);
            if (kind == 0) {
                way = Vector.polar(random.nextDouble(5, 40), random.nextDouble(6));
            }
            double size = kind == 1 ? 1e-4 : 1;
            Point end = pen.plus(way.times(size))
                    .plus(Vector.of(random.nextDouble(-0.004, 0.004), random.nextDouble(-0.004, 0.004)));
            Vector handle = way.times(size / 3);
            curves.add(
                    kind == 3
                            ? Cubic.hermite(pen, handle.rotated(random.nextDouble(-1, 1)), end, handle)
                            : new Line(pen, end));
            pen = end;
        }
        return Path.of(curves);
    }

    @Test
    void a_cleaned_or_simplified_path_keeps_within_the_distance_both_ways() {
        for (int i = 0; i < 150; i++) {
            Path path = littered();
            double distance = Math.pow(10, -random.nextDouble(0, 3));
            for (Path fewer : List.of(Simplify.clean(path, distance), Simplify.simplify(path, distance))) {
                assertThat(fewer.curves())
                        .hasSizeLessThanOrEqualTo(path.curves().size());
                assertThat(fewer.start()).isEqualTo(path.start());
                assertThat(fewer.end()).isEqualTo(path.end());
                assertThat(Distances.hausdorff(path, fewer, 1e-4 * distance).distance())
                        .isLessThanOrEqualTo(1.05 * distance);
            }
        }
    }

    @Test
    void dust_goes_and_segments_in_line_become_one() {
        Path path = Path.from(Point.of(0, 0))
                .lineTo(Point.of(10, 0))
                .lineTo(Point.of(10.001, 0.001))
                .lineTo(Point.of(20, 0.001))
                .curveTo(Point.of(30, 0), Point.of(40, 10), Point.of(40, 20))
                .curveTo(Point.of(40, 20.001), Point.of(40.001, 20.001), Point.of(40.002, 20.002))
                .lineTo(Point.of(40, 60))
                .build();
        Path clean = Simplify.clean(path, 0.02);
        assertThat(clean.curves()).hasSize(3);
        assertThat(clean.curves().get(0)).isEqualTo(new Line(Point.of(0, 0), Point.of(20, 0.001)));
        assertThat(clean.curves().get(1)).isEqualTo(path.curves().get(3));
        assertThat(clean.curves().get(2)).isEqualTo(new Line(Point.of(40, 20), Point.of(40, 60)));
    }

    @Test
    void ends_that_are_all_but_one_become_one() {
        Path open = Path.polyline(Point.of(0, 0), Point.of(50, 0), Point.of(50, 40), Point.of(0.003, 0.002));
        assertThat(Simplify.clean(open, 0.01).isClosed()).isTrue();
        assertThat(Simplify.clean(open, 0.001)).isEqualTo(open);
        Path small = Path.polyline(Point.of(0, 0), Point.of(0.003, 0));
        assertThat(Simplify.clean(small, 0.01).end()).isEqualTo(small.end());
    }

    @Test
    void a_line_there_and_back_stays() {
        Path tip = Path.polyline(Point.of(0, 0), Point.of(50, 0), Point.of(20, 0));
        assertThat(Simplify.clean(tip, 0.01)).isEqualTo(tip);
    }
}
