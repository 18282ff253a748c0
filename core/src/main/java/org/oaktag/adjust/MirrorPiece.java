package org.oaktag.adjust;

import java.util.List;
import java.util.Objects;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.measure.Length;

/**
 * Turns a piece over, so that its other hand is drawn. Its edges keep their names and run the other way; seams and
 * finished measures follow.
 *
 * <pre>{@code
 * Garment turned = block.adjust(mirrorPiece(SLEEVE));
 * }</pre>
 *
 * @param piece the piece
 */
record MirrorPiece(Name piece) implements Step {
    /** Refuses null. */
    public MirrorPiece {
        Objects.requireNonNull(piece, "piece");
    }

    @Override
    public String name() {
        return "mirror the " + piece;
    }

    @Override
    public List<Amount> amounts() {
        return List.of();
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Piece mirrored = garment.piece(piece).mirrored();
        EdgeChanges changes = new EdgeChanges();
        changes.turned(piece);
        return Reshaped.of(
                changes.on(garment, List.of(mirrored)),
                Note.rule("turned over, left to right: its outline, "
                        + Length.mm(mirrored.outline().path().length()).text()
                        + " round, runs the other way, and its edges keep their names and lengths"));
    }
}
