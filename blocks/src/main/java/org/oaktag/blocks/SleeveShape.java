package org.oaktag.blocks;

import java.util.List;
import org.oaktag.garment.Aspect;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeFinish;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;

/**
 * A whole sleeve: the top of the cap at the origin, the back half to the left, the hem level and centred under the
 * underarm points, so that both underarm edges are mirror images and of one length.
 */
final class SleeveShape {

    private static final double UNDERARM_HANDLE = 0.35;
    private static final double GRAIN_MARGIN = 0.12;

    private SleeveShape() {}

    /** Draws a sleeve that tapers from its underarm points to its hem in a line that is upright at both ends. */
    static Piece draw(CapFit fit, CapFit.Solved cap, double length, double hemWidth, Cloth cloth) {
        Path capFront = capFront(fit, cap, Point.of(0, 0));
        Path capBack = capBack(fit, cap, Point.of(0, 0));
        Point front = capFront.end();
        Point back = capBack.start();
        double middle = (front.x() + back.x()) / 2;
        Point hemFront = Point.of(middle + hemWidth / 2, length);
        Point hemBack = Point.of(middle - hemWidth / 2, length);
        Piece piece = Piece.of(
                TopNames.SLEEVE,
                List.of(
                        new Edge(TopEdges.CAP_BACK, capBack).withAspect(Aspect.BACK),
                        new Edge(TopEdges.CAP_FRONT, capFront).withAspect(Aspect.FRONT),
                        new Edge(TopEdges.UNDERARM_FRONT, upright(front, hemFront)).withAspect(Aspect.FRONT),
                        Edge.straight(EdgeNames.HEM, hemFront, hemBack).withFinish(EdgeFinish.TURNED_BACK),
                        new Edge(TopEdges.UNDERARM_BACK, upright(hemBack, back)).withAspect(Aspect.BACK)),
                new Grainline(Point.of(0, cap.height()), Point.of(0, length - GRAIN_MARGIN * (length - cap.height()))),
                Cut.pair(),
                cloth);
        return notched(piece, fit);
    }

    /** Draws the front half of the cap from its top. */
    static Path capFront(CapFit fit, CapFit.Solved cap, Point top) {
        Path half = fit.front().draw(cap.front(), cap.height());
        return half.transformed(Transform.translation(top.minus(Point.of(0, 0))));
    }

    /** Draws the back half of the cap up to its top. */
    static Path capBack(CapFit fit, CapFit.Solved cap, Point top) {
        Path half = fit.back().draw(cap.back(), cap.height()).transformed(Transform.mirrorX(0));
        return half.transformed(Transform.translation(top.minus(Point.of(0, 0))))
                .reversed();
    }

    /** Sets the notches of the cap, as far from its underarm points as on the armhole, and at its top. */
    static Piece notched(Piece sleeve, CapFit fit) {
        return sleeve.withNotch(Notch.single(
                        TopNames.FRONT_NOTCH,
                        TopEdges.CAP_FRONT,
                        End.END,
                        fit.front().notchFromUnderarm()))
                .withNotch(Notch.paired(
                        TopNames.BACK_NOTCH,
                        TopEdges.CAP_BACK,
                        End.START,
                        fit.back().notchFromUnderarm()))
                .withNotch(Notch.single(TopNames.SHOULDER_NOTCH, TopEdges.CAP_FRONT, End.START, 0));
    }

    private static Path upright(Point from, Point to) {
        if (from.x() == to.x()) {
            return Path.of(new Line(from, to));
        }
        Vector handle = Vector.of(0, UNDERARM_HANDLE * (to.y() - from.y()));
        return Path.of(new Cubic(from, from.plus(handle), to.plus(handle.negated()), to));
    }
}
