package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.KeptNotches;
import org.oaktag.blocks.Redraw;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * Moves the hem of front and back down by an amount. The side seams run on in their own direction, and the hem is
 * redrawn with the directions it had.
 *
 * <pre>{@code
 * Garment longer = block.adjust(lengthenBody(cm(4)));
 * longer.finished(BACK_LENGTH).minus(block.finished(BACK_LENGTH)).text();   // = 40.0 mm
 * }</pre>
 *
 * @param by how far down, along the centre; negative to shorten
 */
record LengthenBody(Length by) implements Step {

    /** How much of the last run of a side seam, in millimetres, must be left. */
    private static final double LEAST_SIDE = 30;

    private static final double MOST = 1200;

    /** Refuses null. */
    public LengthenBody {
        Objects.requireNonNull(by, "by");
    }

    @Override
    public String name() {
        return by.mm() < 0 ? "shorten the body" : "lengthen the body";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("at the hem", by));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        List<Dimension> dimensions = new ArrayList<>();
        Garment lengthened = garment;
        List<Piece> halves = Halves.of(garment, EdgeNames.SIDE, EdgeNames.HEM, EdgeNames.CENTRE);
        Range.checkAll("body length", halves, by, LengthenBody::limits);
        Transform down = Transform.translation(0, by.mm());
        for (Piece piece : halves) {
            Name name = piece.name();
            Path side = extended(piece);
            Path centre = piece.path(EdgeNames.CENTRE);
            Point centreHem = Point.of(centre.start().x(), centre.start().y() + by.mm());
            dimensions.add(new Dimension(name, centre.start(), centreHem, by.text()));
            lengthened = lengthened.withPiece(KeptNotches.redrawn(
                    piece,
                    Map.of(
                            EdgeNames.SIDE, side,
                            EdgeNames.HEM,
                                    Redraw.between(piece.path(EdgeNames.HEM).transformed(down), side.end(), centreHem),
                            EdgeNames.CENTRE, Path.of(new Line(centreHem, centre.end()))),
                    EdgeNames.SIDE,
                    End.START));
        }
        Note rule = Note.rule("centre front and centre back grow by " + by.text()
                + " at the hem, the side seams run on in their own direction: centre back is now "
                + lengthened.finished(TopNames.BACK_LENGTH).text());
        return new Reshaped(lengthened, List.of(rule), dimensions);
    }

    private Path extended(Piece piece) {
        Path side = piece.path(EdgeNames.SIDE);
        Vector down = side.endDirection();
        return Redraw.between(side, side.start(), side.end().plus(down.times(by.mm() / down.y())));
    }

    private static Range.Limits limits(Piece piece) {
        List<Curve> side = piece.path(EdgeNames.SIDE).curves();
        Curve last = side.get(side.size() - 1);
        return new Range.Limits(
                "can be changed by",
                Length.mm(LEAST_SIDE - (last.end().y() - last.start().y())),
                Length.mm(MOST));
    }
}
