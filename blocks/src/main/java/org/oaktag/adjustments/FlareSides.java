package org.oaktag.adjustments;

import java.util.List;
import java.util.Objects;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.blocks.SideSeam;
import org.oaktag.blocks.TopBody;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.measure.Length;

/**
 * Draws the side seams straight from the underarm points to a hem that is wider or narrower: an A-line, or a body that
 * tapers. What counts is where the seam comes down to the level of the hem; its end is raised so that the hem, square
 * to it, does not dip.
 *
 * <pre>{@code
 * Garment flared = block.adjust(flareSideSeams(cm(4)));
 * Garment tapered = block.adjust(taperSideSeams(cm(1)));
 * }</pre>
 *
 * @param out how far out on each of the four edges; negative to taper
 * @param sleeveFollows whether the cap is fitted to the new armhole in the same step
 */
record FlareSides(Length out, boolean sleeveFollows) implements BodyStep {
    /** Refuses null. */
    public FlareSides {
        Objects.requireNonNull(out, "out");
    }

    @Override
    public BodyStep withSleeve() {
        return new FlareSides(out, true);
    }

    @Override
    public String name() {
        return out.mm() < 0 ? "taper the side seams" : "flare the side seams";
    }

    @Override
    public List<Amount> amounts() {
        return SleeveFollows.amounts(sleeveFollows, Amount.of("out at the hem", out));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        StraightSides.checkUnderarms(garment);
        Piece front = garment.piece(TopNames.FRONT);
        double now = SideSeam.reach(front, TopBody.hemLevel(garment));
        Range.Limits reach = StraightSides.reach(garment);
        Range.check(
                "side seams",
                reach.rule(),
                out,
                reach.least().minus(Length.mm(now)),
                reach.most().minus(Length.mm(now)));
        return StraightSides.drawn(garment, now + out.mm(), sleeveFollows);
    }
}
