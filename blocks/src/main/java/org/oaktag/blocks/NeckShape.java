package org.oaktag.blocks;

import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * The neckline of a half front or half back: from the centre, which it leaves square, to the side neck point, where it
 * arrives square to the shoulder, so that front and back run on smoothly across the shoulder seam.
 */
final class NeckShape {

    private static final double FRONT_ALONG = 0.52;
    private static final double FRONT_DOWN = 0.52;
    private static final double BACK_ALONG = 0.62;
    private static final double BACK_DOWN = 0.465;
    private static final double BOAT_ALONG = 0.66;
    private static final double BOAT_DOWN = 0.55;

    private NeckShape() {}

    static Path front(Point centre, Point sideNeck, Vector alongShoulder) {
        return round(BodyHalf.FRONT, centre, sideNeck, alongShoulder.leftNormal());
    }

    static Path back(Point centre, Point sideNeck, Vector alongShoulder) {
        return round(BodyHalf.BACK, centre, sideNeck, alongShoulder.leftNormal());
    }

    /** Draws a neckline that arrives at the side neck point in a direction of its own. */
    static Path round(BodyHalf half, Point centre, Point sideNeck, Vector arriving) {
        return half == BodyHalf.FRONT
                ? draw(centre, sideNeck, arriving, FRONT_ALONG, FRONT_DOWN)
                : draw(centre, sideNeck, arriving, BACK_ALONG, BACK_DOWN);
    }

    /** Draws a neckline that is flat across the middle and turns up to the shoulder at its end. */
    static Path boat(Point centre, Point sideNeck, Vector arriving) {
        return draw(centre, sideNeck, arriving, BOAT_ALONG, BOAT_DOWN);
    }

    private static Path draw(Point centre, Point sideNeck, Vector arriving, double along, double down) {
        Vector across = sideNeck.minus(centre);
        return Path.of(new Cubic(
                centre,
                centre.plus(Vector.of(along * across.x(), 0)),
                sideNeck.plus(arriving.times(-down * Math.abs(across.y()))),
                sideNeck));
    }
}
