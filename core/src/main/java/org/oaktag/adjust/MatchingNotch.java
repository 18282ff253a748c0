package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;

/**
 * Chooses where the notch of a new seam lies, so that neither of its edges fits any other edge of the garment, nor its
 * own partner the wrong way round.
 *
 * @param share the share of the edge's length from the start of the seam
 * @param count how many cuts side by side
 */
record MatchingNotch(double share, int count) {

    private static final List<Double> SHARES = List.of(1.0 / 3, 0.25, 0.4, 0.2, 0.28, 0.37, 0.15, 0.44);

    /** The greatest share that is tried. */
    static final double FARTHEST = Collections.max(SHARES);

    private static final int MOST_CUTS = 3;

    /**
     * Returns the first choice that fits nothing else; where every choice does, which takes two dozen seams of one length,
     * the first.
     *
     * @param garment the garment before the new seam
     * @param length the length of the new edges in millimetres
     */
    static MatchingNotch of(Garment garment, double length) {
        List<EdgePattern> others = new ArrayList<>();
        for (Piece piece : garment.pieces()) {
            for (Edge edge : piece.edges()) {
                others.add(EdgePattern.of(edge, piece.notches()));
            }
        }
        return first(1, choice -> fitsNone(choice.on(length), others)).orElse(new MatchingNotch(SHARES.get(0), 1));
    }

    /**
     * Returns the first choice that is distinct.
     *
     * @param count how many cuts side by side are tried first
     */
    static Optional<MatchingNotch> first(int count, Predicate<MatchingNotch> distinct) {
        for (int more = 0; more < MOST_CUTS; more++) {
            int cuts = (count - 1 + more) % MOST_CUTS + 1;
            for (double share : SHARES) {
                MatchingNotch choice = new MatchingNotch(share, cuts);
                if (distinct.test(choice)) {
                    return Optional.of(choice);
                }
            }
        }
        return Optional.empty();
    }

    private EdgePattern on(double length) {
        return new EdgePattern(length, List.of(new EdgePattern.Mark(share * length, count)));
    }

    static boolean fitsNone(EdgePattern edge, List<EdgePattern> others) {
        for (EdgePattern other : others) {
            if (edge.fits(other)) {
                return false;
            }
        }
        return true;
    }
}
