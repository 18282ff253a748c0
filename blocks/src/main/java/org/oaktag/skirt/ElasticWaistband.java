package org.oaktag.skirt;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.body.BodyMeasure;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dart;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * Draws the waist of a skirt without darts in with elastic, which lies in a folded band as long as the waist of the
 * skirt, closed to a ring.
 *
 * <pre>{@code
 * knitSkirt.adjust(elasticWaistband(mm(30)));
 * }</pre>
 *
 * <p>The elastic is shorter than the waist of the body by 0 to 80 mm, and the band 2 mm wider than it, so that it can
 * be drawn through (common practice). As the band opens as far as it is cut, so does the skirt.
 *
 * @param width how wide the elastic is, 6 to 80 mm
 * @param shorter by how much it is shorter than the waist of the body, 0 to 80 mm
 */
public record ElasticWaistband(Length width, Length shorter) implements Step {

    private static final double ROOM = 2;
    private static final String REFIT = "fit the waistband again";

    /**
     * Checks the amounts.
     *
     * @throws PatternException if one is out of its range
     */
    public ElasticWaistband {
        Range.check("elastic at the waist", "must be as wide as", width, Length.mm(6), Length.mm(80));
        Range.check("elastic at the waist", "must be shorter than the body by", shorter, Length.ZERO, Length.mm(80));
    }

    /** Returns the step with elastic shorter than the body by another amount. */
    public ElasticWaistband shorterBy(Length other) {
        return new ElasticWaistband(width, other);
    }

    @Override
    public String name() {
        return "set an elastic waistband";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("elastic", width), Amount.of("shorter by", shorter));
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if the skirt has darts or an opening, or the waist of the body is not known
     */
    @Override
    public Reshaped reshape(Garment garment) {
        Shell.requireFree(garment, "waistband", Shell.isFinishedAtWaist(garment), "a waist that is finished");
        for (Name half : SkirtBody.HALVES) {
            List<Dart> darts = Dart.all(Shell.of(garment, half));
            if (!darts.isEmpty()) {
                throw PatternException.of(
                        "elastic at the waist",
                        "needs a skirt without darts, which would be sewn only to be gathered over",
                        darts.size() + " in the " + half,
                        "close them into the hem, draft the skirt of a cloth that stretches, or set a straight band");
            }
        }
        WaistRing ring = WaistRing.of(garment);
        boolean opens = ring.stand() > 0
                || !ring.end().equals(Name.of("centre back"))
                || garment.piece(SkirtNames.BACK).hasEdge(SkirtFinishNames.ZIP);
        Shell.requireFree(garment, "elastic at the waist", opens, "an opening at the " + ring.end());
        Length body = Optional.ofNullable(garment.wearer().measures().get(BodyMeasure.WAIST_GIRTH.asName()))
                .orElseThrow(() -> PatternException.of(
                        "elastic at the waist", "needs the waist girth of the body", "none", "measure it"));
        double whole = Shell.length(garment, ring.side());
        StraightBand band = new StraightBand(0, whole, 0, width.mm() + ROOM);
        Piece piece =
                band.piece(ring, whole, Shell.of(garment, SkirtNames.FRONT).cloth());
        Name own = SkirtFinishNames.WAISTBAND;
        Garment banded = WaistRing.marked(garment)
                .put(piece)
                .sew(band.closingSeam(REFIT))
                .sew(Seam.flat(
                        SkirtFinishNames.WAISTBAND_SEAM, SeamSide.against(own, EdgeNames.BOTTOM), ring.side(), REFIT))
                .sew(band.foldSeam(REFIT))
                .measure(FinishedMeasure.of(SkirtNames.WAIST_GIRTH, Quantity.lengthOf(own, EdgeNames.BOTTOM))
                        .against(BodyMeasure.WAIST_GIRTH.asName()))
                .done();
        Length elastic = body.minus(shorter);
        return new Reshaped(
                banded,
                List.of(
                        Note.rule("elastic = waist girth " + body.text() + " - " + shorter.text() + " = "
                                + elastic.text() + ", and what its ends lap; it draws in a waist of "
                                + Length.mm(whole).text()),
                        Note.rule("the band is " + width.text() + " + "
                                + Length.mm(ROOM).text() + " wide, so that the elastic can be drawn through")),
                List.of(new Dimension(
                        own,
                        Point.of(whole / 2, band.width()),
                        Point.of(whole / 2, 2 * band.width()),
                        Length.mm(band.width()).text())));
    }

    /** Refuses null. */
    static ElasticWaistband of(Length width) {
        return new ElasticWaistband(Objects.requireNonNull(width, "width"), Length.mm(30));
    }
}
