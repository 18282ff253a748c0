package org.oaktag.examples.embed.own;

import static org.oaktag.measure.Length.mm;

import java.util.List;
import org.oaktag.PatternException;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.garment.Amount;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.measure.Length;

/** An adjustment of one's own: spreads the bottom of the gaiter so that it lies on the shoulders. */
record FlareGaiter(String name, Length by) implements Step {

    /** Less than any ruler shows, in mm. */
    private static final double HAIR = 1e-6;

    static FlareGaiter flareGaiter(Length by) {
        return new FlareGaiter("flare the gaiter", by);
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("by", by));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Piece old = garment.piece(Gaiter.PIECE);
        double top = width(old, Gaiter.TOP);
        double bottom = width(old, Gaiter.BOTTOM);
        double height = old.corner(Gaiter.RIGHT, End.END).y();
        double spread = bottom + by.mm() - top;
        if (spread < -HAIR || spread > 2 * height + HAIR) {
            throw PatternException.of(
                    "flare of the gaiter",
                    "the bottom must be as wide as the top or up to twice the height wider: "
                            + mm(top - bottom).text() + " to "
                            + mm(top + 2 * height - bottom).text(),
                    by.text(),
                    "");
        }
        Piece flared = old.withEdges(Gaiter.edges(top, bottom + by.mm(), height));
        String rule = "bottom = " + mm(bottom).text() + " + " + by.text() + ", half at each end of the seam";
        return new Reshaped(garment.withPiece(flared), List.of(Note.rule(rule)), List.of());
    }

    private static double width(Piece piece, Name edge) {
        return piece.corner(edge, End.START).distanceTo(piece.corner(edge, End.END));
    }
}
