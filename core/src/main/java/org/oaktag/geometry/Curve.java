package org.oaktag.geometry;

/**
 * A straight segment or a cubic Bézier, run from its start to its end as t goes from 0 to 1. Immutable and thread-safe.
 *
 * <pre>{@code
 * Curve neckline = Cubic.of(Point.of(72.5, 0), Point.of(72.5, 40), Point.of(40, 78), Point.of(0, 78));
 * double middle = neckline.parameterAt(neckline.length() / 2);
 * neckline.lengthBetween(0, middle, 1e-9);   // = 58.81
 * neckline.turning();                        // = 1.5708
 * }</pre>
 *
 * <p>All lengths are mm, angles radians, areas mm². Every method that takes a parameter refuses one outside 0 to 1 (or
 * NaN) with an {@link IllegalArgumentException}; every method that takes an accuracy refuses one that is not positive
 * and finite. Results are finite for every curve, a point or a cusp included, but for the curvature of a cusp, which is
 * infinite. A curve that is a single point has length, turning and curvature 0 and no direction.
 *
 * <p>An <b>accuracy</b> is the greatest absolute error of a length in mm. Rounding sets a floor, about 1e-15 of the
 * length of the control polygon. Lengths and their inverse allocate nothing.
 */
public sealed interface Curve permits Line, Cubic {
    /** The accuracy of a length where none is asked for: a millionth of a millimetre. */
    double DEFAULT_ACCURACY = 1e-6;

    Point start();

    Point end();

    /** Returns the point at t: exactly the start at 0 and exactly the end at 1. */
    Point pointAt(double t);

    /** Returns dr/dt, mm. */
    Vector derivativeAt(double t);

    /** Returns d²r/dt², mm. */
    Vector secondDerivativeAt(double t);

    /**
     * Returns the unit tangent in the direction of travel. Where the derivative vanishes (a doubled control point, a
     * cusp) it is the limit of the direction, taken towards the end of the curve, and at t = 1 from before it.
     *
     * @throws IllegalStateException if the curve is a single point
     */
    Vector directionAt(double t);

    /**
     * Returns the signed curvature (r' x r'') / |r'|³ in 1/mm: positive where the curve turns clockwise on the table.
     * At a cusp it is infinite, with the sign of the turn beside it; where the curve stands still but is straight it is
     * 0.
     */
    double curvatureAt(double t);

    /**
     * Returns the angle through which the tangent turns from start to end, radians, clockwise positive; the sum of the
     * signed turns, so a loop counts more than half a turn. At a cusp the tangent reverses by half a turn of either
     * sign.
     */
    double turning();

    /** Returns the length to {@link #DEFAULT_ACCURACY}. */
    double length();

    double length(double accuracy);

    /**
     * Returns the length from t0 to t1.
     *
     * @throws IllegalArgumentException unless t0 is at most t1 and both lie within 0 to 1
     */
    double lengthBetween(double t0, double t1, double accuracy);

    /** Returns the parameter at this distance from the start, to {@link #DEFAULT_ACCURACY}. */
    double parameterAt(double distance);

    /**
     * Returns the parameter at which the length from the start is {@code distance}, with an error of at most {@code
     * accuracy} mm along the curve.
     *
     * @throws IllegalArgumentException if the distance is not within 0 to the length (give or take the accuracy)
     */
    double parameterAt(double distance, double accuracy);

    /**
     * Returns the part from t0 to t1, whose ends are exactly the points there.
     *
     * @throws IllegalArgumentException unless t0 is at most t1
     */
    Curve sub(double t0, double t1);

    /** Returns the same curve run from end to start. */
    Curve reversed();

    Curve transformed(Transform transform);

    /** Returns the tight box of the curve itself (not of its control points). */
    Bounds bounds();

    /**
     * Returns the signed area swept by the ray from the origin as the curve is run, 1/2 integral (x dy - y dx), mm²,
     * exact to rounding: the sum round a closed outline is its area (Green), positive if it is run clockwise on the
     * table.
     */
    double sweep();

    /** Returns the point of the curve nearest to the given one, the first if several are equally near. */
    Nearest nearest(Point point);

    /** Tells whether start, end and every control are one and the same point. */
    boolean isPoint();
}
