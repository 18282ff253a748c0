package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.PatternException;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.GrownStand;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * Grows a stand on to the neckline, as for a funnel neck: front and back rise above the side neck point, and the
 * shoulder seam runs up into the stand. The neckline is its upper edge from then on. Steps that widen, lower or reshape
 * a neckline come before it.
 *
 * <pre>{@code
 * Garment funnel = block.adjust(widenNeckline(mm(12))).adjust(growStand(cm(6)));
 * }</pre>
 *
 * @param height how high the stand is above the side neck point, 20 to 200 mm
 */
record GrowStand(Length height) implements Step {

    private static final double LEAST = 20;
    private static final double MOST = 200;

    /**
     * Checks the height.
     *
     * @throws PatternException if it is not 20 to 200 mm
     */
    public GrowStand {
        Range.check(
                "stand of the neckline",
                "must be higher than the side neck point by",
                height,
                Length.mm(LEAST),
                Length.mm(MOST));
    }

    @Override
    public String name() {
        return "grow a stand on the neckline";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("height", height));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Piece front = TopPieces.half(garment, TopNames.FRONT, EdgeNames.CENTRE, TopEdges.NECKLINE, TopEdges.SHOULDER);
        Piece back = TopPieces.half(garment, TopNames.BACK, EdgeNames.CENTRE, TopEdges.NECKLINE, TopEdges.SHOULDER);
        GrownStand stand = GrownStand.on(front, back, height.mm());
        Piece grownFront = stand.grownOn(front);
        Piece grownBack = stand.carried(front, back).grownOn(back);
        Garment grown = Assembly.of(garment)
                .put(grownFront)
                .put(grownBack)
                .sew(longer(garment.seam(TopNames.SHOULDER_SEAM)))
                .done();
        Point sideNeck = front.path(TopEdges.SHOULDER).start();
        Dimension dimension = new Dimension(
                TopNames.FRONT, sideNeck, grownFront.path(TopEdges.STAND).start(), height.text());
        return new Reshaped(grown, notes(garment, grown, stand), List.of(dimension));
    }

    /** The seam of the shoulder begins at the top of the stand. */
    private static Seam longer(Seam shoulder) {
        return new Seam(
                shoulder.name(),
                withStand(shoulder.a()),
                withStand(shoulder.b()),
                shoulder.rule(),
                shoulder.smoothAt(),
                shoulder.refit());
    }

    private static SeamSide withStand(SeamSide side) {
        EdgeRef first = side.runs().get(0).edge();
        return SeamSide.along(first.piece(), TopEdges.STAND).then(side);
    }

    private List<Note> notes(Garment before, Garment after, GrownStand stand) {
        List<Note> notes = new ArrayList<>();
        Length opening = after.finished(TopNames.NECKLINE_GIRTH);
        notes.add(Note.rule("the shoulder seam runs up into a stand " + height.text()
                + " above the side neck point, from " + Length.mm(stand.along()).text()
                + " along the shoulder; both seam edges are "
                + Length.mm(stand.seam().length()).text() + " long, the upper edge is " + opening.text()
                + " (the neckline was "
                + before.finished(TopNames.NECKLINE_GIRTH).text() + ")"));
        notes.add(Note.rule("the upper edge is tilted forward by "
                + stand.tilt().text() + ": the stand is "
                + Length.mm(stand.centreHeight(before.piece(TopNames.FRONT))).text() + " high at the centre front and "
                + Length.mm(stand.carried(before.piece(TopNames.FRONT), before.piece(TopNames.BACK))
                                .centreHeight(before.piece(TopNames.BACK)))
                        .text()
                + " at the centre back"));
        notes.add(Note.done("the shoulder length counts from where the stand has run into it: "
                + Length.mm(stand.along()).text() + " from the side neck point"));
        return notes;
    }
}
