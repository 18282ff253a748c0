package org.oaktag.geometry;

/** A part of a run of parallels between two cuts, and whether it keeps its distance from the source. */
record Fragment(RawCurve raw, boolean kept) {
    Point start() {
        return raw.curve().start();
    }

    Point end() {
        return raw.curve().end();
    }
}
