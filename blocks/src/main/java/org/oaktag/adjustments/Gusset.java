package org.oaktag.adjustments;

import static org.oaktag.garment.FinishedMeasure.times;

import java.util.List;
import org.oaktag.adjust.Range;
import org.oaktag.blocks.TopChecks;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasure;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity;
import org.oaktag.garment.Quantity.Corner;
import org.oaktag.garment.Quantity.Distance;
import org.oaktag.garment.Quantity.FromEdge;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * A gusset of four equal sides, as wide from its upper to its lower corner as a side is long, and the seams that let it
 * in under the arm: its upper sides are sewn to the sleeve, its lower ones to the body. Immutable.
 */
record Gusset(Piece piece) {

    static final double LEAST = 40;
    private static final double MOST = 160;

    private static final Name FRONT_UPPER = Name.of("front upper");
    private static final Name FRONT_LOWER = Name.of("front lower");
    private static final Name BACK_LOWER = Name.of("back lower");
    private static final Name BACK_UPPER = Name.of("back upper");

    /**
     * Checks the side of a gusset.
     *
     * @throws org.oaktag.PatternException if it is not 40 to 160 mm long
     */
    static void check(Length side) {
        Range.check("gusset", "its side must be", side, Length.mm(LEAST), Length.mm(MOST));
    }

    static Gusset of(double side, Cloth cloth) {
        double half = side / 2;
        double across = Math.sqrt(side * side - half * half);
        Point upper = Point.of(across, 0);
        Point front = Point.of(2 * across, half);
        Point lower = Point.of(across, side);
        Point back = Point.of(0, half);
        return new Gusset(Piece.of(
                TopNames.GUSSET,
                List.of(
                        Edge.straight(FRONT_UPPER, upper, front),
                        Edge.straight(FRONT_LOWER, front, lower),
                        Edge.straight(BACK_LOWER, lower, back),
                        Edge.straight(BACK_UPPER, back, upper)),
                new Grainline(Point.of(across, side * 0.2), Point.of(across, side * 0.8)),
                Cut.pair(),
                cloth));
    }

    /**
     * What the gusset is let in between, at the front or at the back.
     *
     * @param body the front or the back, to which its lower side is sewn
     * @param sleeve the piece to which its upper side is sewn
     * @param onBody where its outer corner lies on the body
     * @param onSleeve where its outer corner lies on the sleeve
     */
    record Opening(Name body, Name sleeve, Corner onBody, Corner onSleeve) {}

    /**
     * Sews the gusset in and measures round arm and body over its outer corners.
     *
     * @param front where it is let in at the front
     * @param back where it is let in at the back
     * @param refit what mends its seams
     */
    void letIn(Assembly assembly, Opening front, Opening back, String refit) {
        assembly.put(piece)
                .sew(seam(front.body, front.sleeve, TopEdges.GUSSET_UPPER, along(FRONT_UPPER), refit))
                .sew(seam(front.body, front.body, TopEdges.GUSSET_LOWER, along(FRONT_LOWER), refit))
                .sew(seam(back.body, back.sleeve, TopEdges.GUSSET_UPPER, against(BACK_UPPER), refit))
                .sew(seam(back.body, back.body, TopEdges.GUSSET_LOWER, against(BACK_LOWER), refit));
        Quantity across = new Distance(
                Corner.at(TopNames.GUSSET, FRONT_UPPER, End.END), Corner.at(TopNames.GUSSET, BACK_UPPER, End.START));
        assembly.measure(FinishedMeasure.of(
                        TopNames.ARM_OVER_GUSSET,
                        times(1, across),
                        times(1, new FromEdge(front.onSleeve, EdgeRef.of(front.sleeve, TopEdges.OVER_ARM))),
                        times(1, new FromEdge(back.onSleeve, EdgeRef.of(back.sleeve, TopEdges.OVER_ARM))))
                .against(BodyMeasure.UPPER_ARM_GIRTH.asName()));
        assembly.measure(FinishedMeasure.of(
                                TopNames.BODY_OVER_GUSSET,
                                times(2, across),
                                times(2, new FromEdge(front.onBody, EdgeRef.of(front.body, EdgeNames.CENTRE))),
                                times(2, new FromEdge(back.onBody, EdgeRef.of(back.body, EdgeNames.CENTRE))))
                        .against(BodyMeasure.BUST_GIRTH.asName()))
                .check(TopChecks.upperArm(TopNames.ARM_OVER_GUSSET))
                .check(TopChecks.chest(TopNames.BODY_OVER_GUSSET));
    }

    /** Returns what it adds, with the girths over its corners. */
    Note note(Garment done, Length side, String where) {
        Length across = Length.mm(piece.corner(FRONT_UPPER, End.END).distanceTo(piece.corner(BACK_UPPER, End.START)));
        return Note.rule("a gusset of four sides of " + side.text() + " is let into " + where
                + "; it lengthens the underarm by " + side.text() + ". It is " + across.text()
                + " wide, and over its corners the arm is "
                + done.finished(TopNames.ARM_OVER_GUSSET).text() + " round and the body "
                + done.finished(TopNames.BODY_OVER_GUSSET).text());
    }

    private static SeamSide along(Name edge) {
        return SeamSide.along(TopNames.GUSSET, edge);
    }

    private static SeamSide against(Name edge) {
        return SeamSide.against(TopNames.GUSSET, edge);
    }

    private static Seam seam(Name body, Name sewn, Name edge, SeamSide gusset, String refit) {
        return Seam.flat(Name.of(body.value() + " " + edge.value()), SeamSide.along(sewn, edge), gusset, refit);
    }
}
