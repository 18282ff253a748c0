package org.oaktag.geometry;

/**
 * A piece of a strand between two places where it meets others.
 *
 * @param strand what it is a piece of
 * @param curve the piece, its ends at the vertices
 * @param from parameter on the source at which it starts
 * @param to parameter there at which it ends
 * @param start the vertex at its start, by number
 * @param end the vertex at its end
 */
record OverlayPiece(OverlayStrand strand, Curve curve, double from, double to, int start, int end) {
    OverlayPiece reversed() {
        return new OverlayPiece(strand, curve.reversed(), to, from, end, start);
    }

    Region.Edge edge() {
        return new Region.Edge(curve, strand.edge().source(), strand.edge().index(), from, to);
    }

    /** Tells whether the next piece goes on with this one on the same curve of the same outline. */
    boolean goesOnWith(OverlayPiece next) {
        Region.Edge mine = strand.edge();
        Region.Edge theirs = next.strand.edge();
        boolean isOneWay = (from < to) == (next.from < next.to);
        return to == next.from
                && isOneWay
                && mine.index() == theirs.index()
                && mine.source().equals(theirs.source());
    }

    /** Returns both as one piece of the strand. */
    OverlayPiece joinedWith(OverlayPiece next) {
        Curve source = strand.edge().source().path().curves().get(strand.edge().index());
        Curve whole = source.sub(Math.min(from, next.to), Math.max(from, next.to));
        Curve along = from < next.to ? whole : whole.reversed();
        return new OverlayPiece(
                strand, Joined.withEnds(along, curve.start(), next.curve.end()), from, next.to, start, next.end);
    }
}
