package org.oaktag.examples.embed.own;

import static org.oaktag.measure.Length.mm;

import java.util.List;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.garment.Amount;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.measure.Length;

/** An adjustment of one's own: spreads the bottom of the gaiter so that it lies on the shoulders. */
public record FlareGaiter(Length by) implements Step {

    static FlareGaiter flareGaiter(Length by) {
        return new FlareGaiter(by);
    }

    @Override
    public String name() {
        return "flare the gaiter";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("by", by));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Piece old = garment.piece(Gaiter.NAME);
        Length top = mm(old.path(EdgeNames.TOP).chord());
        Length bottom = mm(old.path(EdgeNames.BOTTOM).chord());
        double height = old.path(Gaiter.RIGHT).end().y();
        String limit = "for a bottom as wide as the top or up to twice the height wider it can be";
        Length least = top.minus(bottom);
        Range.check("flare of the gaiter", limit, by, least, least.plus(mm(2 * height)));
        Piece flared = old.withEdges(Gaiter.edges(top.mm(), bottom.plus(by).mm(), height));
        String rule = "bottom = " + bottom.text() + " + " + by.text() + ", half at each end of the seam";
        return Reshaped.of(garment.withPiece(flared), Note.rule(rule));
    }
}
