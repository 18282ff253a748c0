package org.oaktag.adjustments;

import java.util.List;
import java.util.Objects;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.blocks.TopEdges;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.measure.Angle;

/**
 * Squares or slopes the shoulders by an angle: front and back alike turn about their side neck points and keep their
 * length; neckline and armhole stay square to them. The sleeve stays, unless it is asked to follow, so that its cap
 * has to be refitted.
 *
 * <pre>{@code
 * Garment square = block.adjust(squareShoulder(degrees(3)));
 * }</pre>
 *
 * @param down by how much they turn down; negative to square them
 * @param sleeveFollows whether the cap is fitted to the new armhole in the same step
 */
record TurnShoulder(Angle down, boolean sleeveFollows) implements BodyStep {
    /** Refuses null. */
    public TurnShoulder {
        Objects.requireNonNull(down, "down");
    }

    @Override
    public BodyStep withSleeve() {
        return new TurnShoulder(down, true);
    }

    @Override
    public String name() {
        return down.degrees() < 0 ? "square the shoulder" : "slope the shoulder";
    }

    @Override
    public List<Amount> amounts() {
        return SleeveFollows.amounts(sleeveFollows, Amount.of("down", down.text()));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Reshaped told = FairLines.told(
                garment,
                drawn(garment),
                share -> new TurnShoulder(Angle.degrees(down.degrees() * share), false)
                        .drawn(garment)
                        .garment(),
                share -> Angle.degrees(down.degrees() * share).text());
        return SleeveFollows.after(told, sleeveFollows);
    }

    private Reshaped drawn(Garment garment) {
        for (Piece piece : Halves.withArmholes(garment)) {
            Angle now = SlopedShoulders.slope(piece.path(TopEdges.SHOULDER));
            Range.check(
                    "shoulder of the " + piece.name(),
                    "falls by " + now.text() + " and can be turned down by",
                    down,
                    Angle.degrees(SlopedShoulders.LEAST.degrees() - now.degrees()),
                    Angle.degrees(SlopedShoulders.MOST.degrees() - now.degrees()));
        }
        return SlopedShoulders.turned(garment, piece -> down.radians(), down.text());
    }
}
