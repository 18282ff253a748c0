package org.oaktag.export.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

class BoxTest {

    private static Box random(Random random) {
        return new Box(
                Point.of(random.nextDouble() * 30, random.nextDouble() * 30),
                1 + random.nextDouble() * 20,
                1 + random.nextDouble() * 8,
                random.nextDouble() * 7 - 3.5);
    }

    /** Whether a point lies in a box, said by its corners: on the right of every side that is followed clockwise. */
    private static boolean contains(Box box, Point point) {
        for (int i = 0; i < 4; i++) {
            Point a = box.corners().get(i);
            Point b = box.corners().get((i + 1) % 4);
            if (b.minus(a).cross(point.minus(a)) < 0) {
                return false;
            }
        }
        return true;
    }

    private static Point within(Box box, Random random) {
        Vector along = Vector.polar((random.nextDouble() - 0.5) * box.width(), box.angle());
        Vector down = Vector.polar((random.nextDouble() - 0.5) * box.height(), box.angle())
                .rightNormal();
        return box.center().plus(along).plus(down);
    }

    @Test
    void boxes_overlap_where_they_share_a_point_and_only_there() {
        Random random = new Random(1);
        int overlapping = 0;
        for (int i = 0; i < 400; i++) {
            Box a = random(random);
            Box b = random(random);
            boolean shared = false;
            for (int k = 0; k < 300 && !shared; k++) {
                shared = contains(b, within(a, random)) || contains(a, within(b, random));
            }
            if (shared) {
                assertThat(a.overlaps(b)).as("%s %s", a, b).isTrue();
                overlapping++;
            }
            assertThat(a.overlaps(b)).isEqualTo(b.overlaps(a));
            if (a.overlaps(b)) {
                // So that "always overlapping" would not pass: grown a little they must share a sampled point.
                boolean near = false;
                for (int k = 0; k < 3_000 && !near; k++) {
                    near = contains(b.expanded(1), within(a.expanded(1), random));
                }
                assertThat(near).as("%s %s", a, b).isTrue();
            }
        }
        assertThat(overlapping).isBetween(40, 360);
    }

    @Test
    void a_segment_meets_a_box_that_contains_one_of_its_points() {
        Random random = new Random(2);
        int met = 0;
        for (int i = 0; i < 400; i++) {
            Box box = random(random);
            Point from = Point.of(random.nextDouble() * 30, random.nextDouble() * 30);
            Point to = Point.of(random.nextDouble() * 30, random.nextDouble() * 30);
            boolean sampled = false;
            boolean nearly = false;
            for (int k = 0; k <= 400; k++) {
                Point point = from.lerp(to, k / 400.0);
                sampled |= contains(box, point);
                nearly |= contains(box.expanded(0.2), point);
            }
            met += sampled ? 1 : 0;
            assertThat(box.meets(from, to)).isIn(sampled, nearly);
        }
        assertThat(met).isBetween(40, 380);
    }

    @Test
    void boxes_side_by_side_do_not_overlap() {
        Box left = new Box(Point.of(0, 0), 10, 4, 0);
        assertThat(left.overlaps(new Box(Point.of(10, 0), 10, 4, 0))).isFalse();
        assertThat(left.overlaps(new Box(Point.of(9.999, 0), 10, 4, 0))).isTrue();
    }

    /** Read from the bottom or from the right of the sheet, as ISO 129-1 asks. */
    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "30, 30",
        "-30, -30",
        "75, 75",
        "76, -104",
        "90, -90",
        "-90, -90",
        "150, -30",
        "180, 0",
        "-150, 30",
        "-104, -104"
    })
    void a_text_along_a_line_is_turned_to_be_read(double degrees, double readable) {
        double angle = Box.readable(Vector.polar(1, Math.toRadians(degrees)));
        assertThat(Math.toDegrees(angle)).isCloseTo(readable, offset(1e-9));
    }
}
