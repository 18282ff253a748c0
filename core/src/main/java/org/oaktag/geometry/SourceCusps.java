package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Cuts a cubic where it stands still inside, at a cusp or a turn back, and where it nearly does.
 *
 * <p>At a cusp the tangent reverses. Beside a near cusp it turns about as far within a very small stretch; a piece that
 * starts there has controls that give its tangents to many more digits than the whole curve's.
 */
final class SourceCusps {
    /** Slower than this share of the hodograph's size is standing still. */
    private static final double STILL = 1e-12;

    /** Slower than this share is nearly so. */
    private static final double NEARLY = 1e-3;

    /**
     * The controls of a part from here to an end would be rounding, while the curve's own at that end tell its tangents
     * as well.
     */
    private static final double AT_END = 1e-3;

    /** Returns the parts in order; the whole curve if it is nowhere near standing still. */
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
        double size = 3 * Math.max(h0.length(), Math.max(h1.length(), h2.length()));
        List<Cubic> parts = new ArrayList<>();
        double from = 0;
        boolean stillFrom = false;
        for (double t : Polynomials.roots(slowing)) {
            boolean stillTo = cubic.speedAt(t) <= STILL * size;
            boolean nearlyTo = cubic.speedAt(t) <= NEARLY * size && t > AT_END && t < 1 - AT_END;
            if (t > 0 && t < 1 && (stillTo || nearlyTo)) {
                parts.add(still(cubic.sub(from, t), stillFrom, stillTo));
                from = t;
                stillFrom = stillTo;
            }
        }
        parts.add(still(cubic.sub(from, 1), stillFrom, false));
        return parts;
    }

    /** Doubles the controls at ends that stand still, so that the derivative vanishes there to the last bit. */
    private static Cubic still(Cubic part, boolean atStart, boolean atEnd) {
        return new Cubic(
                part.start(),
                atStart ? part.start() : part.control1(),
                atEnd ? part.end() : part.control2(),
                part.end());
    }
}
