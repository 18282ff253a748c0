package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.blocks.KeptNotches;
import org.oaktag.blocks.ShoulderSeam;
import org.oaktag.blocks.SleeveCap;
import org.oaktag.blocks.SleeveEnd;
import org.oaktag.blocks.TopArmhole;
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
 * Lets the shoulder run on past the shoulder point, along its own line or bent towards the arm. The pitch point moves
 * out with it, and the armhole is redrawn. The cap loses the height that the shoulder gains, so that the way from the
 * side neck point to the wrist keeps its length (common practice: 30 mm for 30 mm). Its width stays until the cap is
 * refitted, which the step does itself where the sleeve is asked to follow. Where the cap is too low to lose so much,
 * the sleeve loses the rest at its hem, and the step says so.
 *
 * <pre>{@code
 * Garment dropped = block.adjust(dropShoulder(mm(25)));
 * dropped.finished(SHOULDER_LENGTH).minus(block.finished(SHOULDER_LENGTH)).text();   // = 25.0 mm
 * dropped.finished(NECK_TO_WRIST).minus(block.finished(NECK_TO_WRIST)).text();       // = 0.0 mm
 * }</pre>
 *
 * @param by how far the shoulder runs on; negative to take it back
 * @param bend by how much the new part turns down towards the arm
 * @param sleeveFollows whether the cap is fitted to the new armhole in the same step
 */
record DropShoulder(Length by, Angle bend, boolean sleeveFollows) implements BodyStep {

    private static final Angle MOST_BEND = Angle.degrees(45);

    /**
     * Checks the bend.
     *
     * @throws PatternException if the bend is not 0 to 45 degrees
     */
    public DropShoulder {
        Objects.requireNonNull(by, "by");
        Range.check("bend of a dropped shoulder", "must be", bend, Angle.degrees(0), MOST_BEND);
    }

    @Override
    public BodyStep withSleeve() {
        return new DropShoulder(by, bend, true);
    }

    @Override
    public String name() {
        return by.mm() < 0 ? "take the shoulder back" : "drop the shoulder";
    }

    @Override
    public List<Amount> amounts() {
        Amount past = Amount.of("past the shoulder point", by);
        return bend.degrees() == 0
                ? SleeveFollows.amounts(sleeveFollows, past)
                : SleeveFollows.amounts(sleeveFollows, past, Amount.of("bent to the arm", bend.text()));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Reshaped told = FairLines.told(
                garment,
                drawn(garment),
                share -> new DropShoulder(by.times(share), bend, false)
                        .drawn(garment)
                        .garment(),
                share -> by.times(share).text());
        return SleeveFollows.after(told, sleeveFollows);
    }

    private Reshaped drawn(Garment garment) {
        List<Dimension> dimensions = new ArrayList<>();
        Garment dropped = garment;
        for (Name name : List.of(TopNames.FRONT, TopNames.BACK)) {
            Piece piece = TopPieces.withArmhole(garment, name);
            Path shoulder = ShoulderSeam.extended(name, piece.path(TopEdges.SHOULDER), by, bend);
            dimensions.add(new Dimension(name, piece.path(TopEdges.SHOULDER).end(), shoulder.end(), by.text()));
            dropped = dropped.withPiece(KeptNotches.redrawn(
                    piece,
                    Map.of(TopEdges.SHOULDER, shoulder, TopEdges.ARMHOLE, TopArmhole.withShoulder(piece, shoulder)),
                    TopEdges.SHOULDER,
                    End.START));
        }
        Piece sleeve = TopPieces.sleeveWithCap(garment);
        SleeveCap cap = SleeveCap.of(sleeve);
        Length offCap = by.compareTo(cap.mostLowering()) > 0 ? cap.mostLowering() : by;
        Length offHem = by.minus(offCap);
        Piece low = cap.loweredBy(offCap);
        Piece lower = offHem.mm() > 0 ? SleeveEnd.of(low).shortenedBy(offHem) : low;
        dimensions.add(new Dimension(
                TopNames.SLEEVE,
                sleeve.path(TopEdges.CAP_FRONT).start(),
                lower.path(TopEdges.CAP_FRONT).start(),
                offCap.text()));
        dropped = dropped.withPiece(lower);
        List<Note> notes = new ArrayList<>();
        notes.add(Note.rule("the shoulder gains " + by.text()
                + ", cap height and sleeve length lose as much: side neck" + " to wrist stays "
                + dropped.finished(TopNames.NECK_TO_WRIST).text()));
        if (offHem.mm() > 0) {
            notes.add(Note.done("the cap was only " + cap.height().text() + " high and lost " + offCap.text()
                    + "; the sleeve lost the other " + offHem.text() + " at its hem"));
        }
        return new Reshaped(dropped, notes, dimensions);
    }
}
