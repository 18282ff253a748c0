package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * Slashes a piece along one or more lines and spreads it. The part on the fold, else the part with the middle of the
 * grainline, lies still; the other is moved.
 *
 * <pre>{@code
 * Garment flared = block.adjust(slashAndSpread(
 *         FRONT,
 *         Slash.of(LineAcross.straight(Place.share(HEM, 0.5), Place.share(SHOULDER, 0.5)),
 *                 Spread.hinged(End.END, degrees(4)))));
 * }</pre>
 *
 * <p>A slash of length L that is hinged by an angle t opens by the chord 2 L sin(t/2) and leaves the edge at its hinge
 * as long as it was; one that is spread parallel by d adds d to both edges and d L to the area. That is what a straight
 * closing adds; a smooth one adds what its curve is longer, which is reported. Several slashes are laid on the piece as
 * it is before the first; they must not cross.
 *
 * @param piece the piece
 * @param slashes the slashes, at least one
 * @param closing how the gaps in the edges are closed
 */
public record SlashAndSpread(Name piece, List<Slash> slashes, Closing closing) implements Step {

    private static final double SQUARE_MM = 100;

    /**
     * Copies the list.
     *
     * @throws PatternException if there is no slash
     */
    public SlashAndSpread {
        Objects.requireNonNull(piece, "piece");
        Objects.requireNonNull(closing, "closing");
        slashes = List.copyOf(slashes);
        if (slashes.isEmpty()) {
            throw PatternException.of("slash and spread", "must have at least one slash", "none", "");
        }
    }

    @Override
    public String name() {
        return "slash and spread the " + piece;
    }

    @Override
    public List<Amount> amounts() {
        List<Amount> amounts = new ArrayList<>();
        for (int i = 0; i < slashes.size(); i++) {
            amounts.add(Amount.of(
                    slashes.size() == 1 ? "slash" : "slash " + (i + 1),
                    slashes.get(i).spread().text()));
        }
        amounts.add(Amount.of("closed", closing.text()));
        return amounts;
    }

    /**
     * Slashes and spreads a piece by itself.
     *
     * @throws PatternException if a slash does not run inside the piece from outline to outline, two of them cross, the
     *     fold would be bent, or the piece would overlap itself
     */
    public SpreadPiece spread(Piece before) {
        List<LaidLine> lines = new ArrayList<>(
                slashes.stream().map(slash -> slash.line().on(before)).toList());
        Piece piece = before;
        for (int i = 0; i < lines.size(); i++) {
            Spreading spreading =
                    Spreading.of(piece, lines.get(i), slashes.get(i).spread(), closing);
            Piece next = spreading.piece();
            for (int later = i + 1; later < lines.size(); later++) {
                lines.set(later, carried(lines.get(later), spreading, next));
            }
            piece = next;
        }
        if (piece.outline().meetsItself()) {
            throw PatternException.of(
                    name(),
                    "must not make the piece overlap itself",
                    amounts().toString(),
                    "spread less, or along another line");
        }
        return SpreadPiece.of(before, piece);
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Piece before = garment.piece(piece);
        SpreadPiece spread = spread(before);
        List<Note> notes = new ArrayList<>();
        for (Slash slash : slashes) {
            notes.add(Note.rule(rule(slash, slash.line().on(before))));
        }
        notes.add(Note.rule(report(spread)));
        return new Reshaped(garment.withPiece(spread.piece()), notes, dimensions(before, spread.piece()));
    }

    private static LaidLine carried(LaidLine line, Spreading spreading, Piece next) {
        Path path = spreading.moved(line.path());
        return new LaidLine(path, onEdge(next, line.from(), path.start()), onEdge(next, line.to(), path.end()));
    }

    private static Place onEdge(Piece piece, Place place, Point point) {
        return Place.along(
                place.edge(),
                End.START,
                Length.mm(piece.path(place.edge()).nearest(point).distanceAlong()));
    }

    private static String rule(Slash slash, LaidLine line) {
        double length = line.path().chord();
        String text =
                "slashed " + Length.mm(length).text() + " from " + line.from().text() + " to "
                        + line.to().text() + " and spread: " + slash.spread().text();
        if (slash.spread() instanceof Spread.Parallel parallel) {
            return text + "; both edges gain " + parallel.by().text() + " straight across";
        }
        double angle = slash.spread() instanceof Spread.Hinged hinged
                ? hinged.angle().radians()
                : 2 * Math.asin(((Spread.Opened) slash.spread()).opening().mm() / (2 * length));
        return text + "; the open edge gains the chord 2 x " + Length.mm(length).text() + " x sin("
                + String.format(Locale.ROOT, "%.1f", Math.toDegrees(angle) / 2) + "°) = "
                + Length.mm(2 * length * Math.sin(angle / 2)).text() + " straight across, the hinge edge nothing";
    }

    private static String report(SpreadPiece spread) {
        StringBuilder text = new StringBuilder("added along the edges: ");
        String separator = "";
        for (SpreadPiece.Added added : spread.added()) {
            if (added.by().mm() != 0) {
                text.append(separator)
                        .append(added.edge())
                        .append(' ')
                        .append(added.by().text());
                separator = ", ";
            }
        }
        return text.append(separator.isEmpty() ? "nothing" : "")
                .append(String.format(Locale.ROOT, "; area %.1f cm²", spread.addedArea() / SQUARE_MM))
                .toString();
    }

    /** The gap of the first slash; those of others follow from it. */
    private List<Dimension> dimensions(Piece before, Piece after) {
        List<Dimension> dimensions = new ArrayList<>();
        for (Place end : List.of(
                slashes.get(0).line().on(before).from(),
                slashes.get(0).line().on(before).to())) {
            double at = end.distanceOn(before);
            double grown =
                    after.path(end.edge()).length() - before.path(end.edge()).length();
            if (grown > SpreadPiece.ROUNDING && slashes.size() == 1) {
                dimensions.add(new Dimension(
                        piece,
                        after.path(end.edge()).pointAt(at),
                        after.path(end.edge())
                                .pointAt(Math.min(
                                        at + grown, after.path(end.edge()).length())),
                        Length.mm(grown).text()));
            }
        }
        return dimensions;
    }
}
