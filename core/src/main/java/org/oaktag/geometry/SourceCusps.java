package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;

/** Cuts a cubic where it stands still inside, at a cusp or a turn back: there its tangent reverses, and elsewhere it does not. */
final class SourceCusps {
    /** Slower than this share of the hodograph's size is standing still. */
    private static final double STILL = 1e-9;

    private SourceCusps() {}

    /** Returns the parts in order, each moving everywhere but perhaps at its ends; the whole curve if it never stands still. */
    static List<Cubic> cut(Cubic cubic) {
        Vector h0 = cubic.control1().minus(cubic.start());
        Vector h1 = cubic.control2().minus(cubic.control1());
        Vector h2 = cubic.end().minus(cubic.control2());
        if (h0.dot(h1) >= 0 && h1.dot(h2) >= 0 && h0.dot(h2) >= 0) {
            return List.of(cubic);
        }
        // |r'|² is least where r' . r'' = 0: a quadratic times a linear polynomial, in Bernstein form.
        Vector s0 = h1.minus(h0);
        Vector s1 = h2.minus(h1);
        double[] slowing = {h0.dot(s0), (2 * h1.dot(s0) + h0.dot(s1)) / 3, (h2.dot(s0) + 2 * h1.dot(s1)) / 3, h2.dot(s1)
        };
        double still = 3 * STILL * Math.max(h0.length(), Math.max(h1.length(), h2.length()));
        List<Cubic> parts = new ArrayList<>();
        double from = 0;
        for (double t : Polynomials.roots(slowing)) {
            if (t > 0 && t < 1 && cubic.speedAt(t) <= still) {
                parts.add(cubic.sub(from, t));
                from = t;
            }
        }
        parts.add(cubic.sub(from, 1));
        return parts;
    }
}
