package org.oaktag.adjust;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.garment.Amount;
import org.oaktag.garment.DartInTheWay;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * Moves a point of the outline, a corner or a place on an edge. What lies within reach along the edges on either side
 * follows, less and less, and keeps its direction at the point and where the reach ends; what lies further stays as it
 * is.
 *
 * <pre>{@code
 * Garment scooped = block.adjust(movePoint(FRONT, Place.corner(HEM, End.END), mm(0), mm(15), mm(120)));
 * }</pre>
 *
 * @param piece the piece
 * @param place the point
 * @param right how far it moves to the right on paper, negative for the left
 * @param down how far it moves down on paper, negative for up
 * @param reach how far along the edge, on either side, the outline follows
 */
record MovePoint(Name piece, Place place, Length right, Length down, Length reach) implements PieceStep {

    private static final double AT_CORNER = 1e-6;

    /** Refuses null. */
    public MovePoint {
        Objects.requireNonNull(piece, "piece");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(right, "right");
        Objects.requireNonNull(down, "down");
        Objects.requireNonNull(reach, "reach");
    }

    @Override
    public String name() {
        return "move a point of the " + piece;
    }

    @Override
    public List<Amount> amounts() {
        return List.of(
                Amount.of("at", place.text()),
                Amount.of("right", right),
                Amount.of("down", down),
                Amount.of("reach", reach));
    }

    /**
     * Moves the point of a piece by itself.
     *
     * @throws PatternException if the reach is not above zero and inside the edges on either side, an edge on the fold
     *     would be bent, or the outline would cross itself
     */
    @Override
    public Piece on(Piece before) {
        Vector by = Vector.of(right.mm(), down.mm());
        Path path = before.path(place.edge());
        double at = place.distanceOn(before);
        Map<Name, Path> redrawn = new LinkedHashMap<>();
        if (at <= AT_CORNER) {
            Name other = before.before(place.edge()).name();
            requireReach(Math.min(path.length(), before.path(other).length()));
            redrawn.put(other, atEnd(before.path(other), by));
            redrawn.put(place.edge(), atStart(path, by));
        } else if (at >= path.length() - AT_CORNER) {
            Name other = before.after(place.edge()).name();
            requireReach(Math.min(path.length(), before.path(other).length()));
            redrawn.put(place.edge(), atEnd(path, by));
            redrawn.put(other, atStart(before.path(other), by));
        } else {
            requireReach(Math.min(at, path.length() - at));
            Path.Split split = path.splitAt(at);
            redrawn.put(place.edge(), atEnd(split.before(), by).then(atStart(split.after(), by)));
        }
        Piece after = Redrawn.of(before, redrawn);
        StraightFold.require(after);
        if (after.outline().meetsItself()) {
            throw PatternException.of(
                    name(),
                    "must not make the outline cross itself",
                    right.text() + " right, " + down.text() + " down",
                    "move it less, or take a longer reach");
        }
        return after;
    }

    private void requireReach(double most) {
        if (!(reach.mm() > 0) || reach.mm() > most + AT_CORNER) {
            throw PatternException.of(
                    name(),
                    "must reach above 0 mm and at most "
                            + Length.mm(most).roundedDown().text() + " along the edge on either side",
                    reach.text(),
                    "");
        }
    }

    private Path atEnd(Path path, Vector by) {
        return Displaced.end(path, reach.mm(), Displaced.Profile.CARRY, by);
    }

    private Path atStart(Path path, Vector by) {
        return atEnd(path.reversed(), by).reversed();
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Piece before = garment.piece(piece);
        DartInTheWay.requireWhole(before, place.edge());
        Point from = place.on(before);
        Point to = from.plus(Vector.of(right.mm(), down.mm()));
        Piece after = on(before);
        Length by = Length.mm(from.distanceTo(to));
        return new Reshaped(
                garment.withPiece(after),
                List.of(Note.rule("the point moves by " + by.text() + "; the outline follows within " + reach.text()
                        + ", by 3u² - 2u³ of that at a share u of the reach")),
                List.of(new Dimension(piece, from, to, by.text())));
    }
}
