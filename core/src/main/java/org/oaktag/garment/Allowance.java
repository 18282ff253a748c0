package org.oaktag.garment;

import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.measure.Length;

/**
 * The cloth left outside one edge: how wide it is, and how it is cut where the edge ends. Immutable.
 *
 * <pre>{@code
 * Allowance hem = Allowance.foldedBack(mm(30));   // mirrored through the fold, so that it lies flat
 * Allowance shoulder = Allowance.squared(mm(10));
 * }</pre>
 *
 * @param width from the seam line outwards, 0 to 100 mm
 * @param ends how it is cut at both ends of the edge
 */
public record Allowance(Length width, Ends ends) {

    private static final Length MOST = Length.mm(100);

    /**
     * How an allowance is cut where its edge meets the next. At an inner corner the cut lines meet, whatever is asked
     * for.
     */
    public enum Ends {
        /**
         * The cut lines of both edges run on until they meet; a tip beyond three times the allowance is cut off square.
         */
        MITRED,
        /**
         * Square to this edge, where its seam line, prolonged, leaves the neighbour's allowance. Sewn first and pressed
         * open or to one side, the allowance then ends flush with the neighbour's cut edge. Where both edges of a
         * corner ask for it, the corner is square to the one that comes first, clockwise.
         */
        SQUARED,
        /**
         * Under the neighbour's cut line, which runs straight on over it: pressed away from its own piece, it lies flat
         * on the piece to which the edge is sewn and ends where that piece is cut, if the outline runs on smoothly
         * across the seam. Only a tip beyond twenty times the allowance is cut off.
         */
        LAPPED,
        /**
         * The mirror image, through this edge, of the piece beside it: what is folded up along the edge then lies on
         * the piece, side upon side, however the sides taper. Beside a curved edge the mirror is its tangent at the
         * corner.
         */
        FOLDED_BACK,
        /**
         * Folded back as well, but square to this edge, as {@link #SQUARED} is. At a wide corner in which no seam ends,
         * such as that of the opening of a pouch, the mirror image would flare and add nothing but bulk.
         */
        FOLDED_SQUARE
    }

    /**
     * Checks the width.
     *
     * @throws PatternException if it is not 0 to 100 mm
     */
    public Allowance {
        Objects.requireNonNull(ends, "ends");
        check("allowance", width);
    }

    /** Returns an allowance whose corners are mitred. */
    public static Allowance mitred(Length width) {
        return new Allowance(width, Ends.MITRED);
    }

    /** Returns an allowance that ends square to its edge. */
    public static Allowance squared(Length width) {
        return new Allowance(width, Ends.SQUARED);
    }

    /** Returns an allowance that lies flat on the piece to which its edge is sewn. */
    public static Allowance lapped(Length width) {
        return new Allowance(width, Ends.LAPPED);
    }

    /** Returns an allowance that is folded up along its edge, such as that of a hem. */
    public static Allowance foldedBack(Length width) {
        return new Allowance(width, Ends.FOLDED_BACK);
    }

    /** Returns an allowance that is folded up along its edge and ends square to it. */
    public static Allowance foldedSquare(Length width) {
        return new Allowance(width, Ends.FOLDED_SQUARE);
    }

    /** Tells whether the edge is a fold: there is something to fold up. */
    public boolean isFoldedBack() {
        return (ends == Ends.FOLDED_BACK || ends == Ends.FOLDED_SQUARE) && width.mm() > 0;
    }

    /** Tells whether it mirrors the piece beside it. */
    boolean isMirrored() {
        return ends == Ends.FOLDED_BACK && width.mm() > 0;
    }

    /** Tells whether it is cut square to its edge. */
    boolean isSquared() {
        return ends == Ends.SQUARED || ends == Ends.FOLDED_SQUARE;
    }

    static void check(String thing, Length width) {
        if (width.mm() < 0 || width.compareTo(MOST) > 0) {
            throw PatternException.of(thing, "must be 0 to " + MOST.text(), width.text(), "");
        }
    }
}
