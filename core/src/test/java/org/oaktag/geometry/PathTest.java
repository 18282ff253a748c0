package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PathTest {
    private static final Cubic ARCH = CubicTest.cubic(10, 0, 10, 40, 50, 40, 50, 0);
    private static final double ARCH_LENGTH = ARCH.length(1e-9);

    /** Right by 10, over the arch, and down by 5. */
    private static final Path PATH = Path.from(Point.of(0, 0))
            .lineTo(Point.of(10, 0))
            .curveTo(Point.of(10, 40), Point.of(50, 40), Point.of(50, 0))
            .lineTo(Point.of(50, 5))
            .build();

    private static final Path POINT = Path.polyline(Point.of(1, 2), Point.of(1, 2));

    @Test
    void length_is_the_sum_of_those_of_the_curves() {
        assertThat(PATH.length()).isCloseTo(15 + ARCH_LENGTH, within(1e-6));
        assertThat(PATH.length(1e-9)).isCloseTo(15 + ARCH_LENGTH, within(2e-9));
        assertThat(PATH.length(1e-6)).isEqualTo(PATH.length());
        assertThat(PATH.length(1)).isEqualTo(PATH.length());
        assertThatThrownBy(() -> PATH.length(0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void places_are_found_by_their_distance() {
        assertThat(PATH.locate(0)).isEqualTo(new Path.Location(0, 0));
        assertThat(PATH.locate(4)).isEqualTo(new Path.Location(0, 0.4));
        assertThat(PATH.locate(10)).isEqualTo(new Path.Location(0, 1));
        assertThat(PATH.locate(PATH.length())).isEqualTo(new Path.Location(2, 1));
        Path.Location middle = PATH.locate(10 + ARCH_LENGTH / 2);
        assertThat(middle.curve()).isEqualTo(1);
        assertThat(middle.t()).isCloseTo(0.5, within(1e-7));
        assertThat(PATH.pointAt(10 + ARCH_LENGTH / 2).distanceTo(Point.of(30, 30)))
                .isLessThan(1e-5);
        assertThat(PATH.pointAt(4)).isEqualTo(Point.of(4, 0));
        assertThat(PATH.directionAt(4)).isEqualTo(Vector.of(1, 0));
        assertThat(PATH.directionAt(10)).isEqualTo(Vector.of(1, 0));
        assertThat(PATH.curvatureAt(4)).isZero();
        assertThat(PATH.curvatureAt(10 + ARCH_LENGTH / 2)).isCloseTo(ARCH.curvatureAt(0.5), within(1e-9));
    }

    @Test
    void distances_lead_back_from_places() {
        assertThat(PATH.distanceAt(new Path.Location(0, 0.5))).isEqualTo(5);
        assertThat(PATH.distanceAt(new Path.Location(0, 1))).isEqualTo(10);
        assertThat(PATH.distanceAt(new Path.Location(1, 0))).isEqualTo(10);
        assertThat(PATH.distanceAt(new Path.Location(1, 0.5))).isCloseTo(10 + ARCH_LENGTH / 2, within(1e-6));
        assertThat(PATH.distanceAt(new Path.Location(2, 1))).isEqualTo(PATH.length());
        for (int bad : new int[] {-1, 3}) {
            assertThatThrownBy(() -> PATH.distanceAt(new Path.Location(bad, 0)))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("curve must lie within 0 to 2, got " + bad);
        }
    }

    @Test
    void distances_off_the_path_are_refused() {
        assertThatThrownBy(() -> PATH.pointAt(-1e-5)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PATH.pointAt(PATH.length() + 1e-5)).isInstanceOf(IllegalArgumentException.class);
        assertThat(PATH.pointAt(-1e-7)).isEqualTo(PATH.start());
        assertThat(PATH.pointAt(PATH.length() + 1e-7)).isEqualTo(PATH.end());
    }

    @Test
    void end_directions_skip_single_points() {
        Path padded = Path.polyline(Point.of(1, 2), Point.of(1, 2), Point.of(4, 6), Point.of(9, 6), Point.of(9, 6));
        assertThat(padded.startDirection()).isEqualTo(Vector.of(0.6, 0.8));
        assertThat(padded.endDirection()).isEqualTo(Vector.of(1, 0));
        assertThat(padded.withoutPointCurves())
                .isEqualTo(Path.polyline(Point.of(1, 2), Point.of(4, 6), Point.of(9, 6)));
        assertThat(padded.turning()).isCloseTo(-Math.atan2(4, 3), within(1e-15));
        assertThat(POINT.withoutPointCurves()).isEqualTo(POINT);
        assertThat(POINT.turning()).isZero();
        assertThatThrownBy(POINT::startDirection)
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("has no direction");
        assertThatThrownBy(POINT::endDirection).isInstanceOf(IllegalStateException.class);
    }

    /** A quarter clockwise into the arch, half a turn anticlockwise through it, and half a turn at its end. */
    @Test
    void turning_includes_the_corners() {
        assertThat(Path.polyline(Point.of(0, 0), Point.of(1, 0), Point.of(1, 1)).turning())
                .isEqualTo(Math.PI / 2);
        assertThat(Path.of(Line.of(Point.of(0, 0), Point.of(10, 0)), ARCH).turning())
                .isCloseTo(Math.PI / 2 - Math.PI, within(1e-14));
    }

    @Test
    void parts_meet_at_the_very_same_point() {
        for (double at : new double[] {3, 10, 10 + ARCH_LENGTH / 3, 10 + ARCH_LENGTH, 12 + ARCH_LENGTH}) {
            Path.Split split = PATH.splitAt(at);
            assertThat(split.before().start()).isEqualTo(PATH.start());
            assertThat(split.before().end()).isEqualTo(split.after().start());
            assertThat(split.after().end()).isEqualTo(PATH.end());
            assertThat(split.before().length()).isCloseTo(at, within(2e-6));
            assertThat(split.after().length()).isCloseTo(PATH.length() - at, within(2e-6));
        }
    }

    @Test
    void cut_beside_a_join_is_made_at_the_join() {
        double join = 10 + PATH.distanceAt(new Path.Location(1, 1)) - 10;
        for (double off : new double[] {-9e-7, 0, 9e-7}) {
            assertThat(PATH.splitAt(10 + off).before().curves()).hasSize(1);
            assertThat(PATH.splitAt(10 + off).before().end()).isEqualTo(Point.of(10, 0));
            assertThat(PATH.splitAt(join + off).after().curves()).hasSize(1);
            assertThat(PATH.sub(0, PATH.length() + off)).isEqualTo(PATH);
            assertThat(PATH.sub(off, PATH.length())).isEqualTo(PATH);
        }
        assertThat(PATH.splitAt(10 - 1e-5).after().curves()).hasSize(3);
        assertThat(PATH.splitAt(10 + 1e-5).before().curves()).hasSize(2);
    }

    @Test
    void part_must_be_longer_than_the_accuracy() {
        assertThat(PATH.sub(2, 3)).isEqualTo(Path.polyline(Point.of(2, 0), Point.of(3, 0)));
        for (double to : new double[] {2, 2 + 9e-7, 1}) {
            assertThatThrownBy(() -> PATH.sub(2, to))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("must be longer than");
        }
        assertThatThrownBy(() -> PATH.sub(10 - 9e-7, 10 + 9e-7)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PATH.splitAt(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PATH.splitAt(PATH.length())).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void copies_are_reversed_moved_and_joined() {
        Path back = PATH.reversed();
        assertThat(back.start()).isEqualTo(PATH.end());
        assertThat(back.end()).isEqualTo(PATH.start());
        assertThat(back.reversed()).isEqualTo(PATH);
        assertThat(back.curves().get(1)).isEqualTo(ARCH.reversed());
        Path moved = PATH.transformed(Transform.translation(3, 4));
        assertThat(moved.start()).isEqualTo(Point.of(3, 4));
        assertThat(moved.end()).isEqualTo(Point.of(53, 9));
        Path more = Path.polyline(Point.of(50, 5), Point.of(0, 0));
        assertThat(PATH.then(more).curves()).hasSize(4);
        assertThat(PATH.then(more).isClosed()).isTrue();
        assertThat(PATH.isClosed()).isFalse();
        assertThatThrownBy(() -> PATH.then(PATH)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void box_and_sweep_take_in_every_curve() {
        assertThat(PATH.bounds()).isEqualTo(new Bounds(0, 0, 50, 30));
        assertThat(PATH.sweep()).isCloseTo(ARCH.sweep() + 0.5 * 50 * 5, within(1e-12));
    }

    @Test
    void nearest_place_is_the_first_of_the_nearest() {
        PathNearest nearest = PATH.nearest(Point.of(4, -3));
        assertThat(nearest.distanceAlong()).isEqualTo(4);
        assertThat(nearest.distance()).isEqualTo(3);
        assertThat(nearest.point()).isEqualTo(Point.of(4, 0));
        assertThat(PATH.nearest(Point.of(51, 3)).distanceAlong()).isCloseTo(13 + ARCH_LENGTH, within(1e-6));
        Path square = Path.polyline(Point.of(0, 0), Point.of(2, 0), Point.of(2, 2), Point.of(0, 2), Point.of(0, 0));
        assertThat(square.nearest(Point.of(1, 1)).distanceAlong()).isEqualTo(1);
    }

    @Test
    void equality_is_that_of_the_curves() {
        Path same = Path.of(PATH.curves());
        assertThat(same).isEqualTo(PATH).hasSameHashCodeAs(PATH).hasToString(PATH.toString());
        assertThat(PATH.toString()).startsWith("Path[Line[");
        assertThat(PATH.hashCode()).isNotEqualTo(PATH.reversed().hashCode());
        assertThat(PATH).isNotEqualTo(PATH.reversed()).isNotEqualTo("path");
    }

    @Test
    void broken_paths_are_refused() {
        assertThatThrownBy(() -> Path.of())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("at least one curve");
        assertThatThrownBy(() -> Path.polyline(Point.of(1, 1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("at least two points, got 1");
        assertThatThrownBy(() -> Path.of(ARCH, ARCH))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("curve 1 of a path must start where curve 0 ends, at Point[x=50.0, y=0.0]");
        assertThatThrownBy(() -> Path.from(Point.of(0, 0)).build()).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Path.from(Point.of(0, 1)).append(PATH))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("must start at");
    }

    @Test
    void builder_draws_from_where_it_has_come_to() {
        Path drawn = Path.from(Point.of(0, 0))
                .append(PATH)
                .lineTo(Point.of(0, 5))
                .close()
                .build();
        assertThat(drawn.curves()).hasSize(5);
        assertThat(drawn.isClosed()).isTrue();
        Path closed = Path.from(Point.of(0, 0)).append(drawn).close().build();
        assertThat(closed).isEqualTo(drawn);
    }
}
