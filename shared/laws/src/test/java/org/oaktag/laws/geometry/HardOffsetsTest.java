package org.oaktag.laws.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.LongConsumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.oaktag.PatternException;
import org.oaktag.geometry.CornerStyle;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.OffsetCurve;
import org.oaktag.geometry.OffsetLoops;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.OutlineOffset;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.testkit.curves.HardDrawings;

/**
 * Offsets of drawings by a random hand, held against distances that are sampled on dense polygons of drawing and result
 * and know nothing of how an offset is made, and against buffers of JTS where these are right.
 *
 * <p>A thousand cases of each kind; {@code mvn -Plong} tries a hundred thousand, the system property {@code
 * oaktag.cases} as many as it says, and {@code oaktag.seed} others.
 */
class HardOffsetsTest {
    private static final double TOLERANCE = 0.01;

    /** What the polygons, drawn with 400 chords a curve, add to the tolerance, mm. */
    private static final double CHORDS = 2e-4;

    /** Between the places at which a run is looked at it may come nearer by a share of the tolerance. */
    private static final double SLACK = 1.3;

    /** Unless it is told otherwise JTS moves its input by a hundredth of the distance. */
    static final double SIMPLIFIED = 1e-5;

    private static final CornerStyle ROUND = CornerStyle.round();

    static void cases(LongConsumer each) {
        long count = Long.getLong("oaktag.cases", 1000);
        long first = Long.getLong("oaktag.seed", 0) * 1_000_003;
        for (long seed = first; seed < first + count; seed++) {
            each.accept(seed);
        }
    }

    /** The handle moves the curve by no more than its own length, so the parallel is that of the cubic without it. */
    @Test
    void the_parallel_of_a_cubic_with_a_dust_handle_passes_all_points_but_those_of_the_dust() {
        cases(seed -> {
            HardDrawings hand = HardDrawings.of(seed);
            Cubic cubic = hand.dustHandle();
            double d = hand.between(-20, 20);
            Path parallel = OffsetCurve.of(cubic, d, TOLERANCE);
            for (int i = 2; i < 99; i++) {
                assertThat(parallel.nearest(beside(cubic, i / 100.0, d)).distance())
                        .as("seed %s, t %s", seed, i / 100.0)
                        .isLessThanOrEqualTo(TOLERANCE + CHORDS);
            }
            assertIsNowhereFarther(seed, cubic, parallel, Math.abs(d));
        });
    }

    @Test
    void the_parallel_of_a_near_cusp_passes_all_its_points_in_few_cubics() {
        cases(seed -> {
            HardDrawings hand = HardDrawings.of(seed);
            Cubic cubic = hand.nearCusp();
            double d = hand.between(-20, 20);
            Path parallel = OffsetCurve.of(cubic, d, TOLERANCE);
            for (int i = 0; i <= 200; i++) {
                assertThat(parallel.nearest(beside(cubic, i / 200.0, d)).distance())
                        .as("seed %s, t %s", seed, i / 200.0)
                        .isLessThanOrEqualTo(TOLERANCE + CHORDS);
            }
            assertIsNowhereFarther(seed, cubic, parallel, Math.abs(d));
            assertThat(parallel.curves().size()).as("seed %s", seed).isLessThanOrEqualTo(50);
        });
    }

    private static Point beside(Cubic cubic, double t, double left) {
        return cubic.pointAt(t).plus(cubic.directionAt(t).leftNormal().times(left));
    }

    private static void assertIsNowhereFarther(long seed, Cubic cubic, Path parallel, double distance) {
        for (Curve curve : parallel.curves()) {
            for (int i = 0; i <= 12; i++) {
                assertThat(cubic.nearest(curve.pointAt(i / 12.0)).distance())
                        .as("seed %s", seed)
                        .isLessThanOrEqualTo(distance + TOLERANCE + CHORDS);
            }
        }
    }

    @Test
    void an_outline_with_dust_handles_is_moved_as_if_it_had_none() {
        cases(seed -> assertMoves(seed, HardDrawings.of(seed).dustyOutline()));
    }

    @Test
    void an_outline_with_tiny_hooks_is_moved_by_any_distance() {
        cases(seed -> assertMoves(seed, HardDrawings.of(seed).hookedOutline()));
    }

    /** Outwards and inwards: made where JTS leaves one piece, at its distance all along, and of the same area. */
    private static void assertMoves(long seed, Outline outline) {
        HardDrawings hand = HardDrawings.of(~seed);
        double d = hand.between(1, 30) * (hand.between(-1, 1) < 0 ? -1 : 1);
        Geometry buffer = buffer(outline, d);
        boolean one = buffer instanceof Polygon polygon && polygon.getNumInteriorRing() == 0 && buffer.getArea() > 1;
        try {
            OutlineOffset offset = OutlineOffset.outward(outline, d, ROUND, TOLERANCE);
            assertIsAtDistance(
                    seed, Polyline.of(outline.path()), offset.outline().path(), Math.abs(d));
            assertThat(offset.outline().meetsItself()).as("seed %s", seed).isFalse();
            if (keepsItsDistance(buffer, Polyline.of(outline.path()), Math.abs(d))) {
                assertThat(Math.abs(offset.outline().area() - Flattened.withoutHoles(buffer)))
                        .as("seed %s", seed)
                        .isLessThan(5 * TOLERANCE * offset.outline().perimeter() + 1);
            }
        } catch (PatternException refused) {
            assertThat(one).as("seed %s: %s", seed, refused.getMessage()).isFalse();
        }
    }

    /** Whether the mouth is open, closed, or the recess full: every loop that JTS makes, and no other. */
    @Test
    void every_loop_of_an_outline_with_a_mouth_is_told() {
        cases(seed -> {
            Outline outline = HardDrawings.of(seed).mouth();
            double d = HardDrawings.of(~seed).between(1, 25);
            OffsetLoops loops = OffsetLoops.outward(outline, d, ROUND, TOLERANCE);
            Geometry buffer = buffer(outline, d);
            double net = loops.loops().stream()
                    .mapToDouble(loop -> loop.outline().signedArea())
                    .sum();
            double round = loops.loops().stream()
                    .mapToDouble(loop -> loop.outline().perimeter())
                    .sum();
            assertThat(Math.abs(Math.abs(net) - buffer.getArea()))
                    .as("seed %s", seed)
                    .isLessThan(3 * TOLERANCE * round + 1);
            for (OutlineOffset loop : loops.loops()) {
                assertIsAtDistance(
                        seed, Polyline.of(outline.path()), loop.outline().path(), d);
            }
        });
    }

    static void assertIsAtDistance(long seed, Polyline drawn, Path result, double distance) {
        for (Curve curve : result.curves()) {
            for (int i = 0; i <= 8; i++) {
                assertThat(drawn.distance(curve.pointAt(i / 8.0)))
                        .as("seed %s, at %s", seed, curve.pointAt(i / 8.0))
                        .isBetween(distance - SLACK * TOLERANCE - CHORDS, distance + TOLERANCE + CHORDS);
            }
        }
    }

    /** At one hook in some thousand a buffer of JTS has a slit down to the drawing itself. */
    private static boolean keepsItsDistance(Geometry buffer, Polyline drawn, double d) {
        return Stream.of(buffer.getBoundary().getCoordinates())
                .allMatch(at -> drawn.distance(Point.of(at.x, at.y)) > d - TOLERANCE);
    }

    private static Geometry buffer(Outline outline, double d) {
        BufferParameters fine = new BufferParameters(32, BufferParameters.CAP_ROUND, BufferParameters.JOIN_ROUND, 5);
        fine.setSimplifyFactor(SIMPLIFIED);
        return BufferOp.bufferOp(Flattened.polygon(outline, 200), d, fine);
    }
}
