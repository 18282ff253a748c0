package org.oaktag.skirt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oaktag.body.BodyMeasure;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.FinishedMeasure.Term;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity;
import org.oaktag.garment.Quantity.Corner;
import org.oaktag.geometry.Point;

/** The finished measures of a skirt, and the measures of the body they are held against. */
final class SkirtMeasures {

    private SkirtMeasures() {}

    /**
     * Returns the measures.
     *
     * @param halves the front and the back, each drawn as its half
     * @param hipDepth the level of the hip on paper, mm below the waist of the centre
     */
    static List<FinishedMeasure> all(List<Piece> halves, double hipDepth) {
        List<Term> waist = new ArrayList<>();
        List<Term> hip = new ArrayList<>();
        List<Term> hem = new ArrayList<>();
        for (Piece half : halves) {
            for (Edge edge : SkirtBody.stretches(half, SkirtNames.WAIST)) {
                waist.add(FinishedMeasure.times(2, Quantity.lengthOf(half.name(), edge.name())));
            }
            hip.add(FinishedMeasure.times(2, across(half.name(), hipDepth)));
            hem.add(FinishedMeasure.times(2, Quantity.lengthOf(half.name(), EdgeNames.HEM)));
        }
        return List.of(
                new FinishedMeasure(SkirtNames.WAIST_GIRTH, waist, Optional.empty())
                        .against(BodyMeasure.WAIST_GIRTH.asName()),
                new FinishedMeasure(SkirtNames.HIP_GIRTH, hip, Optional.empty())
                        .against(BodyMeasure.HIP_GIRTH.asName()),
                new FinishedMeasure(SkirtNames.HEM_GIRTH, hem, Optional.empty()),
                FinishedMeasure.of(SkirtNames.LENGTH, Quantity.lengthOf(SkirtNames.FRONT, EdgeNames.CENTRE)),
                FinishedMeasure.of(SkirtNames.SIDE_LENGTH, Quantity.lengthOf(SkirtNames.FRONT, EdgeNames.SIDE)));
    }

    /** Returns how wide a half is from its centre to its side, at a level on paper. */
    static Quantity across(Name half, double level) {
        return new Quantity.Across(
                Corner.at(half, EdgeNames.CENTRE, End.START),
                Corner.at(half, EdgeNames.CENTRE, End.END),
                Point.of(0, level),
                List.of(EdgeRef.of(half, EdgeNames.SIDE)),
                List.of(half));
    }
}
