package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class PolynomialsTest {
    /** Bernstein coefficients of the product of (t - root), by multiplying one factor at a time. */
    private static double[] withRoots(double... roots) {
        double[] product = {1};
        for (double root : roots) {
            product = Bernstein.product(product, new double[] {-root, 1 - root});
        }
        return product;
    }

    @Test
    void quadratic_has_its_roots_in_rising_order() {
        double[] b = withRoots(0.75, 0.25);
        assertThat(Polynomials.quadraticRoots(b[0], b[1], b[2])).containsExactly(0.25, 0.75);
        assertThat(Polynomials.quadraticRoots(-b[0], -b[1], -b[2])).containsExactly(0.25, 0.75);
    }

    @Test
    void quadratic_roots_outside_and_at_the_ends_are_left_out() {
        double[] first = withRoots(0.25, 1.5);
        assertThat(Polynomials.quadraticRoots(first[0], first[1], first[2])).containsExactly(0.25);
        double[] other = withRoots(0.5, -2);
        assertThat(Polynomials.quadraticRoots(other[0], other[1], other[2])).containsExactly(0.5);
        double[] ends = withRoots(0, 1);
        assertThat(Polynomials.quadraticRoots(ends[0], ends[1], ends[2])).isEmpty();
        assertThat(Polynomials.quadraticRoots(1, 1, 2)).isEmpty();
        assertThat(Polynomials.quadraticRoots(0, 0, 0)).isEmpty();
        assertThat(Polynomials.quadraticRoots(3, 3, 3)).isEmpty();
    }

    @Test
    void quadratic_that_is_linear_or_touches_has_one_root() {
        assertThat(Polynomials.quadraticRoots(-1, 1, 3)).containsExactly(0.25);
        double[] twice = withRoots(0.5, 0.5);
        assertThat(Polynomials.quadraticRoots(twice[0], twice[1], twice[2])).containsExactly(0.5);
    }

    @Test
    void quintic_has_all_its_roots() {
        double[] roots = {0.125, 0.25, 0.5, 0.625, 0.875};
        double[] found = Polynomials.roots(withRoots(roots));
        assertThat(found).hasSize(5);
        for (int i = 0; i < 5; i++) {
            assertThat(found[i]).isCloseTo(roots[i], within(1e-13));
        }
        assertThat(Polynomials.stationary(withRoots(roots))).hasSize(4).isSorted();
    }

    @Test
    void roots_at_the_ends_belong() {
        assertThat(Polynomials.roots(withRoots(0, 0.5, 1))).containsExactly(0, 0.5, 1);
        assertThat(Polynomials.roots(withRoots(0, 2, 3))).containsExactly(0);
        assertThat(Polynomials.roots(withRoots(-1, 2, 1))).containsExactly(1);
        assertThat(Polynomials.roots(withRoots(-1, 2, 3))).isEmpty();
    }

    @Test
    void polynomial_without_a_sign_change_or_that_is_zero_has_none() {
        assertThat(Polynomials.roots(1, 2, 3, 4)).isEmpty();
        assertThat(Polynomials.roots(-1, -2, -3, -4)).isEmpty();
        assertThat(Polynomials.roots(0, 0, 0, 0)).isEmpty();
        assertThat(Polynomials.roots(-1, 3)).containsExactly(0.25);
        assertThat(Polynomials.stationary(-1, 3)).isEmpty();
        assertThat(Polynomials.stationary(1, 0, 1)).containsExactly(0.5);
        assertThat(Polynomials.stationary(0, 1, 2)).isEmpty();
    }

    /** Products of values so small that they underflow still have a root between them. */
    @Test
    void tiny_polynomials_keep_their_roots() {
        assertThat(Polynomials.roots(-1e-200, 3e-200)).containsExactly(0.25);
        assertThat(Polynomials.roots(1e-200, -3e-200)).containsExactly(0.25);
    }

    /** A root of order three is flat, where Newton's steps shrink slowly and bisection has to help. */
    @Test
    void threefold_root_is_found() {
        double[] found = Polynomials.roots(withRoots(0.3, 0.3, 0.3));
        assertThat(found).isNotEmpty();
        for (double t : found) {
            assertThat(t).isCloseTo(0.3, within(2e-5));
        }
    }

    @Test
    void steep_polynomial_is_solved_to_the_last_bit() {
        double[] found = Polynomials.roots(-1e-9, 0, 0, 1e9);
        assertThat(found).hasSize(1);
        assertThat(Math.abs(found[0] - 1e-6)).isLessThan(1e-12);
    }

    @Test
    void value_is_the_polynomial() {
        double[] b = withRoots(0.2, 0.7, 3, -1);
        for (double t = 0; t <= 1; t += 0.1) {
            assertThat(Polynomials.value(b, t)).isCloseTo((t - 0.2) * (t - 0.7) * (t - 3) * (t + 1), within(1e-14));
        }
    }

    /** Newton's steps would still arrive with a wrong one, by halving. */
    @Test
    void derivative_is_that_of_the_polynomial() {
        double[] b = withRoots(0.2, 0.7, 3, -1);
        double h = 1e-5;
        for (double t = 0.1; t < 1; t += 0.1) {
            double slope = (Polynomials.value(b, t + h) - Polynomials.value(b, t - h)) / (2 * h);
            assertThat(Polynomials.derivative(b, t)).isCloseTo(slope, within(1e-8));
        }
        assertThat(Polynomials.derivative(new double[] {-1, 3}, 0.4)).isEqualTo(4);
    }

    /** Roots beside and at the cuts, none of them doubled or lost. */
    @Test
    void roots_agree_with_the_factors_drawn_by_lot() {
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 300; i++) {
            double[] roots = random.doubles(1 + i % 5, -0.5, 1.5).sorted().toArray();
            double[] inside = Arrays.stream(roots).filter(t -> t >= 0 && t <= 1).toArray();
            double[] found = Polynomials.roots(withRoots(roots));
            if (closest(roots) < 0.01) {
                continue;
            }
            assertThat(found).as("%s", Arrays.toString(roots)).hasSameSizeAs(inside);
            for (int k = 0; k < found.length; k++) {
                assertThat(found[k]).isCloseTo(inside[k], within(1e-9));
            }
        }
    }

    private static double closest(double[] sorted) {
        double least = 1;
        for (int i = 1; i < sorted.length; i++) {
            least = Math.min(least, sorted[i] - sorted[i - 1]);
        }
        return least;
    }
}
