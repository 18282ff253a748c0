package org.oaktag.geometry;

/**
 * Control points so near to an end of their cubic that the handle between them tells no direction: dust that tracing
 * and rounding leave.
 *
 * <p>A handle h mm long turns the tangent within about h / size of the parameter and moves the curve by 4/9 h at most.
 * Its parallel would swing about the end by any angle for the sake of that. So a control this near to an end is moved
 * onto it, where the direction is that towards the next control.
 */
final class Dust {
    /** The longest handle that is dust, in sizes of the curve. */
    private static final double OF_SIZE = 1e-6;

    /** The longest, in tolerances: what it moves the curve by is lost in what an offset may be off. */
    private static final double OF_TOLERANCE = 0.1;

    /** The longest hook, in sizes of the curve. */
    private static final double HOOK_OF_SIZE = 1e-3;

    /** The longest curve that is a hook, in tolerances; a handle may be twice as long. */
    private static final double HOOK_OF_TOLERANCE = 0.5;

    /** What a handle moves its curve by if it is drawn in, in lengths of the handle. */
    private static final double MOVED = 4.0 / 9;

    /** How far hooks may move a curve in all, in tolerances. */
    static final double UNHOOKED = 0.7;

    private Dust() {}

    /** Returns the greatest length that is dust for a curve or path of this size, mm. */
    static double floor(double size, double tolerance) {
        return Math.min(OF_SIZE * size, OF_TOLERANCE * tolerance);
    }

    /** Returns the curve with its dust handles drawn in; the very same if it has none. */
    static Curve retracted(Curve curve, double tolerance) {
        return curve instanceof Cubic cubic ? drawnIn(cubic, floor(size(cubic), tolerance)) : curve;
    }

    /**
     * Returns the greatest length of a hook for a curve or path of this size, mm: no dust, but so short that nobody
     * meant the curve to go its way.
     */
    static double hook(double size, double tolerance) {
        return Math.min(HOOK_OF_SIZE * size, HOOK_OF_TOLERANCE * tolerance);
    }

    /**
     * Returns the curve with its hooks drawn in, as far as it has not been moved too far by then; the very same if it
     * has none.
     *
     * @param moved how far its start has been moved already, mm
     */
    static Curve unhooked(Curve curve, double moved, double tolerance) {
        if (!(curve instanceof Cubic cubic)) {
            return curve;
        }
        double longest = 2 * hook(size(cubic), tolerance);
        double left = (UNHOOKED * tolerance - moved) / MOVED;
        double first = cubic.start().distanceTo(cubic.control1());
        boolean hookedStart = first > 0 && first <= Math.min(longest, left);
        double second = cubic.end().distanceTo(cubic.control2());
        boolean hookedEnd = second > 0 && second <= Math.min(longest, left - (hookedStart ? first : 0));
        return hookedStart || hookedEnd
                ? new Cubic(
                        cubic.start(),
                        hookedStart ? cubic.start() : cubic.control1(),
                        hookedEnd ? cubic.end() : cubic.control2(),
                        cubic.end())
                : cubic;
    }

    private static double size(Cubic cubic) {
        Bounds hull = cubic.hull();
        return Math.max(hull.width(), hull.height());
    }

    private static Curve drawnIn(Cubic cubic, double dust) {
        Point control1 = drawnIn(cubic.control1(), cubic, dust);
        Point control2 = drawnIn(cubic.control2(), cubic, dust);
        return control1.equals(cubic.control1()) && control2.equals(cubic.control2())
                ? cubic
                : new Cubic(cubic.start(), control1, control2, cubic.end());
    }

    private static Point drawnIn(Point control, Cubic cubic, double dust) {
        if (control.isCloseTo(cubic.start(), dust)) {
            return cubic.start();
        }
        return control.isCloseTo(cubic.end(), dust) ? cubic.end() : control;
    }
}
