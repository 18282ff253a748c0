package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.garment.Edge;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Path;

/**
 * Both edges of a band that is folded along its middle: they are sewn on together, so that the second has the notches
 * of the first.
 *
 * @param seam the seam that lays them on each other
 * @param first the edge whose notches both have
 * @param second the other
 */
record FoldedEdges(Seam seam, SeamSide.Run first, SeamSide.Run second) {

    /** As near as this to an edge, in millimetres, a line ends on it. */
    private static final double ON_EDGE = 0.01;

    /** Returns both edges, or empty where the seam is another. */
    static Optional<FoldedEdges> of(Garment garment, Seam seam) {
        if (seam.a().runs().size() > 1 || seam.b().runs().size() > 1) {
            return Optional.empty();
        }
        FoldedEdges edges =
                new FoldedEdges(seam, seam.a().runAt(End.START), seam.b().runAt(End.START));
        return edges.areOfOnePiece() && edges.areFolded(garment.piece(edges.piece()))
                ? Optional.of(edges)
                : Optional.empty();
    }

    Name piece() {
        return first.edge().piece();
    }

    private boolean areOfOnePiece() {
        return piece().equals(second.edge().piece()) && !first.equals(second);
    }

    /** A band has one edge between the two on either side, and a fold from the one to the other. */
    private boolean areFolded(Piece band) {
        Edge after = band.after(first.edge().edge());
        Edge before = band.before(first.edge().edge());
        if (!after.name().equals(band.before(second.edge().edge()).name())
                || !before.name().equals(band.after(second.edge().edge()).name())) {
            return false;
        }
        for (InnerLine line : band.lines()) {
            if (line.use() == InnerLine.Use.FOLD
                    && (joins(line.path(), before, after) || joins(line.path(), after, before))) {
                return true;
            }
        }
        return false;
    }

    private static boolean joins(Path line, Edge from, Edge to) {
        return from.path().nearest(line.start()).distance() <= ON_EDGE
                && to.path().nearest(line.end()).distance() <= ON_EDGE;
    }

    /**
     * Returns the notches of the band with those of the first edge, and no others, on the second.
     *
     * @throws PatternException if the second is so short that one would lie off it
     */
    List<Notch> carried(Garment garment, List<Notch> notches) {
        Name edge = second.edge().edge();
        double length = garment.edge(second.edge()).path().length();
        List<Notch> carried = new ArrayList<>(notches);
        carried.removeIf(notch -> notch.edge().equals(edge));
        for (Notch notch : notches) {
            if (notch.edge().equals(first.edge().edge())) {
                if (notch.distance() > length) {
                    throw SewnSides.unlike(
                            seam, garment.edge(first.edge()).path().length(), length);
                }
                End end = first.backwards() == second.backwards()
                        ? notch.from()
                        : notch.from().opposite();
                carried.add(new Notch(notch.name(), edge, end, notch.distance(), notch.count()));
            }
        }
        return carried;
    }
}
