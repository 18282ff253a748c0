package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * The curvature of one curve: its value, inflections, extrema and cusps, and how fast it turns between them.
 *
 * <p>With D0, D1, D2 the sides of the control polygon {@code r' x r'' / 18} has the Bernstein coefficients D0 x D1, D0
 * x D2 / 2 and D1 x D2. At a cusp it has a double root, where the curve stands still; the quintic of the extrema has a
 * triple one there, which rounding scatters, and only the cusp itself is told.
 */
final class CurveBends {
    /** A handle shorter than this share of the control polygon is no handle. */
    private static final double DUST = 1e-6;

    /** A curve whose speed falls below this share of its size stands still. */
    private static final double STILL = 1e-9;

    /** Rounding scatters a triple root by about the cube root of its own share. */
    private static final double SCATTER = 1e-4;

    private static final double[] NONE = {};

    private final Curve curve;
    private final boolean straight;
    private final double[] bend;
    private final double[] cusps;

    CurveBends(Curve source) {
        curve = source instanceof Cubic cubic ? withoutDust(cubic) : source;
        double tolerance = CurveContacts.tolerance(curve, curve);
        if (curve instanceof Cubic cubic && !Folds.isStraight(cubic, tolerance)) {
            straight = false;
            Vector d0 = cubic.control1().minus(cubic.start());
            Vector d1 = cubic.control2().minus(cubic.control1());
            Vector d2 = cubic.end().minus(cubic.control2());
            bend = new double[] {d0.cross(d1), 0.5 * d0.cross(d2), d1.cross(d2)};
            cusps = cusps(cubic, bend);
        } else {
            straight = true;
            bend = new double[3];
            cusps = Folds.of(curve, tolerance);
        }
    }

    /** Returns the cubic with handles that are dust, on one point or on both, retracted. */
    static Cubic withoutDust(Cubic cubic) {
        double dust = DUST * new CubicPiece(cubic, 0, 1).size();
        Point c1 = cubic.control1();
        Point c2 = cubic.control2();
        boolean first = c1.isCloseTo(cubic.start(), dust);
        boolean second = c2.isCloseTo(cubic.end(), dust);
        if (!first && !second) {
            return cubic;
        }
        Point one = first ? cubic.start() : second && c1.isCloseTo(cubic.end(), dust) ? cubic.end() : c1;
        Point two = second ? cubic.end() : c2.isCloseTo(cubic.start(), dust) ? cubic.start() : c2;
        return new Cubic(cubic.start(), one, two, cubic.end());
    }

    private static double[] cusps(Cubic cubic, double[] bend) {
        double t = (bend[0] - bend[1]) / (bend[0] - 2 * bend[1] + bend[2]);
        boolean still = t > 0 && t < 1 && cubic.speedAt(t) <= STILL * new CubicPiece(cubic, 0, 1).size();
        return still ? new double[] {t} : NONE;
    }

    /** Returns the signed curvature, infinite at a cusp and where a straight curve turns back. */
    double at(double t) {
        for (double cusp : cusps) {
            if (t == cusp) {
                return straight ? Double.POSITIVE_INFINITY : Math.copySign(Double.POSITIVE_INFINITY, side());
            }
        }
        return straight ? 0 : curve.curvatureAt(t);
    }

    /** The way in which a curve with a cusp turns, on both sides of it. */
    private double side() {
        return bend[0] + 2 * bend[1] + bend[2];
    }

    double[] cusps() {
        return cusps;
    }

    /** Returns the parameters inside the curve at which the curvature changes sign. */
    double[] inflections() {
        return straight || cusps.length > 0
                ? NONE
                : Polynomials.changesOfSign(bend, Polynomials.quadraticRoots(bend[0], bend[1], bend[2]));
    }

    /**
     * Returns the parameters inside the curve at which the curvature is greater, or less, than on both sides, cusps
     * included.
     */
    double[] extrema() {
        if (straight) {
            return cusps;
        }
        double[] slope = slope((Cubic) curve);
        double[] turns = Polynomials.changesOfSign(slope, Polynomials.roots(slope));
        if (cusps.length == 0) {
            return turns;
        }
        DoubleStream others = Arrays.stream(turns).filter(t -> Math.abs(t - cusps[0]) >= SCATTER);
        return DoubleStream.concat(others, Arrays.stream(cusps)).sorted().toArray();
    }

    /**
     * The numerator of the derivative of the curvature, but for a positive factor: N' r'.r' - 3 N r'.r'', N = r' x r''.
     */
    private double[] slope(Cubic cubic) {
        double[] x = {
            cubic.control1().x() - cubic.start().x(),
            cubic.control2().x() - cubic.control1().x(),
            cubic.end().x() - cubic.control2().x()
        };
        double[] y = {
            cubic.control1().y() - cubic.start().y(),
            cubic.control2().y() - cubic.control1().y(),
            cubic.end().y() - cubic.control2().y()
        };
        double[] square = Bernstein.plus(Bernstein.product(x, x), Bernstein.product(y, y));
        double[] along = Bernstein.plus(Bernstein.product(x, derivative(x)), Bernstein.product(y, derivative(y)));
        double[] twice = Bernstein.product(bend, along);
        for (int i = 0; i < twice.length; i++) {
            twice[i] *= 3;
        }
        return Bernstein.minus(Bernstein.product(derivative(bend), square), twice);
    }

    private static double[] derivative(double[] quadratic) {
        return new double[] {2 * (quadratic[1] - quadratic[0]), 2 * (quadratic[2] - quadratic[1])};
    }

    /** Returns where the sharpest bend between two parameters may lie: at either, or at an extremum between. */
    double[] candidates(double t0, double t1) {
        double[] extrema = extrema();
        double[] candidates = new double[extrema.length + 2];
        int count = 0;
        candidates[count++] = t0;
        for (double t : extrema) {
            if (t > t0 && t < t1) {
                candidates[count++] = t;
            }
        }
        candidates[count++] = t1;
        return count == candidates.length ? candidates : Arrays.copyOf(candidates, count);
    }

    /** Adds the teeth of a comb at both ends and, evenly in length, between. */
    void addTeeth(double scale, double spacing, double longest, List<Line> teeth) {
        double length = curve.length();
        int count = (int) Math.max(1, Math.ceil(length / spacing - 1e-9));
        for (int i = 0; i <= count; i++) {
            double t = i == 0 ? 0 : i == count ? 1 : curve.parameterAt(length * i / count);
            double tall = Math.min(Math.max(scale * at(t), -longest), longest);
            Point foot = curve.pointAt(t);
            teeth.add(new Line(foot, foot.plus(curve.directionAt(t).leftNormal().times(tall))));
        }
    }

    /**
     * Returns the turns of the direction, each one way: {@code t0, t1, angle} one after the other; at a cusp t0 = t1.
     */
    List<double[]> turns() {
        List<double[]> turns = new ArrayList<>();
        double[] cuts = cusps.length > 0 ? cusps : inflections();
        for (int i = 0; i <= cuts.length; i++) {
            double from = i == 0 ? 0 : cuts[i - 1];
            double to = i == cuts.length ? 1 : cuts[i];
            turns.add(new double[] {from, to, straight ? 0 : curve.sub(from, to).turning()});
            if (i < cusps.length) {
                turns.add(new double[] {to, to, straight ? Math.PI : Math.copySign(Math.PI, side())});
            }
        }
        return turns;
    }

    Vector directionAt(double t) {
        return curve.directionAt(t);
    }

    /** Returns how the curves of a path meet, those that are points left out. */
    static List<Curvature.Join> joins(Path path) {
        List<Curvature.Join> joins = new ArrayList<>();
        int first = -1;
        int before = -1;
        for (int i = 0; i < path.curves().size(); i++) {
            if (path.curves().get(i).isPoint()) {
                continue;
            }
            if (before >= 0) {
                joins.add(join(path, before, i));
            } else {
                first = i;
            }
            before = i;
        }
        if (before >= 0 && path.isClosed()) {
            joins.add(join(path, before, first));
        }
        return List.copyOf(joins);
    }

    private static Curvature.Join join(Path path, int before, int after) {
        CurveBends arriving = path.bends(before);
        CurveBends leaving = path.bends(after);
        return new Curvature.Join(
                path.distanceAt(new Path.Location(before, 1)),
                path.curves().get(before).end(),
                arriving.directionAt(1).angleTo(leaving.directionAt(0)),
                arriving.at(1),
                leaving.at(0));
    }
}
