package org.oaktag.blocks;

import static org.oaktag.garment.FinishedMeasure.times;

import java.util.Arrays;
import java.util.List;
import org.oaktag.body.BodyMeasure;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.Name;
import org.oaktag.garment.Quantity;
import org.oaktag.garment.Quantity.Across;
import org.oaktag.garment.Quantity.Corner;
import org.oaktag.garment.Quantity.Distance;
import org.oaktag.garment.Quantity.Drop;
import org.oaktag.garment.Quantity.Fall;
import org.oaktag.garment.Quantity.FromEdge;
import org.oaktag.geometry.Point;

/** The finished measures of a top of front, back and sleeve, and the measures of the body they are held against. */
final class TopMeasures {

    private TopMeasures() {}

    /**
     * Returns the measures.
     *
     * @param waist the level of the waist on paper, in millimetres below the side neck point
     */
    static List<FinishedMeasure> all(double waist) {
        Quantity sleeveLength = new Fall(
                Corner.at(TopNames.SLEEVE, TopEdges.CAP_FRONT, End.START),
                List.of(EdgeRef.of(TopNames.SLEEVE, EdgeNames.HEM)));
        Quantity shoulder = Quantity.lengthOf(TopNames.FRONT, TopEdges.SHOULDER);
        return List.of(
                FinishedMeasure.of(
                                TopNames.NECKLINE_GIRTH,
                                times(2, Quantity.lengthOf(TopNames.FRONT, TopEdges.NECKLINE)),
                                times(2, Quantity.lengthOf(TopNames.BACK, TopEdges.NECKLINE)))
                        .against(BodyMeasure.NECK_BASE_GIRTH.asName()),
                FinishedMeasure.of(
                                TopNames.CHEST_GIRTH,
                                times(2, fromCentre(TopNames.FRONT)),
                                times(2, fromCentre(TopNames.BACK)))
                        .against(BodyMeasure.BUST_GIRTH.asName()),
                waist(waist, EdgeNames.SIDE),
                FinishedMeasure.of(
                                TopNames.HEM_GIRTH,
                                times(2, Quantity.lengthOf(TopNames.FRONT, EdgeNames.HEM)),
                                times(2, Quantity.lengthOf(TopNames.BACK, EdgeNames.HEM)))
                        .against(BodyMeasure.HIP_GIRTH.asName()),
                FinishedMeasure.of(TopNames.SHOULDER_LENGTH, shoulder).against(BodyMeasure.SHOULDER_LENGTH.asName()),
                FinishedMeasure.of(
                        TopNames.ARMHOLE_GIRTH,
                        times(1, Quantity.lengthOf(TopNames.FRONT, TopEdges.ARMHOLE)),
                        times(1, Quantity.lengthOf(TopNames.BACK, TopEdges.ARMHOLE))),
                FinishedMeasure.of(
                                TopNames.SLEEVE_WIDTH,
                                new Distance(
                                        Corner.at(TopNames.SLEEVE, TopEdges.CAP_BACK, End.START),
                                        Corner.at(TopNames.SLEEVE, TopEdges.CAP_FRONT, End.END)))
                        .against(BodyMeasure.UPPER_ARM_GIRTH.asName()),
                FinishedMeasure.of(TopNames.SLEEVE_HEM, Quantity.lengthOf(TopNames.SLEEVE, EdgeNames.HEM))
                        .against(BodyMeasure.WRIST_GIRTH.asName()),
                FinishedMeasure.of(TopNames.SLEEVE_LENGTH, sleeveLength).against(BodyMeasure.ARM_LENGTH.asName()),
                FinishedMeasure.of(TopNames.NECK_TO_WRIST, times(1, shoulder), times(1, sleeveLength)),
                FinishedMeasure.of(
                        TopNames.BACK_LENGTH,
                        new Drop(
                                Corner.at(TopNames.BACK, TopEdges.NECKLINE, End.START),
                                Corner.at(TopNames.BACK, EdgeNames.HEM, End.END))));
    }

    /**
     * Returns the waist girth of a top.
     *
     * @param level the level of the waist on paper
     * @param ends the edges of front and back at one of which the level leaves the body
     */
    static FinishedMeasure waist(double level, Name... ends) {
        return FinishedMeasure.of(
                        TopNames.WAIST_GIRTH,
                        times(2, across(TopNames.FRONT, level, ends)),
                        times(2, across(TopNames.BACK, level, ends)))
                .against(BodyMeasure.WAIST_GIRTH.asName());
    }

    private static Quantity across(Name piece, double level, Name... ends) {
        return new Across(
                Corner.at(piece, EdgeNames.CENTRE, End.START),
                Corner.at(piece, EdgeNames.CENTRE, End.END),
                Point.of(0, level),
                Arrays.stream(ends).map(edge -> EdgeRef.of(piece, edge)).toList(),
                List.of(piece));
    }

    private static Quantity fromCentre(Name piece) {
        return new FromEdge(Corner.at(piece, EdgeNames.SIDE, End.START), EdgeRef.of(piece, EdgeNames.CENTRE));
    }
}
