package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.blocks.ArmholeShape;
import org.oaktag.blocks.Redraw;
import org.oaktag.blocks.TopBody;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * Moves the underarm points of front and back straight down and redraws the armhole below the pitch point; above it
 * nothing moves. The width at the underarm point stays. The sleeve stays too, unless it is asked to follow, so that its
 * cap has to be refitted, or the arm binds when it is lifted.
 *
 * <pre>{@code
 * Garment roomier = block.adjust(lowerArmhole(mm(12)));
 * roomier.finished(ARMHOLE_GIRTH).minus(block.finished(ARMHOLE_GIRTH));   // what both halves gain
 * }</pre>
 *
 * @param by how far down; negative to raise the armhole
 * @param sleeveFollows whether the cap is fitted to the new armhole in the same step
 */
record LowerArmhole(Length by, boolean sleeveFollows) implements BodyStep {

    /** How far below the pitch point, in millimetres, an underarm point must lie for a cap to be copied from it. */
    private static final double LEAST_BELOW_PITCH = 30;

    /** How much of a side seam, in millimetres, must be left above its first joint. */
    private static final double LEAST_SIDE = 30;

    /** Refuses null. */
    public LowerArmhole {
        Objects.requireNonNull(by, "by");
    }

    @Override
    public BodyStep withSleeve() {
        return new LowerArmhole(by, true);
    }

    @Override
    public String name() {
        return by.mm() < 0 ? "raise the armhole" : "lower the armhole";
    }

    @Override
    public List<Amount> amounts() {
        return SleeveFollows.amounts(sleeveFollows, Amount.of("down", by));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Reshaped told = FairLines.told(
                garment,
                drawn(garment),
                share -> new LowerArmhole(by.times(share), false).drawn(garment).garment(),
                share -> by.times(share).text());
        return SleeveFollows.after(told, sleeveFollows);
    }

    private Reshaped drawn(Garment garment) {
        List<Dimension> dimensions = new ArrayList<>();
        Map<Name, Path> sides = new HashMap<>();
        List<Piece> halves = Halves.withArmholes(garment);
        Range.checkAll("armhole", halves, by, LowerArmhole::limits);
        for (Piece piece : halves) {
            Name name = piece.name();
            Path side = piece.path(EdgeNames.SIDE);
            Point underarm = Point.of(side.start().x(), side.start().y() + by.mm());
            Path redrawn = Redraw.between(side, underarm, side.end());
            dimensions.add(new Dimension(name, side.start(), underarm, by.text()));
            sides.put(name, redrawn);
        }
        Garment lowered = TopBody.withSides(garment, sides);
        String grown = lowered.finished(TopNames.ARMHOLE_GIRTH)
                .minus(garment.finished(TopNames.ARMHOLE_GIRTH))
                .text();
        Note rule = Note.rule("both underarm points move down by " + by.text()
                + ", only what lies below the pitch points is redrawn: the armhole grows by " + grown);
        return new Reshaped(lowered, List.of(rule), dimensions);
    }

    private static Range.Limits limits(Piece piece) {
        Path side = piece.path(EdgeNames.SIDE);
        double underarm = side.start().y();
        return new Range.Limits(
                "between its pitch point and its side seam it can be lowered by",
                Length.mm(ArmholeShape.pitch(piece.path(TopEdges.ARMHOLE)).y() + LEAST_BELOW_PITCH - underarm),
                Length.mm(side.curves().get(0).end().y() - LEAST_SIDE - underarm));
    }
}
