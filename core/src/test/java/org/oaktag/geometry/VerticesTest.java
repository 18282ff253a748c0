package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class VerticesTest {
    @Test
    void places_this_near_are_one_and_others_are_not_wherever_they_lie() {
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 1000; i++) {
            Vertices vertices = new Vertices(0.1);
            Point first = Point.of(random.nextDouble(-1, 1), random.nextDouble(-1, 1));
            double way = random.nextDouble(6.28);
            assertThat(vertices.pointAt(first)).isEqualTo(first);
            assertThat(vertices.pointAt(first.plus(Vector.polar(0.0999, way)))).isEqualTo(first);
            Point off = first.plus(Vector.polar(0.1001, way));
            assertThat(vertices.pointAt(off)).isEqualTo(off);
            assertThat(vertices.points()).containsExactly(first, off);
        }
    }

    @Test
    void the_nearest_of_several_is_meant() {
        Vertices vertices = new Vertices(1);
        vertices.at(Point.of(0, 0));
        vertices.at(Point.of(1.5, 0));
        assertThat(vertices.at(Point.of(0.7, 0))).isZero();
        assertThat(vertices.at(Point.of(0.8, 0))).isEqualTo(1);
        assertThat(vertices.at(Point.of(-0.0, -0.0))).isZero();
        assertThat(vertices.points()).hasSize(2);
    }
}
