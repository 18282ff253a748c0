package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.oaktag.PatternException;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Mark;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Crossing;
import org.oaktag.geometry.Outline;

/**
 * What every step leaves behind, whatever it did: outlines that can be cut, grainlines that lie inside them, and no
 * mark beside the piece.
 */
final class SoundPieces {

    private SoundPieces() {}

    /**
     * Checks the pieces whose outlines a step has drawn anew, and keeps inside them what is marked on them.
     *
     * @throws PatternException if an outline crosses itself; the message names the piece and the step
     */
    static Reshaped of(String step, Garment before, Reshaped reshaped) {
        Garment garment = reshaped.garment();
        List<Note> notes = new ArrayList<>(reshaped.notes());
        List<Piece> pieces = garment.pieces();
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            @Nullable Piece old = Comparison.twin(before, i, piece);
            if (!Comparison.hasEdgesOf(old, piece)) {
                Outline outline = piece.outline();
                requireSound(step, piece, outline);
                Piece sound = withMarksInside(piece, outline, notes);
                if (!PartGrain.isWithin(piece.grainline(), outline)) {
                    sound = sound.withGrainline(PartGrain.of(piece.grainline(), outline));
                    if (old != null) {
                        notes.add(Note.done(
                                "the grainline of the " + piece.name() + " is drawn where it lies inside the piece"));
                    }
                }
                if (!sound.equals(piece)) {
                    garment = garment.withPiece(sound);
                }
            }
        }
        return new Reshaped(garment, notes, reshaped.dimensions());
    }

    private static void requireSound(String step, Piece piece, Outline outline) {
        if (crossesItself(outline)) {
            throw PatternException.of(
                    "outline of the " + piece.name(),
                    "must not cross itself after a step",
                    "one that does after '" + step + "'",
                    "take a smaller amount, or take the step before those that made the piece so narrow there");
        }
    }

    /** Two darts that share an apex touch there, which can be cut. */
    private static boolean crossesItself(Outline outline) {
        return outline.meetsItself()
                && outline.selfCrossings().stream().anyMatch(each -> each.kind() != Crossing.Kind.TOUCH);
    }

    private static Piece withMarksInside(Piece piece, Outline outline, List<Note> notes) {
        if (piece.marks().isEmpty()) {
            return piece;
        }
        List<Mark> beside = piece.marks().stream()
                .filter(mark -> !outline.contains(mark.point()))
                .toList();
        if (beside.isEmpty()) {
            return piece;
        }
        beside.forEach(mark -> notes.add(Note.caution("the mark '" + mark.name() + "' would lie beside the "
                + piece.name() + " and is left out: take the step anew that set it")));
        return piece.withMarks(
                piece.marks().stream().filter(mark -> !beside.contains(mark)).toList());
    }
}
