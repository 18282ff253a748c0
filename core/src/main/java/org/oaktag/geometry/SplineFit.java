package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularMatrixException;

/**
 * Fits a run of points by a cubic spline of least squares, with as few intervals as keep the tolerance.
 *
 * <p><b>Method.</b> Each point has a parameter, at first its share of the way along the points. With cubic B-splines
 * over the knots the squares of the distances are linear in the control points (de Boor, A Practical Guide to Splines,
 * ch. 14); after each fit every point gets the parameter of the place of the spline nearest to it. Where a point is
 * still off by more than the tolerance, the interval with the greatest sum of squares gets a knot in the middle of its
 * points. When no interval has enough points for that, the spline goes through all of them. The curvature is continuous
 * within the run.
 */
final class SplineFit {
    private static final int ROUNDS = 4;

    /** An interval with fewer points than this is not parted. */
    private static final int LEAST_POINTS = 6;

    private final List<Point> points;
    private final double tolerance;
    private final boolean closed;
    private final boolean startFixed;
    private final boolean endFixed;
    private final double[] shares;
    private double[] u;

    private SplineFit(List<Point> points, boolean closed, boolean startFixed, boolean endFixed, double tolerance) {
        this.points = points;
        this.tolerance = tolerance;
        this.closed = closed;
        this.startFixed = startFixed;
        this.endFixed = endFixed;
        this.shares = shares(points);
        this.u = shares;
    }

    /** Returns the run of an open row of points; a fixed end is met exactly. */
    static List<Curve> open(List<Point> points, boolean startFixed, boolean endFixed, double tolerance) {
        return new SplineFit(points, false, startFixed, endFixed, tolerance).run();
    }

    /** Returns the run of a ring of points, the first of which is the last as well. */
    static List<Curve> closed(List<Point> points, double tolerance) {
        return new SplineFit(points, true, false, false, tolerance).run();
    }

    private static double[] shares(List<Point> points) {
        double[] shares = new double[points.size()];
        for (int i = 1; i < shares.length; i++) {
            shares[i] = shares[i - 1] + points.get(i).distanceTo(points.get(i - 1));
        }
        for (int i = 1; i < shares.length; i++) {
            shares[i] /= shares[shares.length - 1];
        }
        return shares;
    }

    private List<Curve> run() {
        List<Double> knots = new ArrayList<>();
        int intervals = closed ? 4 : 1;
        for (int i = 0; i <= intervals; i++) {
            knots.add((double) i / intervals);
        }
        // As many unknowns as there are points would be no fit.
        while (knots.size() + 3 < points.size()) {
            u = shares;
            List<Curve> run = fitted(knots);
            double worst = 0;
            double[] squares = new double[knots.size() - 1];
            if (run.isEmpty()) {
                break;
            }
            Path path = Path.of(run);
            for (int i = 0; i < points.size(); i++) {
                double off = path.nearest(points.get(i)).distance();
                worst = Math.max(worst, off);
                squares[interval(knots, shares[i])] += off * off;
            }
            if (worst <= tolerance) {
                return run;
            }
            if (!part(knots, squares)) {
                break;
            }
        }
        return through();
    }

    private List<Curve> through() {
        if (points.size() == 2) {
            return List.of(new Line(points.get(0), points.get(1)));
        }
        int last = points.size() - 1;
        Vector leaving = points.get(1).minus(closed ? points.get(last - 1) : points.get(0));
        Vector arriving = closed ? leaving : points.get(last).minus(points.get(last - 1));
        if (leaving.equals(Vector.ZERO)) {
            leaving = points.get(1).minus(points.get(0));
            arriving = leaving;
        }
        return Fit.through(points, leaving, arriving).curves();
    }

    /** Puts a knot into the worst interval that has points enough, and tells whether there is one. */
    private boolean part(List<Double> knots, double[] squares) {
        int worst = -1;
        double middle = 0;
        for (int k = 0; k < squares.length; k++) {
            List<Double> within = new ArrayList<>();
            for (double share : shares) {
                if (share > knots.get(k) && share < knots.get(k + 1)) {
                    within.add(share);
                }
            }
            if (within.size() >= LEAST_POINTS && (worst < 0 || squares[k] > squares[worst])) {
                worst = k;
                middle = 0.5 * (within.get(within.size() / 2 - 1) + within.get(within.size() / 2));
            }
        }
        if (worst >= 0) {
            knots.add(worst + 1, middle);
        }
        return worst >= 0;
    }

    private static int interval(List<Double> knots, double at) {
        int k = 0;
        while (k + 2 < knots.size() && at >= knots.get(k + 1)) {
            k++;
        }
        return k;
    }

    /** Returns the spline over the knots, or nothing if the points do not tell all of it. */
    private List<Curve> fitted(List<Double> knots) {
        List<Curve> run = List.of();
        for (int round = 0; round < ROUNDS; round++) {
            try {
                run = curves(knots, solved(knots));
            } catch (SingularMatrixException untold) {
                return List.of();
            }
            u = parameters(run, knots);
        }
        return run;
    }

    /** Returns for each point the parameter of the place nearest to it within its interval. */
    private double[] parameters(List<Curve> run, List<Double> knots) {
        double[] next = u.clone();
        for (int i = closed ? 0 : 1; i < next.length - (closed ? 0 : 1); i++) {
            int k = interval(knots, u[i]);
            double from = knots.get(k);
            double width = knots.get(k + 1) - from;
            Nearest nearest = run.get(k).nearest(points.get(i));
            double t = from + width * nearest.t();
            boolean atRim = nearest.t() == 0 || nearest.t() == 1;
            next[i] = atRim ? u[i] : t;
        }
        return next;
    }

    private int count(List<Double> knots) {
        return closed ? knots.size() - 1 : knots.size() + 2;
    }

    private RealMatrix solved(List<Double> knots) {
        int count = count(knots);
        int first = startFixed ? 1 : 0;
        int last = endFixed ? count - 1 : count;
        int rows = points.size() - (closed ? 1 : 0);
        double[][] left = new double[rows][last - first];
        double[][] right = new double[rows][2];
        for (int i = 0; i < rows; i++) {
            Point point = points.get(i);
            right[i][0] = point.x();
            right[i][1] = point.y();
            int k = interval(knots, u[i]);
            double[] basis = basis(knots, k, u[i], 3);
            for (int j = 0; j < 4; j++) {
                int column = (k + j) % count;
                if (column >= first && column < last) {
                    left[i][column - first] += basis[j];
                } else {
                    Point end = points.get(column == 0 ? 0 : points.size() - 1);
                    right[i][0] -= basis[j] * end.x();
                    right[i][1] -= basis[j] * end.y();
                }
            }
        }
        RealMatrix found = new QRDecomposition(new Array2DRowRealMatrix(left, false), 1e-12)
                .getSolver()
                .solve(new Array2DRowRealMatrix(right, false));
        RealMatrix controls = new Array2DRowRealMatrix(count, 2);
        for (int i = 0; i < count; i++) {
            Point end = points.get(i == 0 ? 0 : points.size() - 1);
            boolean solved = i >= first && i < last;
            controls.setEntry(i, 0, solved ? found.getEntry(i - first, 0) : end.x());
            controls.setEntry(i, 1, solved ? found.getEntry(i - first, 1) : end.y());
        }
        return controls;
    }

    private List<Curve> curves(List<Double> knots, RealMatrix controls) {
        int count = count(knots);
        List<Curve> run = new ArrayList<>();
        List<Point> places = new ArrayList<>();
        List<Vector> speeds = new ArrayList<>();
        for (int i = 0; i < knots.size(); i++) {
            if (closed && i == knots.size() - 1) {
                places.add(places.get(0));
                speeds.add(speeds.get(0));
                break;
            }
            int k = Math.min(i, knots.size() - 2);
            double[] basis = basis(knots, k, knots.get(i), 3);
            double[] lower = basis(knots, k, knots.get(i), 2);
            Vector place = Vector.ZERO;
            Vector speed = Vector.ZERO;
            for (int j = 0; j < 4; j++) {
                int column = (k + j) % count;
                Vector control = Vector.of(controls.getEntry(column, 0), controls.getEntry(column, 1));
                place = place.plus(control.times(basis[j]));
                double rising = j > 0 ? lower[j - 1] / (knot(knots, k + j) - knot(knots, k + j - 3)) : 0;
                double falling = j < 3 ? lower[j] / (knot(knots, k + j + 1) - knot(knots, k + j - 2)) : 0;
                speed = speed.plus(control.times(3 * (rising - falling)));
            }
            places.add(Point.ORIGIN.plus(place));
            speeds.add(speed);
        }
        if (startFixed) {
            places.set(0, points.get(0));
        }
        if (endFixed) {
            places.set(places.size() - 1, points.get(points.size() - 1));
        }
        for (int i = 0; i + 1 < knots.size(); i++) {
            double third = (knots.get(i + 1) - knots.get(i)) / 3;
            run.add(Cubic.hermite(
                    places.get(i),
                    speeds.get(i).times(third),
                    places.get(i + 1),
                    speeds.get(i + 1).times(third)));
        }
        return run;
    }

    /** The knot with this index; three more at each end are the same one, or those of the next round. */
    private double knot(List<Double> knots, int index) {
        int last = knots.size() - 1;
        if (!closed) {
            return knots.get(Math.min(Math.max(index, 0), last));
        }
        return knots.get(Math.floorMod(index, last)) + Math.floorDiv(index, last);
    }

    /** Returns the B-splines of a degree that are not zero on the interval, at a place in it (Cox, de Boor). */
    private double[] basis(List<Double> knots, int k, double at, int degree) {
        double[] basis = new double[degree + 1];
        basis[0] = 1;
        for (int d = 1; d <= degree; d++) {
            double carried = 0;
            for (int j = 0; j < d; j++) {
                double right = knot(knots, k + j + 1);
                double left = knot(knots, k + j + 1 - d);
                double part = basis[j] / (right - left);
                basis[j] = carried + (right - at) * part;
                carried = (at - left) * part;
            }
            basis[d] = carried;
        }
        return basis;
    }
}
