package org.oaktag.blocks;

import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * The hem of a half body, from the side seam, which it leaves square, to the centre, where it arrives level. Where the
 * side seam slants, the side corner is raised so that the hem is an arc of a parabola that does not dip.
 */
final class HemShape {

    private static final double LEVEL = 1e-12;
    private static final double HANDLE = 2.0 / 3;

    private HemShape() {}

    /**
     * Returns how far up a straight side seam its lower end has to move.
     *
     * @param across from the centre to the unraised corner, in millimetres
     * @param downSide the direction of the side seam, downwards
     */
    static double raise(double across, Vector downSide) {
        double slope = downSide.x() / downSide.y();
        return across * slope / (2 * downSide.y() + downSide.x() * slope);
    }

    /**
     * Returns how far the middle of an edge lies below its ends, where the edges that meet it on both sides are
     * straight and it is square to them; negative where these lean inwards and the middle is higher.
     *
     * @param across from the middle to an end, in millimetres
     * @param downSide the direction of the edge that ends there, downwards
     */
    static double sag(double across, Vector downSide) {
        return across * downSide.x() / downSide.y() / 2;
    }

    /** Draws the hem. */
    static Path draw(Point corner, Vector downSide, Point centre) {
        if (Math.abs(downSide.x()) <= LEVEL && corner.y() == centre.y()) {
            return Path.of(new Line(corner, centre));
        }
        double run = corner.x() - centre.x();
        Vector inward = downSide.rightNormal();
        return Path.of(new Cubic(
                corner,
                corner.plus(inward.times(HANDLE * run / 2 / downSide.y())),
                centre.plus(Vector.of(HANDLE * run / 2, 0)),
                centre));
    }

    /**
     * Draws the hem so that it leaves the side seam turned off square by an angle.
     *
     * @param turn how far clockwise on paper the hem is turned from square to the side seam, in radians
     */
    static Path draw(Point corner, Vector downSide, Point centre, double turn) {
        if (turn == 0) {
            return draw(corner, downSide, centre);
        }
        double run = corner.x() - centre.x();
        Vector inward = downSide.rightNormal().rotated(turn);
        return Path.of(new Cubic(
                corner,
                corner.plus(inward.times(HANDLE * run / 2 / -inward.x())),
                centre.plus(Vector.of(HANDLE * run / 2, 0)),
                centre));
    }
}
