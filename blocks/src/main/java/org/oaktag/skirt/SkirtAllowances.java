package org.oaktag.skirt;

import java.util.List;
import org.oaktag.garment.Allowance;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeFinish;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.measure.Length;

/**
 * The allowances of skirts.
 *
 * <pre>{@code
 * Allowances allowances = SkirtAllowances.woven(skirt);
 * allowances.on(skirt.piece(SkirtNames.FRONT), EdgeNames.HEM).text();   // = 40.0 mm
 * }</pre>
 */
public final class SkirtAllowances {

    private static final Length SEAM = Length.mm(15);
    private static final Length HEM = Length.mm(40);
    private static final Length LINING_HEM = Length.mm(20);

    private SkirtAllowances() {}

    /**
     * Returns what is left on a skirt of woven cloth (common practice): 15 mm on seams, 40 mm on a hem that is turned
     * up, 20 mm on that of a lining and on the upper edge of a pocket, and none on interfacing and on the inner edges
     * of facings, which are neatened as they are.
     */
    public static Allowances woven(Garment garment) {
        return of("woven skirt", SEAM, HEM, garment);
    }

    /**
     * Returns one allowance for every seam and another for every hem that is turned up, with whatever goes on from it.
     *
     * @param name what the set is called; free text
     * @param seam the allowance of seams
     * @param hem that of the hem of the shell; a lining has 20 mm, or this where it is less
     * @throws org.oaktag.PatternException if one is not 0 to 100 mm
     */
    public static Allowances of(String name, Length seam, Length hem, Garment garment) {
        Allowances allowances = Allowances.of(name, seam)
                .with(FaceWaist.LOWER, FaceWaist.isOn(garment) && isLined(garment) ? seam : Length.ZERO)
                .with(FaceHem.UPPER, Length.ZERO)
                .with(SkirtFinishNames.STAND_FACING, Length.ZERO);
        List<EdgeRef> turned = garment.turnedBack();
        for (Piece piece : garment.pieces()) {
            boolean lining = piece.cloth().use().equals(Cloth.LINING);
            Length deep = lining && LINING_HEM.compareTo(hem) < 0 ? LINING_HEM : hem;
            for (Edge edge : piece.edges()) {
                EdgeRef own = EdgeRef.of(piece.name(), edge.name());
                if (piece.cloth().isInterfacing()) {
                    allowances = allowances.with(own, Length.ZERO);
                } else if (turned.contains(own)) {
                    boolean square = edge.finish() == EdgeFinish.TURNED_BACK_SQUARE;
                    allowances = allowances.with(
                            own, square ? Allowance.foldedSquare(LINING_HEM) : Allowance.foldedBack(deep));
                }
            }
        }
        return allowances;
    }

    private static boolean isLined(Garment garment) {
        return garment.hasPiece(SkirtFinishNames.lining(SkirtNames.FRONT));
    }
}
