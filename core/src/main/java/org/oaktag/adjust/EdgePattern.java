package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Notch;

/**
 * What whoever pins an edge goes by: how long it is and where its notches lie.
 *
 * @param length its length in millimetres
 * @param marks its notches
 */
record EdgePattern(double length, List<Mark> marks) {

    /**
     * Edges this near to each other in length, in millimetres, are sewn to each other without a thought: a knit gives.
     */
    static final double ALIKE_LENGTH = 10;

    /** Notches this near to each other, in millimetres, look as if they should meet. */
    private static final double ALIKE_NOTCH = 5;

    /**
     * A notch.
     *
     * @param at how far it lies from the start of the edge, in millimetres
     * @param count how many cuts side by side
     */
    record Mark(double at, int count) {}

    EdgePattern {
        marks = List.copyOf(marks);
    }

    /** The pattern of an edge of a piece that has these notches, on this edge and on others. */
    static EdgePattern of(Edge edge, List<Notch> notches) {
        double length = edge.path().length();
        List<Mark> marks = new ArrayList<>();
        for (Notch notch : notches) {
            if (notch.edge().equals(edge.name())) {
                marks.add(new Mark(notch.fromStart(length), notch.count()));
            }
        }
        return new EdgePattern(length, marks);
    }

    /** Tells whether the other is near enough to this one in length to be sewn where this one belongs. */
    boolean isAsLongAs(EdgePattern other) {
        return areAlike(length, other.length);
    }

    /** Tells whether two lengths in millimetres are near enough to each other. */
    static boolean areAlike(double length, double other) {
        return Math.abs(length - other) <= ALIKE_LENGTH;
    }

    /** Tells whether one could be taken for the other: either way round, pinned from either end. */
    boolean fits(EdgePattern other) {
        return isAsLongAs(other) && marks.size() == other.marks.size() && (isMetBy(other) || other.isMetBy(this));
    }

    private boolean isMetBy(EdgePattern other) {
        double longer = length - other.length;
        return isMetBy(other, false, 0)
                || isMetBy(other, false, longer)
                || isMetBy(other, true, 0)
                || isMetBy(other, true, longer);
    }

    /**
     * Tells whether every mark meets one of the other when that is turned round, or not, and laid so far along this.
     */
    private boolean isMetBy(EdgePattern other, boolean turned, double along) {
        for (int i = 0; i < marks.size(); i++) {
            if (!other.hasLike(marks.get(i), turned, along)) {
                return false;
            }
        }
        return true;
    }

    private boolean hasLike(Mark mark, boolean turned, double along) {
        for (int i = 0; i < marks.size(); i++) {
            Mark own = marks.get(i);
            double at = along + (turned ? length - own.at : own.at);
            if (own.count == mark.count && Math.abs(mark.at - at) <= ALIKE_NOTCH) {
                return true;
            }
        }
        return false;
    }
}
