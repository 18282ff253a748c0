package org.oaktag.geometry;

/**
 * A curve that is laid over others.
 *
 * @param edge the curve, and where it comes from
 * @param side which of the two regions it belongs to, 0 or 1
 */
record OverlayStrand(Region.Edge edge, int side) {
    Curve curve() {
        return edge.curve();
    }
}
