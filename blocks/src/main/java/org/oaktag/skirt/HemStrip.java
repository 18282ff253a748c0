package org.oaktag.skirt;

import java.util.List;
import org.oaktag.adjust.CutOnFacing;
import org.oaktag.adjust.SeparateFacing;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.measure.Length;

/**
 * The strip of a half along its hem.
 *
 * @param side from the upper edge of the strip down to the hem
 * @param upper from the centre to the side
 * @param centre from the hem up to the upper edge
 * @param grain the grain of the half
 */
record HemStrip(Path side, Path upper, Path centre, Grainline grain) {

    /** Returns the strips of both halves, which begin at the same place on the side. */
    static List<HemStrip> of(Piece front, Piece back, double width) {
        HemStrip first = of(front, width);
        HemStrip second = of(back, width);
        double along = (first.side.length() + second.side.length()) / 2;
        return List.of(first.beginning(front, along), second.beginning(back, along));
    }

    private static HemStrip of(Piece half, double width) {
        Piece strip = new SeparateFacing(
                        EdgeRef.of(half.name(), EdgeNames.HEM), Length.mm(width), Name.of("strip"), half.cloth())
                .facing(half);
        return new HemStrip(
                strip.path(EdgeNames.SIDE),
                strip.path(CutOnFacing.facing(EdgeNames.HEM)),
                strip.path(EdgeNames.CENTRE),
                strip.grainline());
    }

    private HemStrip beginning(Piece half, double along) {
        Path whole = half.path(EdgeNames.SIDE);
        Path from = whole.sub(whole.length() - along, whole.length())
                .withEnds(whole.pointAt(whole.length() - along), whole.end());
        return new HemStrip(from, upper.withEnds(centre.end(), from.start()), centre, grain);
    }
}
