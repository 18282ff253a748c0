package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.oaktag.PatternException;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.blocks.SideSeam;
import org.oaktag.blocks.TopBody;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Length;

/** Side seams drawn straight to a hem of another width, the front's copied to the back. */
final class StraightSides {

    private static final double SAME_POINT = 1e-6;
    private static final double LEAST_REACH = 100;

    /** A change of an armhole smaller than this, in millimetres, would be told as 0.0 mm. */
    private static final double WORTH_SAYING = 0.05;

    private static final double MOST_SLANT = Math.tan(Math.toRadians(35));

    private StraightSides() {}

    /**
     * Draws both side seams so that they come down to the level of the hem this far from the centre line.
     *
     * @throws PatternException if the underarm points do not agree, or a side seam does not run down to a hem
     */
    static Reshaped drawn(Garment garment, double reach, boolean sleeveFollows) {
        checkUnderarms(garment);
        double level = TopBody.hemLevel(garment);
        Piece front = garment.piece(TopNames.FRONT);
        Path side = SideSeam.straightTo(front, reach, level);
        Garment drawn = TopBody.withSides(garment, Map.of(TopNames.FRONT, side, TopNames.BACK, side));
        List<Dimension> dimensions = new ArrayList<>();
        for (Name name : TopBody.HALVES) {
            Point was = garment.piece(name).corner(EdgeNames.SIDE, End.END);
            dimensions.add(new Dimension(
                    name, was, side.end(), Length.mm(was.distanceTo(side.end())).text()));
        }
        Angle slant = Angle.radians(
                Math.atan2(side.endDirection().x(), side.endDirection().y()));
        Note rule = Note.rule("one straight line from the underarm point, " + slant.text()
                + " off upright, front copied to back: both "
                + Length.mm(side.length()).text() + "; the hem girth is now "
                + drawn.finished(TopNames.HEM_GIRTH).text());
        Reshaped reshaped = new Reshaped(drawn, withArmholes(rule, garment, drawn, sleeveFollows), dimensions);
        return SleeveFollows.after(FairLines.told(garment, reshaped), sleeveFollows);
    }

    /**
     * Returns the notes of a step that drew the side seams at another slant: its rule, and by how much the armholes
     * changed with it, as they stay square to the seams, if that shows.
     */
    static List<Note> withArmholes(Note rule, Garment before, Garment after, boolean sleeveFollows) {
        Length front = armholeGrowth(before, after, TopNames.FRONT);
        Length back = armholeGrowth(before, after, TopNames.BACK);
        if (Math.max(Math.abs(front.mm()), Math.abs(back.mm())) < WORTH_SAYING) {
            return List.of(rule);
        }
        return List.of(
                rule,
                Note.done(
                        "to stay square to the seam the armhole was redrawn below its pitch point, which changes it by "
                                + front.text() + " on the front and " + back.text() + " on the back"
                                + (after.hasPiece(TopNames.SLEEVE) && !sleeveFollows
                                        ? "; the sleeve cap stays as it was: fit it to the armhole again"
                                        : "")));
    }

    private static Length armholeGrowth(Garment before, Garment after, Name piece) {
        return length(after.piece(piece)).minus(length(before.piece(piece)));
    }

    private static Length length(Piece piece) {
        return piece.hasEdge(TopEdges.ARMHOLE) ? piece.edge(TopEdges.ARMHOLE).length() : Length.ZERO;
    }

    /**
     * Returns how far from the centre line the side seams may come down: 100 mm at the least, and slanting by 35
     * degrees at the most.
     */
    static Range.Limits reach(Garment garment) {
        Point underarm = underarm(garment, TopNames.FRONT);
        double most = MOST_SLANT * (TopBody.hemLevel(garment) - underarm.y());
        return new Range.Limits(
                "for side seams that slant by 35° at the most they can come out at the hem by",
                Length.mm(Math.max(LEAST_REACH, underarm.x() - most)),
                Length.mm(underarm.x() + most));
    }

    /**
     * Checks that the front's side seam can be copied to the back.
     *
     * @throws PatternException if the underarm points do not lie at the same place, or a side seam does not run down to
     *     a hem
     */
    static void checkUnderarms(Garment garment) {
        Point front = underarm(garment, TopNames.FRONT);
        Point back = underarm(garment, TopNames.BACK);
        if (!front.isCloseTo(back, SAME_POINT)) {
            throw PatternException.of(
                    "side seams",
                    "front and back underarm points must lie at the same place, measured from the centre and the side"
                            + " neck point, for the front seam to be copied",
                    Length.mm(front.distanceTo(back)).text() + " apart",
                    "adjust both armholes by the same amount");
        }
    }

    private static Point underarm(Garment garment, Name name) {
        return TopPieces.half(garment, name, EdgeNames.SIDE, EdgeNames.HEM, EdgeNames.CENTRE)
                .corner(EdgeNames.SIDE, End.START);
    }
}
