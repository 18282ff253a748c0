package org.oaktag.blocks;

import java.util.List;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.FlatShape;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;

/**
 * The front or the back half of a raglan sleeve laid flat beside a body, folded along the seam over the arm.
 *
 * <p>A rigid motion puts the upper end of its raglan line on the body's and its underarm point on the ray from there to
 * the body's. Between the two it is bounded by the body's line.
 */
final class FlatRaglan {

    private final Path line;
    private final Piece sleeve;
    private final Transform motion;

    private FlatRaglan(Path line, Piece sleeve, Transform motion) {
        this.line = line;
        this.sleeve = sleeve;
        this.motion = motion;
    }

    /**
     * Places a sleeve.
     *
     * @param line the body's raglan line and armhole, from the neckline to the underarm
     * @param sleeve its half of the sleeve, which is drawn with the arm at the left
     */
    static FlatRaglan beside(Path line, Piece sleeve) {
        Transform turnedOver = Transform.mirrorX(0);
        Point top = turnedOver.apply(sleeve.path(TopEdges.RAGLAN).start());
        Vector own = turnedOver.apply(sleeve.path(TopEdges.UNDERARM).start()).minus(top);
        Vector wanted = line.end().minus(line.start());
        return new FlatRaglan(
                line,
                sleeve,
                turnedOver
                        .then(Transform.rotation(own.angleTo(wanted), top))
                        .then(Transform.translation(line.start().minus(top))));
    }

    /** Returns the sleeve's part of the neckline, from the raglan line to the shoulder. */
    Path neckline() {
        return placed(sleeve.path(TopEdges.NECKLINE)).reversed();
    }

    FlatShape shape() {
        return FlatShape.outside(
                        FlatShape.closed(List.of(
                                line,
                                placed(sleeve.path(TopEdges.UNDERARM)),
                                placed(sleeve.path(EdgeNames.HEM)),
                                placed(sleeve.path(TopEdges.OVER_ARM)),
                                placed(sleeve.path(TopEdges.SHOULDER)),
                                placed(sleeve.path(TopEdges.NECKLINE)))),
                        sleeve.cloth())
                .ribbedAlong(motion.apply(
                        sleeve.grainline().bottom().minus(sleeve.grainline().top())));
    }

    private Path placed(Path path) {
        return path.transformed(motion);
    }
}
