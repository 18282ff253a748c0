package org.oaktag.blocks;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * An armhole of two parts, one hollow from the shoulder to the side. The upper part leaves the shoulder square and
 * comes to the pitch point upright; the lower part goes on from there and arrives square to the side seam. The lower
 * part is always the last curve of the edge.
 *
 * <pre>{@code
 * Point pitch = ArmholeShape.pitch(front.path(ARMHOLE));   // where the armhole is upright
 * }</pre>
 *
 * <p>The upper part is hollow only where the lines along which it leaves and arrives meet between its ends: the pitch
 * point must lie inside the shoulder point, but by no more than {@link #mostInside}. The handles of either
 * part are those that come near to the greatest least radius for its ends: under the arm 0.67 of the run or more.
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

    /**
     * Where run and drop of the lower part are as one to two, the handle on the longer of them is this share of it and
     * that on the shorter the whole; found by trying them all.
     */
    private static final double LONG_AT_HALF = 0.386;

    /** By how much the share on the longer one grows as the shorter one becomes less; it is no more than the most. */
    private static final double LONG_RISE = 1.12;

    private static final double MOST_LONG = 0.7;

    /** The share of both handles where run and drop are equal: near enough a quarter of a circle. */
    private static final double ROUND = 0.555;

    private static final Vector DOWN = Vector.of(0, 1);

    private ArmholeShape() {}

    /** Returns the pitch point of an armhole: where its last curve begins. */
    public static Point pitch(Path armhole) {
        List<Curve> curves = armhole.curves();
        return curves.get(curves.size() - 1).start();
    }

    /**
     * Returns how far inside the shoulder point the pitch point may lie for the upper part to be one hollow, as a share
     * of the drop between them.
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
        double slim = Math.min(run, drop) / Math.max(run, drop);
        double alongLonger = alongLonger(slim);
        double alongShorter = 1 - (1 - ROUND) * Math.max(0, 2 * slim - 1);
        double down = run > drop ? alongShorter : alongLonger;
        double out = run > drop ? alongLonger : alongShorter;
        return new Cubic(pitch, pitch.plus(DOWN.times(down * drop)), underarm.lerp(corner, out), underarm);
    }

    private static double alongLonger(double slim) {
        return slim < 0.5
                ? Math.min(MOST_LONG, LONG_AT_HALF + LONG_RISE * (0.5 - slim))
                : LONG_AT_HALF + (ROUND - LONG_AT_HALF) * (2 * slim - 1);
    }
}
