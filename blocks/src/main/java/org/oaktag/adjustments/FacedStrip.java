package org.oaktag.adjustments;

import java.util.List;
import java.util.stream.Stream;
import org.oaktag.blocks.HoodNames;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * The strip over the middle of a hood, upright and drawn as its half, with a facing at the face.
 *
 * @param strip the strip, faced already or not
 * @param facing how long its facing is, in millimetres
 */
record FacedStrip(Piece strip, double facing) {

    /** Returns the shell with the facing cut on, and a fold line where the face was. */
    Piece shell() {
        Point face = strip.corner(HoodNames.CROWN, End.START);
        Point foldedFace = folded(face);
        Point edge = face.plus(Vector.of(0, -facing));
        Point foldedEdge = foldedFace.plus(Vector.of(0, -facing));
        return strip.withEdges(List.of(
                        Edge.straight(HoodNames.FACING_EDGE, foldedEdge, edge),
                        Edge.straight(HoodNames.FACING_CROWN, edge, face),
                        strip.edge(HoodNames.CROWN),
                        strip.edge(HoodNames.NECK),
                        Edge.straight(EdgeNames.CENTRE, foldedNape(), foldedEdge)))
                .withLines(List.of(new InnerLine(HoodNames.FOLD, InnerLine.Use.FOLD, Path.polyline(foldedFace, face))));
    }

    /** Returns the lining. */
    Piece lining(Cloth cloth) {
        Point face = strip.corner(HoodNames.CROWN, End.START).plus(Vector.of(0, facing));
        Point foldedFace = folded(face);
        return Piece.of(
                        TopNames.HOOD_CENTRE_LINING,
                        List.of(
                                Edge.straight(HoodNames.FACE, foldedFace, face),
                                Edge.straight(HoodNames.CROWN, face, strip.corner(HoodNames.CROWN, End.END)),
                                strip.edge(HoodNames.NECK),
                                Edge.straight(EdgeNames.CENTRE, foldedNape(), foldedFace)),
                        strip.grainline(),
                        strip.cut(),
                        cloth)
                .withNotches(Stream.concat(
                                FacedPanel.shortened(strip, facing).stream(),
                                strip.notches().stream()
                                        .filter(notch -> notch.edge().equals(HoodNames.NECK)))
                        .toList());
    }

    private Point foldedNape() {
        return strip.corner(HoodNames.NECK, End.END);
    }

    private Point folded(Point point) {
        return Point.of(foldedNape().x(), point.y());
    }
}
