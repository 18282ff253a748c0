package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.oaktag.adjust.Reshaped;
import org.oaktag.blocks.KeptNotches;
import org.oaktag.blocks.ShoulderSeam;
import org.oaktag.blocks.TopArmhole;
import org.oaktag.blocks.TopBody;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Length;

/**
 * Lengthens or shortens the shoulder seam along its own line, for a broader or narrower body. The pitch point moves
 * with it, and the armhole is redrawn. Unlike a dropped shoulder it leaves the sleeve as it is, unless it is asked to
 * follow, whose cap has to be refitted where the armhole has another length.
 *
 * <pre>{@code
 * Garment wide = block.adjust(extendShoulder(mm(12)));
 * }</pre>
 *
 * @param by by how much longer; negative to shorten
 * @param sleeveFollows whether the cap is fitted to the new armhole in the same step
 */
record ExtendShoulder(Length by, boolean sleeveFollows) implements BodyStep {
    /** Refuses null. */
    public ExtendShoulder {
        Objects.requireNonNull(by, "by");
    }

    @Override
    public BodyStep withSleeve() {
        return new ExtendShoulder(by, true);
    }

    @Override
    public String name() {
        return by.mm() < 0 ? "shorten the shoulder" : "extend the shoulder";
    }

    @Override
    public List<Amount> amounts() {
        return SleeveFollows.amounts(sleeveFollows, Amount.of("at the shoulder point", by));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Reshaped told = FairLines.told(
                garment,
                drawn(garment),
                share -> new ExtendShoulder(by.times(share), false)
                        .drawn(garment)
                        .garment(),
                share -> by.times(share).text());
        return SleeveFollows.after(told, sleeveFollows);
    }

    private Reshaped drawn(Garment garment) {
        List<Dimension> dimensions = new ArrayList<>();
        Garment extended = garment;
        for (Name name : TopBody.HALVES) {
            Piece piece = TopPieces.withArmhole(garment, name);
            Path old = piece.path(TopEdges.SHOULDER);
            Path shoulder = ShoulderSeam.extended(name, old, by, Angle.degrees(0));
            dimensions.add(new Dimension(name, old.end(), shoulder.end(), by.text()));
            extended = extended.withPiece(KeptNotches.redrawn(
                    piece,
                    Map.of(TopEdges.SHOULDER, shoulder, TopEdges.ARMHOLE, TopArmhole.withShoulder(piece, shoulder)),
                    TopEdges.SHOULDER,
                    End.START));
        }
        Note rule = Note.rule("both shoulder seams change by " + by.text()
                + " along their own line, and the armhole by "
                + extended.finished(TopNames.ARMHOLE_GIRTH)
                        .minus(garment.finished(TopNames.ARMHOLE_GIRTH))
                        .text());
        return new Reshaped(extended, List.of(rule), dimensions);
    }
}
