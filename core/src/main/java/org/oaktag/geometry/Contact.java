package org.oaktag.geometry;

/**
 * What two curves have in common, by parameter: a point (t0 = t1, u0 = u1) or a stretch, from t0 up to t1 on the first
 * curve and from u0 to u1, in either sense, on the second.
 */
record Contact(double t0, double t1, double u0, double u1) {
    static Contact point(double t, double u) {
        return new Contact(t, t, u, u);
    }

    boolean isPoint() {
        return t0 == t1;
    }
}
