package org.oaktag.geometry;

/** A curve of an offset before it is trimmed, and where it comes from; a link only keeps the run connected and is never kept. */
record RawCurve(Curve curve, int edge, boolean corner, boolean link) {
    RawCurve with(Curve other) {
        return new RawCurve(other, edge, corner, link);
    }
}
