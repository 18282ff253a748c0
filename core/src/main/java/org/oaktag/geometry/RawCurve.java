package org.oaktag.geometry;

/**
 * A curve of an offset before it is trimmed, and where it comes from.
 *
 * @param curve the curve
 * @param edge index of the edge that it runs beside, or after which its corner comes
 * @param source index of the curve of that edge of which it is the parallel; {@link #NONE} if it prolongs one or
 *     belongs to a corner
 * @param corner whether it joins two edges
 * @param link whether it only keeps the run connected, and is never kept
 */
record RawCurve(Curve curve, int edge, int source, boolean corner, boolean link) {
    static final int NONE = -1;

    RawCurve with(Curve other) {
        return new RawCurve(other, edge, source, corner, link);
    }

    /** Returns a curve that prolongs this one straight. */
    RawCurve prolongedBy(Line line) {
        return new RawCurve(line, edge, NONE, corner, link);
    }
}
