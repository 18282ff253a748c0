package org.oaktag.bench;

import java.awt.geom.CubicCurve2D;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Point;

/** The same curves as the peers take them. */
final class Peers {

    private static final GeometryFactory JTS = new GeometryFactory();

    private Peers() {}

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

    /** The length of a curve as the sum of the segments that java.awt flattens it into. */
    static double flattenedLength(CubicCurve2D cubic, double flatness) {
        double[] at = new double[6];
        double length = 0;
        double x = 0;
        double y = 0;
        for (PathIterator it = cubic.getPathIterator(null, flatness); !it.isDone(); it.next()) {
            if (it.currentSegment(at) != PathIterator.SEG_MOVETO) {
                length += Math.hypot(at[0] - x, at[1] - y);
            }
            x = at[0];
            y = at[1];
        }
        return length;
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
