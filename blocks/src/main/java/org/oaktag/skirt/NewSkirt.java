package org.oaktag.skirt;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.body.BodyMeasure;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.FinishedMeasure.Term;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity;
import org.oaktag.garment.Seam;
import org.oaktag.garment.WalkedSeam;
import org.oaktag.measure.Length;

/**
 * What a skirt drawn anew keeps of the one that it takes the place of: its waist, its hip, their distance, its length
 * and its cloth.
 *
 * @param garment the skirt as it was
 * @param waist its waist girth, mm
 * @param hip its hip girth
 * @param hipDepth how far the hip lies below the waist
 * @param length how far the hem does, at the centre front
 */
record NewSkirt(Garment garment, double waist, double hip, double hipDepth, double length) {

    /**
     * Measures a skirt of a front and a back alone.
     *
     * @throws PatternException if it has other pieces already, which would no longer fit
     */
    static NewSkirt of(Garment garment) {
        List<Piece> halves = SkirtBody.halves(garment);
        if (garment.pieces().size() != halves.size()) {
            throw PatternException.of(
                    "skirt",
                    "must have no pieces but a front and a back when another is drawn in its place",
                    garment.pieces().stream()
                            .map(each -> each.name().value())
                            .toList()
                            .toString(),
                    "take this step before those that cut the skirt up or finish it");
        }
        return measured(garment);
    }

    /** Measures a skirt whose front and back hang from yokes; empty where there are none. */
    static Optional<NewSkirt> underYoke(Garment garment) {
        boolean yoked = SkirtBody.HALVES.stream().allMatch(half -> garment.hasPiece(SkirtShapeNames.yoke(half)));
        return yoked && garment.pieces().size() == 2 * SkirtBody.HALVES.size()
                ? Optional.of(measured(garment))
                : Optional.empty();
    }

    private static NewSkirt measured(Garment garment) {
        List<Piece> halves = SkirtBody.halves(garment);
        Length depth = garment.wearer().measures().get(BodyMeasure.WAIST_TO_HIP.asName());
        double hipDepth = depth == null ? SkirtBody.side(halves.get(0)).hip() : depth.mm();
        return new NewSkirt(
                garment,
                garment.finished(SkirtNames.WAIST_GIRTH).mm(),
                garment.finished(SkirtNames.HIP_GIRTH).mm(),
                hipDepth,
                garment.finished(SkirtNames.LENGTH).mm());
    }

    Cloth cloth() {
        return garment.piece(SkirtNames.FRONT).cloth();
    }

    /** Returns the skirt of these pieces, with measures in the place of those of the same name. */
    Garment made(List<Piece> pieces, List<Seam> seams, Map<Name, List<Term>> terms) {
        List<FinishedMeasure> measures = garment.measures().stream()
                .map(each ->
                        new FinishedMeasure(each.name(), terms.getOrDefault(each.name(), each.terms()), each.body()))
                .toList();
        return garment.with(pieces, seams, measures);
    }

    /** Returns a sum over front and back, each counted so often. */
    static List<Term> both(double times, Name edge) {
        return SkirtBody.HALVES.stream()
                .map(half -> FinishedMeasure.times(times, Quantity.lengthOf(half, edge)))
                .toList();
    }

    /** Returns the waist, the hip and the hem of a front and a back, the waist counted as it is drawn in. */
    static Map<Name, List<Term>> measures(double waistShare, List<Term> hip) {
        Map<Name, List<Term>> terms = new LinkedHashMap<>();
        terms.put(SkirtNames.WAIST_GIRTH, both(2 * waistShare, SkirtNames.WAIST));
        terms.put(SkirtNames.HIP_GIRTH, hip);
        terms.put(SkirtNames.HEM_GIRTH, both(2, EdgeNames.HEM));
        return terms;
    }

    /** Returns how wide a piece is from its centre to its side, at the level of the hip. */
    Quantity acrossHip(Name half) {
        return SkirtMeasures.across(half, hipDepth);
    }

    /** Returns the hip across front and back. */
    List<Term> acrossHip() {
        return SkirtBody.HALVES.stream()
                .map(half -> FinishedMeasure.times(2, acrossHip(half)))
                .toList();
    }

    /** Refuses a skirt that is gathered or pleated to its waist, or a sector of a circle. */
    void requireFitted() {
        double drawn = Shell.waistOfCloth(garment);
        boolean across = garment.measures().stream()
                .filter(measure -> measure.name().equals(SkirtNames.HIP_GIRTH))
                .flatMap(measure -> measure.terms().stream())
                .allMatch(term -> term.quantity() instanceof Quantity.Across);
        if (Math.abs(drawn - waist) > WalkedSeam.TOLERANCE.mm() || !across) {
            throw PatternException.of(
                    "skirt",
                    "must be fitted from the waist to the hip",
                    "one that is gathered, pleated or cut in a circle",
                    "take this step first, on a straight skirt or an A-line");
        }
    }
}
