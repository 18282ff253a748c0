package org.oaktag.testkit.lines;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.oaktag.blocks.KnitTop;
import org.oaktag.blocks.TopEase;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.EaseCategory;
import org.oaktag.body.Figure;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Garment;
import org.oaktag.measure.Percent;
import org.oaktag.testkit.bodies.SurveyPopulation;

/**
 * How the figures of the lines are distributed over generated adults of both sexes at every category of ease: the
 * values that one in a hundred, half and ninety-nine in a hundred do not pass.
 *
 * <p>{@code LineTable.main} prints the rows of the table in {@code docs/lines.md}.
 */
public final class LineTable {

    private static final long SEED = 7;
    private static final Cloth CLOTH = Cloth.knit("trial knit", Percent.percent(50));

    private LineTable() {}

    /** Returns so many generated adults of each sex, always the same. */
    public static List<BodyMeasurements> adults(int ofEach) {
        List<BodyMeasurements> adults = new ArrayList<>();
        for (Figure figure : List.of(Figure.WOMAN, Figure.MAN)) {
            SurveyPopulation.of(figure)
                    .draw(SEED)
                    .limit(ofEach)
                    .forEach(body -> adults.add(body.measuredAs("drawn " + figure.label() + " " + adults.size())));
        }
        return adults;
    }

    /** Drafts the block of a body at the ease of a category, in a cloth that stretches far enough for all. */
    public static Garment block(BodyMeasurements body, EaseCategory category) {
        return KnitTop.draft(body, TopEase.of(category), CLOTH);
    }

    /** Returns the table's rows as Markdown, over so many adults of each sex. */
    public static List<String> rows(int ofEach) {
        List<BodyMeasurements> adults = adults(ofEach);
        LineFigure[] figures = LineFigure.values();
        double[][] values = new double[figures.length][adults.size() * EaseCategory.values().length];
        int at = 0;
        for (EaseCategory category : EaseCategory.values()) {
            for (BodyMeasurements body : adults) {
                Garment block = block(body, category);
                for (int i = 0; i < figures.length; i++) {
                    values[i][at] = figures[i].of(block);
                }
                at++;
            }
        }
        List<String> rows = new ArrayList<>();
        for (int i = 0; i < figures.length; i++) {
            LineFigure figure = figures[i];
            double[] all = values[i];
            Arrays.sort(all);
            rows.add("| " + figure.label() + " | " + figure.text(all[all.length / 100]) + " | "
                    + figure.text(all[all.length / 2]) + " | " + figure.text(all[all.length * 99 / 100]) + " |");
        }
        return rows;
    }

    /** Prints the rows over 1,000 adults of each sex. */
    public static void main(String[] args) {
        rows(1000).forEach(System.out::println);
    }
}
