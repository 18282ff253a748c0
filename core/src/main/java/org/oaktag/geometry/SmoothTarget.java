package org.oaktag.geometry;

/** A smooth curve that is to be fitted, by any regular parameter that rises along it. */
interface SmoothTarget {
    /** Puts x and y of the point and of the unit tangent at t into the first four places of the frame. */
    void frameAt(double t, double[] frame);

    /** Returns how fast the point moves with t, mm; at the ends of a piece it gives the first guess of the handles. */
    double speedAt(double t);
}
