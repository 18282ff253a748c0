package org.oaktag.adjust;

import java.util.List;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;

/**
 * Cuts a piece from another cloth. Its outline stays as it is: a cloth that stretches otherwise is for the maker to judge.
 *
 * @param piece the piece
 * @param cloth what it is cut from
 */
public record CutFrom(Name piece, Cloth cloth) implements Step {

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
        return Reshaped.of(garment.withPiece(garment.piece(piece).withCloth(cloth)));
    }
}
