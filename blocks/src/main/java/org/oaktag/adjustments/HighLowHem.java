package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.TopBody;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * Draws a hem that is higher at centre front than at centre back. The side seams stay, and the hem slopes through them
 * in one smooth line.
 *
 * <pre>{@code
 * Garment tailed = block.adjust(highLowHem(cm(2), cm(6)));
 * }</pre>
 *
 * @param frontUp how far centre front moves up; negative to move it down
 * @param backDown how far centre back moves down; negative to move it up
 */
record HighLowHem(Length frontUp, Length backDown) implements Step {

    private static final double LEAST_BELOW_UNDERARM = 40;
    private static final double MOST = 600;

    /** Refuses null. */
    public HighLowHem {
        Objects.requireNonNull(frontUp, "frontUp");
        Objects.requireNonNull(backDown, "backDown");
    }

    @Override
    public String name() {
        return "draw a high-low hem";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("centre front up", frontUp), Amount.of("centre back down", backDown));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        List<Dimension> dimensions = new ArrayList<>();
        Map<Name, Point> centres = new HashMap<>();
        for (Name name : TopBody.HALVES) {
            Length down = name.equals(TopNames.FRONT) ? frontUp.negated() : backDown;
            Piece piece = TopPieces.half(garment, name, EdgeNames.SIDE, EdgeNames.HEM, EdgeNames.CENTRE);
            Point was = TopBody.centreEnd(piece);
            double underarm = piece.corner(EdgeNames.SIDE, End.START).y();
            double mostUp = Math.max(0, was.y() - underarm - LEAST_BELOW_UNDERARM);
            if (name.equals(TopNames.FRONT)) {
                Range.check(
                        "hem at the centre of the front",
                        "can be moved up by",
                        frontUp,
                        Length.mm(-MOST),
                        Length.mm(mostUp));
            } else {
                Range.check(
                        "hem at the centre of the back",
                        "can be moved down by",
                        backDown,
                        Length.mm(-mostUp),
                        Length.mm(MOST));
            }
            Point centre = Point.of(was.x(), was.y() + down.mm());
            centres.put(name, centre);
            dimensions.add(new Dimension(name, was, centre, down.text()));
        }
        Garment drawn = TopBody.withCentres(garment, centres);
        double low = TopBody.centreEnd(drawn.piece(TopNames.BACK)).y()
                - TopBody.centreEnd(drawn.piece(TopNames.FRONT)).y();
        Note rule = Note.rule("centre front moves up by " + frontUp.text() + ", centre back down by "
                + backDown.text() + ": the back hangs " + Length.mm(low).text()
                + " lower, the hem runs smoothly through the side seams, which stay; the hem girth is now "
                + drawn.finished(TopNames.HEM_GIRTH).text());
        return new Reshaped(drawn, List.of(rule), dimensions);
    }
}
