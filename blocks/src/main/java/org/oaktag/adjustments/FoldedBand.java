package org.oaktag.adjustments;

import java.util.List;
import org.oaktag.PatternException;
import org.oaktag.blocks.BandNames;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/** A straight band that is folded in half along its length, drawn open. */
final class FoldedBand {

    private static final Length LEAST_DEPTH = Length.mm(10);
    private static final Length MOST_DEPTH = Length.mm(250);

    private FoldedBand() {}

    static void checkDepth(String thing, Length depth) {
        if (depth.compareTo(LEAST_DEPTH) < 0 || depth.compareTo(MOST_DEPTH) > 0) {
            throw PatternException.of(
                    "depth of the " + thing,
                    "must be " + LEAST_DEPTH.text() + " to " + MOST_DEPTH.text(),
                    depth.text(),
                    "");
        }
    }

    /** Draws the band from x = 0 to its length, its fold at y = depth; the stretch runs along it, the grain across. */
    static Piece draw(Name name, double length, double depth, Name right, Name left, Cloth cloth) {
        Point topLeft = Point.ORIGIN;
        Point topRight = Point.of(length, 0);
        Point bottomRight = Point.of(length, 2 * depth);
        Point bottomLeft = Point.of(0, 2 * depth);
        double grain = length / 4;
        return Piece.of(
                        name,
                        List.of(
                                Edge.straight(EdgeNames.TOP, topLeft, topRight),
                                Edge.straight(right, topRight, bottomRight),
                                Edge.straight(EdgeNames.BOTTOM, bottomRight, bottomLeft),
                                Edge.straight(left, bottomLeft, topLeft)),
                        new Grainline(Point.of(grain, 0.3 * depth), Point.of(grain, 1.7 * depth)),
                        Cut.single(),
                        cloth)
                .withLines(List.of(new InnerLine(
                        BandNames.FOLD,
                        InnerLine.Use.FOLD,
                        Path.polyline(Point.of(0, depth), Point.of(length, depth)))));
    }

    /** Returns the seam of the two halves of the folded band, both of which are sewn to what hangs above. */
    static Seam foldSeam(Name seam, Name band, String refit) {
        return Seam.flat(seam, SeamSide.along(band, EdgeNames.TOP), SeamSide.against(band, EdgeNames.BOTTOM), refit);
    }
}
