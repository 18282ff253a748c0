package org.oaktag.garment;

import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.measure.Length;

/**
 * A mark on an edge that meets its like on the other side of a seam: notches of the same name on both sides of a seam
 * are matched when the seam is walked.
 *
 * <pre>{@code
 * Notch pocket = Notch.single(Name.of("pocket"), SIDE, End.START, 120);
 * Point place = front.withNotch(pocket).pointOf(pocket);
 * }</pre>
 *
 * <p>Its place is a distance along the seam line from one end of its edge, so that it keeps that distance when the edge
 * grows or shrinks at the other end. Immutable.
 *
 * @param name what it marks, such as {@code "front armhole"}; unique on its edge
 * @param edge the edge on which it lies
 * @param from the end of the edge from which its distance counts
 * @param distance the distance from that end along the seam line, in millimetres; not negative
 * @param count how many cuts are made side by side, 1 to 3. The rule (common practice): one says front, two say back,
 *     on body, facing, lining, band and half of the cap alike. Both sides of a seam have the same, so that what joins a
 *     front to a back, such as a side or a shoulder, has one; two there would make a back of the front. What is
 *     neither, such as a cuff or a hood, may have any. Three say neither and tell apart what one or two do not
 */
public record Notch(Name name, Name edge, End from, double distance, int count) {

    /**
     * Checks the parts.
     *
     * @throws PatternException if the distance is negative or not a number, or the count is not 1 to 3
     */
    public Notch {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(edge, "edge");
        Objects.requireNonNull(from, "from");
        if (!(distance >= 0) || !Double.isFinite(distance)) {
            throw PatternException.of(
                    "notch '" + name + "'", "must lie at 0 mm or more from the end of its edge", distance + " mm", "");
        }
        if (count < 1 || count > 3) {
            throw PatternException.of("notch '" + name + "'", "must be 1 to 3 cuts side by side", "" + count, "");
        }
    }

    /** Returns a single notch, as on a front. */
    public static Notch single(Name name, Name edge, End from, double distance) {
        return new Notch(name, edge, from, distance, 1);
    }

    /** Returns a double notch, as on a back. */
    public static Notch paired(Name name, Name edge, End from, double distance) {
        return new Notch(name, edge, from, distance, 2);
    }

    /**
     * Returns the distance of the notch from the start of its edge.
     *
     * @param edgeLength the length of the edge in millimetres
     */
    public double fromStart(double edgeLength) {
        return from == End.START ? distance : edgeLength - distance;
    }

    /** Returns the same notch at another distance from the same end. */
    public Notch at(Length other) {
        return new Notch(name, edge, from, other.mm(), count);
    }

    /** Returns the same notch on another edge. */
    public Notch on(Name otherEdge) {
        return new Notch(name, otherEdge, from, distance, count);
    }
}
