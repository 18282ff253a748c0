package org.oaktag.laws.geometry;

import org.locationtech.jts.geom.Coordinate;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;

/** A path as the ends of short chords, and the distance of a point from them. */
final class Polyline {
    private final double[] x;
    private final double[] y;

    private Polyline(double[] x, double[] y) {
        this.x = x;
        this.y = y;
    }

    static Polyline of(Path path) {
        int chords = 0;
        for (Curve curve : path.curves()) {
            chords += chords(curve);
        }
        double[] x = new double[chords + 1];
        double[] y = new double[chords + 1];
        int at = 0;
        for (Curve curve : path.curves()) {
            for (int k = 0; k < chords(curve); k++) {
                Point point = curve.pointAt((double) k / chords(curve));
                x[at] = point.x();
                y[at++] = point.y();
            }
        }
        x[at] = path.end().x();
        y[at] = path.end().y();
        return new Polyline(x, y);
    }

    private static int chords(Curve curve) {
        return curve instanceof Cubic ? 400 : 1;
    }

    Coordinate[] coordinates() {
        Coordinate[] all = new Coordinate[x.length];
        for (int i = 0; i < all.length; i++) {
            all[i] = new Coordinate(x[i], y[i]);
        }
        return all;
    }

    double distance(Point point) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < x.length; i++) {
            double wayX = x[i] - x[i - 1];
            double wayY = y[i] - y[i - 1];
            double armX = point.x() - x[i - 1];
            double armY = point.y() - y[i - 1];
            double square = wayX * wayX + wayY * wayY;
            double share = square == 0 ? 0 : Math.min(Math.max((armX * wayX + armY * wayY) / square, 0), 1);
            double offX = armX - share * wayX;
            double offY = armY - share * wayY;
            least = Math.min(least, offX * offX + offY * offY);
        }
        return Math.sqrt(least);
    }
}
