package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.FinishNames;
import org.oaktag.blocks.TopChecks;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasure;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Aspect;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.Garment;
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
 * Sets a folded band of ribbed knit on the neckline, that of a raglan too, cut on the fold at centre front and closed
 * at centre back. A neckband that is there already is replaced. Immutable.
 *
 * <pre>{@code
 * Garment banded = top.adjust(ribNeckband(mm(20), rib));
 * }</pre>
 *
 * <p>Bands of rib are cut at 75 to 90 % of the opening, the less the further the cloth stretches (common practice). The
 * line between the two is our own: 90 % for a rib that stretches by 25 % or less, 75 % from 100 % on, in proportion
 * between them.
 *
 * @param depth how deep the finished band is, 10 to 250 mm
 * @param rib what it is cut from
 */
record RibNeckband(Length depth, Cloth rib) implements Step {

    private static final String REFIT = "fit the neckband again";

    /**
     * Checks the depth.
     *
     * @throws PatternException if it is out of its range
     */
    public RibNeckband {
        Objects.requireNonNull(rib, "rib");
        FoldedBand.checkDepth("neckband", depth);
    }

    @Override
    public String name() {
        return "fit a rib neckband";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("depth", depth), Amount.of("cloth", rib.description()));
    }

    /** Returns the length of the band as a share of the neckline. */
    public double share() {
        return RibShare.of(rib);
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if a hood is on the neckline
     */
    @Override
    public Reshaped reshape(Garment garment) {
        if (garment.hasPiece(TopNames.HOOD_SIDE)) {
            throw PatternException.of(
                    "neckband", "needs a free neckline", "a hood on it", "leave out the hood or the neckband");
        }
        NeckOpening opening = NeckOpening.of(garment);
        double half = opening.half() * share();
        Piece band = FoldedBand.draw(
                        FinishNames.NECKBAND, half, depth.mm(), FinishNames.CENTRE_BACK, EdgeNames.CENTRE, rib)
                .withCut(Cut.onFold(EdgeNames.CENTRE))
                .withEdgeAt(FinishNames.CENTRE_BACK, Aspect.BACK)
                .withNotches(opening.joints().stream()
                        .map(joint -> new Notch(
                                joint.notch(), EdgeNames.TOP, End.START, joint.fromFront() * share(), joint.cuts()))
                        .toList());
        Garment banded = Assembly.of(garment)
                .put(band)
                .sew(Seam.of(
                        FinishNames.NECKBAND_SEAM,
                        opening.side(),
                        SeamSide.along(FinishNames.NECKBAND, EdgeNames.TOP),
                        SeamRule.stretchedOn(share()),
                        REFIT))
                .sew(Seam.flat(
                        FinishNames.NECKBAND_CLOSING_SEAM,
                        SeamSide.along(FinishNames.NECKBAND, FinishNames.CENTRE_BACK),
                        SeamSide.along(FinishNames.NECKBAND, FinishNames.CENTRE_BACK),
                        REFIT))
                .sew(FoldedBand.foldSeam(FinishNames.NECKBAND_FOLD_SEAM, FinishNames.NECKBAND, REFIT))
                .measure(FinishedMeasure.of(
                        FinishNames.NECKBAND_GIRTH,
                        FinishedMeasure.times(2, Quantity.lengthOf(FinishNames.NECKBAND, EdgeNames.TOP))))
                .check(TopChecks.neck(FinishNames.NECKBAND_GIRTH, TopNames.NECKLINE_GIRTH))
                .done();
        return new Reshaped(banded, notes(banded, 2 * opening.half()), List.of(dimension(half)));
    }

    private List<Note> notes(Garment banded, double neckline) {
        List<Note> notes = new ArrayList<>();
        notes.add(RibShare.rule("neckband", "neckline", neckline, rib));
        if (!banded.wearer().measures().containsKey(BodyMeasure.HEAD_GIRTH.asName())) {
            notes.add(Note.caution("the head was not measured: try whether it goes through the neckband"));
        }
        return notes;
    }

    private Dimension dimension(double half) {
        double x = half / 2;
        return new Dimension(FinishNames.NECKBAND, Point.of(x, 0), Point.of(x, depth.mm()), "depth " + depth.text());
    }
}
