package org.oaktag.blocks;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * An armhole of two parts, one hollow from the shoulder to the side. The upper part leaves the shoulder square and comes
 * to the pitch point upright; the lower part goes on from there and arrives square to the side seam. The lower part is
 * always the last curve of the edge.
 *
 * <pre>{@code
 * Point pitch = ArmholeShape.pitch(front.path(ARMHOLE));   // where the armhole is upright
 * }</pre>
 *
 * <p>The upper part is hollow only where the lines along which it leaves and arrives meet between its ends: the pitch
 * point must lie inside the shoulder point, but by no more than {@link #mostInside}. The handles of either
 * part are those that give the greatest least radius for its ends: under the arm some 0.65 to 0.78 of the run.
 */
public final class ArmholeShape {

    /** The least run from the pitch point out to the underarm point, in millimetres: with less there is no armhole. */
    static final double LEAST_RUN = 28;

    /** How far inside the shoulder point the pitch point lies at the least, as a share of the drop between them. */
    static final double LEAST_INSIDE = 0.08;

    /** How much of the room up to where its tangents no longer meet the upper part may use. */
    private static final double MOST_OF_ROOM = 0.85;

    /** The handle of the upper part on its longer side, as a share of the way to where its tangents meet, likewise. */
    private static final double LONG_HANDLE = 0.975;

    private static final double LONG_HANDLE_FALL = 0.74;
    private static final double BENT_HANDLE = 0.36;

    /** The upright handle of the lower part, as a share of its drop, falls with run over drop; found by trying them all. */
    private static final double FALL_AT_NO_RUN = 0.946;

    private static final double FALL_BY_RUN = 1.12;
    private static final double LEAST_FALL = 0.2;
    private static final double MOST_FALL = 0.7;

    private static final Vector DOWN = Vector.of(0, 1);

    private ArmholeShape() {}

    /** Returns the pitch point of an armhole: where its last curve begins. */
    public static Point pitch(Path armhole) {
        List<Curve> curves = armhole.curves();
        return curves.get(curves.size() - 1).start();
    }

    /**
     * Returns how far inside the shoulder point the pitch point may lie for the upper part to be one hollow, as a share of
     * the drop between them.
     */
    static double mostInside(Vector alongShoulder) {
        return alongShoulder.x() <= 0
                ? Double.POSITIVE_INFINITY
                : Math.max(0, MOST_OF_ROOM * alongShoulder.y() / alongShoulder.x());
    }

    /** Draws the whole armhole. */
    static Path draw(Point shoulder, Vector alongShoulder, Point pitch, Point underarm, Vector downSide) {
        return Path.of(upper(shoulder, alongShoulder, pitch), lower(pitch, underarm, downSide));
    }

    /** Draws what lies below the pitch point to another underarm point; above it nothing moves. */
    static Path withUnderarm(Path armhole, Point underarm, Vector downSide) {
        List<Curve> curves = new ArrayList<>(armhole.curves());
        curves.set(curves.size() - 1, lower(pitch(armhole), underarm, downSide));
        return Path.of(curves);
    }

    /** Draws it through another pitch point, above which it leaves the shoulder in the direction that it had. */
    static Path withPitch(Path armhole, Point pitch, Point underarm, Vector downSide) {
        List<Curve> curves = armhole.curves();
        Path upper = Path.of(curves.subList(0, curves.size() - 1));
        Path above = curves.size() == 2
                ? Path.of(upper(upper.start(), upper.startDirection().leftNormal(), pitch))
                : Redraw.between(upper, upper.start(), pitch);
        return above.then(Path.of(lower(pitch, underarm, downSide)));
    }

    private static Cubic upper(Point shoulder, Vector alongShoulder, Point pitch) {
        Vector leaving = alongShoulder.rightNormal();
        double in = leaving.x() < 0 ? (shoulder.x() - pitch.x()) / -leaving.x() : 0;
        double up = pitch.y() - shoulder.y() - in * leaving.y();
        if (in > 0 && up > 0) {
            Point corner = shoulder.plus(leaving.times(in));
            double longer = LONG_HANDLE - LONG_HANDLE_FALL * Math.min(in, up) / Math.max(in, up);
            return new Cubic(
                    shoulder,
                    shoulder.lerp(corner, in > up ? longer : 1),
                    pitch.lerp(corner, up > in ? longer : 1),
                    pitch);
        }
        double handle = BENT_HANDLE * shoulder.distanceTo(pitch);
        return new Cubic(shoulder, shoulder.plus(leaving.times(handle)), pitch.plus(DOWN.times(-handle)), pitch);
    }

    private static Cubic lower(Point pitch, Point underarm, Vector downSide) {
        Vector intoArmhole = downSide.rightNormal();
        double run = (underarm.x() - pitch.x()) / -intoArmhole.x();
        Point corner = underarm.plus(intoArmhole.times(run));
        double drop = corner.y() - pitch.y();
        double fall = Math.min(Math.max(FALL_AT_NO_RUN - FALL_BY_RUN * run / drop, LEAST_FALL), MOST_FALL);
        return new Cubic(pitch, pitch.plus(DOWN.times(fall * drop)), corner, underarm);
    }
}
