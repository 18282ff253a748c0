package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.garment.SeamSide;

/**
 * A side of a seam laid out straight, so that a place along it is found on the edge on which it falls.
 *
 * @param edges its edges, one after another
 */
record LaidSide(List<Laid> edges) {

    /**
     * The allowance of a trade pattern, in millimetres (common practice): nearer to a corner it lies in the seam
     * across.
     */
    static final double FROM_CORNER = 10;

    /**
     * The allowance of a home pattern, in millimetres (common practice): so far from a hollow of a right angle the
     * allowances of both edges lie on each other.
     */
    private static final double FROM_HOLLOW = 15;

    /** Above this angle inside the piece, in degrees, a corner is hollow and no edge that runs on. */
    private static final double STRAIGHT_ON = 181;

    /**
     * An edge of the side.
     *
     * @param edge the edge
     * @param from the end at which the side comes to it
     * @param begin how far along the side that is, in millimetres
     * @param length its length in millimetres
     */
    record Laid(EdgeRef edge, End from, double begin, double length) {

        /** Returns how far along the side a notch of this edge lies. */
        double placeOf(Notch notch) {
            double fromStart = notch.fromStart(length);
            return begin + (from == End.START ? fromStart : length - fromStart);
        }
    }

    /**
     * A place on an edge.
     *
     * @param laid the edge
     * @param along how far along the edge it lies, from where the side comes to it, in millimetres
     */
    record Spot(Laid laid, double along) {

        /** Tells whether a notch can be cut here: out of reach of the allowances at both corners. */
        boolean canBeCut(Garment garment) {
            return isClearOf(garment, laid.from, along)
                    && isClearOf(garment, laid.from.opposite(), laid.length - along);
        }

        private boolean isClearOf(Garment garment, End end, double away) {
            return away >= FROM_HOLLOW
                    || (away >= FROM_CORNER
                            && garment.piece(laid.edge.piece())
                                            .cornerAngle(laid.edge.edge(), end)
                                            .degrees()
                                    <= STRAIGHT_ON);
        }

        Notch notch(Name name, int count) {
            return new Notch(name, laid.edge.edge(), laid.from, along, count);
        }
    }

    LaidSide {
        edges = List.copyOf(edges);
    }

    /** Lays a side out from one end of its seam. */
    static LaidSide of(Garment garment, SeamSide side, End from) {
        List<Laid> edges = new ArrayList<>();
        double begin = 0;
        int count = side.runs().size();
        for (int i = 0; i < count; i++) {
            SeamSide.Run run = side.runs().get(from == End.START ? i : count - 1 - i);
            double length = garment.edge(run.edge()).path().length();
            edges.add(new Laid(run.edge(), run.cornerAt(from), begin, length));
            begin += length;
        }
        return new LaidSide(edges);
    }

    double length() {
        Laid last = edges.get(edges.size() - 1);
        return last.begin + last.length;
    }

    /** Returns the place so far along the side; one past its end lies past the end of its last edge. */
    Spot spot(double along) {
        int i = 0;
        while (i < edges.size() - 1 && along >= edges.get(i + 1).begin) {
            i++;
        }
        Laid laid = edges.get(i);
        return new Spot(laid, along - laid.begin);
    }

    /** Returns the stretches of the side: edges that run on from each other on one piece belong to one stretch. */
    List<Stretch> stretches(Garment garment) {
        if (edges.size() == 1) {
            return List.of(Stretch.of(edges));
        }
        List<Stretch> stretches = new ArrayList<>();
        int first = 0;
        for (int i = 1; i <= edges.size(); i++) {
            if (i == edges.size() || !runsOn(garment, edges.get(i - 1), edges.get(i))) {
                stretches.add(Stretch.of(edges.subList(first, i)));
                first = i;
            }
        }
        return stretches;
    }

    private static boolean runsOn(Garment garment, Laid laid, Laid next) {
        if (!laid.edge.piece().equals(next.edge.piece()) || laid.from != next.from) {
            return false;
        }
        Piece piece = garment.piece(laid.edge.piece());
        Name edge = laid.edge.edge();
        return (laid.from == End.START ? piece.after(edge) : piece.before(edge))
                .name()
                .equals(next.edge.edge());
    }
}
