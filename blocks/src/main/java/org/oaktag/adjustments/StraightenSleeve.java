package org.oaktag.adjustments;

import java.util.List;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.SleeveEnd;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * Draws both underarm edges of the sleeve straight down from the underarm points and extends the hem to meet them. What
 * a cuff then has to gather is said.
 *
 * <pre>{@code
 * Garment straight = block.adjust(straightenSleeve());
 * }</pre>
 */
public record StraightenSleeve() implements Step {

    @Override
    public String name() {
        return "straighten the sleeve";
    }

    @Override
    public List<Amount> amounts() {
        return List.of();
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Piece sleeve = TopPieces.sleeveToHem(garment);
        Path hem = sleeve.path(EdgeNames.HEM);
        Point front = sleeve.corner(EdgeNames.CAP_FRONT, End.END);
        Point back = sleeve.corner(EdgeNames.CAP_BACK, End.START);
        Point hemFront = Point.of(front.x(), hem.start().y());
        Point hemBack = Point.of(back.x(), hem.end().y());
        Piece straight = SleeveEnd.of(sleeve)
                .redrawn(
                        Path.of(new Line(hemFront, hemBack)),
                        Path.of(new Line(front, hemFront)),
                        Path.of(new Line(hemBack, back)));
        Length grown = Length.mm(straight.path(EdgeNames.HEM).length() - hem.length());
        Note rule = Note.rule("from the underarm points straight down: the hem grows by " + grown.text() + " to "
                + straight.edge(EdgeNames.HEM).length().text()
                + ", which a cuff has to gather in or a hem leaves wide");
        List<Dimension> dimensions = List.of(
                new Dimension(
                        TopNames.SLEEVE,
                        hem.start(),
                        hemFront,
                        Length.mm(hemFront.x() - hem.start().x()).text()),
                new Dimension(
                        TopNames.SLEEVE,
                        hem.end(),
                        hemBack,
                        Length.mm(hem.end().x() - hemBack.x()).text()));
        return new Reshaped(garment.withPiece(straight), List.of(rule), dimensions);
    }
}
