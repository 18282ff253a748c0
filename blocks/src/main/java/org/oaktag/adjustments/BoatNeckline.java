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
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * Draws a boat neckline: wide, shallow and flat across the middle, front and back alike. As the side neck points lie
 * low on the shoulder then, the back is drawn no deeper than the front, and not higher at its centre than it was.
 *
 * <pre>{@code
 * Garment boat = block.adjust(boatNeckline(mm(40), mm(35)));   // 40 mm of shoulder are left
 * }</pre>
 *
 * @param shoulder how much of the shoulder seam is left
 * @param depth how deep the front lies below the new side neck point
 */
record BoatNeckline(Length shoulder, Length depth) implements Step {

    /** A boat neckline deeper than this share of its half-width is a round one. */
    private static final double MOST_DEPTH = 0.6;

    /** How deep the back lies, as a share of the front (our own choice). */
    private static final double BACK_SHARE = 0.85;

    /** Refuses null. */
    public BoatNeckline {
        Objects.requireNonNull(shoulder, "shoulder");
        Objects.requireNonNull(depth, "depth");
    }

    @Override
    public String name() {
        return "draw a boat neckline";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("shoulder left", shoulder), Amount.of("front depth", depth));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Garment redrawn = garment;
        List<Dimension> dimensions = new ArrayList<>();
        List<Piece> halves = Halves.of(garment, EdgeNames.CENTRE, TopEdges.NECKLINE, TopEdges.SHOULDER);
        Range.checkAll("shoulder", halves, shoulder, BoatNeckline::shoulders);
        Range.checkAll("boat neckline", halves, depth, this::depths);
        for (Piece piece : halves) {
            Name name = piece.name();
            Path left = left(piece);
            Point sideNeck = left.start();
            Point was = piece.path(TopEdges.NECKLINE).start();
            double level = name.equals(TopNames.FRONT)
                    ? sideNeck.y() + depth.mm()
                    : Math.max(was.y(), sideNeck.y() + BACK_SHARE * depth.mm());
            Point centre = Point.of(was.x(), level);
            redrawn = redrawn.withPiece(TopNeckline.boat(piece, centre, left));
            dimensions.add(new Dimension(name, sideNeck, left.end(), shoulder.text()));
        }
        Note rule = Note.rule("the side neck points move out until " + shoulder.text()
                + " of the shoulder are left, the front lies " + depth.text()
                + " below them: the whole neckline is now "
                + redrawn.finished(TopNames.NECKLINE_GIRTH).text());
        return FairLines.told(garment, new Reshaped(redrawn, List.of(rule), dimensions));
    }

    private Path left(Piece piece) {
        Path old = piece.path(TopEdges.SHOULDER);
        return old.sub(Math.max(0, old.length() - shoulder.mm()), old.length());
    }

    private static Range.Limits shoulders(Piece piece) {
        return new Range.Limits(
                "what a boat neckline leaves of it must be",
                Length.mm(ShoulderSeam.LEAST),
                Length.mm(piece.path(TopEdges.SHOULDER).length()));
    }

    private Range.Limits depths(Piece piece) {
        double half =
                left(piece).start().x() - piece.path(TopEdges.NECKLINE).start().x();
        return new Range.Limits(
                "on a neckline " + Length.mm(half).text() + " wide on each side its depth must be",
                Length.mm(TopNeckline.leastDepth(half) / BACK_SHARE),
                Length.mm(MOST_DEPTH * half));
    }
}
