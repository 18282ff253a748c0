package org.oaktag.geometry;

import java.util.Arrays;

/**
 * Sums and products of polynomials given by their Bernstein coefficients on 0 to 1.
 *
 * <p>{@code p(t) = sum b[i] C(n, i) t^i (1-t)^(n-i)}; the product of degrees m and n has the coefficients
 * {@code c[k] = sum C(m, i) a[i] C(n, k-i) b[k-i] / C(m+n, k)}. The least and the greatest coefficient bound the
 * polynomial.
 */
final class Bernstein {
    private static final double[][] CHOOSE = pascal(13);

    private Bernstein() {}

    private static double[][] pascal(int rows) {
        double[][] triangle = new double[rows][];
        for (int n = 0; n < rows; n++) {
            triangle[n] = new double[n + 1];
            triangle[n][0] = 1;
            triangle[n][n] = 1;
            for (int k = 1; k < n; k++) {
                triangle[n][k] = triangle[n - 1][k - 1] + triangle[n - 1][k];
            }
        }
        return triangle;
    }

    static double choose(int n, int k) {
        return CHOOSE[n][k];
    }

    /** Returns all the ways to choose from n, not to be changed. */
    static double[] row(int n) {
        return CHOOSE[n];
    }

    static double[] product(double[] a, double[] b) {
        int m = a.length - 1;
        int n = b.length - 1;
        double[] product = new double[m + n + 1];
        for (int i = 0; i <= m; i++) {
            for (int j = 0; j <= n; j++) {
                product[i + j] += choose(m, i) * a[i] * choose(n, j) * b[j];
            }
        }
        for (int k = 0; k <= m + n; k++) {
            product[k] /= choose(m + n, k);
        }
        return product;
    }

    /** Returns the same polynomial written in a higher degree. */
    static double[] raised(double[] a, int degree) {
        double[] one = new double[degree - a.length + 2];
        Arrays.fill(one, 1);
        return product(a, one);
    }

    static double[] plus(double[] a, double[] b) {
        double[] sum = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            sum[i] = a[i] + b[i];
        }
        return sum;
    }

    static double[] minus(double[] a, double[] b) {
        double[] difference = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            difference[i] = a[i] - b[i];
        }
        return difference;
    }

    /** Tells whether every coefficient is positive, or every one negative: such a polynomial has no root. */
    static boolean hasOneSign(double[] a) {
        for (double b : a) {
            if (!(b * a[0] > 0)) {
                return false;
            }
        }
        return true;
    }
}
