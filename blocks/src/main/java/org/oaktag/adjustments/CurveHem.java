package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.SideSeam;
import org.oaktag.blocks.TopBody;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.measure.Length;

/**
 * Curves the hem as on a shirt tail: the side seams end higher, and the hem swings down from there to the centres,
 * which stay. It leaves the side seam square, so that front and back run on smoothly.
 *
 * <pre>{@code
 * Garment curved = block.adjust(curveHem(cm(3)));   // 3 cm higher at the side seams
 * }</pre>
 *
 * @param rise how far up the side seam the hem rises; negative to let it down again
 */
record CurveHem(Length rise) implements Step {

    /** How much of a side seam, in millimetres, must be left. */
    private static final double LEAST_SIDE = 50;

    private static final double MOST_DOWN = 300;

    /** Refuses null. */
    public CurveHem {
        Objects.requireNonNull(rise, "rise");
    }

    @Override
    public String name() {
        return rise.mm() < 0 ? "let the hem down at the sides" : "curve the hem up at the sides";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("up the side seam", rise));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        List<Dimension> dimensions = new ArrayList<>();
        Map<Name, Path> sides = new HashMap<>();
        List<Piece> halves = Halves.of(garment, EdgeNames.SIDE, EdgeNames.HEM, EdgeNames.CENTRE);
        Range.checkAll("hem", halves, rise, CurveHem::limits);
        for (Piece piece : halves) {
            Name name = piece.name();
            Path side = piece.path(EdgeNames.SIDE);
            Path shorter = SideSeam.shortened(side, rise.mm());
            sides.put(name, shorter);
            dimensions.add(new Dimension(name, side.end(), shorter.end(), rise.text()));
        }
        Garment curved = TopBody.withSides(garment, sides);
        Note rule = Note.rule("the hem rises by " + rise.text()
                + " along the side seams, which it leaves square, and swings down to the centres: the hem girth is now "
                + curved.finished(TopNames.HEM_GIRTH).text());
        return new Reshaped(curved, List.of(rule), dimensions);
    }

    private static Range.Limits limits(Piece piece) {
        Length side = piece.edge(EdgeNames.SIDE).length();
        return new Range.Limits(
                "on a side seam of " + side.text() + " it can rise by",
                Length.mm(-MOST_DOWN),
                Length.mm(side.mm() - LEAST_SIDE));
    }
}
