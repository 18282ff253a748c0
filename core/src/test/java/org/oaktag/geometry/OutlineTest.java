package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class OutlineTest {
    /** The top half of a disc of radius 3 about (10, 20), by quarter arcs that err by 2.7e-4 of the radius. */
    private static final Outline HALF_DISC = disc(10, 20, 3, 2);

    private static Outline disc(double x, double y, double radius, int quarters) {
        double k = 4 * (Math.sqrt(2) - 1) / 3;
        PathBuilder arc = Path.from(Point.of(x - radius, y));
        Cubic quarter = CubicTest.cubic(-1, 0, -1, -k, -k, -1, 0, -1);
        for (int i = 0; i < quarters; i++) {
            Cubic turned = quarter.transformed(quarterTurns(i))
                    .transformed(Transform.scale(radius))
                    .transformed(Transform.translation(x, y));
            arc.curveTo(turned.control1(), turned.control2(), turned.end());
        }
        return Outline.of(arc.close().build());
    }

    private static Transform quarterTurns(int i) {
        double[][] turns = {{1, 0, 0, 1}, {0, 1, -1, 0}, {-1, 0, 0, -1}, {0, -1, 1, 0}};
        double[] t = turns[i % 4];
        return new Transform(t[0], t[1], t[2], t[3], 0, 0);
    }

    private static Outline polygon(double... c) {
        PathBuilder path = Path.from(Point.of(c[0], c[1]));
        for (int i = 2; i < c.length; i += 2) {
            path.lineTo(Point.of(c[i], c[i + 1]));
        }
        return Outline.of(path.close().build());
    }

    /** A half disc: area pi r²/2, centre of gravity 4 r / (3 pi) from its straight side. */
    @Test
    void half_disc_has_its_area_and_centre_of_gravity() {
        assertThat(HALF_DISC.isClockwise()).isTrue();
        assertThat(HALF_DISC.area()).isCloseTo(9 * 0.7856180831641267 * 2, within(1e-12));
        assertThat(HALF_DISC.reversed().signedArea()).isEqualTo(-HALF_DISC.area());
        assertThat(HALF_DISC.reversed().area()).isEqualTo(HALF_DISC.area());
        assertThat(HALF_DISC.reversed().isClockwise()).isFalse();
        assertThat(HALF_DISC.centroid().x()).isCloseTo(10, within(1e-13));
        assertThat(HALF_DISC.centroid().y()).isCloseTo(20 - 4 * 3 / (3 * Math.PI), within(1e-3));
        Outline aside = HALF_DISC.transformed(Transform.rotation(Math.PI / 2, Point.of(10, 20)));
        assertThat(aside.centroid().x()).isCloseTo(10 + 4 * 3 / (3 * Math.PI), within(1e-3));
        assertThat(aside.centroid().y()).isCloseTo(20, within(1e-13));
    }

    /** A corner of the triangle at a time is 1/3 of the centroid. */
    @Test
    void triangle_balances_at_the_mean_of_its_corners() {
        Outline triangle = polygon(100, 200, 106, 200, 100, 209);
        assertThat(triangle.centroid().distanceTo(Point.of(102, 203))).isLessThan(1e-13);
        assertThat(triangle.signedArea()).isEqualTo(27);
        assertThat(triangle.perimeter()).isCloseTo(15 + Math.sqrt(117), within(1e-12));
        assertThat(triangle.bounds()).isEqualTo(new Bounds(100, 200, 106, 209));
    }

    @Test
    void outline_far_away_keeps_its_digits() {
        Outline far = polygon(1e9, 1e9, 1e9 + 2, 1e9, 1e9 + 2, 1e9 + 3);
        assertThat(far.signedArea()).isEqualTo(3);
    }

    @Test
    void outline_without_area_has_no_centre_of_gravity() {
        Outline flat = polygon(0, 0, 1, 0, 0, 0);
        assertThat(flat.isClockwise()).isFalse();
        assertThatThrownBy(flat::centroid)
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("without area");
        assertThatThrownBy(() -> Outline.of(Path.polyline(Point.of(0, 0), Point.of(1, 1))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("must end where it starts");
    }

    @Test
    void disc_contains_what_is_nearer_than_its_rim() {
        Outline disc = disc(10, 20, 3, 4);
        for (int i = 0; i < 64; i++) {
            Vector ray = Vector.polar(1, i * Math.PI / 32);
            assertThat(disc.windingNumber(Point.of(10, 20).plus(ray.times(2.99))))
                    .as("ray %s", i)
                    .isEqualTo(1);
            assertThat(disc.windingNumber(Point.of(10, 20).plus(ray.times(3.01))))
                    .as("ray %s", i)
                    .isZero();
            assertThat(disc.reversed().windingNumber(Point.of(10, 20).plus(ray.times(2.99))))
                    .isEqualTo(-1);
            assertThat(disc.contains(disc.path().pointAt(i * disc.perimeter() / 64)))
                    .isTrue();
        }
    }

    @Test
    void line_belongs_to_the_outline() {
        Outline square = polygon(0, 0, 10, 0, 10, 10, 0, 10);
        for (Point on : new Point[] {
            Point.of(0, 0), Point.of(10, 10), Point.of(5, 0), Point.of(10, 5), Point.of(5, 10), Point.of(0, 5)
        }) {
            assertThat(square.contains(on)).isTrue();
        }
        double out = 1e-8;
        assertThat(square.contains(Point.of(-out, 5))).isFalse();
        assertThat(square.contains(Point.of(10 + out, 5))).isFalse();
        assertThat(square.contains(Point.of(5, -out))).isFalse();
        assertThat(square.contains(Point.of(5, 10 + out))).isFalse();
        assertThat(square.contains(Point.of(-5e-10, 5))).isTrue();
        assertThat(square.contains(Point.of(10 + 5e-10, 5))).isTrue();
        assertThat(square.contains(Point.of(5, -5e-10))).isTrue();
        assertThat(square.contains(Point.of(5, 10 + 5e-10))).isTrue();
    }

    /**
     * Rays through corners: each of them is counted once, or not at all where the outline only touches the ray's
     * height.
     */
    @Test
    void ray_through_corners_counts_each_crossing_once() {
        Outline zigzag = polygon(0, 0, 2, 4, 4, 2, 6, 4, 8, 0, 8, 6, 0, 6);
        assertThat(zigzag.windingNumber(Point.of(1, 4))).isEqualTo(1);
        assertThat(zigzag.windingNumber(Point.of(-1, 4))).isZero();
        assertThat(zigzag.windingNumber(Point.of(-1, 2))).isZero();
        assertThat(zigzag.windingNumber(Point.of(-1, 0))).isZero();
        assertThat(zigzag.windingNumber(Point.of(-1, 6))).isZero();
        assertThat(zigzag.windingNumber(Point.of(4, 3))).isEqualTo(1);
        assertThat(zigzag.windingNumber(Point.of(4, 1))).isZero();
        assertThat(zigzag.windingNumber(Point.of(9, 4))).isZero();
    }

    @Test
    void curve_that_goes_over_the_ray_and_back_is_counted_twice() {
        // An S along the top side: rays at heights between its summits cross it three times.
        Outline waved = Outline.of(Path.from(Point.of(0, 0))
                .curveTo(Point.of(10, 30), Point.of(20, -30), Point.of(30, 0))
                .lineTo(Point.of(30, 50))
                .lineTo(Point.of(0, 50))
                .close()
                .build());
        assertThat(waved.windingNumber(Point.of(6, 5))).isZero();
        assertThat(waved.windingNumber(Point.of(6, 10))).isEqualTo(1);
        assertThat(waved.windingNumber(Point.of(24, -5))).isEqualTo(1);
        assertThat(waved.windingNumber(Point.of(24, -10))).isZero();
        assertThat(waved.windingNumber(Point.of(15, 0.001))).isEqualTo(1);
        assertThat(waved.windingNumber(Point.of(-1, 5))).isZero();
        assertThat(waved.windingNumber(Point.of(-1, 0))).isZero();
        assertThat(waved.windingNumber(Point.of(1, 5))).isEqualTo(1);
    }

    @Test
    void outline_run_twice_winds_twice() {
        Outline twice = disc(0, 0, 1, 8);
        assertThat(twice.windingNumber(Point.of(0.1, 0.2))).isEqualTo(2);
        assertThat(twice.contains(Point.of(0.1, 0.2))).isTrue();
        assertThat(twice.contains(Point.of(1.1, 0.2))).isFalse();
    }

    /**
     * Every point of a grid, against a polygon of 4,000 sides; those nearer to the line than the polygon is are left
     * out.
     */
    @Test
    void winding_agrees_with_a_fine_polygon() {
        Outline curved = Outline.of(Path.of(
                CubicTest.cubic(0, 0, 90, -60, -40, -60, 50, 0),
                CubicTest.cubic(50, 0, 80, 40, 20, 10, 50, 60),
                CubicTest.cubic(50, 60, 50, 60, 0, 90, 0, 30),
                CubicTest.cubic(0, 30, 0, 10, 0, 40, 0, 0)));
        PathBuilder sides = Path.from(curved.path().start());
        for (Curve curve : curved.path().curves()) {
            for (int i = 1; i <= 1000; i++) {
                sides.lineTo(curve.pointAt(i / 1000.0));
            }
        }
        Outline polygon = Outline.of(sides.build());
        int asked = 0;
        for (double x = -10; x <= 80; x += 2.5) {
            for (double y = -60; y <= 80; y += 2.5) {
                Point point = Point.of(x, y);
                if (curved.path().nearest(point).distance() > 1e-3) {
                    assertThat(curved.windingNumber(point)).as("%s", point).isEqualTo(polygon.windingNumber(point));
                    asked++;
                }
            }
        }
        assertThat(asked).isGreaterThan(1900);
    }

    @Test
    void points_beside_the_line_are_told_apart_at_a_hundred_millionth() {
        for (double size : new double[] {1, 1000}) {
            Outline disc = disc(3 * size, -2 * size, size, 4);
            for (Curve curve : disc.path().curves()) {
                for (double t = 0.05; t < 1; t += 0.1) {
                    Vector right = curve.directionAt(t).rightNormal().times(1e-8);
                    assertThat(disc.contains(curve.pointAt(t).plus(right))).isTrue();
                    assertThat(disc.contains(curve.pointAt(t).plus(right.negated())))
                            .isFalse();
                    assertThat(disc.contains(curve.pointAt(t).plus(right.times(-0.05))))
                            .isTrue();
                }
            }
        }
    }
}
