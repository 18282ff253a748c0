package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;

/**
 * Chooses where the notch of a new seam lies, so that neither of its edges fits any other edge of the garment, nor its
 * own partner the wrong way round.
 *
 * @param share the share of the edge's length from the start of the seam
 * @param count how many cuts side by side
 */
record MatchingNotch(double share, int count) {

    /** Edges and notches that lie this near to each other, in millimetres, look alike to whoever pins them. */
    private static final double ALIKE = 4;

    private static final List<Double> SHARES = List.of(1.0 / 3, 0.25, 0.4, 0.2, 0.28, 0.37, 0.15, 0.44);
    private static final int MOST_CUTS = 3;

    private record Pattern(double length, List<Mark> marks) {

        private record Mark(double at, int count) {}

        static Pattern of(Piece piece, Edge edge) {
            double length = edge.path().length();
            List<Mark> marks = new ArrayList<>();
            for (Notch notch : piece.notches()) {
                if (notch.edge().equals(edge.name())) {
                    marks.add(new Mark(notch.fromStart(length), notch.count()));
                }
            }
            return new Pattern(length, marks);
        }

        boolean fits(Pattern other) {
            return Math.abs(length - other.length) <= ALIKE
                    && marks.size() == other.marks.size()
                    && (agrees(other, false) || agrees(other, true));
        }

        private boolean agrees(Pattern other, boolean reversed) {
            return marks.stream()
                    .allMatch(mark -> other.marks.stream().anyMatch(theirs -> {
                        double at = reversed ? other.length - theirs.at : theirs.at;
                        return mark.count == theirs.count && Math.abs(mark.at - at) <= ALIKE;
                    }));
        }
    }

    /**
     * Returns the first choice that fits nothing else; where every choice does, which takes two dozen seams of one length,
     * the first.
     *
     * @param garment the garment before the new seam
     * @param length the length of the new edges in millimetres
     */
    static MatchingNotch of(Garment garment, double length) {
        List<Pattern> others = new ArrayList<>();
        for (Piece piece : garment.pieces()) {
            for (Edge edge : piece.edges()) {
                others.add(Pattern.of(piece, edge));
            }
        }
        for (int count = 1; count <= MOST_CUTS; count++) {
            for (double share : SHARES) {
                Pattern pattern = new Pattern(length, List.of(new Pattern.Mark(share * length, count)));
                if (others.stream().noneMatch(pattern::fits)) {
                    return new MatchingNotch(share, count);
                }
            }
        }
        return new MatchingNotch(SHARES.get(0), 1);
    }
}
