package org.oaktag.adjustments;

import java.util.Optional;
import org.oaktag.adjust.Step;
import org.oaktag.adjust.StepCatalogue;
import org.oaktag.adjust.StepKind;
import org.oaktag.blocks.TopNames;
import org.oaktag.draft.ClothStep;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Name;
import org.oaktag.measure.Length;

/**
 * Steps that finish a top: facings, lining, neckband, interfacing, pockets. Each is fitted to the shell as it is when
 * the step is played; what moves an edge later leaves the seam to it untrue until the step is played again.
 *
 * <pre>{@code
 * top.adjust(faceNeckline(cm(6), shell))
 *         .adjust(lineBody(cm(2), lining))
 *         .adjust(frontPouch(cm(32), cm(19)).raisedBy(cm(2)));
 * }</pre>
 */
public final class Finishes {

    private static final StepCatalogue STEPS = StepCatalogue.of(
            StepKind.of(FaceNeckline.class).usually("width", 40, 80).usually("cloth stretch", 15, 80),
            StepKind.of(LineBody.class).usually("pleat", 0, 25).usually("cloth stretch", 15, 80),
            StepKind.of(RibNeckband.class).usually("depth", 12, 40).usually("rib stretch", 40, 120),
            StepKind.of(InterfacePiece.class)
                    .among("piece", TopNames.FRONT, TopNames.BACK)
                    .usually("cloth stretch", 0, 30),
            StepKind.of(FrontPouch.class)
                    .usually("width", 280, 380)
                    .usually("height", 170, 230)
                    .usually("above hem", 0, 40)
                    .usually("off sides", 20, 60)
                    .usually("cloth stretch", 15, 80),
            StepKind.of(PatchPocket.class)
                    .usually("width", 90, 150)
                    .usually("height", 100, 180)
                    .usually("from centre", 20, 80)
                    .usually("below side neck", 180, 320)
                    .usually("cloth stretch", 15, 80));

    private Finishes() {}

    /** Returns the kinds of these steps, with what is usual for their amounts (common practice of the trade). */
    public static StepCatalogue steps() {
        return STEPS;
    }

    /**
     * Returns the step that draws facings for the neckline of front and back.
     *
     * @param width how wide they are
     * @param cloth what they are cut from
     * @throws org.oaktag.PatternException if the width is out of its range
     */
    public static Step faceNeckline(Length width, Cloth cloth) {
        return new FaceNeckline(width, cloth);
    }

    /**
     * Returns the step that lines front and back: the shell less the neck facings, if there are any, and a pleat at
     * centre back for ease.
     *
     * @param pleat by how much each half of the back is wider than the shell
     * @param cloth what it is cut from
     * @throws org.oaktag.PatternException if the pleat is out of its range
     */
    public static Step lineBody(Length pleat, Cloth cloth) {
        return new LineBody(pleat, cloth);
    }

    /**
     * Returns the step that sets a folded band of ribbed knit on the neckline, as much shorter as its stretch asks for.
     *
     * @param depth how deep the finished band is
     * @param rib what it is cut from
     * @throws org.oaktag.PatternException if the depth is out of its range
     */
    public static Step ribNeckband(Length depth, Cloth rib) {
        return new RibNeckband(depth, rib);
    }

    /** Returns the step that cuts interfacing of the very shape of a piece. */
    public static Step interfacePiece(Name piece, Cloth cloth) {
        return new InterfacePiece(piece, cloth);
    }

    /**
     * Returns the step that lays a pouch on the centre of the front, its lower edge on the hem, in the cloth of the
     * front.
     *
     * @param width how wide the whole pouch is at its lower edge
     * @param height how high it is
     * @throws org.oaktag.PatternException if one is out of its range
     */
    public static FrontPouch frontPouch(Length width, Length height) {
        return new FrontPouch(width, height, Length.ZERO, Optional.empty(), Optional.empty());
    }

    /**
     * Returns the step that lays a pocket on either half of the front, in the cloth of the front.
     *
     * @param width how wide it is
     * @param height how high it is
     * @param fromCentre how far its nearer edge lies from centre front
     * @param belowSideNeck how far its upper edge lies below the side neck point
     * @throws org.oaktag.PatternException if a width or height is out of its range
     */
    public static ClothStep patchPocket(Length width, Length height, Length fromCentre, Length belowSideNeck) {
        return new PatchPocket(width, height, fromCentre, belowSideNeck, Optional.empty());
    }
}
