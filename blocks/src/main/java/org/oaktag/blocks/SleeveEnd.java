package org.oaktag.blocks;

import java.util.Map;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.measure.Length;

/**
 * The lower end of a sleeve, of its upper or of its lower part: the edge between both underarm edges, to be moved.
 * Immutable.
 *
 * @param part the sleeve or a part of it, with both underarm edges
 */
public record SleeveEnd(Piece part) {

    /** How much of both underarm edges has to be left, in millimetres. */
    private static final double LEAST_PART = 20;

    /** Returns the lower end of a sleeve or of a part of it. */
    public static SleeveEnd of(Piece part) {
        return new SleeveEnd(part);
    }

    /** Returns by how much the lower end can be moved up: 20 mm below what it hangs from are left. */
    public Length mostShortening() {
        double upper = Math.max(
                part.path(EdgeNames.UNDERARM_FRONT).start().y(),
                part.path(EdgeNames.UNDERARM_BACK).end().y());
        if (part.hasEdge(EdgeNames.TOP)) {
            upper = Math.max(upper, part.path(EdgeNames.TOP).bounds().maxY());
        }
        return Length.mm(Math.max(0, lowerEdge().path().bounds().minY() - upper - LEAST_PART));
    }

    /**
     * Returns the piece with its lower end moved up by this much, its width and shape kept; both underarm edges are
     * redrawn to meet it. Negative to move it down.
     */
    public Piece shortenedBy(Length by) {
        if (by.equals(Length.ZERO)) {
            return part;
        }
        return movedTo(lowerEdge().path().transformed(Transform.translation(0, -by.mm())));
    }

    /** Returns the piece with another lower edge; both underarm edges are redrawn to meet it. */
    public Piece movedTo(Path lower) {
        double top = part.outline().bounds().minY();
        double growth = (lower.start().y() - top) / (lowerEdge().path().start().y() - top);
        Grainline grain = part.grainline();
        return part.redrawn(Map.of(
                        lowerEdge().name(),
                        lower,
                        EdgeNames.UNDERARM_FRONT,
                        Redraw.between(
                                part.path(EdgeNames.UNDERARM_FRONT),
                                part.path(EdgeNames.UNDERARM_FRONT).start(),
                                lower.start()),
                        EdgeNames.UNDERARM_BACK,
                        Redraw.between(
                                part.path(EdgeNames.UNDERARM_BACK),
                                lower.end(),
                                part.path(EdgeNames.UNDERARM_BACK).end())))
                .withGrainline(new Grainline(within(grain.top(), top, growth), within(grain.bottom(), top, growth)));
    }

    private Edge lowerEdge() {
        return part.after(EdgeNames.UNDERARM_FRONT);
    }

    private static Point within(Point point, double top, double growth) {
        return Point.of(point.x(), top + (point.y() - top) * growth);
    }
}
