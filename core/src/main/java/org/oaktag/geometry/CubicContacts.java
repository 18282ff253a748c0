package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Points that two cubics have in common, found by subdivision with a proof at every leaf.
 *
 * <p>A pair of pieces is dropped when the boxes of their control points, or their strips along either chord, lie apart:
 * each piece lies within its own. When every control vector of one hodograph turns the same way to every one of the
 * other, the product {@code a'(t) x b'(u)}, a mean of those turns, never vanishes and the pieces meet in one point at
 * most; Newton's method then finds it, and if it ends outside the pieces they are halved again. Pieces that are
 * straight to within the tolerance and still not apart are the leaves: if they touch, the common tangent is solved for;
 * what crosses there at so small an angle that rounding hides it is tried last.
 */
final class CubicContacts {
    private static final int NEWTON_STEPS = 16;

    private final Cubic a;
    private final Cubic b;
    private final double tolerance;
    private final List<Contact> found = new ArrayList<>();

    private CubicContacts(Cubic a, Cubic b, double tolerance) {
        this.a = a;
        this.b = b;
        this.tolerance = tolerance;
    }

    /** Returns the points that the two have in common outside of the stretches that they share. */
    static List<Contact> between(Cubic a, Cubic b, List<Contact> shared, double tolerance) {
        CubicContacts search = new CubicContacts(a, b, tolerance);
        double from = 0;
        for (Contact stretch : shared) {
            search.parts(from, stretch.t0(), 0, 1);
            search.parts(stretch.t0(), stretch.t1(), 0, Math.min(stretch.u0(), stretch.u1()));
            search.parts(stretch.t0(), stretch.t1(), Math.max(stretch.u0(), stretch.u1()), 1);
            from = stretch.t1();
        }
        search.parts(from, 1, 0, 1);
        return search.found;
    }

    private void parts(double t0, double t1, double u0, double u1) {
        if (t0 < t1 && u0 < u1) {
            pair(new CubicPiece(a.sub(t0, t1), t0, t1), new CubicPiece(b.sub(u0, u1), u0, u1));
        }
    }

    private void pair(CubicPiece p, CubicPiece q) {
        if (p.isApartFrom(q, tolerance)) {
            return;
        }
        if (p.isAslantTo(q) && solve(p, q, false, 0)) {
            return;
        }
        double flat = 0.25 * tolerance;
        if (p.isStraight(flat) && q.isStraight(flat)) {
            if (!solve(p, q, true, 1)) {
                solve(p, q, false, 1);
            }
            return;
        }
        if (p.size() >= q.size()) {
            pair(p.firstHalf(), q);
            pair(p.secondHalf(), q);
        } else {
            pair(p, q.firstHalf());
            pair(p, q.secondHalf());
        }
    }

    /**
     * Solves a(t) = b(u), or for a touch parallel tangents at the feet of a common normal, from the middle; true if the
     * place lies on both pieces, each prolonged by a share of itself.
     */
    private boolean solve(CubicPiece p, CubicPiece q, boolean touch, double share) {
        double t = p.middle();
        double u = q.middle();
        for (int i = 0; i < NEWTON_STEPS; i++) {
            Vector gap = b.pointAt(u).minus(a.pointAt(t));
            Vector da = a.derivativeAt(t);
            Vector db = b.derivativeAt(u);
            double f = gap.x();
            double g = gap.y();
            double ft = -da.x();
            double fu = db.x();
            double gt = -da.y();
            double gu = db.y();
            if (touch) {
                Vector dda = a.secondDerivativeAt(t);
                f = gap.dot(da);
                g = da.cross(db);
                ft = gap.dot(dda) - da.dot(da);
                fu = db.dot(da);
                gt = dda.cross(db);
                gu = da.cross(b.secondDerivativeAt(u));
            }
            double determinant = ft * gu - fu * gt;
            double nextT = clamp(t - (f * gu - g * fu) / determinant);
            double nextU = clamp(u - (g * ft - f * gt) / determinant);
            if (isOver(nextT - t, nextU - u)) {
                break;
            }
            t = nextT;
            u = nextU;
        }
        return accept(p, q, t, u, share);
    }

    private boolean accept(CubicPiece p, CubicPiece q, double t, double u, double share) {
        if (!p.holds(t, share) || !q.holds(u, share) || !a.pointAt(t).isCloseTo(b.pointAt(u), tolerance)) {
            return false;
        }
        found.add(Contact.point(t, u));
        return true;
    }

    /** Tells whether a step is as short as rounding, or not a number. */
    private static boolean isOver(double dt, double du) {
        return !(Math.abs(dt) + Math.abs(du) > 0x1p-52);
    }

    /** Keeps a step inside the curve. */
    private static double clamp(double t) {
        return Math.min(Math.max(t, 0), 1);
    }
}
