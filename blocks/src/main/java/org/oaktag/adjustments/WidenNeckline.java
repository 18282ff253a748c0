package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
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
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * Moves the side neck point along the shoulder and redraws both necklines with the same end directions. The shoulder
 * loses what the neckline gains along it. As the side neck point falls with the shoulder, the back is lowered at the
 * centre by as much, so that it keeps its rise and with it its round; narrowing raises it again.
 *
 * <pre>{@code
 * Garment widened = block.adjust(widenNeckline(mm(8)));
 * block.finished(SHOULDER_LENGTH).minus(widened.finished(SHOULDER_LENGTH)).text();   // = 8.0 mm
 * }</pre>
 *
 * @param along how far along the shoulder; negative to narrow the neckline
 */
record WidenNeckline(Length along) implements Step {

    /** A neckline narrower than this from the centre, in millimetres, holds no neck. */
    private static final double LEAST_HALF_WIDTH = 30;

    /** A neckline less deep than this, in millimetres, would dip beside the centre. */
    private static final double LEAST_DEPTH = 3;

    /** Refuses null. */
    public WidenNeckline {
        Objects.requireNonNull(along, "along");
    }

    @Override
    public String name() {
        return along.mm() < 0 ? "narrow the neckline" : "widen the neckline";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("along the shoulder", along));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        return FairLines.told(
                garment,
                drawn(garment),
                share -> new WidenNeckline(along.times(share)).drawn(garment).garment(),
                share -> along.times(share).text());
    }

    private Reshaped drawn(Garment garment) {
        List<Dimension> dimensions = new ArrayList<>();
        Garment widened = garment;
        List<Piece> halves = Halves.of(garment, EdgeNames.CENTRE, TopEdges.NECKLINE, TopEdges.SHOULDER);
        Range.checkAll("neckline", halves, along, WidenNeckline::limits);
        double lowered = 0;
        for (Piece piece : halves) {
            Name name = piece.name();
            Path shoulder = moved(piece);
            Point sideNeck = shoulder.start();
            Point centre = piece.path(TopEdges.NECKLINE).start();
            if (name.equals(TopNames.BACK)) {
                lowered = sideNeck.y() - piece.path(TopEdges.SHOULDER).start().y();
                centre = Point.of(centre.x(), centre.y() + lowered);
            }
            dimensions.add(new Dimension(name, piece.path(TopEdges.SHOULDER).start(), sideNeck, along.text()));
            widened = widened.withPiece(TopNeckline.redrawn(piece, centre, shoulder));
        }
        String grown = widened.finished(TopNames.NECKLINE_GIRTH)
                .minus(garment.finished(TopNames.NECKLINE_GIRTH))
                .text();
        List<Note> notes = new ArrayList<>();
        notes.add(Note.rule("the side neck point moves " + along.text()
                + " along the shoulder, which loses as much; the whole neckline grows by " + grown));
        if (lowered != 0) {
            notes.add(Note.done("the centre of the back was " + (lowered > 0 ? "lowered" : "raised") + " by "
                    + Length.mm(Math.abs(lowered)).text()
                    + " with the side neck point, so that the back neckline keeps its round"));
        }
        return new Reshaped(widened, notes, dimensions);
    }

    private static Range.Limits limits(Piece piece) {
        Path shoulder = piece.path(TopEdges.SHOULDER);
        double inward = shoulder.startDirection().x();
        double room = shoulder.start().x() - LEAST_HALF_WIDTH;
        double depth = piece.name().equals(TopNames.BACK)
                ? Double.POSITIVE_INFINITY
                : piece.path(TopEdges.NECKLINE).start().y() - shoulder.start().y();
        return new Range.Limits(
                "on a shoulder of " + Length.mm(shoulder.length()).text()
                        + ", and until the front neckline is level, it can be widened by",
                Length.mm(inward > 0 ? -Math.max(0, room / inward) : 0),
                Length.mm(Math.min(shoulder.length() - ShoulderSeam.LEAST, untilLevel(shoulder, depth))));
    }

    /** How far the side neck point can slide down the shoulder until it is as low as the centre, nearly. */
    private static double untilLevel(Path shoulder, double depth) {
        double fall = shoulder.startDirection().y();
        return fall > 0 ? Math.max(0, (depth - LEAST_DEPTH) / fall) : Double.POSITIVE_INFINITY;
    }

    private Path moved(Piece piece) {
        Path shoulder = piece.path(TopEdges.SHOULDER);
        Point start = shoulder.start();
        if (along.mm() >= 0) {
            return along.mm() == 0 ? shoulder : shoulder.sub(along.mm(), shoulder.length());
        }
        Point sideNeck = start.plus(shoulder.startDirection().times(along.mm()));
        return shoulder.curves().size() == 1 && shoulder.curves().get(0) instanceof Line
                ? Path.of(new Line(sideNeck, shoulder.end()))
                : Path.of(new Line(sideNeck, start)).then(shoulder);
    }
}
