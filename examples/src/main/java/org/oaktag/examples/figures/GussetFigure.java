package org.oaktag.examples.figures;

import static org.oaktag.adjustments.Sleeves.kimonoSleeve;
import static org.oaktag.adjustments.Sleeves.raglanSleeve;
import static org.oaktag.measure.Length.mm;

import java.util.List;
import java.util.Map;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.export.drawing.Label.Align;
import org.oaktag.export.svg.SvgSheet;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/** A gusset under the arm: where it is let into a sleeve grown on and into a raglan, and the gusset itself. */
final class GussetFigure {

    private static final double REDUCTION = 6;
    private static final double BETWEEN = 24;
    private static final double DIMENSION = 6;
    private static final Length SIDE = mm(90);

    private final Sketch sketch = Sketch.reduced(REDUCTION);

    private GussetFigure() {}

    static Map<String, SvgSheet> of(Garment block) {
        return Map.of("gusset", new GussetFigure().drawn(block));
    }

    private SvgSheet drawn(Garment block) {
        Garment kimono = block.adjust(kimonoSleeve().withGusset(SIDE));
        Garment raglan = block.adjust(raglanSleeve().withGusset(SIDE));
        double right = opened(kimono.piece(TopNames.FRONT), "front, the sleeve grown on", 0);
        right = gusset(kimono.piece(TopNames.GUSSET), right);
        right = opened(raglan.piece(TopNames.FRONT), "front of a raglan", right);
        opened(raglan.piece(TopNames.SLEEVE_FRONT), "its sleeve front", right);
        return sketch.sheet(
                "A gusset under the arm",
                "The edges that are sewn to the gusset are wide: a slash of a sleeve grown on, the lower ends of the seams of a"
                        + " raglan.");
    }

    /** Draws a piece with the edges to which the gusset is sewn. Returns where the next one begins. */
    private double opened(Piece piece, String what, double right) {
        Bounds box = seated(piece, right);
        for (Edge edge : piece.edges()) {
            if (List.of(TopEdges.GUSSET_UPPER, TopEdges.GUSSET_LOWER).contains(edge.name())) {
                sketch.subject(edge.path());
            }
        }
        return under(box, what, right);
    }

    private double gusset(Piece gusset, double right) {
        Bounds box = seated(gusset, right);
        gusset.edges().forEach(edge -> sketch.subject(edge.path()));
        Point upper = gusset.edges().get(0).path().start();
        Point front = gusset.edges().get(0).path().end();
        Point lower = gusset.edges().get(1).path().end();
        Point back = gusset.edges().get(2).path().end();
        sketch.dimension(upper, front, "s = " + SIDE.text(), DIMENSION)
                .dimension(upper, lower, "s", 0)
                .dimension(
                        front,
                        back,
                        Length.mm(front.distanceTo(back)).text(),
                        DIMENSION + box.height() / 2 / REDUCTION);
        return under(box, "gusset", right);
    }

    private Bounds seated(Piece piece, double right) {
        Bounds box = piece.outline().bounds();
        sketch.seated(Point.of(box.minX(), box.maxY()), right, 0).piece(piece);
        return box;
    }

    private double under(Bounds box, String what, double right) {
        sketch.text(what, Point.of(box.center().x(), box.maxY()), 0, 12, Align.MIDDLE);
        return right + box.width() / REDUCTION + BETWEEN;
    }
}
