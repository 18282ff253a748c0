package org.oaktag.adjustments;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.SleeveEnd;
import org.oaktag.blocks.TopEdges;
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
 * Draws both underarm edges of the sleeve straight: from the underarm points straight down, the hem extended to meet
 * them, or straight to a hem of a length of one's own, which a cuff can take. They leave the underarm points upright,
 * so that the cap runs on smoothly. What a cuff then has to gather is said.
 *
 * <pre>{@code
 * Garment straight = block.adjust(straightenSleeve());
 * Garment narrower = block.adjust(straightenSleeve(cm(26)));
 * }</pre>
 *
 * @param hem how long the hem shall be, or empty for as long as the sleeve is wide
 */
record StraightenSleeve(Optional<Length> hem) implements Step {

    /** Refuses null. */
    public StraightenSleeve {
        Objects.requireNonNull(hem, "hem");
    }

    @Override
    public String name() {
        return "straighten the sleeve";
    }

    @Override
    public List<Amount> amounts() {
        return hem.map(length -> List.of(Amount.of("hem", length))).orElse(List.of());
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Piece sleeve = TopPieces.sleeveToHem(garment);
        Path old = sleeve.path(EdgeNames.HEM);
        Piece straight =
                hem.map(length -> SleeveEnd.of(sleeve).straightTo(length)).orElseGet(() -> upright(sleeve));
        Path drawn = straight.path(EdgeNames.HEM);
        Length grown = Length.mm(drawn.length() - old.length());
        Note rule = Note.rule("from the underarm points straight "
                + (hem.isPresent() ? "to a hem of its own" : "down") + ": the hem "
                + (grown.mm() < 0 ? "shrinks" : "grows") + " by "
                + Length.mm(Math.abs(grown.mm())).text() + " to "
                + straight.edge(EdgeNames.HEM).length().text()
                + ", which a cuff has to gather in or a hem leaves wide");
        List<Dimension> dimensions = List.of(moved(old.start(), drawn.start()), moved(old.end(), drawn.end()));
        return new Reshaped(garment.withPiece(straight), List.of(rule), dimensions);
    }

    private static Piece upright(Piece sleeve) {
        Path hem = sleeve.path(EdgeNames.HEM);
        Point front = sleeve.corner(TopEdges.CAP_FRONT, End.END);
        Point back = sleeve.corner(TopEdges.CAP_BACK, End.START);
        Point hemFront = Point.of(front.x(), hem.start().y());
        Point hemBack = Point.of(back.x(), hem.end().y());
        return SleeveEnd.of(sleeve)
                .redrawn(
                        Path.of(new Line(hemFront, hemBack)),
                        Path.of(new Line(front, hemFront)),
                        Path.of(new Line(hemBack, back)));
    }

    private static Dimension moved(Point from, Point to) {
        return new Dimension(
                TopNames.SLEEVE,
                from,
                to,
                Length.mm(Math.abs(to.x() - from.x())).text());
    }
}
