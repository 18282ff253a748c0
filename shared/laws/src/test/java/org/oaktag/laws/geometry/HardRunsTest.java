package org.oaktag.laws.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.oaktag.laws.geometry.HardOffsetsTest.cases;

import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.oaktag.geometry.CornerStyle;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.OffsetRuns;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.testkit.curves.HardDrawings;

/**
 * Parallels of open paths by a random hand, held against distances from a dense polygon of the path, as {@link
 * HardOffsetsTest} does those of outlines.
 */
class HardRunsTest {
    private static final double TOLERANCE = 0.01;

    /** What is asked of a path that comes back to its ends and sides, at every place of it. */
    private record Case(long seed, Path path, double d, OffsetRuns runs, Polyline drawn, List<Polyline> beside) {
        static Case of(long seed, Function<HardDrawings, Path> drawing) {
            HardDrawings hand = HardDrawings.of(seed);
            Path path = drawing.apply(hand);
            double d = hand.between(1, 30) * (hand.between(-1, 1) < 0 ? -1 : 1);
            OffsetRuns runs = OffsetRuns.of(path, d, CornerStyle.round(), TOLERANCE);
            List<Polyline> beside = runs.runs().stream().map(Polyline::of).toList();
            return new Case(seed, path, d, runs, Polyline.of(path), beside);
        }

        Point parallel(Curve curve, double t, double further) {
            Vector out = curve.directionAt(t).leftNormal().times(Math.signum(d));
            return curve.pointAt(t).plus(out.times(Math.abs(d) + further));
        }

        /** A place is free if its parallel is, and half a millimetre of it on both sides, with some room beyond. */
        boolean isFree(Curve curve, double t, double slack) {
            double step = Math.min(0.5 / Math.max(curve.derivativeAt(t).length(), 1e-9), 0.02);
            for (int k = -3; k <= 3; k++) {
                double at = Math.min(Math.max(t + k * step / 3, 0), 1);
                if (drawn.distance(parallel(curve, at, 0)) < Math.abs(d) - slack
                        || drawn.distance(parallel(curve, at, 3 * TOLERANCE)) < Math.abs(d) + 2.5 * TOLERANCE) {
                    return false;
                }
            }
            return true;
        }

        double fromRuns(Point point) {
            return beside.stream().mapToDouble(run -> run.distance(point)).min().orElse(Double.POSITIVE_INFINITY);
        }

        /** How far inside a stretch that is left out, mm; 0 outside. */
        double leftOut(double along) {
            return runs.leftOut().stream()
                    .mapToDouble(each -> Math.min(along - each.from(), each.to() - along))
                    .filter(inside -> inside > 0)
                    .max()
                    .orElse(0);
        }
    }

    /**
     * Ends and sides that come back to the path: what runs keeps its distance, and what could run does, or is less than
     * a scrap.
     */
    @Test
    void runs_beside_a_wandering_path_keep_their_distance_and_leave_nothing_free_out() {
        cases(seed -> assertRuns(Case.of(seed, HardDrawings::wandering)));
    }

    /** Whichever way a hook points that is no longer than the tolerance. */
    @Test
    void so_do_runs_beside_a_path_with_hooks() {
        cases(seed -> assertRuns(Case.of(seed, HardDrawings::hookedPath)));
    }

    private static void assertRuns(Case each) {
        each.runs()
                .runs()
                .forEach(run -> HardOffsetsTest.assertIsAtDistance(each.seed(), each.drawn(), run, Math.abs(each.d())));
        double before = 0;
        for (Curve curve : each.path().curves()) {
            double length = curve.length();
            for (int i = 1; i < 30 && length > 0.5; i++) {
                assertIsTold(each, curve, i / 30.0, before + curve.lengthBetween(0, i / 30.0, 1e-6));
            }
            before += length;
        }
    }

    /** What is free has a run beside it and is not left out; what comes too near is. */
    private static void assertIsTold(Case each, Curve curve, double t, double along) {
        Point parallel = each.parallel(curve, t, 0);
        String where = "seed " + each.seed() + ", at " + curve.pointAt(t) + ", distance " + each.d();
        if (each.isFree(curve, t, 1e-3)) {
            assertThat(each.fromRuns(parallel)).as(where).isLessThan(5 * TOLERANCE);
        }
        if (each.isFree(curve, t, 1e-4)) {
            assertThat(each.leftOut(along)).as(where).isLessThan(5 * TOLERANCE);
        }
        if (each.drawn().distance(parallel) < Math.abs(each.d()) - 3 * TOLERANCE) {
            assertThat(each.leftOut(along)).as(where).isPositive();
        }
    }

    /**
     * Of every boundary of a buffer of JTS that lies square off the side of the path, in its pockets as well; but for
     * the caps round its ends.
     */
    @Test
    void a_run_passes_all_that_a_buffer_has_on_that_side() {
        cases(seed -> {
            Case each = Case.of(seed, HardDrawings::wandering);
            for (Coordinate at : boundary(each)) {
                Point point = Point.of(at.x, at.y);
                // Beyond a crossing as much is not told as lies within four tolerances of a longer run.
                assertThat(each.fromRuns(point) < 10 * TOLERANCE || isOff(each, point))
                        .as("seed %s, at %s", seed, point)
                        .isTrue();
            }
        });
    }

    /** Tells whether a point of the boundary does not lie square off that side, with some room beyond. */
    private static boolean isOff(Case each, Point point) {
        for (Curve curve : each.path().curves()) {
            double t = curve.nearest(point).t();
            Vector arm = point.minus(curve.pointAt(t));
            boolean square = t > 1e-3 && t < 1 - 1e-3 && arm.length() < Math.abs(each.d()) + TOLERANCE;
            boolean side = curve.directionAt(t).cross(arm) < 0 == each.d() > 0;
            Point beyond = point.plus(arm.times(3 * TOLERANCE / arm.length()));
            if (square && side && each.drawn().distance(beyond) > Math.abs(each.d()) + 2.5 * TOLERANCE) {
                return false;
            }
        }
        return true;
    }

    private static Coordinate[] boundary(Case each) {
        BufferParameters fine = new BufferParameters(32, BufferParameters.CAP_ROUND, BufferParameters.JOIN_ROUND, 5);
        fine.setSimplifyFactor(HardOffsetsTest.SIMPLIFIED);
        Geometry line = new GeometryFactory().createLineString(each.drawn().coordinates());
        return BufferOp.bufferOp(line, Math.abs(each.d()), fine).getBoundary().getCoordinates();
    }
}
