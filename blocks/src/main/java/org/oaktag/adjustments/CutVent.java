package org.oaktag.adjustments;

import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.oaktag.PatternException;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.SideVent;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.measure.Length;

/**
 * Cuts a vent into the side seams: they are sewn down to it, and below both front and back have an extension that folds
 * under. Steps that move the side seam or the hem come before it.
 *
 * <pre>{@code
 * Garment vented = block.adjust(cutSideVent(cm(9), mm(25)));
 * }</pre>
 *
 * @param height how much of the side seam stays open, 20 mm or more
 * @param width how wide the extensions are, 10 to 80 mm
 */
record CutVent(Length height, Length width) implements Step {

    private static final double LEAST_HEIGHT = 20;
    private static final double LEAST_WIDTH = 10;
    private static final double MOST_WIDTH = 80;
    private static final double LEAST_SEWN = 30;

    /**
     * Checks the width.
     *
     * @throws org.oaktag.PatternException if it is not 10 to 80 mm
     */
    public CutVent {
        Objects.requireNonNull(height, "height");
        Range.check("extension of a vent", "must be as wide as", width, Length.mm(LEAST_WIDTH), Length.mm(MOST_WIDTH));
    }

    @Override
    public String name() {
        return "cut a vent into the side seams";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("height", height), Amount.of("width", width));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        List<Piece> halves = Halves.of(garment, EdgeNames.SIDE, EdgeNames.HEM, EdgeNames.CENTRE);
        Range.checkAll("vent", halves, height, CutVent::limits);
        Piece front = cut(halves.get(0));
        Piece back = cut(halves.get(1));
        Garment vented = Assembly.of(garment)
                .put(front)
                .put(back)
                .sew(aboveVent(garment.seam(TopNames.SIDE_SEAM)))
                .done();
        Note rule = Note.rule("side seam "
                + garment.piece(TopNames.FRONT).edge(EdgeNames.SIDE).length().text() + " - vent " + height.text()
                + " = " + front.edge(EdgeNames.SIDE).length().text()
                + " to be sewn; below, an extension of " + width.text()
                + " folds under, its hem the mirror of the hem that it lies on");
        return new Reshaped(vented, List.of(rule), List.of(dimension(front), dimension(back)));
    }

    private Piece cut(Piece piece) {
        Piece vented = SideVent.cut(piece, height.mm(), width.mm());
        if (vented.outline().meetsItself()) {
            throw PatternException.of(
                    "vent of the " + piece.name(),
                    "must not run into the rest of the piece, such as a sleeve grown on",
                    width.text() + " wide",
                    "make the vent narrower or lower");
        }
        return vented;
    }

    /** The seam ends at the extensions, where no outline runs on. */
    private static Seam aboveVent(Seam side) {
        Set<End> smooth = EnumSet.copyOf(side.smoothAt());
        smooth.remove(End.END);
        return new Seam(side.name(), side.a(), side.b(), side.rule(), smooth, side.refit());
    }

    private Dimension dimension(Piece piece) {
        return new Dimension(
                piece.name(),
                piece.corner(EdgeNames.SIDE, End.END),
                piece.corner(EdgeNames.HEM, End.START),
                height.text());
    }

    private static Range.Limits limits(Piece piece) {
        Length side = piece.edge(EdgeNames.SIDE).length();
        return new Range.Limits(
                "on a side seam of " + side.text() + " its height must be",
                Length.mm(LEAST_HEIGHT),
                Length.mm(side.mm() - LEAST_SEWN));
    }
}
