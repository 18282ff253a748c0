package org.oaktag.laws.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.CubicCurve2D;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.PathIterator;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.oaktag.geometry.Cubic;
import org.oaktag.testkit.curves.CubicShape;
import org.oaktag.testkit.curves.Curves;

/** Lengths beside those of independent code. */
class LengthCheckersProperties {
    @Provide
    Arbitrary<Cubic> general() {
        return Curves.of(CubicShape.GENERAL);
    }

    /** Iterative Gauss-Legendre of Apache Commons Math, whose steps get finer until two of them agree. */
    @Property(tries = 300)
    void agrees_with_the_integrator_of_commons_math(@ForAll("general") Cubic cubic) {
        IterativeLegendreGaussIntegrator integrator = new IterativeLegendreGaussIntegrator(16, 1e-13, 1e-12);
        double theirs;
        try {
            theirs = integrator.integrate(1_000_000, t -> cubic.derivativeAt(t).length(), 0, 1);
        } catch (TooManyEvaluationsException e) {
            // Near a cusp it does not end; those are checked against closed forms.
            return;
        }
        assertThat(cubic.length(1e-9)).isCloseTo(theirs, within(2e-9));
    }

    /**
     * java.awt cuts the curve to chords that lie within a flatness of it, so its sum is less, and comes near as that
     * shrinks.
     */
    @Property(tries = 300)
    void is_a_little_longer_than_the_chords_of_java_awt(@ForAll("general") Cubic cubic) {
        double chords = chords(cubic, 1e-5);
        assertThat(cubic.length(1e-9)).isBetween(chords - 1e-9, chords + 0.01 + 1e-5 * chords);
    }

    private static double chords(Cubic cubic, double flatness) {
        CubicCurve2D theirs = new CubicCurve2D.Double(
                cubic.start().x(), cubic.start().y(),
                cubic.control1().x(), cubic.control1().y(),
                cubic.control2().x(), cubic.control2().y(),
                cubic.end().x(), cubic.end().y());
        double[] point = new double[6];
        double x = 0;
        double y = 0;
        double sum = 0;
        for (PathIterator i = new FlatteningPathIterator(theirs.getPathIterator(null), flatness, 20);
                !i.isDone();
                i.next()) {
            if (i.currentSegment(point) == PathIterator.SEG_LINETO) {
                sum += Math.hypot(point[0] - x, point[1] - y);
            }
            x = point[0];
            y = point[1];
        }
        return sum;
    }
}
