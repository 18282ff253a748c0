package org.oaktag.adjustments;

import java.util.List;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.TopBody;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopNeckline;
import org.oaktag.blocks.TopPieces;
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
 * Moves the neckline at centre front or centre back straight down and redraws it to the side neck point, which stays.
 *
 * <pre>{@code
 * Garment scooped = block.adjust(lowerFrontNeckline(mm(20))).adjust(lowerBackNeckline(mm(5)));
 * }</pre>
 *
 * @param piece the front or the back
 * @param by how far down; negative to raise it
 */
record LowerNeckline(Name piece, Length by) implements Step {

    /** How deep below the side neck point a front neckline must stay, as a share of its half-width. */
    private static final double LEAST_FRONT = 0.35;

    /** How much of the centre must be left, in millimetres. */
    private static final double LEAST_CENTRE = 150;

    /**
     * Checks the piece.
     *
     * @throws PatternException if it is neither the front nor the back
     */
    public LowerNeckline {
        Objects.requireNonNull(piece, "piece");
        Objects.requireNonNull(by, "by");
        Halves.check("neckline to lower", piece);
    }

    @Override
    public String name() {
        return (by.mm() < 0 ? "raise the " : "lower the ") + piece + " neckline";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("at the centre", by));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        return FairLines.told(
                garment,
                drawn(garment),
                share ->
                        new LowerNeckline(piece, by.times(share)).drawn(garment).garment(),
                share -> by.times(share).text());
    }

    private Reshaped drawn(Garment garment) {
        Piece before = TopPieces.half(garment, piece, EdgeNames.CENTRE, TopEdges.NECKLINE, TopEdges.SHOULDER);
        Path neckline = before.path(TopEdges.NECKLINE);
        double depth = neckline.start().y() - neckline.end().y();
        double half = neckline.end().x() - neckline.start().x();
        double leastDepth =
                Math.min(depth, piece.equals(TopNames.FRONT) ? LEAST_FRONT * half : TopNeckline.leastDepth(half));
        Range.check(
                "neckline of the " + piece,
                "can be lowered at the centre by",
                by,
                Length.mm(leastDepth - depth),
                Length.mm(TopBody.centreEnd(before).y()
                        - LEAST_CENTRE
                        - neckline.start().y()));
        Point centre = Point.of(neckline.start().x(), neckline.start().y() + by.mm());
        Piece after = TopNeckline.redrawn(before, centre, before.path(TopEdges.SHOULDER));
        Garment lowered = garment.withPiece(after);
        Note rule = Note.rule("the neckline moves down by " + by.text() + " at the centre of the " + piece
                + ", the side neck point stays: the whole neckline changes by "
                + lowered.finished(TopNames.NECKLINE_GIRTH)
                        .minus(garment.finished(TopNames.NECKLINE_GIRTH))
                        .text());
        return new Reshaped(lowered, List.of(rule), List.of(new Dimension(piece, neckline.start(), centre, by.text())));
    }
}
