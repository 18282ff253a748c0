package org.oaktag.geometry;

/**
 * A stretch of a cubic with its own control points, for subdivision. It lies within the hull of these, so shadows of
 * the controls on an axis that lie apart prove that two pieces do; and its tangents lie within the cone of its control
 * polygon's sides, so sides that all turn one way to the other's prove that tangents do.
 *
 * @param cubic the stretch as a curve of its own, halved by de Casteljau's midpoints
 * @param from its parameter on the whole curve
 * @param to its parameter there
 */
record CubicPiece(Cubic cubic, double from, double to) {
    double middle() {
        return 0.5 * (from + to);
    }

    /** Tells whether t lies on the piece, prolonged at both ends by a share of itself and a hair more. */
    boolean holds(double t, double share) {
        double slack = share * (to - from) + 1e-14;
        return t >= from - slack && t <= to + slack;
    }

    CubicPiece firstHalf() {
        Point ab = cubic.start().midpoint(cubic.control1());
        Point bc = cubic.control1().midpoint(cubic.control2());
        Point abc = ab.midpoint(bc);
        Point cd = cubic.control2().midpoint(cubic.end());
        return new CubicPiece(new Cubic(cubic.start(), ab, abc, abc.midpoint(bc.midpoint(cd))), from, middle());
    }

    CubicPiece secondHalf() {
        Point ab = cubic.start().midpoint(cubic.control1());
        Point bc = cubic.control1().midpoint(cubic.control2());
        Point cd = cubic.control2().midpoint(cubic.end());
        Point bcd = bc.midpoint(cd);
        return new CubicPiece(new Cubic(ab.midpoint(bc).midpoint(bcd), bcd, cd, cubic.end()), middle(), to);
    }

    /** Length of the control polygon, mm. */
    double size() {
        return cubic.start().distanceTo(cubic.control1())
                + cubic.control1().distanceTo(cubic.control2())
                + cubic.control2().distanceTo(cubic.end());
    }

    /**
     * Tells whether no control lies further than this from the chord; if there is hardly one, whether all is as good as
     * a point.
     */
    boolean isStraight(double distance) {
        double chord = cubic.start().distanceTo(cubic.end());
        if (chord <= distance) {
            return size() <= 4 * distance;
        }
        Vector along = cubic.end().minus(cubic.start());
        return Math.abs(along.cross(cubic.control1().minus(cubic.start()))) <= distance * chord
                && Math.abs(along.cross(cubic.control2().minus(cubic.start()))) <= distance * chord;
    }

    /** Tells whether boxes or strips prove that the two stay more than the distance apart. */
    boolean isApartFrom(CubicPiece other, double distance) {
        return isApartAlong(cubic, other.cubic, 1, 0, distance)
                || isApartAlong(cubic, other.cubic, 0, 1, distance)
                || isApartAcross(cubic, other.cubic, distance)
                || isApartAcross(other.cubic, cubic, distance);
    }

    private static boolean isApartAcross(Cubic one, Cubic other, double distance) {
        double x = one.end().x() - one.start().x();
        double y = one.end().y() - one.start().y();
        double chord = Math.sqrt(x * x + y * y);
        return chord > 0 && isApartAlong(one, other, -y / chord, x / chord, distance);
    }

    /** Compares the shadows of the control points on an axis. */
    private static boolean isApartAlong(Cubic one, Cubic other, double x, double y, double distance) {
        double ox = one.start().x();
        double oy = one.start().y();
        double a1 = shadow(one.control1(), ox, oy, x, y);
        double a2 = shadow(one.control2(), ox, oy, x, y);
        double a3 = shadow(one.end(), ox, oy, x, y);
        double b0 = shadow(other.start(), ox, oy, x, y);
        double b1 = shadow(other.control1(), ox, oy, x, y);
        double b2 = shadow(other.control2(), ox, oy, x, y);
        double b3 = shadow(other.end(), ox, oy, x, y);
        double minA = Math.min(Math.min(0, a1), Math.min(a2, a3));
        double maxA = Math.max(Math.max(0, a1), Math.max(a2, a3));
        double minB = Math.min(Math.min(b0, b1), Math.min(b2, b3));
        double maxB = Math.max(Math.max(b0, b1), Math.max(b2, b3));
        return minA > maxB + distance || minB > maxA + distance;
    }

    private static double shadow(Point p, double ox, double oy, double x, double y) {
        return (p.x() - ox) * x + (p.y() - oy) * y;
    }

    /** Tells whether every tangent of this piece turns the same way to every tangent of the other. */
    boolean isAslantTo(CubicPiece other) {
        Vector[] mine = hodograph();
        Vector[] theirs = other.hodograph();
        double side = Math.signum(mine[0].cross(theirs[0]));
        if (side == 0) {
            return false;
        }
        for (Vector m : mine) {
            for (Vector t : theirs) {
                if (!(side * m.cross(t) > 0)) {
                    return false;
                }
            }
        }
        return true;
    }

    private Vector[] hodograph() {
        return new Vector[] {
            cubic.control1().minus(cubic.start()),
            cubic.control2().minus(cubic.control1()),
            cubic.end().minus(cubic.control2())
        };
    }
}
