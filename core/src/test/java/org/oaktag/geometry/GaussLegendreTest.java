package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class GaussLegendreTest {
    /**
     * With n nodes every even power up to 2 n - 2 is integrated exactly: the integral of u^k over -1 to 1 is 2 / (k +
     * 1).
     */
    @Test
    void rules_integrate_polynomials_of_twice_their_order() {
        for (int order = GaussLegendre.STEP; order <= GaussLegendre.MAX_ORDER; order += GaussLegendre.STEP) {
            double[] pairs = GaussLegendre.pairs(order);
            assertThat(pairs).hasSize(order);
            for (int k = 0; k <= 2 * order - 2; k += 2) {
                double sum = 0;
                for (int i = 0; i < pairs.length; i += 2) {
                    sum += 2 * pairs[i + 1] * Math.pow(pairs[i], k);
                }
                assertThat(sum).as("order %s, power %s", order, k).isCloseTo(2.0 / (k + 1), within(3e-15));
            }
            for (int i = 2; i < pairs.length; i += 2) {
                assertThat(pairs[i]).isGreaterThan(pairs[i - 2]).isLessThan(1);
            }
        }
    }

    /** Abramowitz and Stegun, table 25.4, n = 4. */
    @Test
    void four_nodes_agree_with_the_printed_table() {
        double[] pairs = GaussLegendre.pairs(4);
        assertThat(pairs[0]).isCloseTo(0.339981043584856, within(1e-15));
        assertThat(pairs[1]).isCloseTo(0.652145154862546, within(1e-15));
        assertThat(pairs[2]).isCloseTo(0.861136311594053, within(1e-15));
        assertThat(pairs[3]).isCloseTo(0.347854845137454, within(1e-15));
    }
}
