package org.oaktag.geometry;

/**
 * How the parallels of two edges are joined round an outer corner. At a corner whose parallels cross each other they
 * are trimmed there, whatever the style.
 *
 * <pre>{@code
 * CornerStyle pointed = CornerStyle.mitre(4);
 * OutlineOffset.outward(front.outline(), 10, pointed, 0.01).outline().area();
 * }</pre>
 *
 * <p><b>Formula.</b> Where the tangents turn by the angle a, clockwise positive, and the distances are d1 and d2, the
 * straight prolongations meet at {@code (d2 T1 - d1 T2) / sin a} from the corner, T1 and T2 the unit tangents that
 * arrive and leave; for equal distances that is {@code d / cos(a/2)} away. Every style keeps at least the distance from
 * the corner. Immutable.
 */
public sealed interface CornerStyle {
    /**
     * Prolongs both parallels straight until they meet; a tip that would lie further from the corner than {@code limit}
     * times the distance is cut off square there.
     *
     * @param limit at least 1
     */
    record Mitre(double limit) implements CornerStyle {
        /** @throws IllegalArgumentException if the limit is not finite or less than 1 */
        public Mitre {
            if (!(limit >= 1 && limit < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("mitre limit must be finite and at least 1, got " + limit);
            }
        }
    }

    /** Joins equal distances by an arc about the corner; unequal ones are cut square. */
    record Round() implements CornerStyle {}

    /** Cuts the tip off square at the distance from the corner, the greater of the two if they differ. */
    record Square() implements CornerStyle {}

    /**
     * Ends the allowance of one of the two edges square to that edge, at the point where the edge, prolonged, leaves
     * the other's distance, so that both lie flush once the edge is folded over. A corner whose end would lie further
     * away than {@code limit} times the greater distance is mitred with that limit, so that unequal distances meet in a
     * step where the corner is all but straight.
     *
     * @param second whether the edge that leaves the corner is the one whose end is square, else the one that arrives
     * @param limit at least 1
     */
    record SquaredTo(boolean second, double limit) implements CornerStyle {
        /** @throws IllegalArgumentException if the limit is not finite or less than 1 */
        public SquaredTo {
            new Mitre(limit);
        }
    }

    static CornerStyle mitre(double limit) {
        return new Mitre(limit);
    }

    static CornerStyle round() {
        return new Round();
    }

    static CornerStyle square() {
        return new Square();
    }

    /** Returns the style of a corner that is square to the edge that arrives at it. */
    static CornerStyle squaredToFirst(double limit) {
        return new SquaredTo(false, limit);
    }

    /** Returns the style of a corner that is square to the edge that leaves it. */
    static CornerStyle squaredToSecond(double limit) {
        return new SquaredTo(true, limit);
    }
}
