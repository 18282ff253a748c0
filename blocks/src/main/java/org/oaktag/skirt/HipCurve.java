package org.oaktag.skirt;

import org.oaktag.geometry.Arcs;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/** The side from the waist to the hip, where it is upright: one curve that bends one way. */
final class HipCurve {

    private static final Vector DOWN = Vector.of(0, 1);

    /** The handle at the hip is longer, so that the curve eases out into the line below. */
    private static final double EASED_OUT = 1.25;

    private HipCurve() {}

    /** Returns how far it leans outwards at the waist, radians: twice as far as its chord. */
    static double lean(Point waist, Point hip) {
        return 2 * Math.atan((hip.x() - waist.x()) / (hip.y() - waist.y()));
    }

    static Cubic between(Point waist, Point hip) {
        double lean = lean(waist, hip);
        double handle = Arcs.handle(waist.distanceTo(hip), lean);
        return Cubic.hermite(waist, DOWN.rotated(-lean).times(handle), hip, DOWN.times(handle * EASED_OUT));
    }
}
