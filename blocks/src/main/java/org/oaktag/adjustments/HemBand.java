package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.blocks.BandNames;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
import org.oaktag.draft.ClothStep;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeFinish;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamRule;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * Bands the hem: one folded band for the front and one for the back, each cut on the fold at the centre and drawn
 * folded open, so twice as high as it is deep.
 *
 * <pre>{@code
 * Garment banded = top.adjust(hemBand(cm(6), cm(3)).cutFrom(contrast));
 * }</pre>
 *
 * <p>Bands that do not lap are joined at the side seams. One that laps is longer than its piece by the lap, half of it
 * at either side (common practice), and its ends are closed. A straight band is cut for a curved hem too, as long as the hem along the seam line. Bands that are there
 * already are replaced. Immutable.
 *
 * @param depth how deep the finished band is, 10 to 250 mm
 * @param lap by how much front and back band lap over each other at each side seam, 0 to 150 mm
 * @param cloth what the bands are cut from, or empty for the cloth of the front
 */
public record HemBand(Length depth, Length lap, Optional<Cloth> cloth) implements ClothStep {

    private static final String REFIT = "fit the hem band again";
    private static final Length MOST_LAP = Length.mm(150);

    /**
     * Checks depth and lap.
     *
     * @throws PatternException if one is out of its range
     */
    public HemBand {
        Objects.requireNonNull(cloth, "cloth");
        FoldedBand.checkDepth("hem band", depth);
        Range.check("lap of the hem band", "must be", lap, Length.ZERO, MOST_LAP);
    }

    @Override
    public HemBand cutFrom(Cloth other) {
        return new HemBand(depth, lap, Optional.of(other));
    }

    @Override
    public String name() {
        return "band the hem";
    }

    @Override
    public List<Amount> amounts() {
        List<Amount> amounts = new ArrayList<>(List.of(Amount.of("depth", depth), Amount.of("lap", lap)));
        cloth.ifPresent(given -> amounts.add(Amount.of("cloth", given.description())));
        return amounts;
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if the front or the back has no hem, or the lap is longer than a band
     */
    @Override
    public Reshaped reshape(Garment garment) {
        Cloth from = cloth.orElse(garment.piece(TopNames.FRONT).cloth());
        Piece front = band(garment, TopNames.FRONT, TopNames.HEM_BAND_FRONT, from);
        Piece back = band(garment, TopNames.BACK, TopNames.HEM_BAND_BACK, from);
        Garment banded = atTheSides(Assembly.of(garment), front.name(), back.name())
                .put(front)
                .put(back)
                .sew(hemSeam(BandNames.FRONT_HEM_SEAM, TopNames.FRONT, front.name()))
                .sew(hemSeam(BandNames.BACK_HEM_SEAM, TopNames.BACK, back.name()))
                .sew(FoldedBand.foldSeam(BandNames.FRONT_FOLD_SEAM, front.name(), REFIT))
                .sew(FoldedBand.foldSeam(BandNames.BACK_FOLD_SEAM, back.name(), REFIT))
                .lengthen(TopNames.BACK_LENGTH, 0.5, Quantity.lengthOf(back.name(), EdgeNames.CENTRE))
                .done();
        return new Reshaped(
                banded,
                List.of(rule(garment, front, TopNames.FRONT), rule(garment, back, TopNames.BACK)),
                List.of(dimension(front), dimension(back)));
    }

    private Assembly atTheSides(Assembly assembly, Name front, Name back) {
        return lap.mm() > 0
                ? assembly.undo(BandNames.SIDE_BAND_SEAM)
                : assembly.sew(Seam.flat(
                        BandNames.SIDE_BAND_SEAM,
                        SeamSide.along(front, BandNames.SIDE),
                        SeamSide.along(back, BandNames.SIDE),
                        REFIT));
    }

    private Piece band(Garment garment, Name body, Name name, Cloth from) {
        Length hem =
                TopPieces.body(garment, body, EdgeNames.HEM).edge(EdgeNames.HEM).length();
        if (lap.compareTo(hem) > 0) {
            throw PatternException.of(
                    "lap of the hem band",
                    "must be at most half the hem of the " + body + ", "
                            + hem.roundedDown().text(),
                    lap.text(),
                    "");
        }
        Piece band = FoldedBand.draw(name, hem.mm() + lap.mm() / 2, depth.mm(), BandNames.SIDE, EdgeNames.CENTRE, from)
                .withCut(Cut.onFold(EdgeNames.CENTRE))
                .withAspectOf(garment.piece(body));
        if (lap.mm() == 0) {
            return band;
        }
        Name side = BandNames.SIDE_SEAM_NOTCH;
        return band.withFinish(BandNames.SIDE, EdgeFinish.CLOSED)
                .withNotch(
                        body.equals(TopNames.BACK)
                                ? Notch.paired(side, EdgeNames.TOP, End.START, hem.mm())
                                : Notch.single(side, EdgeNames.TOP, End.START, hem.mm()));
    }

    private Seam hemSeam(Name seam, Name body, Name band) {
        return Seam.of(
                seam,
                SeamSide.along(body, EdgeNames.HEM),
                SeamSide.against(band, EdgeNames.TOP),
                lap.mm() > 0 ? SeamRule.lapped(lap.times(0.5)) : SeamRule.flat(),
                REFIT);
    }

    private Note rule(Garment garment, Piece band, Name body) {
        Length hem = garment.piece(body).edge(EdgeNames.HEM).length();
        return Note.rule("half the " + band.name() + " = half the hem of the " + body + " " + hem.text()
                + " + half the lap " + lap.times(0.5).text() + " = "
                + band.edge(EdgeNames.TOP).length().text());
    }

    private Dimension dimension(Piece band) {
        double x = band.edge(EdgeNames.TOP).length().mm() / 2;
        return new Dimension(band.name(), Point.of(x, 0), Point.of(x, depth.mm()), "depth " + depth.text());
    }
}
