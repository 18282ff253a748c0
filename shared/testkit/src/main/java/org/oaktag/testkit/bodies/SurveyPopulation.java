package org.oaktag.testkit.bodies;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.oaktag.body.Figure;

/**
 * Grown women or men as a survey met them, drawn from the multivariate normal distribution that has its means, standard
 * deviations and correlations (2012 US Army survey, Gordon et al., NATICK/TR-15/007).
 *
 * <p>With R = L L<sup>T</sup> the correlations and z independent standard normals, a body is mean + sd (L z), measure
 * by measure. A draw with any measure beyond the least or the greatest that the survey met is thrown away, which takes
 * sixteen draws of a thousand among the women and eight among the men and narrows the standard deviations by up to
 * three hundredths. Real girths lean to the large side a little; the normal does not. Immutable; the same seed draws
 * the same bodies anywhere.
 */
public final class SurveyPopulation {

    /** The measures in the order in which rows and columns of the matrix stand for them. */
    private static final List<SurveyMeasure> MEASURES = List.of(SurveyMeasure.values());

    private final Figure figure;
    private final SurveyTable table;
    private final RealMatrix lower;

    private SurveyPopulation(Figure figure) {
        this.figure = figure;
        this.table = SurveyTable.of(figure);
        RealMatrix correlations = new Array2DRowRealMatrix(dimensions(), dimensions());
        for (int row = 0; row < dimensions(); row++) {
            for (int column = 0; column < dimensions(); column++) {
                correlations.setEntry(row, column, table.correlation(MEASURES.get(row), MEASURES.get(column)));
            }
        }
        // Rounded to three decimals as they are printed, the correlations still are positive definite: the least
        // eigenvalue is 0.009 for the women and 0.007 for the men. The decomposition throws if they ever are not.
        this.lower = new CholeskyDecomposition(correlations).getL();
    }

    /**
     * Returns the women or the men of the survey.
     *
     * @throws IllegalArgumentException for a child: the survey measured none
     */
    public static SurveyPopulation of(Figure figure) {
        return new SurveyPopulation(figure);
    }

    /** Returns how many independent numbers a body is made from. */
    static int dimensions() {
        return MEASURES.size();
    }

    /** Returns the body at a point of the standard normal space; all zeros is the mean body. */
    SurveyedBody at(double[] standardNormals) {
        double[] deviates = lower.operate(standardNormals);
        Map<SurveyMeasure, Double> mm = new EnumMap<>(SurveyMeasure.class);
        for (int i = 0; i < dimensions(); i++) {
            SurveyTable.Summary summary = table.summary(MEASURES.get(i));
            mm.put(MEASURES.get(i), summary.mean() + summary.sd() * deviates[i]);
        }
        return new SurveyedBody(figure, mm);
    }

    /** Draws bodies without end. */
    public Stream<SurveyedBody> draw(long seed) {
        Random random = new Random(seed);
        return Stream.generate(() -> at(standardNormals(random))).filter(SurveyedBody::isWithinSurvey);
    }

    /**
     * Returns the bodies at the edges: for each measure one with the least and one with the greatest value that the
     * survey met, and all its other measures as that one leads to expect.
     */
    public List<SurveyedBody> extremes() {
        List<SurveyedBody> bodies = new ArrayList<>();
        for (SurveyMeasure extreme : MEASURES) {
            bodies.add(expectedWhere(extreme, table.summary(extreme).min()));
            bodies.add(expectedWhere(extreme, table.summary(extreme).max()));
        }
        return List.copyOf(bodies);
    }

    /** Returns the mean body among those with a given measure: mean + covariance / variance x deviation. */
    private SurveyedBody expectedWhere(SurveyMeasure given, double mm) {
        double deviation = (mm - table.summary(given).mean()) / table.covariance(given, given);
        Map<SurveyMeasure, Double> expected = new EnumMap<>(SurveyMeasure.class);
        for (SurveyMeasure measure : MEASURES) {
            expected.put(measure, table.summary(measure).mean() + table.covariance(measure, given) * deviation);
        }
        return new SurveyedBody(figure, expected);
    }

    private static double[] standardNormals(Random random) {
        double[] normals = new double[dimensions()];
        Arrays.setAll(normals, i -> random.nextGaussian());
        return normals;
    }
}
