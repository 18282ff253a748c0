package org.oaktag.adjustments;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.BandNames;
import org.oaktag.blocks.SleeveEnd;
import org.oaktag.blocks.TopChecks;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
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
 * Gathers the hem of the sleeve, or of its lower part, onto a folded cuff of ribbed knit. A cuff that is there already
 * is replaced. The sleeve gives way: it is cut shorter by what the cuff adds, so that the finished sleeve reaches as
 * far as before, unless the cuff is {@link #addedBelow()}. A sleeve in one piece keeps the length of its hem, and its
 * underarm edges are redrawn; a lower part, which is too short for that, is cut off as wide as it is there. Immutable.
 *
 * <pre>{@code
 * Garment cuffed = top.adjust(ribCuff(cm(7), rib));
 * cuffed.piece(CUFF).cloth().equals(rib);   // = true
 * }</pre>
 *
 * <p>Notches at the quarters of both edges spread the gathers evenly.
 *
 * @param depth how deep the finished cuff is, 10 to 250 mm
 * @param rib what it is cut from
 * @param girth how long it is round the wrist, or empty for the wrist girth and 15 mm of ease (common practice)
 * @param below whether it is added below the sleeve, which then grows by it, instead of taking the place of its end
 */
public record RibCuff(Length depth, Cloth rib, Optional<Length> girth, boolean below) implements Step {

    private static final String REFIT = "fit the cuff again";
    private static final Length EASE = Length.mm(15);
    private static final double MOST_GATHERED = 5;
    private static final double ROUNDING = 1e-9;
    private static final List<Name> QUARTERS =
            List.of(Name.of("cuff quarter 1"), Name.of("cuff half"), Name.of("cuff quarter 3"));

    /**
     * Checks the depth and the girth.
     *
     * @throws PatternException if the depth is out of its range or the girth is not more than 0
     */
    public RibCuff {
        Objects.requireNonNull(rib, "rib");
        FoldedBand.checkDepth("cuff", depth);
        girth.filter(given -> given.mm() <= 0).ifPresent(given -> {
            throw PatternException.of("girth of the cuff", "must be more than 0 mm", given.text(), "");
        });
    }

    /**
     * Returns the step with a cuff of this girth.
     *
     * @throws PatternException if the girth is not more than 0
     */
    public RibCuff withGirth(Length given) {
        return new RibCuff(depth, rib, Optional.of(given), below);
    }

    /** Returns the step that leaves the sleeve as it is and adds the cuff below it, so that the whole is longer. */
    public RibCuff addedBelow() {
        return new RibCuff(depth, rib, girth, true);
    }

    @Override
    public String name() {
        return "fit a rib cuff";
    }

    @Override
    public List<Amount> amounts() {
        List<Amount> amounts = new ArrayList<>(List.of(Amount.of("depth", depth)));
        girth.ifPresent(given -> amounts.add(Amount.of("girth", given)));
        amounts.add(Amount.of("cloth", rib.description()));
        if (below) {
            amounts.add(Amount.of("the sleeve", "left as it is"));
        }
        return amounts;
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if the sleeve's hem is shorter than the cuff or more than five times as long, the girth
     *     is not given and the wrist was not measured, or the sleeve or its lower part is not deep enough to give way
     */
    @Override
    public Reshaped reshape(Garment garment) {
        Name sleeveName = sleeveName(garment);
        Length givesWay = givesWay(garment, sleeveName);
        SleeveEnd end = SleeveEnd.of(
                TopPieces.sleeve(garment, sleeveName, TopEdges.UNDERARM_FRONT, EdgeNames.HEM, TopEdges.UNDERARM_BACK));
        Piece sleeve = end.part().hasEdge(EdgeNames.TOP) ? end.cutOff(givesWay) : end.shortenedBy(givesWay);
        Length hem = sleeve.edge(EdgeNames.HEM).length();
        Length around = around(garment);
        double ratio = ratio(hem, around);
        Piece cuff = cuff(around);
        Quantity side = Quantity.lengthOf(TopNames.CUFF, BandNames.SIDE_FRONT);
        Garment cuffed = Assembly.of(garment)
                .put(notched(sleeve, EdgeNames.HEM, End.END))
                .put(cuff)
                .sew(cuffSeam(sleeveName, ratio))
                .sew(sideSeam())
                .sew(FoldedBand.foldSeam(BandNames.CUFF_FOLD_SEAM, TopNames.CUFF, REFIT))
                .measure(FinishedMeasure.of(TopNames.CUFF_GIRTH, Quantity.lengthOf(TopNames.CUFF, EdgeNames.TOP))
                        .against(BodyMeasure.WRIST_GIRTH.asName()))
                .lengthen(TopNames.SLEEVE_LENGTH, 0.5, side)
                .lengthen(TopNames.NECK_TO_WRIST, 0.5, side)
                .check(TopChecks.hand(TopNames.CUFF_GIRTH, TopNames.SLEEVE_HEM))
                .done();
        return new Reshaped(cuffed, notes(cuffed, hem, around, ratio, givesWay), List.of(dimension(around)));
    }

    private static Name sleeveName(Garment garment) {
        return garment.hasPiece(TopNames.SLEEVE_LOWER) ? TopNames.SLEEVE_LOWER : TopNames.SLEEVE;
    }

    /** Returns how long the cuff is round the wrist. */
    Length around(Garment garment) {
        return girth.orElseGet(
                () -> garment.wearer().measure(BodyMeasure.WRIST_GIRTH.asName()).plus(EASE));
    }

    /** Returns by how much the sleeve is cut shorter: by what this cuff is deeper than the one that it replaces. */
    private Length givesWay(Garment garment, Name sleeveName) {
        if (below) {
            return Length.ZERO;
        }
        Length before = garment.findPiece(TopNames.CUFF)
                .map(cuff -> cuff.edge(BandNames.SIDE_FRONT).length().times(0.5))
                .orElse(Length.ZERO);
        Length most = SleeveEnd.of(TopPieces.sleeve(
                        garment, sleeveName, TopEdges.UNDERARM_FRONT, EdgeNames.HEM, TopEdges.UNDERARM_BACK))
                .mostShortening()
                .plus(before);
        if (depth.compareTo(most) > 0) {
            throw PatternException.of(
                    "depth of the cuff",
                    "the " + sleeveName + " is cut shorter by it and can give way by "
                            + most.roundedDown().text() + " at the most",
                    depth.text(),
                    "take a shallower cuff, lengthen the sleeve first, or add the cuff below it");
        }
        return depth.minus(before);
    }

    private static double ratio(Length hem, Length around) {
        double ratio = hem.mm() / around.mm();
        if (!(ratio >= 1 && ratio <= MOST_GATHERED)) {
            throw PatternException.of(
                    "cuff",
                    "must be 1/5 of the sleeve's hem to the whole of it, "
                            + hem.times(1 / MOST_GATHERED).roundedUp().text() + " to "
                            + hem.roundedDown().text(),
                    around.text(),
                    ratio < 1 ? "take a wider sleeve or a narrower cuff" : "take a narrower sleeve or a wider cuff");
        }
        return ratio;
    }

    private Piece cuff(Length around) {
        Piece band = FoldedBand.draw(
                        TopNames.CUFF, around.mm(), depth.mm(), BandNames.SIDE_FRONT, BandNames.SIDE_BACK, rib)
                .withCut(Cut.pair());
        return notched(
                band.withEdgeAt(BandNames.SIDE_FRONT, Aspect.FRONT).withEdgeAt(BandNames.SIDE_BACK, Aspect.BACK),
                EdgeNames.TOP,
                End.START);
    }

    /** Sets notches at the quarters of an edge, counted from the end that lies at the back of the sleeve. */
    private static Piece notched(Piece piece, Name edge, End back) {
        double quarter = piece.path(edge).length() / 4;
        Piece result = piece;
        for (int i = 0; i < QUARTERS.size(); i++) {
            result = result.withNotch(Notch.single(QUARTERS.get(i), edge, back, (i + 1) * quarter));
        }
        return result;
    }

    private static Seam cuffSeam(Name sleeve, double ratio) {
        return Seam.of(
                BandNames.CUFF_SEAM,
                SeamSide.along(TopNames.CUFF, EdgeNames.TOP),
                SeamSide.against(sleeve, EdgeNames.HEM),
                SeamRule.gathered(ratio),
                REFIT);
    }

    private static Seam sideSeam() {
        return Seam.flat(
                BandNames.CUFF_SIDE_SEAM,
                SeamSide.along(TopNames.CUFF, BandNames.SIDE_FRONT),
                SeamSide.against(TopNames.CUFF, BandNames.SIDE_BACK),
                REFIT);
    }

    private List<Note> notes(Garment cuffed, Length hem, Length around, double ratio, Length givesWay) {
        List<Note> notes = new ArrayList<>();
        notes.add(Note.rule(
                girth.isPresent()
                        ? "cuff = " + around.text() + ", as given"
                        : "cuff = wrist girth " + around.minus(EASE).text() + " + ease " + EASE.text() + " = "
                                + around.text() + " (common practice)"));
        notes.add(Note.rule("the sleeve's hem of " + hem.text() + " is gathered onto the cuff, "
                + BigDecimal.valueOf(ratio).setScale(2, RoundingMode.HALF_UP).toPlainString() + " to 1"));
        String reach = "side neck to wrist "
                + (below ? "is now " : "stays ")
                + cuffed.finished(TopNames.NECK_TO_WRIST).text();
        notes.add(Note.rule(
                below
                        ? "the cuff is added below the sleeve: " + reach
                        : "the sleeve is cut " + (givesWay.mm() < 0 ? "longer by " : "shorter by ")
                                + Length.mm(Math.abs(givesWay.mm())).text() + " for the cuff's " + depth.text() + ": "
                                + reach));
        Cloth.Weight weight = cuffed.piece(sleeveName(cuffed)).cloth().gathersAs();
        if (ratio > weight.mostGathers() + ROUNDING) {
            notes.add(Note.caution(String.format(
                    Locale.ROOT,
                    "the sleeve is gathered %.2f to 1: in a cloth of %s weight more than %.1f to 1 lies in folds (common"
                            + " practice); straighten the sleeve to a hem of %s at the most",
                    ratio,
                    weight.label(),
                    weight.mostGathers(),
                    around.times(weight.mostGathers()).roundedDown().text())));
        }
        if (!cuffed.wearer().measures().containsKey(BodyMeasure.HAND_GIRTH_WITH_THUMB.asName())) {
            notes.add(Note.caution("the hand was not measured: try whether it goes through the cuff"));
        }
        return notes;
    }

    private Dimension dimension(Length around) {
        double x = around.mm() / 2;
        return new Dimension(TopNames.CUFF, Point.of(x, 0), Point.of(x, depth.mm()), "depth " + depth.text());
    }
}
