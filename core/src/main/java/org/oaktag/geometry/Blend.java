package org.oaktag.geometry;

/**
 * The cubic that joins two paths with their directions and, where that can be done, their curvatures.
 *
 * <p>Its handles are looked for ({@link CurvedHandles}) from that of a circular arc, {@code chord / (3 cos²(turn/4))}.
 * There may be none, or such that the cubic would loop or bulge: then the arc's handles are taken and the curvatures
 * are what they become.
 */
final class Blend {
    /** What rounding leaves of a handle, in chords. */
    private static final double ROUNDING = 1e-14;

    private Blend() {}

    static Cubic between(Path before, Path after) {
        Point a = before.end();
        Point b = after.start();
        Vector gap = b.minus(a);
        double chord = gap.length();
        if (chord == 0) {
            throw new IllegalArgumentException("a blend needs a gap to bridge, got two paths that meet at " + a);
        }
        Vector t0 = before.endDirection();
        Vector t1 = after.startDirection();
        double k0 = before.curvatureAt(before.length());
        double k1 = after.curvatureAt(0);
        double arc = Arcs.handle(chord, t0.angleTo(t1));
        CurvedHandles curved = new CurvedHandles();
        boolean found = curved.find(k0, k1, t0.cross(gap), gap.cross(t1), t0.cross(t1), arc, arc, ROUNDING * chord);
        return found && isSound(curved.first(), arc) && isSound(curved.last(), arc)
                ? Cubic.hermite(a, t0.times(curved.first()), b, t1.times(curved.last()))
                : Cubic.hermite(a, t0.times(arc), b, t1.times(arc));
    }

    /** Tells whether a cubic with such a handle neither loops nor bulges. */
    private static boolean isSound(double handle, double arc) {
        return handle > arc / 3 && handle < 3 * arc;
    }
}
