package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.BodyLine;
import org.oaktag.blocks.SideSeam;
import org.oaktag.blocks.TopBody;
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
 * Takes the side seams in at the waist in one smooth curve, so that the waist girth shrinks four times as much.
 * Underarm points and hem stay, and so do the directions in which the seams leave and reach them.
 *
 * <pre>{@code
 * Garment shaped = block.adjust(shapeWaist(mm(10)));
 * }</pre>
 *
 * @param in how far in on each of the four edges, level; negative to let them out
 */
record ShapeWaist(Length in) implements Step {

    private static final double LEAST_HALF_WAIST = 80;
    private static final double MOST_OUT = 200;

    /** Refuses null. */
    public ShapeWaist {
        Objects.requireNonNull(in, "in");
    }

    @Override
    public String name() {
        return in.mm() < 0 ? "let the waist out" : "take the waist in";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("in at the waist", in));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        List<Dimension> dimensions = new ArrayList<>();
        Map<Name, Path> sides = new HashMap<>();
        double girth = 0;
        List<Piece> halves = Halves.of(garment, EdgeNames.SIDE, EdgeNames.HEM, EdgeNames.CENTRE);
        Range.checkAll("waist", halves, in, piece -> limits(garment, piece));
        for (Piece piece : halves) {
            Name name = piece.name();
            Point was = waist(garment, piece);
            double half = halfWaist(garment, piece);
            Point waist = Point.of(was.x() - in.mm(), was.y());
            sides.put(name, SideSeam.through(piece.path(EdgeNames.SIDE), waist));
            dimensions.add(new Dimension(name, was, waist, in.text()));
            girth += 2 * (half - in.mm());
        }
        Garment shaped = TopBody.withSides(garment, sides);
        return new Reshaped(shaped, notes(Length.mm(girth)), dimensions);
    }

    private List<Note> notes(Length girth) {
        return List.of(Note.rule("four edges move in by " + in.text() + " at the waist: the waist girth shrinks by "
                + in.times(4).text() + " to " + girth.text() + "; underarm points and hem stay"));
    }

    private static Point waist(Garment garment, Piece piece) {
        return SideSeam.at(piece, BodyLine.WAIST.level(garment, piece));
    }

    private static double halfWaist(Garment garment, Piece piece) {
        return waist(garment, piece).x() - TopBody.centreEnd(piece).x();
    }

    private static Range.Limits limits(Garment garment, Piece piece) {
        double half = halfWaist(garment, piece);
        return new Range.Limits(
                "is " + Length.mm(half).text() + " wide on each side and can be taken in by",
                Length.mm(-MOST_OUT),
                Length.mm(half - LEAST_HALF_WAIST));
    }
}
