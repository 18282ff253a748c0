package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dart;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;

/**
 * Moves a dart, or a share of it, to another place on the outline, by turning a part of the piece about its apex. What
 * remains of a shared dart stays where it is.
 *
 * <pre>{@code
 * block.adjust(openDart(FRONT, Name.of("bust"), Place.share(SIDE, 0.2), mm(25), mm(110)))
 *         .adjust(splitDart(FRONT, Name.of("bust"), Place.share(HEM, 0.5), 0.5, Name.of("waist")));
 * }</pre>
 *
 * <p>The angle taken out, the area of the cloth and the sewn length of every edge stay what they were; the dart that
 * opens on a longer way from edge to apex is wider. The part on the fold, else that with the middle of the grainline,
 * lies still.
 *
 * @param piece the piece
 * @param dart the dart
 * @param to where it opens
 * @param share how much of its angle is moved, above 0 and up to 1
 * @param opened the name of the dart that opens; where the whole dart is moved, its own or another
 */
public record MoveDart(Name piece, Name dart, Place to, double share, Name opened) implements PieceStep {

    /**
     * Checks the share.
     *
     * @throws PatternException if it is not above 0 and up to 1, or two darts would have one name
     */
    public MoveDart {
        Objects.requireNonNull(piece, "piece");
        Objects.requireNonNull(dart, "dart");
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(opened, "opened");
        if (!(share > 0 && share <= 1)) {
            throw PatternException.of("share of dart '" + dart + "'", "must be above 0 and at most 1", "" + share, "");
        }
        if (share < 1 && dart.equals(opened)) {
            throw PatternException.of("dart that opens", "must have a name of its own", "'" + opened + "' twice", "");
        }
    }

    @Override
    public String name() {
        return (share == 1 ? "move the " : "split the ") + dart + " of the " + piece;
    }

    @Override
    public List<Amount> amounts() {
        List<Amount> amounts = new ArrayList<>();
        amounts.add(Amount.of("to", to.text()));
        if (share < 1) {
            amounts.add(Amount.of("share", String.format(Locale.ROOT, "%.1f %%", share * 100)));
        }
        return amounts;
    }

    /**
     * Moves the dart of a piece by itself.
     *
     * @throws PatternException if the piece has no such dart, or the straight line from the place to the apex does not
     *     run inside the piece
     */
    @Override
    public Piece on(Piece before) {
        return rotation(before).piece();
    }

    DartRotation rotation(Piece before) {
        return DartRotation.of(before, Dart.in(before, dart), to, share, opened);
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Piece before = garment.piece(piece);
        DartRotation rotation = rotation(before);
        Piece after = rotation.piece();
        EdgeChanges changes = rotation.changes();
        EdgeRef closed = EdgeRef.of(piece, Dart.legA(dart));
        List<Seam> seams = new ArrayList<>();
        for (Seam seam : garment.seams()) {
            if (share < 1 || !seam.has(closed)) {
                seams.add(changes.on(seam));
            }
        }
        seams.add(DartSeam.of(piece, opened));
        Garment moved = garment.with(
                garment.pieces().stream()
                        .map(each -> each.name().equals(piece) ? after : each)
                        .toList(),
                seams,
                changes.on(garment.measures()));
        Dart was = Dart.in(before, dart);
        Dart now = Dart.in(after, opened);
        Note rule = Note.rule("turned about the apex by " + now.angle().text() + " of its "
                + was.angle().text()
                + ": the mouth is " + now.width().text() + " at a leg of "
                + now.leg().text() + ", where it was "
                + was.width().text() + " at " + was.leg().text());
        return new Reshaped(
                moved,
                List.of(rule),
                List.of(new Dimension(
                        piece, now.mouthA(), now.mouthB(), now.width().text())));
    }
}
