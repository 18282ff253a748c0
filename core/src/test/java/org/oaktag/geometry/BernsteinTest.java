package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class BernsteinTest {
    @Test
    void binomials_are_those_of_pascal() {
        assertThat(Bernstein.choose(12, 6)).isEqualTo(924);
        assertThat(Bernstein.choose(5, 2)).isEqualTo(10);
        assertThat(Bernstein.choose(7, 0)).isEqualTo(1);
        assertThat(Bernstein.choose(7, 7)).isEqualTo(1);
    }

    @Test
    void products_sums_and_raised_degrees_have_the_values_of_the_polynomials() {
        double[] a = {1, -2, 4};
        double[] b = {3, 5, -7, 2};
        double[] c = {0.5, 2, 1, -1};
        for (double t = 0; t <= 1; t += 0.25) {
            double va = Polynomials.value(a, t);
            double vb = Polynomials.value(b, t);
            double vc = Polynomials.value(c, t);
            assertThat(Polynomials.value(Bernstein.product(a, b), t)).isCloseTo(va * vb, within(1e-13));
            assertThat(Polynomials.value(Bernstein.plus(b, c), t)).isCloseTo(vb + vc, within(1e-14));
            assertThat(Polynomials.value(Bernstein.minus(b, c), t)).isCloseTo(vb - vc, within(1e-14));
            assertThat(Polynomials.value(Bernstein.raised(a, 6), t)).isCloseTo(va, within(1e-14));
        }
        assertThat(Bernstein.raised(a, 6)).hasSize(7);
    }

    @Test
    void one_sign_means_every_coefficient() {
        assertThat(Bernstein.hasOneSign(new double[] {1, 2, 3})).isTrue();
        assertThat(Bernstein.hasOneSign(new double[] {-1, -2})).isTrue();
        assertThat(Bernstein.hasOneSign(new double[] {1, 0, 3})).isFalse();
        assertThat(Bernstein.hasOneSign(new double[] {1, 2, -3})).isFalse();
        assertThat(Bernstein.hasOneSign(new double[] {0, 2})).isFalse();
    }
}
