package org.oaktag.geometry;

/**
 * How often a closed path runs round a point: the signed crossings of the ray from the point to the right, found on the curves
 * themselves.
 *
 * <p>Each curve is cut where it is level (roots of y'). A stretch between cuts rises or falls throughout; it crosses the ray's height
 * if exactly one of its ends is above it, which counts a shared end once, and whether it does so right of the point is decided by the
 * stretch's box, else by the root of y(t) = height.
 */
final class Winding {
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
            Bounds hull = curve instanceof Cubic cubic ? cubic.hull() : curve.bounds();
            if (point.x() >= hull.minX() - tolerance
                    && point.x() <= hull.maxX() + tolerance
                    && point.y() >= hull.minY() - tolerance
                    && point.y() <= hull.maxY() + tolerance
                    && curve.nearest(point).distance() <= tolerance) {
                return true;
            }
        }
        return false;
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
        double y0 = cubic.start().y();
        double y1 = cubic.control1().y();
        double y2 = cubic.control2().y();
        double y3 = cubic.end().y();
        boolean allAbove = y0 <= p.y() && y1 <= p.y() && y2 <= p.y() && y3 <= p.y();
        boolean allBelow = y0 > p.y() && y1 > p.y() && y2 > p.y() && y3 > p.y();
        boolean allLeft = cubic.start().x() < p.x()
                && cubic.control1().x() < p.x()
                && cubic.control2().x() < p.x()
                && cubic.end().x() < p.x();
        if (allAbove || allBelow || allLeft) {
            return 0;
        }
        int sum = 0;
        double from = 0;
        Point atFrom = cubic.start();
        for (double cut : Polynomials.quadraticRoots(y1 - y0, y2 - y1, y3 - y2)) {
            Point atCut = cubic.pointAt(cut);
            sum += ofStretch(cubic, from, atFrom, cut, atCut, p);
            from = cut;
            atFrom = atCut;
        }
        return sum + ofStretch(cubic, from, atFrom, 1, cubic.end(), p);
    }

    private static int ofStretch(Cubic cubic, double from, Point a, double to, Point b, Point p) {
        boolean down = a.y() <= p.y();
        if (down == b.y() <= p.y()) {
            return 0;
        }
        double low = from;
        double high = to;
        while (true) {
            double middle = 0.5 * (low + high);
            if (middle <= low || middle >= high) {
                break;
            }
            if (cubic.pointAt(middle).y() <= p.y() == down) {
                low = middle;
            } else {
                high = middle;
            }
        }
        boolean right = cubic.pointAt(high).x() > p.x();
        if (!right) {
            return 0;
        }
        return down ? 1 : -1;
    }
}
