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

    private NeckShape() {}

    static Path front(Point centre, Point sideNeck, Vector alongShoulder) {
        return draw(centre, sideNeck, alongShoulder, FRONT_ALONG, FRONT_DOWN);
    }

    static Path back(Point centre, Point sideNeck, Vector alongShoulder) {
        return draw(centre, sideNeck, alongShoulder, BACK_ALONG, BACK_DOWN);
    }

    private static Path draw(Point centre, Point sideNeck, Vector alongShoulder, double along, double down) {
        Vector across = sideNeck.minus(centre);
        Vector inward = alongShoulder.rightNormal();
        return Path.of(new Cubic(
                centre,
                centre.plus(Vector.of(along * across.x(), 0)),
                sideNeck.plus(inward.times(down * Math.abs(across.y()))),
                sideNeck));
    }
}
