package org.oaktag.garment;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.measure.Percent;

/**
 * How far a ring round the garment stretches: as far as the least stretchy cloth among what is measured and all that is
 * sewn to it without being stretched. Made for one ring and used up by it.
 */
final class Give {

    private final Garment garment;

    /** How far the least stretchy cloth of the garment stretches: what has that in it need not be followed further. */
    private final double floor;

    private final List<EdgeRef> edges = new ArrayList<>();
    private double least = Double.POSITIVE_INFINITY;

    private Give(Garment garment) {
        this.garment = garment;
        this.floor = floor(garment.pieces());
    }

    private static double floor(List<Piece> pieces) {
        double floor = Double.POSITIVE_INFINITY;
        for (int i = 0; i < pieces.size(); i++) {
            floor = Math.min(floor, pieces.get(i).cloth().stretch().percent());
        }
        return floor;
    }

    static Percent of(Garment garment, FinishedMeasure ring) {
        Give give = new Give(garment);
        List<FinishedMeasure.Term> terms = ring.terms();
        for (int i = 0; i < terms.size(); i++) {
            give.take(terms.get(i).quantity());
        }
        give.takeSewn();
        return Percent.percent(Double.isInfinite(give.least) ? 0 : give.least);
    }

    private void take(Quantity quantity) {
        List<EdgeRef> along = quantity.edges();
        for (int i = 0; i < along.size(); i++) {
            take(along.get(i));
        }
        List<Name> outlines = quantity.outlines();
        for (int i = 0; i < outlines.size(); i++) {
            take(outlines.get(i));
        }
        List<Quantity.Corner> corners = quantity.corners();
        for (int i = 0; i < corners.size(); i++) {
            take(corners.get(i).edge().piece());
        }
    }

    /**
     * Takes what is sewn to the edges, and what is sewn to that; across gathers and a stretched edge each gives alone.
     */
    private void takeSewn() {
        List<Seam> seams = garment.seams();
        boolean[] taken = new boolean[seams.size()];
        int before = -1;
        while (before < edges.size()) {
            before = edges.size();
            for (int i = 0; i < taken.length && least > floor; i++) {
                Seam seam = seams.get(i);
                if (!taken[i] && (touches(seam.a()) || touches(seam.b())) && !givesAlone(seam.rule())) {
                    taken[i] = true;
                    take(seam.a());
                    take(seam.b());
                }
            }
        }
    }

    private static boolean givesAlone(SeamRule rule) {
        return rule instanceof SeamRule.Gathered || rule instanceof SeamRule.StretchedOn;
    }

    private boolean touches(SeamSide side) {
        List<SeamSide.Run> runs = side.runs();
        for (int i = 0; i < runs.size(); i++) {
            if (edges.contains(runs.get(i).edge())) {
                return true;
            }
        }
        return false;
    }

    private void take(SeamSide side) {
        List<SeamSide.Run> runs = side.runs();
        for (int i = 0; i < runs.size(); i++) {
            take(runs.get(i).edge());
        }
    }

    private void take(EdgeRef edge) {
        if (!edges.contains(edge)) {
            edges.add(edge);
            take(edge.piece());
        }
    }

    private void take(Name piece) {
        least = Math.min(least, garment.piece(piece).cloth().stretch().percent());
    }
}
