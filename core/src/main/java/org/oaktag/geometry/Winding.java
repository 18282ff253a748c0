package org.oaktag.geometry;

/**
 * How often a closed path runs round a point: the signed crossings of the ray from the point to the right, found on the
 * curves themselves.
 *
 * <p>A curve can be drawn to its chord inside the hull of its control points. So where the point lies off the hull, the
 * chord crosses the ray as often as the curve: not at all if the hull lies above, below or left of the point, else as
 * its ends tell, an end on the ray's height being above it, so that a shared end counts once. A cubic of which neither
 * the upright box nor the strip along its chord leaves the point outside is halved, and its halves are asked. Off the
 * line that soon ends. What is true of the box of a curve is true of that of a run of them, so only the runs are opened
 * whose box holds the point.
 */
final class Winding {
    /** After so many halvings a part is short enough for nearly every point off the line to lie off it. */
    private static final int HALVINGS = 8;

    /** A part so short that rounding has used up its length counts as its chord. */
    private static final int MAX_HALVINGS = 52;

    /** Allowance for the rounding of the halvings, in units in the last place of the greatest coordinate. */
    private static final double ROUNDING = 8;

    /** No count: after all halvings the point is still too near to a part. */
    private static final int UNSURE = Integer.MIN_VALUE;

    private Winding() {}

    static int number(Path path, Point point) {
        CurveTree tree = path.tree();
        int sum = 0;
        int node = 0;
        while (node < tree.nodes()) {
            if (tree.isBeside(node, point, 0)) {
                sum += ofRun(tree, node, point);
                node = tree.after(node);
                continue;
            }
            if (tree.isCurve(node)) {
                sum += ofCurve(path.curves().get(tree.from(node)), point, tree);
            }
            node++;
        }
        return sum;
    }

    /** Tells whether the path winds round the point or passes it within the tolerance. */
    static boolean holds(Path path, Point point, double tolerance) {
        CurveTree tree = path.tree();
        int sum = 0;
        int node = 0;
        while (node < tree.nodes()) {
            if (tree.isBeside(node, point, tolerance)) {
                sum += ofRun(tree, node, point);
                node = tree.after(node);
                continue;
            }
            if (tree.isCurve(node)) {
                Curve curve = path.curves().get(tree.from(node));
                int count = curve instanceof Cubic cubic
                        ? ofCubic(cubic, point, tolerance, HALVINGS)
                        : ofLine(curve.start(), curve.end(), point, tolerance);
                if (count == UNSURE) {
                    if (curve.nearest(point).distance() <= tolerance) {
                        return true;
                    }
                    count = ofCurve(curve, point, tree);
                }
                sum += count;
            }
            node++;
        }
        return sum != 0;
    }

    /**
     * The count of a run whose box does not hold the point: right of it the ends of the run tell, else the ray misses
     * it.
     */
    private static int ofRun(CurveTree tree, int node, Point point) {
        if (!(tree.minX(node) > point.x())) {
            return 0;
        }
        return (tree.endY(node) > point.y() ? 1 : 0) - (tree.startY(node) > point.y() ? 1 : 0);
    }

    private static int ofCurve(Curve curve, Point point, CurveTree tree) {
        if (!(curve instanceof Cubic cubic)) {
            return ofLine(curve.start(), curve.end(), point);
        }
        double coarse = tree.reach() + Math.abs(point.x()) + Math.abs(point.y());
        int count = ofCubic(cubic, point, ROUNDING * Math.ulp(coarse), MAX_HALVINGS);
        return count == UNSURE ? ofLine(cubic.start(), cubic.end(), point) : count;
    }

    /** The count of a segment, unsure if the point may lie within the margin of it. */
    private static int ofLine(Point a, Point b, Point p, double margin) {
        double alongX = b.x() - a.x();
        double alongY = b.y() - a.y();
        double across = alongX * (p.y() - a.y()) - alongY * (p.x() - a.x());
        // Twice the margin, and more than the length: room for rounding.
        return Math.abs(across) > 2 * margin * (Math.abs(alongX) + Math.abs(alongY)) ? ofLine(a, b, p) : UNSURE;
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

    private static int ofCubic(Cubic cubic, Point p, double margin, int halvings) {
        return ofCubic(
                cubic.start().x() - p.x(),
                cubic.start().y() - p.y(),
                cubic.control1().x() - p.x(),
                cubic.control1().y() - p.y(),
                cubic.control2().x() - p.x(),
                cubic.control2().y() - p.y(),
                cubic.end().x() - p.x(),
                cubic.end().y() - p.y(),
                margin,
                halvings);
    }

    /**
     * The count of a cubic as it is seen from the point; without a single object, as it is asked for every point of a
     * cloud.
     */
    private static int ofCubic(
            double x0,
            double y0,
            double x1,
            double y1,
            double x2,
            double y2,
            double x3,
            double y3,
            double margin,
            int halvings) {
        double alongX = x3 - x0;
        double alongY = y3 - y0;
        double room = margin * (Math.abs(alongX) + Math.abs(alongY));
        double side0 = alongX * y0 - alongY * x0;
        double side1 = alongX * y1 - alongY * x1;
        double side2 = alongX * y2 - alongY * x2;
        boolean offStrip =
                (side0 > room && side1 > room && side2 > room) || (side0 < -room && side1 < -room && side2 < -room);
        boolean right = x0 > margin && x1 > margin && x2 > margin && x3 > margin;
        boolean below = y0 > margin && y1 > margin && y2 > margin && y3 > margin;
        boolean left = x0 < -margin && x1 < -margin && x2 < -margin && x3 < -margin;
        boolean above = y0 < -margin && y1 < -margin && y2 < -margin && y3 < -margin;
        if (below || above || left) {
            return 0;
        }
        if (offStrip || right) {
            int crossing = (y3 > 0 ? 1 : 0) - (y0 > 0 ? 1 : 0);
            return right || (crossing > 0 == side0 < 0) ? crossing : 0;
        }
        if (halvings == 0) {
            return UNSURE;
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
        int first = ofCubic(x0, y0, abx, aby, abcx, abcy, mx, my, margin, halvings - 1);
        if (first == UNSURE) {
            return UNSURE;
        }
        int second = ofCubic(mx, my, bcdx, bcdy, cdx, cdy, x3, y3, margin, halvings - 1);
        return second == UNSURE ? UNSURE : first + second;
    }
}
