package org.oaktag.adjustments;

import java.util.List;
import java.util.Objects;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.blocks.TopEdges;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * Squares or slopes the shoulders by so much at the shoulder point: front and back alike turn about their side neck
 * points, until their outer ends lie that much lower, and keep their length; neckline and armhole stay square to them.
 * The sleeve stays, unless it is asked to follow, so that its cap has to be refitted.
 *
 * <pre>{@code
 * Garment sloped = block.adjust(slopeShoulder(mm(8)));   // the shoulder point 8 mm lower
 * }</pre>
 *
 * @param down how far down, straight; negative to square them
 * @param sleeveFollows whether the cap is fitted to the new armhole in the same step
 */
record SlopeShoulder(Length down, boolean sleeveFollows) implements BodyStep {
    /** Refuses null. */
    public SlopeShoulder {
        Objects.requireNonNull(down, "down");
    }

    @Override
    public BodyStep withSleeve() {
        return new SlopeShoulder(down, true);
    }

    @Override
    public String name() {
        return down.mm() < 0 ? "square the shoulder" : "slope the shoulder";
    }

    @Override
    public List<Amount> amounts() {
        return SleeveFollows.amounts(sleeveFollows, Amount.of("down at the shoulder point", down));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Reshaped told = FairLines.told(
                garment,
                drawn(garment),
                share -> new SlopeShoulder(down.times(share), false)
                        .drawn(garment)
                        .garment(),
                share -> down.times(share).text());
        return SleeveFollows.after(told, sleeveFollows);
    }

    private Reshaped drawn(Garment garment) {
        Range.checkAll("shoulder", Halves.withArmholes(garment), down, SlopeShoulder::limits);
        return SlopedShoulders.turned(garment, this::turn, down.text());
    }

    private static Range.Limits limits(Piece piece) {
        Vector chord = chord(piece);
        return new Range.Limits(
                "falls by " + Length.mm(chord.y()).text() + " and can be lowered at its end by",
                Length.mm(Math.sin(SlopedShoulders.LEAST.radians()) * chord.length() - chord.y()),
                Length.mm(Math.sin(SlopedShoulders.MOST.radians()) * chord.length() - chord.y()));
    }

    private double turn(Piece piece) {
        Vector chord = chord(piece);
        return Math.asin((chord.y() + down.mm()) / chord.length()) - chord.angle();
    }

    private static Vector chord(Piece piece) {
        Path shoulder = piece.path(TopEdges.SHOULDER);
        return shoulder.end().minus(shoulder.start());
    }
}
