package org.oaktag.blocks;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * An armhole of two parts. The upper part leaves the shoulder square and comes to the pitch point upright; the lower
 * part goes on from there and arrives square to the side seam. The lower part is always the last curve of the edge.
 *
 * <pre>{@code
 * Point pitch = ArmholeShape.pitch(front.path(ARMHOLE));   // where the armhole is upright
 * }</pre>
 */
public final class ArmholeShape {

    /** The pitch point stays this far inside the shoulder point, in millimetres, or the armhole would bulge. */
    static final double INSIDE_SHOULDER = 6;

    /** The pitch point stays this far inside the underarm point, in millimetres, or there is no armhole to speak of. */
    static final double INSIDE_UNDERARM = 25;

    private static final double UPPER_HANDLE = 0.36;
    private static final Vector DOWN = Vector.of(0, 1);

    private ArmholeShape() {}

    /** Returns the pitch point of an armhole: where its last curve begins. */
    public static Point pitch(Path armhole) {
        List<Curve> curves = armhole.curves();
        return curves.get(curves.size() - 1).start();
    }

    /** Draws the whole armhole. */
    static Path draw(
            BodyHalf half, Point shoulder, Vector alongShoulder, Point pitch, Point underarm, Vector downSide) {
        double handle = UPPER_HANDLE * shoulder.distanceTo(pitch);
        Cubic upper = new Cubic(
                shoulder,
                shoulder.plus(alongShoulder.rightNormal().times(handle)),
                pitch.plus(DOWN.times(-handle)),
                pitch);
        return Path.of(upper, lower(half, pitch, underarm, downSide));
    }

    /** Draws what lies below the pitch point to another underarm point; above it nothing moves. */
    static Path withUnderarm(BodyHalf half, Path armhole, Point underarm, Vector downSide) {
        List<Curve> curves = new ArrayList<>(armhole.curves());
        curves.set(curves.size() - 1, lower(half, pitch(armhole), underarm, downSide));
        return Path.of(curves);
    }

    /** Draws it through another pitch point, above which it leaves the shoulder in the direction that it had. */
    static Path withPitch(BodyHalf half, Path armhole, Point pitch, Point underarm, Vector downSide) {
        List<Curve> curves = armhole.curves();
        Path upper = Path.of(curves.subList(0, curves.size() - 1));
        return Redraw.between(upper, upper.start(), pitch).then(Path.of(lower(half, pitch, underarm, downSide)));
    }

    private static Cubic lower(BodyHalf half, Point pitch, Point underarm, Vector downSide) {
        Vector intoArmhole = downSide.rightNormal();
        return new Cubic(
                pitch,
                pitch.plus(DOWN.times(half.fallShare() * (underarm.y() - pitch.y()))),
                underarm.plus(intoArmhole.times(half.runShare() * (underarm.x() - pitch.x()))),
                underarm);
    }
}
