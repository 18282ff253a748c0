package org.oaktag.skirt;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.body.BodyMeasure;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.FinishedMeasure.Term;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamRule;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * Sets a straight band on the waist, folded along its middle and interfaced: as long as the waist of the body and its
 * ease, and what laps at the opening. The waist of the skirt is a little longer and eased on to it.
 *
 * <pre>{@code
 * skirt.adjust(centreBackSeam())
 *         .adjust(zip(mm(180), SkirtOpening.CENTRE_BACK))
 *         .adjust(straightWaistband(mm(35)));
 * }</pre>
 *
 * <p>The ease is 0 to 25 mm, the under-lap 25 to 40, the over-lap 0 to 20, and the skirt's waist up to 20 mm longer
 * (common practice). On a skirt that buttons down its front the band laps as far as the stand, whatever is asked for.
 *
 * @param width how wide the folded band is, 15 to 80 mm
 * @param ease how much longer than the waist of the body it is, 0 to 25 mm, or empty for half of the skirt's own ease
 * @param underlap how far its left end reaches under the other, 0 to 60 mm
 * @param overlap how far its right end reaches beyond the opening, 0 to 40 mm
 */
public record StraightWaistband(Length width, Optional<Length> ease, Length underlap, Length overlap) implements Step {

    private static final Length MOST_EASE = Length.mm(25);

    /** How much longer than its band the waist of the skirt may be, mm. */
    private static final double MOST_EASED_ON = 20;

    private static final String REFIT = "fit the waistband again";

    /**
     * Checks the amounts.
     *
     * @throws PatternException if one is out of its range
     */
    public StraightWaistband {
        Objects.requireNonNull(ease, "ease");
        Range.check("waistband", "must be as wide as", width, Length.mm(15), Length.mm(80));
        ease.ifPresent(given -> Range.check("ease of the waistband", "must be", given, Length.ZERO, MOST_EASE));
        Range.check("under-lap of the waistband", "must be", underlap, Length.ZERO, Length.mm(60));
        Range.check("over-lap of the waistband", "must be", overlap, Length.ZERO, Length.mm(40));
    }

    /** Returns the step with another ease over the waist of the body. */
    public StraightWaistband eased(Length other) {
        return new StraightWaistband(width, Optional.of(other), underlap, overlap);
    }

    /** Returns the step with other laps. */
    public StraightWaistband lapping(Length under, Length over) {
        return new StraightWaistband(width, ease, under, over);
    }

    @Override
    public String name() {
        return "set a straight waistband";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(
                Amount.of("width", width),
                ease.map(given -> Amount.of("ease", given)).orElseGet(() -> Amount.of("ease", "half of the skirt's")),
                Amount.of("under-lap", underlap),
                Amount.of("over-lap", overlap));
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if the waist of the skirt is shorter than the band or more than 20 mm longer
     */
    @Override
    public Reshaped reshape(Garment garment) {
        Shell.requireFree(garment, "waistband", Shell.isFinishedAtWaist(garment), "a waist that is finished");
        Shell.requireFlatWaist(garment, "waistband");
        WaistRing ring = WaistRing.of(garment);
        double whole = Shell.length(garment, ring.side());
        double waist = whole - 2 * ring.stand();
        double body = Optional.ofNullable(garment.wearer().measures().get(BodyMeasure.WAIST_GIRTH.asName()))
                .map(Length::mm)
                .orElse(waist);
        double eased = ease(body, waist);
        double sewn = body + eased + 2 * ring.stand();
        boolean buttoned = ring.stand() > 0;
        StraightBand band =
                new StraightBand(buttoned ? 0 : underlap.mm(), sewn, buttoned ? 0 : overlap.mm(), width.mm());
        Piece piece =
                band.piece(ring, whole, Shell.of(garment, SkirtNames.FRONT).cloth());
        double on = whole - sewn;
        Finishing finishing = WaistRing.marked(garment)
                .put(piece)
                .sew(Seam.of(
                        SkirtFinishNames.WAISTBAND_SEAM,
                        SeamSide.against(SkirtFinishNames.WAISTBAND, EdgeNames.BOTTOM),
                        ring.side(),
                        on > 1e-9 ? SeamRule.eased(Length.mm(on)) : SeamRule.flat(),
                        REFIT))
                .sew(band.foldSeam(REFIT))
                .measure(girth(buttoned));
        band.endSeams(REFIT).forEach(finishing::sew);
        Garment banded = Interfacing.of(finishing, piece).done();
        return new Reshaped(banded, notes(body, eased, band, ring, on), List.of(dimension(piece)));
    }

    private double ease(double body, double waist) {
        double least = Math.max(0, waist - MOST_EASED_ON - body);
        double most = Math.min(MOST_EASE.mm(), waist - body);
        if (most < least - 1e-6) {
            throw PatternException.of(
                    "waist of the skirt",
                    "must be " + Length.mm(body).text() + " to "
                            + Length.mm(body + MOST_EASE.mm() + MOST_EASED_ON).text()
                            + " for a band that it is eased on to",
                    Length.mm(waist).text(),
                    "draft it with another ease at the waist, or set an elastic waistband");
        }
        double asked = ease.map(Length::mm).orElseGet(() -> Math.min(Math.max((waist - body) / 2, least), most));
        Range.check(
                "ease of the waistband",
                "for a skirt whose waist is " + Length.mm(waist).text() + ", up to "
                        + Length.mm(MOST_EASED_ON).text() + " longer than the band, it must be",
                Length.mm(asked),
                Length.mm(least),
                Length.mm(most));
        return asked;
    }

    private static FinishedMeasure girth(boolean buttoned) {
        List<Term> terms = new ArrayList<>(
                List.of(FinishedMeasure.times(1, Quantity.lengthOf(SkirtFinishNames.WAISTBAND, EdgeNames.BOTTOM))));
        if (buttoned) {
            terms.add(FinishedMeasure.times(-2, Quantity.lengthOf(SkirtNames.FRONT, SkirtFinishNames.STAND_TOP)));
        }
        return new FinishedMeasure(SkirtNames.WAIST_GIRTH, terms, Optional.of(BodyMeasure.WAIST_GIRTH.asName()));
    }

    private static List<Note> notes(double body, double eased, StraightBand band, WaistRing ring, double on) {
        String laps = ring.stand() > 0
                ? " + 2 x stand " + Length.mm(ring.stand()).text()
                : " + under-lap " + Length.mm(band.underlap()).text() + " + over-lap "
                        + Length.mm(band.overlap()).text();
        return List.of(
                Note.rule("band = waist girth " + Length.mm(body).text() + " + ease "
                        + Length.mm(eased).text() + laps + " = "
                        + Length.mm(band.underlap() + band.sewn() + band.overlap())
                                .text()),
                Note.rule("the waist of the skirt is " + Length.mm(on).text()
                        + " longer and eased on between the notches; it opens at the " + ring.end()));
    }

    private Dimension dimension(Piece band) {
        double x = band.path(EdgeNames.TOP).length() / 2;
        return new Dimension(
                band.name(), Point.of(x, width.mm()), Point.of(x, 2 * width.mm()), "width " + width.text());
    }
}
