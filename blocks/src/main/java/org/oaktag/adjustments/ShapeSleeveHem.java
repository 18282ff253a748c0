package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.SleeveEnd;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.measure.Length;

/**
 * Gives the hem of the sleeve another length: narrower than the sleeve it tapers, wider it flares into a bell. The cap
 * stays as it is, and so does the sleeve's length over its middle; both underarm edges stay of one length.
 *
 * <pre>{@code
 * Garment bell = block.adjust(bellSleeve(cm(42)));
 * Garment tapered = block.adjust(taperSleeve(cm(24)));
 * }</pre>
 *
 * @param hem how long the hem shall be
 * @param flareFrom how far above the hem a bell begins to flare, or empty for a taper or a flare from the underarm
 *     points
 */
public record ShapeSleeveHem(Length hem, Optional<Length> flareFrom) implements Step {

    private static final double LEAST = 50;
    private static final double MOST = 2000;

    /**
     * Checks the length of the hem.
     *
     * @throws PatternException if it is not 50 to 2000 mm
     */
    public ShapeSleeveHem {
        Objects.requireNonNull(hem, "hem");
        Objects.requireNonNull(flareFrom, "flareFrom");
        Range.check("hem of the sleeve", "its length must be", hem, Length.mm(LEAST), Length.mm(MOST));
    }

    /** Returns the step that leaves the sleeve as it is down to this height above the hem, and flares it from there. */
    public ShapeSleeveHem from(Length aboveHem) {
        return new ShapeSleeveHem(hem, Optional.of(aboveHem));
    }

    @Override
    public String name() {
        return "shape the sleeve hem";
    }

    @Override
    public List<Amount> amounts() {
        List<Amount> amounts = new ArrayList<>(List.of(Amount.of("hem", hem)));
        flareFrom.ifPresent(above -> amounts.add(Amount.of("flared from above the hem", above)));
        return amounts;
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if the sleeve is split already, or a flare would begin off the underarm edges or be no
     *     wider than the sleeve there
     */
    @Override
    public Reshaped reshape(Garment garment) {
        Piece sleeve = TopPieces.sleeveToHem(garment);
        SleeveEnd end = SleeveEnd.of(sleeve);
        Piece shaped = flareFrom.isPresent() ? end.flaredTo(hem, flareFrom) : end.withHem(hem);
        Path edge = shaped.path(EdgeNames.HEM);
        Note rule = Note.rule("the hem is "
                + shaped.edge(EdgeNames.HEM).length().text() + " round (it was "
                + sleeve.edge(EdgeNames.HEM).length().text() + ") below a sleeve "
                + end.width().text() + " wide; the hem is square to the underarm edges");
        return new Reshaped(
                garment.withPiece(shaped),
                List.of(rule),
                List.of(new Dimension(
                        TopNames.SLEEVE,
                        edge.start(),
                        edge.end(),
                        Length.mm(edge.length()).text())));
    }
}
