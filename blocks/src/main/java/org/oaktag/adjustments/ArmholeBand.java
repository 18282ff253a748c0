package org.oaktag.adjustments;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.oaktag.PatternException;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.BandNames;
import org.oaktag.blocks.TopChecks;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Aspect;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamRule;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * Sets a folded band of ribbed knit round an armhole that has no sleeve, closed at the underarm point and stretched on
 * as {@linkplain RibNeckband a neckband} is. A band that is there already is replaced. Immutable.
 *
 * @param depth how deep the finished band is, 10 to 250 mm
 * @param rib what it is cut from
 */
record ArmholeBand(Length depth, Cloth rib) implements Step {

    private static final Set<EdgeRef> ARMHOLES =
            Set.of(EdgeRef.of(TopNames.FRONT, TopEdges.ARMHOLE), EdgeRef.of(TopNames.BACK, TopEdges.ARMHOLE));
    private static final String REFIT = "fit the armhole bands again";

    /**
     * Checks the depth.
     *
     * @throws PatternException if it is out of its range
     */
    ArmholeBand {
        Objects.requireNonNull(rib, "rib");
        FoldedBand.checkDepth("armhole band", depth);
    }

    @Override
    public String name() {
        return "band the armholes";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("depth", depth), Amount.of("cloth", rib.description()));
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if something else is sewn to the armholes, such as a sleeve
     */
    @Override
    public Reshaped reshape(Garment garment) {
        for (Seam seam : garment.seams()) {
            if (!seam.name().equals(BandNames.ARMHOLE_BAND_SEAM)
                    && seam.edges().stream().anyMatch(ARMHOLES::contains)) {
                throw PatternException.of(
                        "armhole band",
                        "needs an armhole to which nothing is sewn",
                        "seam '" + seam.name() + "'",
                        "leave out the sleeves first");
            }
        }
        double front = length(TopPieces.body(garment, TopNames.FRONT, TopEdges.SHOULDER, TopEdges.ARMHOLE));
        double back = length(TopPieces.body(garment, TopNames.BACK, TopEdges.SHOULDER, TopEdges.ARMHOLE));
        double share = RibShare.of(rib);
        double length = share * (front + back);
        Piece band = FoldedBand.draw(
                        BandNames.ARMHOLE_BAND, length, depth.mm(), BandNames.SIDE_BACK, BandNames.SIDE_FRONT, rib)
                .withCut(Cut.pair())
                .withEdgeAt(BandNames.SIDE_FRONT, Aspect.FRONT)
                .withEdgeAt(BandNames.SIDE_BACK, Aspect.BACK)
                .withNotch(Notch.single(TopNames.SHOULDER_NOTCH, EdgeNames.TOP, End.START, share * front));
        Garment banded = Assembly.of(garment)
                .put(band)
                .sew(Seam.of(
                        BandNames.ARMHOLE_BAND_SEAM,
                        SeamSide.against(TopNames.FRONT, TopEdges.ARMHOLE)
                                .then(SeamSide.along(TopNames.BACK, TopEdges.ARMHOLE)),
                        SeamSide.along(BandNames.ARMHOLE_BAND, EdgeNames.TOP),
                        SeamRule.stretchedOn(share),
                        REFIT))
                .sew(Seam.flat(
                        BandNames.ARMHOLE_BAND_CLOSING_SEAM,
                        SeamSide.along(BandNames.ARMHOLE_BAND, BandNames.SIDE_BACK),
                        SeamSide.against(BandNames.ARMHOLE_BAND, BandNames.SIDE_FRONT),
                        REFIT))
                .sew(FoldedBand.foldSeam(BandNames.ARMHOLE_BAND_FOLD_SEAM, BandNames.ARMHOLE_BAND, REFIT))
                .measure(FinishedMeasure.of(
                        BandNames.ARMHOLE_BAND_GIRTH, Quantity.lengthOf(BandNames.ARMHOLE_BAND, EdgeNames.TOP)))
                .check(TopChecks.upperArm(BandNames.ARMHOLE_BAND_GIRTH))
                .done();
        double x = length / 2;
        return new Reshaped(
                banded,
                List.of(RibShare.rule("armhole band", "armhole", front + back, rib)),
                List.of(new Dimension(
                        BandNames.ARMHOLE_BAND, Point.of(x, 0), Point.of(x, depth.mm()), "depth " + depth.text())));
    }

    private static double length(Piece piece) {
        return piece.path(TopEdges.ARMHOLE).length();
    }
}
