package org.oaktag.laws.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Traced;
import org.oaktag.geometry.Vector;
import org.oaktag.testkit.curves.Curves;
import org.oaktag.testkit.curves.SmoothPaths;

/** Paths through many points. */
@Domain(Curves.class)
@Domain(DomainContext.Global.class)
class TracedProperties {
    @Provide
    Arbitrary<Path> smooth() {
        return SmoothPaths.all();
    }

    @Property(tries = 150)
    void no_point_of_a_shaky_hand_is_further_from_its_path_than_the_tolerance(
            @ForAll("smooth") Path drawn,
            @ForAll @DoubleRange(min = 0.1, max = 1) double noise,
            @ForAll @IntRange(min = 20, max = 120) int count,
            @ForAll boolean closed,
            @ForAll long seed) {
        SplittableRandom hand = new SplittableRandom(seed);
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Vector shake = Vector.polar(noise * hand.nextDouble(), 2 * Math.PI * hand.nextDouble());
            points.add(drawn.pointAt(drawn.length() * i / (count - 1)).plus(shake));
        }
        double tolerance = 1.5 * noise;
        Traced traced = closed ? Traced.closed(points, tolerance, 20, 0.7) : Traced.open(points, tolerance, 20, 0.7);
        assertKeeps(traced, points, tolerance);
        assertThat(traced.path().isClosed()).isEqualTo(closed);
        assertThat(traced.corners()).isSorted().allMatch(corner -> corner >= 0 && corner < count);
        assertThat(traced.path().curves()).hasSizeLessThan(count + 1);
    }

    /** Whatever the points: as many to a millimetre or as few as there are, in any order. */
    @Property(tries = 300)
    void any_points_are_passed_by_within_the_tolerance(
            @ForAll @Size(min = 4, max = 30) List<Point> points,
            @ForAll @DoubleRange(min = 0.01, max = 20) double tolerance,
            @ForAll boolean closed) {
        if (points.stream().distinct().count() < 3) {
            return;
        }
        assertKeeps(
                closed ? Traced.closed(points, tolerance, 10, 1) : Traced.open(points, tolerance, 10, 1),
                points,
                tolerance);
    }

    private static void assertKeeps(Traced traced, List<Point> points, double tolerance) {
        for (Point point : points) {
            assertThat(traced.path().nearest(point).distance()).isLessThanOrEqualTo(tolerance * (1 + 1e-9));
        }
    }
}
