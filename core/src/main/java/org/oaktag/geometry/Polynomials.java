package org.oaktag.geometry;

import java.util.Arrays;

/**
 * Real roots, within 0 to 1, of polynomials given by their Bernstein coefficients.
 *
 * <p>A polynomial has no more roots than its coefficients change sign, and as many but for an even number (Descartes'
 * rule of signs, for the Bernstein form). It is halved until each part has one root or none by that. Where roots lie
 * too near to each other for it, the derivative tells them apart: between neighbouring roots of the derivative a
 * polynomial is monotone, so each such stretch holds one root or none, down to a line. In a stretch with a change of
 * sign bracketed Newton steps find the root to the last bit of t; a step that leaves the bracket, or does not halve the
 * one before, is a bisection.
 *
 * <p><b>Error.</b> That of the value, some n units in the last place of the greatest coefficient: the Bernstein form on
 * 0 to 1 is the best conditioned one (Farouki and Rajan, 1987; from memory). A root of even order is found only if the
 * value there is exactly zero, so whoever needs near ones asks for the stationary places too. O(n²) for the isolation,
 * times the steps of each root.
 */
final class Polynomials {
    private static final double[] NONE = {};

    /** Roots nearer to each other than this may have to be told apart in another way. */
    private static final double LEAST_PART = 1.0 / 64;

    private static final int MANY = -1;

    private Polynomials() {}

    /**
     * Returns the roots strictly inside 0 to 1 of the quadratic with Bernstein coefficients b0, b1, b2, in rising
     * order; none if it is zero throughout.
     */
    static double[] quadraticRoots(double b0, double b1, double b2) {
        double a = b0 - 2 * b1 + b2;
        double b = b1 - b0;
        double discriminant = b * b - a * b0;
        if (discriminant < 0) {
            return NONE;
        }
        // q avoids the difference of nearly equal numbers; the roots are q/a and b0/q.
        double q = -(b + Math.copySign(Math.sqrt(discriminant), b));
        double r1 = q / a;
        double r2 = b0 / q;
        if (!inside(r1)) {
            return inside(r2) ? new double[] {r2} : NONE;
        }
        if (!inside(r2) || r1 == r2) {
            return new double[] {r1};
        }
        return r1 < r2 ? new double[] {r1, r2} : new double[] {r2, r1};
    }

    private static boolean inside(double t) {
        return t > 0 && t < 1;
    }

    /**
     * Returns the roots within 0 to 1 of the polynomial with these Bernstein coefficients, in rising order, followed by
     * nothing else; a root of even order is found as the extremum it is if the value there is exactly zero. A zero
     * polynomial has none.
     *
     * <p>Between two neighbouring roots of the derivative the polynomial is monotone, so each such stretch holds one
     * root or none, which bracketed Newton steps find to the last bit.
     */
    static double[] roots(double... bernstein) {
        return switch (variations(bernstein)) {
            case 0 -> NONE;
            case 1 -> new double[] {bracketed(bernstein, 0, 1, bernstein[0])};
            default -> isolated(bernstein);
        };
    }

    /**
     * Halves until each part has one root or none, which is soon where no two lie near each other; else by the
     * derivative.
     */
    private static double[] isolated(double[] bernstein) {
        double[] found = new double[bernstein.length];
        int count = isolate(bernstein, bernstein, 0, 1, found, 0);
        return count == MANY ? roots(bernstein, stationary(bernstein)) : Arrays.copyOf(found, count);
    }

    /**
     * Adds the roots of a part of a polynomial to those found before it, rising.
     *
     * @param part the coefficients of the part from {@code from} to {@code to}
     * @return how many are found by now; MANY if that cannot be told so simply
     */
    private static int isolate(double[] whole, double[] part, double from, double to, double[] found, int count) {
        int variations = variations(part);
        if (variations == 0) {
            return count;
        }
        if (variations == 1) {
            found[count] = bracketed(whole, from, to, part[0]);
            return count + 1;
        }
        double middle = 0.5 * (from + to);
        if (part[0] == 0 || part[part.length - 1] == 0 || to - from < LEAST_PART) {
            return MANY;
        }
        double[] first = new double[part.length];
        double[] second = part.clone();
        for (int k = 0; k < part.length; k++) {
            first[k] = second[0];
            for (int i = 0; i + 1 < part.length - k; i++) {
                second[i] = 0.5 * (second[i] + second[i + 1]);
            }
        }
        int before = isolate(whole, first, from, middle, found, count);
        return before == MANY ? MANY : isolate(whole, second, middle, to, found, before);
    }

    /**
     * Returns how often the coefficients change sign, 2 if some of them vanish.
     */
    private static int variations(double[] bernstein) {
        int changes = 0;
        for (int i = 0; i < bernstein.length; i++) {
            if (bernstein[i] == 0) {
                return 2;
            }
            if (i > 0 && bernstein[i] > 0 != bernstein[i - 1] > 0) {
                changes++;
            }
        }
        return changes;
    }

    /** Returns the roots of the derivative, which with 0 and 1 cut the polynomial into monotone stretches. */
    static double[] stationary(double... bernstein) {
        int degree = bernstein.length - 1;
        if (degree <= 1) {
            return NONE;
        }
        double[] derivative = new double[degree];
        for (int i = 0; i < degree; i++) {
            derivative[i] = bernstein[i + 1] - bernstein[i];
        }
        return degree == 2 ? linearRoot(derivative[0], derivative[1]) : roots(derivative);
    }

    private static double[] linearRoot(double b0, double b1) {
        double t = b0 / (b0 - b1);
        return inside(t) ? new double[] {t} : NONE;
    }

    /** Returns the roots as the other does, where what {@link #stationary} returns is known already. */
    static double[] roots(double[] bernstein, double[] cuts) {
        double[] found = new double[bernstein.length + 1];
        int count = 0;
        double from = 0;
        double atFrom = bernstein[0];
        if (atFrom == 0 && !isZero(bernstein)) {
            found[count++] = 0;
        }
        for (int i = 0; i <= cuts.length; i++) {
            double to = i < cuts.length ? cuts[i] : 1;
            double atTo = value(bernstein, to);
            if (atTo == 0 && to > from && !isZero(bernstein)) {
                found[count++] = to;
            } else if ((atFrom < 0 && atTo > 0) || (atFrom > 0 && atTo < 0)) {
                found[count++] = bracketed(bernstein, from, to, atFrom);
            }
            from = to;
            atFrom = atTo;
        }
        return Arrays.copyOf(found, count);
    }

    /**
     * Returns those of the roots, rising, that lie inside 0 to 1 and at which the polynomial goes over from one sign to
     * the other.
     */
    static double[] changesOfSign(double[] bernstein, double[] roots) {
        double[] found = new double[roots.length];
        int count = 0;
        for (int i = 0; i < roots.length; i++) {
            double before = i == 0 ? 0 : roots[i - 1];
            double after = i + 1 < roots.length ? roots[i + 1] : 1;
            double product = value(bernstein, 0.5 * (before + roots[i])) * value(bernstein, 0.5 * (roots[i] + after));
            if (inside(roots[i]) && product < 0) {
                found[count++] = roots[i];
            }
        }
        return Arrays.copyOf(found, count);
    }

    private static boolean isZero(double[] bernstein) {
        for (double b : bernstein) {
            if (b != 0) {
                return false;
            }
        }
        return true;
    }

    /** Returns the one root of a monotone stretch whose ends have opposite signs. */
    private static double bracketed(double[] bernstein, double from, double to, double atFrom) {
        double low = from;
        double high = to;
        double t = 0.5 * (low + high);
        double[] slope = derivative(bernstein);
        double last = Double.POSITIVE_INFINITY;
        while (true) {
            double value = value(bernstein, t);
            if (value == 0) {
                return t;
            }
            if (value > 0 == atFrom > 0) {
                low = t;
            } else {
                high = t;
            }
            double step = value / slopeAt(slope, t);
            double next = t - step;
            if (!(next > low && next < high) || Math.abs(step) > 0.5 * last) {
                next = 0.5 * (low + high);
            }
            if (next <= low || next >= high) {
                return t;
            }
            if (Math.abs(next - t) < 0x1p-54) {
                return next;
            }
            last = Math.abs(next - t);
            t = next;
        }
    }

    /** Returns the polynomial at t, by the Bernstein form of Horner's rule. */
    static double value(double[] bernstein, double t) {
        int n = bernstein.length - 1;
        double s = 1 - t;
        double[] binomials = Bernstein.row(n);
        double power = 1;
        double sum = bernstein[0] * s;
        for (int i = 1; i < n; i++) {
            power *= t;
            sum = (sum + power * binomials[i] * bernstein[i]) * s;
        }
        return sum + power * t * bernstein[n];
    }

    static double derivative(double[] bernstein, double t) {
        return slopeAt(derivative(bernstein), t);
    }

    private static double[] derivative(double[] bernstein) {
        int n = bernstein.length - 1;
        double[] derivative = new double[n];
        for (int i = 0; i < n; i++) {
            derivative[i] = n * (bernstein[i + 1] - bernstein[i]);
        }
        return derivative;
    }

    /** The value of a derivative, which is constant where the polynomial is a line. */
    private static double slopeAt(double[] derivative, double t) {
        return derivative.length == 1 ? derivative[0] : value(derivative, t);
    }
}
