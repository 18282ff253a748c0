package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.ShoulderSeam;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopNeckline;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.measure.Length;

/**
 * Makes room for a band: the seam line of the neckline moves into front and back, parallel to itself, by the finished
 * width of the band, so that the band's finished edge lies where the neckline was. It meets the shoulder seam at the
 * same distance along it on both, wherever that seam lies.
 *
 * <pre>{@code
 * Garment inset = block.adjust(insetNecklineForBand(mm(20)))   // so that the band ends where the neckline was
 *         .adjust(ribNeckband(mm(20), rib));
 * }</pre>
 *
 * @param width the finished width of the band, more than 0 and at most 120 mm
 */
record InsetNeckline(Length width) implements Step {

    private static final double LEAST = 1;
    private static final double MOST = 120;

    /**
     * Checks the width.
     *
     * @throws org.oaktag.PatternException if it is not 1 to 120 mm
     */
    public InsetNeckline {
        Range.check("band of the neckline", "must have a finished width of", width, Length.mm(LEAST), Length.mm(MOST));
    }

    @Override
    public String name() {
        return "move the neckline in for a band";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("finished width", width));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        return FairLines.told(
                garment,
                drawn(garment),
                share -> new InsetNeckline(part(share)).drawn(garment).garment(),
                share -> part(share).text());
    }

    private Length part(double share) {
        return Length.mm(LEAST + share * (width.mm() - LEAST));
    }

    private Reshaped drawn(Garment garment) {
        List<Dimension> dimensions = new ArrayList<>();
        Garment inset = garment;
        List<Piece> halves = Halves.of(garment, EdgeNames.CENTRE, TopEdges.NECKLINE, TopEdges.SHOULDER);
        Range.checkAll("band of the neckline", halves, width, InsetNeckline::limits);
        List<Piece> allMoved = TopNeckline.movedIn(halves.get(0), halves.get(1), width.mm());
        for (int i = 0; i < halves.size(); i++) {
            Piece moved = allMoved.get(i);
            dimensions.add(new Dimension(
                    moved.name(),
                    halves.get(i).path(TopEdges.NECKLINE).start(),
                    moved.path(TopEdges.NECKLINE).start(),
                    width.text()));
            inset = inset.withPiece(moved);
        }
        Note rule = Note.rule("the seam line moves in by the finished width of the band, " + width.text()
                + ", so that the finished edge lies where the neckline was, "
                + garment.finished(TopNames.NECKLINE_GIRTH).text() + " long; the seam is "
                + inset.finished(TopNames.NECKLINE_GIRTH).text());
        return new Reshaped(inset, List.of(rule), dimensions);
    }

    private static Range.Limits limits(Piece piece) {
        Length shoulder = piece.edge(TopEdges.SHOULDER).length();
        return new Range.Limits(
                "a shoulder of " + shoulder.text() + " leaves room for a width of",
                Length.mm(LEAST),
                Length.mm(shoulder.mm() - ShoulderSeam.LEAST));
    }
}
