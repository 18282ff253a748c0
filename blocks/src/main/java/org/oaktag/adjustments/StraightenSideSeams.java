package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.oaktag.adjust.Reshaped;
import org.oaktag.blocks.SideSeam;
import org.oaktag.blocks.TopArmhole;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Length;

/**
 * Draws the side seam of the front straight from the underarm point to the hem and copies it to the back, so that both
 * are equal by construction. Where it slants, the hem is raised at the side so that it stays square to the seam, and
 * the armhole is redrawn below its pitch point so that it stays square too: the step says by how much that changes its
 * length, and the sleeve cap, which is left as it is unless it is asked to follow, has to be fitted again.
 *
 * <pre>{@code
 * Garment straight = block.adjust(straightenSideSeams());
 * straight.walkSeams().seam(SIDE_SEAM).error().text();   // = 0.0 mm
 * }</pre>
 *
 * @param sleeveFollows whether the cap is fitted to the new armhole in the same step
 */
record StraightenSideSeams(boolean sleeveFollows) implements BodyStep {

    @Override
    public BodyStep withSleeve() {
        return new StraightenSideSeams(true);
    }

    @Override
    public String name() {
        return "straighten the side seams";
    }

    @Override
    public List<Amount> amounts() {
        return SleeveFollows.amounts(sleeveFollows);
    }

    @Override
    public Reshaped reshape(Garment garment) {
        StraightSides.checkUnderarms(garment);
        Piece front = TopPieces.withArmhole(garment, TopNames.FRONT);
        Piece back = TopPieces.withArmhole(garment, TopNames.BACK);
        Path side = SideSeam.straight(front);
        Garment straightened = garment.withPiece(withSide(front, side)).withPiece(withSide(back, side));
        List<Dimension> dimensions = new ArrayList<>();
        for (Piece piece : List.of(front, back)) {
            dimensions.add(new Dimension(
                    piece.name(),
                    piece.path(EdgeNames.SIDE).end(),
                    side.end(),
                    Length.mm(piece.path(EdgeNames.SIDE).end().distanceTo(side.end()))
                            .text()));
        }
        Angle slant = Angle.radians(
                Math.atan2(side.endDirection().x(), side.endDirection().y()));
        Note rule = Note.rule("one straight line from the underarm point to the hem, " + slant.text()
                + " off upright, front copied to back: both "
                + Length.mm(side.length()).text());
        Reshaped reshaped = new Reshaped(
                straightened, StraightSides.withArmholes(rule, garment, straightened, sleeveFollows), dimensions);
        return SleeveFollows.after(FairLines.told(garment, reshaped), sleeveFollows);
    }

    private static Piece withSide(Piece piece, Path side) {
        if (piece.path(EdgeNames.SIDE).equals(side)) {
            return piece;
        }
        return piece.redrawn(Map.of(
                TopEdges.ARMHOLE, TopArmhole.withUnderarm(piece, side),
                EdgeNames.SIDE, side,
                EdgeNames.HEM, SideSeam.hem(piece, side)));
    }
}
