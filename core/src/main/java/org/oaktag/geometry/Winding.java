package org.oaktag.geometry;

/**
 * How often a closed path runs round a point: the signed crossings of the ray from the point to the right, found on the curves
 * themselves.
 *
 * <p>A curve whose control points all lie above the ray's height, below it, or left of the point does not count; of one whose control
 * points all lie right of the point the ends alone tell, an end on the ray's height being above it, so that a shared end counts once.
 * Any other is halved, and its halves are asked. Off the line that soon ends.
 */
final class Winding {
    /** After so many halvings a part is short enough for nearly every point off the line to lie off its box. */
    private static final int HALVINGS = 8;

    /** A part so short that rounding has used up its length counts as its chord. */
    private static final int MAX_HALVINGS = 52;

    /** Allowance for the rounding of the halvings, in units in the last place of the sum of the coordinates. */
    private static final double ROUNDING = 8;

    private Winding() {}

    static int number(Path path, Point point) {
        int sum = 0;
        for (Curve curve : path.curves()) {
            if (curve instanceof Cubic cubic) {
                sum += ofCubic(cubic, point);
            } else {
                sum += ofLine(curve.start(), curve.end(), point);
            }
        }
        return sum;
    }

    static boolean isOn(Path path, Point point, double tolerance) {
        for (Curve curve : path.curves()) {
            if (mayReach(curve, point, tolerance) && curve.nearest(point).distance() <= tolerance) {
                return true;
            }
        }
        return false;
    }

    /** Tells whether the boxes of the curve's parts leave it open that the curve comes this near to the point; of a line it is open. */
    private static boolean mayReach(Curve curve, Point p, double tolerance) {
        if (!(curve instanceof Cubic cubic)) {
            return true;
        }
        double x0 = cubic.start().x() - p.x();
        double y0 = cubic.start().y() - p.y();
        double x1 = cubic.control1().x() - p.x();
        double y1 = cubic.control1().y() - p.y();
        double x2 = cubic.control2().x() - p.x();
        double y2 = cubic.control2().y() - p.y();
        double x3 = cubic.end().x() - p.x();
        double y3 = cubic.end().y() - p.y();
        double coarse = Math.abs(p.x()) + Math.abs(p.y()) + Math.abs(x0) + Math.abs(y0) + Math.abs(x1) + Math.abs(y1);
        coarse += Math.abs(x2) + Math.abs(y2) + Math.abs(x3) + Math.abs(y3);
        return mayReach(x0, y0, x1, y1, x2, y2, x3, y3, tolerance + ROUNDING * Math.ulp(coarse), HALVINGS);
    }

    /** The same for a cubic as it is seen from the point; without a single object, as it is asked for every point of a cloud. */
    private static boolean mayReach(
            double x0,
            double y0,
            double x1,
            double y1,
            double x2,
            double y2,
            double x3,
            double y3,
            double distance,
            int halvings) {
        if (Math.min(Math.min(x0, x1), Math.min(x2, x3)) > distance
                || Math.max(Math.max(x0, x1), Math.max(x2, x3)) < -distance
                || Math.min(Math.min(y0, y1), Math.min(y2, y3)) > distance
                || Math.max(Math.max(y0, y1), Math.max(y2, y3)) < -distance) {
            return false;
        }
        if (halvings == 0) {
            return true;
        }
        double abx = 0.5 * (x0 + x1);
        double aby = 0.5 * (y0 + y1);
        double bcx = 0.5 * (x1 + x2);
        double bcy = 0.5 * (y1 + y2);
        double cdx = 0.5 * (x2 + x3);
        double cdy = 0.5 * (y2 + y3);
        double abcx = 0.5 * (abx + bcx);
        double abcy = 0.5 * (aby + bcy);
        double bcdx = 0.5 * (bcx + cdx);
        double bcdy = 0.5 * (bcy + cdy);
        double mx = 0.5 * (abcx + bcdx);
        double my = 0.5 * (abcy + bcdy);
        return mayReach(x0, y0, abx, aby, abcx, abcy, mx, my, distance, halvings - 1)
                || mayReach(mx, my, bcdx, bcdy, cdx, cdy, x3, y3, distance, halvings - 1);
    }

    private static int ofLine(Point a, Point b, Point p) {
        boolean down = a.y() <= p.y();
        if (down == b.y() <= p.y()) {
            return 0;
        }
        // The side of the line on which p lies, which is exact enough to agree with the same line run backwards.
        double side = (b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x());
        if (down) {
            return side > 0 ? 1 : 0;
        }
        return side < 0 ? -1 : 0;
    }

    private static int ofCubic(Cubic cubic, Point p) {
        return ofCubic(
                cubic.start().x() - p.x(),
                cubic.start().y() - p.y(),
                cubic.control1().x() - p.x(),
                cubic.control1().y() - p.y(),
                cubic.control2().x() - p.x(),
                cubic.control2().y() - p.y(),
                cubic.end().x() - p.x(),
                cubic.end().y() - p.y(),
                MAX_HALVINGS);
    }

    /** The count of a cubic as it is seen from the point. Where it lies right of the point throughout, its ends tell. */
    private static int ofCubic(
            double x0, double y0, double x1, double y1, double x2, double y2, double x3, double y3, int halvings) {
        boolean allAbove = y0 <= 0 && y1 <= 0 && y2 <= 0 && y3 <= 0;
        boolean allBelow = y0 > 0 && y1 > 0 && y2 > 0 && y3 > 0;
        boolean allLeft = x0 < 0 && x1 < 0 && x2 < 0 && x3 < 0;
        if (allAbove || allBelow || allLeft) {
            return 0;
        }
        if (x0 > 0 && x1 > 0 && x2 > 0 && x3 > 0) {
            return (y3 > 0 ? 1 : 0) - (y0 > 0 ? 1 : 0);
        }
        if (halvings == 0) {
            return ofLine(new Point(x0, y0), new Point(x3, y3), Point.ORIGIN);
        }
        double abx = 0.5 * (x0 + x1);
        double aby = 0.5 * (y0 + y1);
        double bcx = 0.5 * (x1 + x2);
        double bcy = 0.5 * (y1 + y2);
        double cdx = 0.5 * (x2 + x3);
        double cdy = 0.5 * (y2 + y3);
        double abcx = 0.5 * (abx + bcx);
        double abcy = 0.5 * (aby + bcy);
        double bcdx = 0.5 * (bcx + cdx);
        double bcdy = 0.5 * (bcy + cdy);
        double mx = 0.5 * (abcx + bcdx);
        double my = 0.5 * (abcy + bcdy);
        return ofCubic(x0, y0, abx, aby, abcx, abcy, mx, my, halvings - 1)
                + ofCubic(mx, my, bcdx, bcdy, cdx, cdy, x3, y3, halvings - 1);
    }
}
