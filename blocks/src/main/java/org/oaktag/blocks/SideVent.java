package org.oaktag.blocks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.oaktag.PatternException;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeFinish;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Crossing;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * The vent at the lower end of a side seam: the seam is sewn down to it, and below an extension is folded under along a
 * straight line. The lower edge of the extension is the hem mirrored through that fold, so that both lie on each other
 * when it is folded.
 *
 * <pre>{@code
 * Piece vented = SideVent.cut(front, 90, 25);   // 90 mm high, an extension 25 mm wide
 * }</pre>
 */
public final class SideVent {

    private static final Name FOLD = Name.of("vent fold");

    private SideVent() {}

    /**
     * Returns a piece with a vent.
     *
     * @param piece a front or a back
     * @param height how much of the side seam stays open, in millimetres
     * @param width how wide the extension is, in millimetres
     * @throws PatternException if the side seam does not run down to the hem, or the hem is not that wide
     */
    public static Piece cut(Piece piece, double height, double width) {
        TopPieces.require(piece, EdgeNames.SIDE, EdgeNames.HEM);
        Path side = piece.path(EdgeNames.SIDE);
        Path sewn = side.splitAt(side.length() - height).before();
        Point corner = side.end();
        Vector down = corner.minus(sewn.end()).unit();
        Vector inward = down.rightNormal();
        Path hem = piece.path(EdgeNames.HEM);
        double strip = Crossings.ofLine(hem, corner.plus(inward.times(width)), down).stream()
                .map(Crossing::first)
                .min(Comparator.naturalOrder())
                .orElseThrow(() -> PatternException.of(
                        "vent of the " + piece.name(),
                        "must be narrower than half its hem, "
                                + Length.mm(hem.length()).text(),
                        Length.mm(width).text(),
                        ""));
        Path under = hem.splitAt(strip)
                .before()
                .transformed(Transform.mirror(sewn.end(), corner))
                .reversed();
        Path below = Redraw.between(under, under.start(), corner);
        Point outer = sewn.end().plus(inward.times(-width));
        List<Edge> edges = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            if (edge.name().equals(EdgeNames.SIDE)) {
                edges.add(edge.withPath(sewn));
                edges.add(Edge.straight(EdgeNames.VENT_TOP, sewn.end(), outer));
                edges.add(Edge.straight(EdgeNames.VENT, outer, below.start()));
                edges.add(new Edge(EdgeNames.VENT_HEM, below, EdgeFinish.TURNED_BACK));
            } else {
                edges.add(edge);
            }
        }
        List<InnerLine> lines = new ArrayList<>(piece.lines());
        lines.add(new InnerLine(FOLD, InnerLine.Use.FOLD, Path.of(new Line(sewn.end(), corner))));
        return piece.withEdges(edges).withLines(lines);
    }
}
