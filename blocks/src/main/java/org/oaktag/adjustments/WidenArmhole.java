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
 * Widens the armholes through the side: the underarm points of front and back move out, so that the chest girth grows
 * four times as much. The side seams are redrawn to the hem as it is, the armholes below their pitch points.
 *
 * <pre>{@code
 * Garment wider = block.adjust(widenArmhole(mm(5)));
 * }</pre>
 *
 * @param out how far out, level; negative to narrow them
 * @param sleeveFollows whether the cap is fitted to the new armhole in the same step
 */
record WidenArmhole(Length out, boolean sleeveFollows) implements BodyStep {

    /** How far outside the pitch point, in millimetres, an underarm point must lie for a cap to be copied from it. */
    private static final double LEAST_RUN = 25;

    private static final double MOST = 150;

    /** Refuses null. */
    public WidenArmhole {
        Objects.requireNonNull(out, "out");
    }

    @Override
    public BodyStep withSleeve() {
        return new WidenArmhole(out, true);
    }

    @Override
    public String name() {
        return out.mm() < 0 ? "narrow the armhole through the side" : "widen the armhole through the side";
    }

    @Override
    public List<Amount> amounts() {
        return SleeveFollows.amounts(sleeveFollows, Amount.of("out at the underarm point", out));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Reshaped told = FairLines.told(
                garment,
                drawn(garment),
                share ->
                        new WidenArmhole(out.times(share), false).drawn(garment).garment(),
                share -> out.times(share).text());
        return SleeveFollows.after(told, sleeveFollows);
    }

    private Reshaped drawn(Garment garment) {
        List<Dimension> dimensions = new ArrayList<>();
        Map<Name, Path> sides = new HashMap<>();
        List<Piece> halves = Halves.withArmholes(garment);
        Range.checkAll("armhole", halves, out, WidenArmhole::limits);
        for (Piece piece : halves) {
            Name name = piece.name();
            Path side = piece.path(EdgeNames.SIDE);
            Point underarm = Point.of(side.start().x() + out.mm(), side.start().y());
            sides.put(name, Redraw.between(side, underarm, side.end()));
            dimensions.add(new Dimension(name, side.start(), underarm, out.text()));
        }
        Garment widened = TopBody.withSides(garment, sides);
        Note rule = Note.rule("four underarm edges move out by " + out.text() + ": the chest girth changes by "
                + widened.finished(TopNames.CHEST_GIRTH)
                        .minus(garment.finished(TopNames.CHEST_GIRTH))
                        .text()
                + ", the armhole by "
                + widened.finished(TopNames.ARMHOLE_GIRTH)
                        .minus(garment.finished(TopNames.ARMHOLE_GIRTH))
                        .text());
        return new Reshaped(widened, List.of(rule), dimensions);
    }

    private static Range.Limits limits(Piece piece) {
        double pitch = ArmholeShape.pitch(piece.path(TopEdges.ARMHOLE)).x();
        return new Range.Limits(
                "outside its pitch point the underarm point can be moved out by",
                Length.mm(Math.min(
                        0,
                        pitch + LEAST_RUN - piece.path(EdgeNames.SIDE).start().x())),
                Length.mm(MOST));
    }
}
