package org.oaktag.adjustments;

import java.util.List;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.SleeveEnd;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * Moves the hem of the sleeve, or of its lower part, down or up as it is, so that whatever is sewn to it stays true;
 * both underarm edges are redrawn to meet it.
 *
 * <pre>{@code
 * Garment overTheHand = block.adjust(lengthenSleeve(cm(3)));
 * Garment shorter = block.adjust(shortenSleeve(cm(3)));
 * }</pre>
 *
 * @param by how much longer the sleeve becomes; negative for shorter
 */
record LengthenSleeve(Length by) implements Step {

    private static final double MOST = 1000;

    /** Refuses null. */
    public LengthenSleeve {
        Objects.requireNonNull(by, "by");
    }

    @Override
    public String name() {
        return by.mm() < 0 ? "shorten the sleeve" : "lengthen the sleeve";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("length", by));
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if the sleeve or its lower part is not deep enough to lose so much
     */
    @Override
    public Reshaped reshape(Garment garment) {
        Name name = garment.hasPiece(TopNames.SLEEVE_LOWER) ? TopNames.SLEEVE_LOWER : TopNames.SLEEVE;
        Piece sleeve = TopPieces.sleeve(garment, name, TopEdges.UNDERARM_FRONT, EdgeNames.HEM, TopEdges.UNDERARM_BACK);
        SleeveEnd end = SleeveEnd.of(sleeve);
        Range.check(
                "length of the " + name,
                "it can be lengthened (shortened: negative) by",
                by,
                Length.mm(-end.mostShortening().mm()),
                Length.mm(MOST));
        Garment moved = garment.withPiece(end.shortenedBy(by.negated()));
        Point before = sleeve.path(EdgeNames.HEM).start();
        Note rule = Note.rule("the hem keeps its width of "
                + sleeve.edge(EdgeNames.HEM).length().text() + "; side neck to wrist is "
                + moved.finished(TopNames.NECK_TO_WRIST).text() + " (it was "
                + garment.finished(TopNames.NECK_TO_WRIST).text() + ")");
        return new Reshaped(
                moved,
                List.of(rule),
                List.of(new Dimension(
                        name,
                        before,
                        Point.of(before.x(), before.y() + by.mm()),
                        Length.mm(Math.abs(by.mm())).text())));
    }
}
