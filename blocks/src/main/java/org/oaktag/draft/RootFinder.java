package org.oaktag.draft;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.AllowedSolution;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Finds the one unknown of a draft: the depth at which a neckline has its length, the width at which a cap does.
 *
 * <pre>{@code
 * double depth = RootFinder.solve(x -> x * x - 2, 1, 2).orElseThrow();   // = 1.41421356
 * }</pre>
 *
 * <p>The work is done by the bracketing solver of commons-math3 (an n-th order Brent method), which cannot leave the
 * range in which the unknown is sought.
 */
public final class RootFinder {

    private static final double RELATIVE = 1e-15;
    private static final double WIDTH = 1e-12;
    private static final double RESIDUAL = 1e-8;
    private static final int ORDER = 5;
    private static final int MOST_STEPS = 100;

    private RootFinder() {}

    /**
     * Returns the value at which a quantity vanishes, to within 1e-8 of the quantity (millimetres, as a rule).
     *
     * @param excess what is too much at a value; continuous
     * @param least the least value that may be tried
     * @param most the most
     * @return the value, or empty where the excess has the same sign at both ends of the range
     */
    public static OptionalDouble solve(DoubleUnaryOperator excess, double least, double most) {
        return solve(excess, least, excess.applyAsDouble(least), most, excess.applyAsDouble(most));
    }

    /** As the other, where the excess at both ends is known already. */
    public static OptionalDouble solve(
            DoubleUnaryOperator excess, double least, double atLeast, double most, double atMost) {
        if (Math.abs(atLeast) <= RESIDUAL) {
            return OptionalDouble.of(least);
        }
        if (Math.abs(atMost) <= RESIDUAL) {
            return OptionalDouble.of(most);
        }
        if (!(atLeast * atMost < 0)) {
            return OptionalDouble.empty();
        }
        double first = least + (most - least) * atLeast / (atLeast - atMost);
        // The solver asks for the ends once more.
        return OptionalDouble.of(new BracketingNthOrderBrentSolver(RELATIVE, WIDTH, RESIDUAL, ORDER)
                .solve(
                        MOST_STEPS,
                        tried -> tried == least ? atLeast : tried == most ? atMost : excess.applyAsDouble(tried),
                        least,
                        most,
                        first,
                        AllowedSolution.ANY_SIDE));
    }
}
