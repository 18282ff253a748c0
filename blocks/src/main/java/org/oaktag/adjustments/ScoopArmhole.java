package org.oaktag.adjustments;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.blocks.ArmholeShape;
import org.oaktag.blocks.TopArmhole;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * Scoops the front armhole out, for an arm that reaches forward: its pitch point moves in, shoulder point and underarm
 * point stay. The back stays.
 *
 * <pre>{@code
 * Garment scooped = block.adjust(scoopFrontArmhole(mm(4)));
 * }</pre>
 *
 * @param by how far in, level; negative to fill it
 * @param sleeveFollows whether the cap is fitted to the new armhole in the same step
 */
record ScoopArmhole(Length by, boolean sleeveFollows) implements BodyStep {

    /** Refuses null. */
    public ScoopArmhole {
        Objects.requireNonNull(by, "by");
    }

    @Override
    public BodyStep withSleeve() {
        return new ScoopArmhole(by, true);
    }

    @Override
    public String name() {
        return by.mm() < 0 ? "fill the front armhole" : "scoop the front armhole";
    }

    @Override
    public List<Amount> amounts() {
        return SleeveFollows.amounts(sleeveFollows, Amount.of("in at the pitch point", by));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Reshaped told = FairLines.told(
                garment,
                drawn(garment),
                share -> new ScoopArmhole(by.times(share), false).drawn(garment).garment(),
                share -> by.times(share).text());
        return SleeveFollows.after(told, sleeveFollows);
    }

    private Reshaped drawn(Garment garment) {
        Piece front = TopPieces.withArmhole(garment, TopNames.FRONT);
        Point pitch = ArmholeShape.pitch(front.path(TopEdges.ARMHOLE));
        Range.check(
                "armhole of the front",
                "between shoulder point and underarm point, and for the armhole to stay one hollow, its pitch point can be"
                        + " moved in by",
                by,
                Length.mm(-TopArmhole.mostFilling(front)),
                Length.mm(TopArmhole.mostScooping(front)));
        Piece scooped = front.redrawn(Map.of(TopEdges.ARMHOLE, TopArmhole.scooped(front, by.mm())));
        Garment after = garment.withPiece(scooped);
        Note rule = Note.rule("the pitch point of the front moves in by " + by.text()
                + ", shoulder point and underarm point stay: the armhole changes by "
                + after.finished(TopNames.ARMHOLE_GIRTH)
                        .minus(garment.finished(TopNames.ARMHOLE_GIRTH))
                        .text());
        Dimension dimension =
                new Dimension(TopNames.FRONT, pitch, ArmholeShape.pitch(scooped.path(TopEdges.ARMHOLE)), by.text());
        return new Reshaped(after, List.of(rule), List.of(dimension));
    }
}
