package org.oaktag.geometry;

import java.util.Comparator;

/** Two curves, each by its index on its own path, or both on one. */
record CurvePair(int first, int second) {
    static final Comparator<CurvePair> ORDER =
            Comparator.comparingInt(CurvePair::first).thenComparingInt(CurvePair::second);
}
