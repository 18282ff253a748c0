package org.oaktag.adjustments;

import java.util.List;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.NeckStyle;
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
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * Draws the neckline of a front or a back in another style between the points that it has. It arrives at the shoulder
 * as it did, so that the other half of the neckline runs on from it. Steps that widen or lower it later keep the style.
 *
 * <pre>{@code
 * Garment pointed = block.adjust(lowerFrontNeckline(mm(60))).adjust(reshapeNeckline(NeckStyle.V));
 * }</pre>
 *
 * @param piece the front or the back
 * @param style the style
 */
record ReshapeNeckline(Name piece, NeckStyle style) implements Step {

    /**
     * Checks the piece.
     *
     * @throws PatternException if it is neither the front nor the back
     */
    public ReshapeNeckline {
        Objects.requireNonNull(piece, "piece");
        Objects.requireNonNull(style, "style");
        Halves.check("neckline to reshape", piece);
    }

    @Override
    public String name() {
        return "reshape the " + piece + " neckline";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("style", style.label()));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Garment reshaped = garment.withPiece(TopNeckline.inStyle(
                TopPieces.half(garment, piece, EdgeNames.CENTRE, TopEdges.NECKLINE, TopEdges.SHOULDER), style));
        Path neckline = reshaped.piece(piece).path(TopEdges.NECKLINE);
        double depth = neckline.start().y() - neckline.end().y();
        Note rule = Note.rule("a " + style.label() + " neckline "
                + Length.mm(depth).text()
                + " deep between the same points; square to the shoulder as before, it runs on"
                + " smoothly across the seam: the whole neckline is now "
                + reshaped.finished(TopNames.NECKLINE_GIRTH).text());
        return new Reshaped(
                reshaped,
                List.of(rule),
                List.of(new Dimension(
                        piece,
                        Point.of(neckline.start().x(), neckline.end().y()),
                        neckline.start(),
                        Length.mm(depth).text())));
    }
}
