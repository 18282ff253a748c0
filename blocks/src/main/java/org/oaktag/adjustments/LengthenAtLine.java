package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.oaktag.adjust.Reshaped;
import org.oaktag.blocks.BodyLine;
import org.oaktag.blocks.TopBody;
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
 * Lengthens or shortens front and back at a line across them: what lies below moves down, and what crosses the line is
 * redrawn. At the armhole line the armhole grows, so that the sleeve cap has to be refitted, unless the
 * sleeve is asked to follow; at the waist line the side seams do.
 *
 * <pre>{@code
 * Garment lowWaisted = block.adjust(lengthenBody(BodyLine.WAIST, cm(3)));
 * }</pre>
 *
 * @param line the line
 * @param by how far; negative to shorten
 * @param sleeveFollows whether the cap is fitted to the new armhole in the same step
 */
record LengthenAtLine(BodyLine line, Length by, boolean sleeveFollows) implements BodyStep {
    /** Refuses null. */
    public LengthenAtLine {
        Objects.requireNonNull(line, "line");
        Objects.requireNonNull(by, "by");
    }

    @Override
    public BodyStep withSleeve() {
        return new LengthenAtLine(line, by, true);
    }

    @Override
    public String name() {
        return (by.mm() < 0 ? "shorten the body at the " : "lengthen the body at the ") + line.label();
    }

    @Override
    public List<Amount> amounts() {
        return SleeveFollows.amounts(sleeveFollows, Amount.of("at the " + line.label(), by));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        TopBody.HALVES.forEach(name -> TopPieces.half(garment, name, EdgeNames.SIDE, EdgeNames.HEM, EdgeNames.CENTRE));
        Garment lengthened = line.lengthened(garment, by.mm());
        List<Dimension> dimensions = new ArrayList<>();
        for (Name name : TopBody.HALVES) {
            Piece piece = TopPieces.half(garment, name, EdgeNames.SIDE, EdgeNames.HEM, EdgeNames.CENTRE);
            double level = line.level(garment, piece);
            double x = TopBody.centreEnd(piece).x();
            dimensions.add(new Dimension(name, Point.of(x, level), Point.of(x, level + by.mm()), by.text()));
        }
        Note rule = Note.rule("what lies below the " + line.label() + " moves down by " + by.text()
                + ": centre back is now "
                + lengthened.finished(TopNames.BACK_LENGTH).text()
                + (line == BodyLine.ARMHOLE
                        ? ", the armhole "
                                + lengthened.finished(TopNames.ARMHOLE_GIRTH).text()
                        : ""));
        Reshaped reshaped = new Reshaped(lengthened, List.of(rule), dimensions);
        return SleeveFollows.after(FairLines.told(garment, reshaped), sleeveFollows);
    }
}
