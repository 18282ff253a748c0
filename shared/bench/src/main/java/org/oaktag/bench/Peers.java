package org.oaktag.bench;

import java.awt.geom.CubicCurve2D;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.function.Predicate;
import org.apache.batik.ext.awt.geom.PathLength;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.exception.MathIllegalArgumentException;
import org.apache.commons.math3.exception.MaxCountExceededException;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Point;

/** The same curves as the peers take them. */
final class Peers {

    private static final GeometryFactory JTS = new GeometryFactory();

    /** How finely curves are flattened for JTS where an accuracy is not asked for. */
    static final int SEGMENTS = 256;

    /** After this many speeds the integrator gives up: it would take seconds over a cusp. */
    private static final int EVALUATIONS = 5_000;

    private Peers() {}

    /** Returns how many of the points lie where they are asked for. */
    static int count(List<Point> points, Predicate<Point> inside) {
        int count = 0;
        for (Point point : points) {
            count += inside.test(point) ? 1 : 0;
        }
        return count;
    }

    static CubicCurve2D awt(Cubic cubic) {
        return new CubicCurve2D.Double(
                cubic.start().x(),
                cubic.start().y(),
                cubic.control1().x(),
                cubic.control1().y(),
                cubic.control2().x(),
                cubic.control2().y(),
                cubic.end().x(),
                cubic.end().y());
    }

    static Path2D awt(List<Curve> outline) {
        Path2D path = new Path2D.Double();
        Point start = outline.get(0).start();
        path.moveTo(start.x(), start.y());
        for (Curve curve : outline) {
            Cubic cubic = Cubic.from(curve);
            path.curveTo(
                    cubic.control1().x(),
                    cubic.control1().y(),
                    cubic.control2().x(),
                    cubic.control2().y(),
                    cubic.end().x(),
                    cubic.end().y());
        }
        path.closePath();
        return path;
    }

    /** The length as the sum of the segments that java.awt flattens the curve into. */
    static double flattenedLength(CubicCurve2D cubic, Fineness fineness) {
        double[] at = new double[6];
        double length = 0;
        double x = 0;
        double y = 0;
        PathIterator it =
                new FlatteningPathIterator(cubic.getPathIterator(null), fineness.flatness(), fineness.halvings());
        for (; !it.isDone(); it.next()) {
            if (it.currentSegment(at) != PathIterator.SEG_MOVETO) {
                length += Math.hypot(at[0] - x, at[1] - y);
            }
            x = at[0];
            y = at[1];
        }
        return length;
    }

    /** Batik's path length, in float. */
    static double batikLength(CubicCurve2D cubic) {
        return new PathLength(cubic).lengthOfPath();
    }

    static Point2D batikPoint(CubicCurve2D cubic, double distance) {
        return new PathLength(cubic).pointAtLength((float) distance);
    }

    /** The length by commons-math's iterative integrator; not a number where it gives up. */
    static double integratedLength(Cubic cubic, double accuracy) {
        try {
            return integrated(cubic, 1, accuracy);
        } catch (MaxCountExceededException e) {
            return Double.NaN;
        }
    }

    /**
     * The parameter at a distance by commons-math's Brent solver over its integrator; not a number where it gives up.
     */
    static double solvedParameter(Cubic cubic, double distance, double accuracy) {
        try {
            return new BrentSolver(1e-14, 1e-14, accuracy)
                    .solve(200, t -> (t <= 0 ? 0 : integrated(cubic, t, accuracy / 10)) - distance, 0, 1);
        } catch (MathIllegalArgumentException | MaxCountExceededException e) {
            return Double.NaN;
        }
    }

    private static double integrated(Cubic cubic, double t, double accuracy) {
        // It stops at the looser of its two accuracies; the relative one is set so low that the absolute one decides.
        return new IterativeLegendreGaussIntegrator(24, 1e-13, accuracy)
                .integrate(EVALUATIONS, u -> cubic.derivativeAt(u).length(), 0, t);
    }

    static LineString jts(Cubic cubic, int segments) {
        Coordinate[] points = new Coordinate[segments + 1];
        for (int i = 0; i <= segments; i++) {
            Point point = cubic.pointAt((double) i / segments);
            points[i] = new Coordinate(point.x(), point.y());
        }
        return JTS.createLineString(points);
    }

    static org.locationtech.jts.geom.Polygon jts(List<Curve> outline, int segmentsACurve) {
        Coordinate[] points = new Coordinate[outline.size() * segmentsACurve + 1];
        int n = 0;
        for (Curve curve : outline) {
            for (int i = 0; i < segmentsACurve; i++) {
                Point point = curve.pointAt((double) i / segmentsACurve);
                points[n++] = new Coordinate(point.x(), point.y());
            }
        }
        points[n] = points[0];
        return JTS.createPolygon(points);
    }

    static org.locationtech.jts.geom.Point jts(Point point) {
        return JTS.createPoint(new Coordinate(point.x(), point.y()));
    }
}
