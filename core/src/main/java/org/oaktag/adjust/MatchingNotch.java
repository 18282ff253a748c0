package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Predicate;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;

/**
 * Chooses where the notch of a seam lies, so that neither of its edges fits any other edge of the garment, nor its own
 * partner the wrong way round.
 *
 * @param share the share of the length of what is told apart, from where the seam comes to it
 * @param count how many cuts side by side
 */
record MatchingNotch(double share, int count) {

    private static final double[] SHARES = {1.0 / 3, 0.25, 0.4, 0.2, 0.28, 0.37, 0.15, 0.44, 0.3, 0.23, 0.35, 0.42, 0.18
    };

    private static final int MOST_CUTS = 3;

    /** The greatest share that is tried. */
    static final double FARTHEST = Arrays.stream(SHARES).max().orElseThrow();

    /**
     * Returns the first choice that fits nothing else; where every choice does, which takes two dozen seams of one
     * length, the first.
     *
     * @param garment the garment before the new seam
     * @param length the length of the new edges in millimetres
     * @param cuts how many cuts it may have
     */
    static MatchingNotch of(Garment garment, double length, NotchCuts cuts) {
        List<EdgePattern> others = new ArrayList<>();
        for (Piece piece : garment.pieces()) {
            for (int i = 0; i < piece.edges().size(); i++) {
                Edge edge = piece.edges().get(i);
                if (EdgePattern.areAlike(length, edge.path().length())) {
                    others.add(EdgePattern.of(edge, piece.notches()));
                }
            }
        }
        return first(share -> cuts, choice -> fitsNone(choice.on(length), others))
                .orElse(new MatchingNotch(SHARES[0], cuts.counts().get(0)));
    }

    /**
     * Returns the first choice that is distinct: at any place with the number of cuts that is tried first and, where
     * neither front nor back says how many, then with another.
     *
     * @param cuts how many cuts a notch at such a share may have
     */
    static Optional<MatchingNotch> first(DoubleFunction<NotchCuts> cuts, Predicate<MatchingNotch> distinct) {
        for (int i = 0; i < MOST_CUTS; i++) {
            for (double share : SHARES) {
                NotchCuts allowed = cuts.apply(share);
                if (i == 0 || allowed == NotchCuts.NEITHER) {
                    MatchingNotch choice =
                            new MatchingNotch(share, allowed.counts().get(i));
                    if (distinct.test(choice)) {
                        return Optional.of(choice);
                    }
                }
            }
        }
        return Optional.empty();
    }

    private EdgePattern on(double length) {
        return new EdgePattern(length, List.of(new EdgePattern.Mark(share * length, count)));
    }

    private static boolean fitsNone(EdgePattern edge, List<EdgePattern> others) {
        for (EdgePattern other : others) {
            if (edge.fits(other)) {
                return false;
            }
        }
        return true;
    }
}
