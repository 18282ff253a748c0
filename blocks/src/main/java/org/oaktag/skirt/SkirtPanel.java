package org.oaktag.skirt;

import java.util.List;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeFinish;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;

/** Half a panel: its centre at x = 0 and the waist of its centre at y = 0, its side to the right. */
final class SkirtPanel {

    private SkirtPanel() {}

    /**
     * Draws it.
     *
     * @param top the name of its upper edge
     * @param waist from the centre to the side
     * @param side from there to the hem, notched at the hip where it reaches as far
     * @param hem from the side to the centre
     */
    static Piece of(Name name, Name top, Path waist, SideLine side, Path hem, Cut cut, Cloth cloth) {
        List<Edge> edges = List.of(
                new Edge(top, waist),
                new Edge(EdgeNames.SIDE, side.path().withEnds(waist.end(), hem.start())),
                new Edge(EdgeNames.HEM, hem, EdgeFinish.TURNED_BACK),
                Edge.straight(EdgeNames.CENTRE, hem.end(), waist.start()));
        double x = Math.min(waist.end().x(), hem.start().x()) / 2;
        double from = waist.start().y();
        double length = hem.end().y() - from;
        Grainline grain = new Grainline(Point.of(x, from + 0.25 * length), Point.of(x, from + 0.75 * length));
        Piece bare = Piece.of(name, edges, grain, cut, cloth);
        return side.below() > 0 ? bare.withNotch(SkirtBody.hipNotch(side.hip())) : bare;
    }

    /** Draws an oblong on the fold of its centre, so far below the waist. */
    static Piece oblong(Name name, Name top, double level, double width, NewSkirt skirt) {
        Path side = Path.polyline(Point.of(width, level), Point.of(width, skirt.length()));
        return of(
                name,
                top,
                Path.polyline(Point.of(0, level), side.start()),
                new SideLine(side, skirt.hipDepth() - level),
                Path.polyline(side.end(), Point.of(0, skirt.length())),
                Cut.onFold(EdgeNames.CENTRE),
                skirt.cloth());
    }
}
