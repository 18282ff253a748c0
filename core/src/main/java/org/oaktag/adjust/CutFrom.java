package org.oaktag.adjust;

import java.util.List;
import java.util.Objects;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;

/**
 * Cuts a piece from another cloth. Its outline stays as it is: a cloth that stretches otherwise is for the maker to
 * judge.
 *
 * <pre>{@code
 * Garment twoColoured = top.adjust(cutFrom(SLEEVE, contrast));
 * }</pre>
 *
 * @param piece the piece
 * @param cloth what it is cut from
 */
record CutFrom(Name piece, Cloth cloth) implements Step {
    /** Refuses null. */
    public CutFrom {
        Objects.requireNonNull(piece, "piece");
        Objects.requireNonNull(cloth, "cloth");
    }

    @Override
    public String name() {
        return "cut the " + piece + " from another cloth";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("cloth", cloth.description()));
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Piece old = garment.piece(piece);
        Note stays = Note.rule("the outline stays as it was drawn for a stretch of "
                + old.cloth().stretch().text() + "; this cloth stretches "
                + cloth.stretch().text());
        return Reshaped.of(garment.withPiece(old.withCloth(cloth)), stays);
    }
}
