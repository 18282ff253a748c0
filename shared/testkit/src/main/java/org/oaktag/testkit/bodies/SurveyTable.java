package org.oaktag.testkit.bodies;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.oaktag.body.Figure;

/**
 * The published figures of the 2012 US Army survey (Gordon et al., NATICK/TR-15/007) for one sex, in millimetres.
 * Immutable.
 */
public final class SurveyTable {

    /**
     * What the survey says of one measure.
     *
     * @param people how many were measured
     * @param mean the mean in mm
     * @param sd the standard deviation in mm
     * @param min the least in mm
     * @param max the greatest in mm
     */
    public record Summary(int people, double mean, double sd, double min, double max) {}

    private static final SurveyTable WOMEN = new SurveyTable("women");
    private static final SurveyTable MEN = new SurveyTable("men");

    private final Map<SurveyMeasure, Summary> summaries = new EnumMap<>(SurveyMeasure.class);
    private final Map<SurveyMeasure, Map<SurveyMeasure, Double>> correlations = new EnumMap<>(SurveyMeasure.class);

    private SurveyTable(String sex) {
        for (Map<String, String> row : rows("survey-summary.tsv")) {
            if (cell(row, "sex").equals(sex)) {
                for (SurveyMeasure measure : SurveyMeasure.values()) {
                    if (measure.column().equals(cell(row, "measure"))) {
                        summaries.put(
                                measure,
                                new Summary(
                                        Integer.parseInt(cell(row, "n")),
                                        number(row, "mean"),
                                        number(row, "sd"),
                                        number(row, "min"),
                                        number(row, "max")));
                    }
                }
            }
        }
        for (Map<String, String> row : rows("survey-correlation-" + sex + ".tsv")) {
            for (SurveyMeasure measure : SurveyMeasure.values()) {
                if (measure.column().equals(cell(row, "measure"))) {
                    Map<SurveyMeasure, Double> others = new EnumMap<>(SurveyMeasure.class);
                    for (SurveyMeasure other : SurveyMeasure.values()) {
                        others.put(other, number(row, other.column()));
                    }
                    correlations.put(measure, others);
                }
            }
        }
    }

    /**
     * Returns the table of the women or the men.
     *
     * @throws IllegalArgumentException for a child: the survey measured none
     */
    public static SurveyTable of(Figure figure) {
        return switch (figure) {
            case WOMAN -> WOMEN;
            case MAN -> MEN;
            case GIRL, BOY -> throw new IllegalArgumentException("the survey measured no " + figure.label());
        };
    }

    /** Returns what the survey says of a measure. */
    public Summary summary(SurveyMeasure measure) {
        return Objects.requireNonNull(summaries.get(measure), measure::column);
    }

    /** Returns the correlation of two measures, -1 to 1. */
    public double correlation(SurveyMeasure a, SurveyMeasure b) {
        Map<SurveyMeasure, Double> row = Objects.requireNonNull(correlations.get(a), a::column);
        return Objects.requireNonNull(row.get(b), b::column);
    }

    /** Returns the covariance of two measures in mm<sup>2</sup>. */
    public double covariance(SurveyMeasure a, SurveyMeasure b) {
        return correlation(a, b) * summary(a).sd() * summary(b).sd();
    }

    private static List<Map<String, String>> rows(String resource) {
        try (InputStream stream = Objects.requireNonNull(SurveyTable.class.getResourceAsStream(resource), resource);
                BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return TabSeparated.rows(reader.lines().toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String cell(Map<String, String> row, String column) {
        return Objects.requireNonNull(row.get(column), column);
    }

    private static double number(Map<String, String> row, String column) {
        return Double.parseDouble(cell(row, column));
    }
}
