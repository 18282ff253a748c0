package org.oaktag.testkit.curves;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.domains.DomainContextBase;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.PathBuilder;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;

/**
 * Points, curves, paths, outlines and rigid maps for property tests: {@code @Domain(Curves.class)} and {@code @ForAll
 * Cubic}.
 *
 * <p>Half of all cubics are {@link CubicShape#GENERAL}, the rest one of the hard shapes.
 */
public final class Curves extends DomainContextBase {
    /** For jqwik. */
    public Curves() {}

    /** Points within 300 mm of the origin both ways, to a thousandth of a millimetre. */
    @Provide
    public static Arbitrary<Point> points() {
        Arbitrary<Double> coordinates =
                Arbitraries.integers().between(-300_000, 300_000).map(i -> i / 1000.0);
        return Combinators.combine(coordinates, coordinates).as(Point::new).withoutEdgeCases();
    }

    /** Cubics of every shape. */
    @Provide
    public static Arbitrary<Cubic> cubics() {
        return of(CubicShape.values());
    }

    /** Cubics of every shape but a single point, which has neither direction nor sides. */
    public static Arbitrary<Cubic> movingCubics() {
        return of(Arrays.stream(CubicShape.values())
                .filter(shape -> shape != CubicShape.POINT)
                .toArray(CubicShape[]::new));
    }

    private static Arbitrary<Cubic> of(CubicShape[] shapes) {
        return Combinators.combine(
                        Arbitraries.oneOf(Arbitraries.just(CubicShape.GENERAL), Arbitraries.of(shapes)),
                        points(),
                        points(),
                        points(),
                        points(),
                        shares())
                .as(CubicShape::of)
                .withoutEdgeCases();
    }

    /** Cubics of one shape. */
    public static Arbitrary<Cubic> of(CubicShape shape) {
        return Combinators.combine(points(), points(), points(), points(), shares())
                .as(shape::of);
    }

    /** Straight segments, a point now and then. */
    @Provide
    public static Arbitrary<Line> lines() {
        return Combinators.combine(points(), points()).as(Line::new);
    }

    /** Lines and cubics. */
    @Provide
    public static Arbitrary<Curve> curves() {
        return Arbitraries.frequencyOf(Tuple.of(1, lines().map(c -> c)), Tuple.of(3, cubics().map(c -> c)));
    }

    /** Connected runs of up to six curves of any shape. */
    @Provide
    public static Arbitrary<Path> paths() {
        return curves().list().ofMinSize(1).ofMaxSize(6).map(Curves::joined);
    }

    /**
     * Outlines that do not cross themselves, clockwise: 3 to 9 corners at rising angles round a centre, their edges
     * straight or bulging inside the wedge of the two corners.
     */
    @Provide
    public static Arbitrary<Outline> outlines() {
        return Combinators.combine(
                        points(),
                        Arbitraries.integers()
                                .between(40, 300)
                                .list()
                                .ofMinSize(3)
                                .ofMaxSize(9),
                        Arbitraries.integers().between(-10, 10).list().ofSize(18))
                .as(Curves::around);
    }

    /** Shifts, turns and mirrors. */
    @Provide
    public static Arbitrary<Transform> rigidMaps() {
        return Combinators.combine(points(), points(), shares(), Arbitraries.of(true, false))
                .as((about, shift, share, mirrored) -> {
                    Transform turn = Transform.rotation(2 * Math.PI * share, about)
                            .then(Transform.translation(shift.minus(Point.ORIGIN)));
                    return mirrored ? turn.then(Transform.mirrorX(about.x())) : turn;
                });
    }

    /** Shares from 0 to 1, both ends included. */
    @Provide
    public static Arbitrary<Double> shares() {
        return Arbitraries.integers().between(0, 1 << 20).map(i -> i / (double) (1 << 20));
    }

    private static Path joined(List<Curve> curves) {
        List<Curve> run = new ArrayList<>();
        for (Curve curve : curves) {
            run.add(run.isEmpty() ? curve : startingAt(run.get(run.size() - 1).end(), curve));
        }
        return Path.of(run);
    }

    /** The curve moved so that it starts at the point, to the last bit. */
    private static Curve startingAt(Point start, Curve curve) {
        Vector shift = start.minus(curve.start());
        return curve instanceof Cubic cubic
                ? new Cubic(
                        start,
                        cubic.control1().equals(cubic.start())
                                ? start
                                : cubic.control1().plus(shift),
                        cubic.control2().plus(shift),
                        cubic.end().plus(shift))
                : new Line(start, curve.end().plus(shift));
    }

    private static Outline around(Point center, List<Integer> radii, List<Integer> bulges) {
        int count = radii.size();
        double wedge = 2 * Math.PI / count;
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            corners.add(center.plus(Vector.polar(radii.get(i), i * wedge)));
        }
        PathBuilder outline = Path.from(corners.get(0));
        for (int i = 0; i < count; i++) {
            Point from = corners.get(i);
            Point to = corners.get((i + 1) % count);
            int out1 = bulges.get(2 * i);
            int out2 = bulges.get(2 * i + 1);
            if (out1 == 0 && out2 == 0) {
                outline.lineTo(to);
            } else {
                outline.curveTo(bulged(center, from, to, 1.0 / 3, out1), bulged(center, from, to, 2.0 / 3, out2), to);
            }
        }
        return Outline.of(outline.build());
    }

    /**
     * A point of the chord moved along its ray from the centre by up to a third: the control polygon stays in the
     * wedge.
     */
    private static Point bulged(Point center, Point from, Point to, double share, int bulge) {
        Point on = from.lerp(to, share);
        return center.plus(on.minus(center).times(1 + bulge / 30.0));
    }
}
