package org.oaktag.skirt;

import java.util.Optional;
import org.oaktag.adjust.Step;
import org.oaktag.adjust.StepCatalogue;
import org.oaktag.adjust.StepKind;
import org.oaktag.draft.ClothStep;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Name;
import org.oaktag.measure.Length;

/**
 * Steps that finish a skirt: its opening, vent, waist, pockets, lining and hem. Each is fitted to the shell as it is
 * when the step is played; steps that shape the skirt come before, and of these the opening before the waist, pockets
 * too, and the lining after both.
 *
 * <pre>{@code
 * skirt.adjust(centreBackSeam())
 *         .adjust(zip(mm(180), SkirtOpening.CENTRE_BACK))
 *         .adjust(vent(mm(45)))
 *         .adjust(straightWaistband(mm(35)))
 *         .adjust(lineSkirt(lining));
 * }</pre>
 */
public final class SkirtFinishes {

    private static final StepCatalogue STEPS = StepCatalogue.of(
            StepKind.of(CentreBackSeam.class),
            StepKind.of(Zip.class).usually("length", 150, 230),
            StepKind.of(ButtonFront.class).usually("stand", 15, 30).usually("count", 4, 9),
            StepKind.of(CentreBackVent.class).usually("width", 40, 50).usually("height", 150, 250),
            StepKind.of(StraightWaistband.class)
                    .usually("width", 25, 50)
                    .usually("ease", 0, 16)
                    .usually("underlap", 25, 40)
                    .usually("overlap", 0, 20),
            StepKind.of(ContouredWaistband.class).usually("width", 30, 60),
            StepKind.of(FaceWaist.class).usually("width", 40, 70).usually("cloth stretch", 0, 40),
            StepKind.of(ElasticWaistband.class).usually("width", 20, 50).usually("shorter", 10, 60),
            StepKind.of(InSeamPocket.class)
                    .usually("below waist", 30, 90)
                    .usually("opening", 140, 180)
                    .usually("cloth stretch", 0, 40),
            StepKind.of(SlantPocket.class)
                    .usually("from side", 25, 60)
                    .usually("down", 120, 180)
                    .usually("cloth stretch", 0, 40),
            StepKind.of(SkirtPatchPocket.class)
                    .among("half", SkirtNames.FRONT, SkirtNames.BACK)
                    .usually("width", 100, 160)
                    .usually("height", 110, 180)
                    .usually("from centre", 40, 100)
                    .usually("below waist", 120, 260)
                    .usually("cloth stretch", 0, 40),
            StepKind.of(LineSkirt.class)
                    .usually("shorter", 20, 30)
                    .usually("ease", 0, 15)
                    .usually("cloth stretch", 0, 40),
            StepKind.of(FaceHem.class).usually("width", 40, 70).usually("cloth stretch", 0, 40));

    private SkirtFinishes() {}

    /** Returns the kinds of these steps, with what is usual for their amounts (common practice of the trade). */
    public static StepCatalogue steps() {
        return STEPS;
    }

    /** Returns the step that cuts the back as a mirrored pair with a seam at its centre. */
    public static Step centreBackSeam() {
        return new CentreBackSeam();
    }

    /**
     * Returns the step that opens the skirt with a zip from its waist down.
     *
     * @param length from the waist to where the seam begins
     * @param at where it opens; the centre back needs a seam first
     */
    public static Step zip(Length length, SkirtOpening at) {
        return new Zip(length, at);
    }

    /**
     * Returns the step that buttons the front all the way down.
     *
     * @param stand how far each front reaches beyond its centre
     * @param count how many buttons it has, that of a waistband left out
     * @throws org.oaktag.PatternException if the stand is out of its range
     */
    public static Step buttons(Length stand, int count) {
        return new ButtonFront(stand, count);
    }

    /**
     * Returns the step that cuts a vent at centre back, as high as a full step of the wearer needs.
     *
     * @param width how wide its extension is
     * @throws org.oaktag.PatternException if the width is out of its range
     */
    public static CentreBackVent vent(Length width) {
        return new CentreBackVent(width, Optional.empty(), false);
    }

    /**
     * Returns the step that lays a kick pleat at centre back, as high as a full step of the wearer needs.
     *
     * @param width how deep it is; it takes up four times as much
     * @throws org.oaktag.PatternException if the width is out of its range
     */
    public static CentreBackVent kickPleat(Length width) {
        return new CentreBackVent(width, Optional.empty(), true);
    }

    /**
     * Returns the step that sets a straight, folded band on the waist, with an under-lap of 30 mm.
     *
     * @param width how wide the folded band is
     * @throws org.oaktag.PatternException if the width is out of its range
     */
    public static StraightWaistband straightWaistband(Length width) {
        return new StraightWaistband(width, Optional.empty(), Length.mm(30), Length.ZERO);
    }

    /**
     * Returns the step that cuts the top of the skirt off as a curved band, its darts closed.
     *
     * @param width how wide the band is
     * @throws org.oaktag.PatternException if the width is out of its range
     */
    public static Step contouredWaistband(Length width) {
        return new ContouredWaistband(width);
    }

    /**
     * Returns the step that faces the waist instead of a band.
     *
     * @param width how wide the facing is
     * @param cloth what it is cut from
     * @throws org.oaktag.PatternException if the width is out of its range
     */
    public static Step faceWaist(Length width, Cloth cloth) {
        return new FaceWaist(width, cloth);
    }

    /**
     * Returns the step that draws the waist of a skirt without darts in with elastic, 30 mm shorter than the body.
     *
     * @param width how wide the elastic is
     * @throws org.oaktag.PatternException if the width is out of its range
     */
    public static ElasticWaistband elasticWaistband(Length width) {
        return ElasticWaistband.of(width);
    }

    /**
     * Returns the step that sets a pocket into each side seam.
     *
     * @param belowWaist how far below the waist it opens
     * @param opening how long the opening is
     * @throws org.oaktag.PatternException if one is out of its range
     */
    public static ClothStep inSeamPocket(Length belowWaist, Length opening) {
        return new InSeamPocket(belowWaist, opening, Optional.empty());
    }

    /**
     * Returns the step that cuts slanted pockets into the front.
     *
     * @param fromSide how far from the side seam they begin on the waist
     * @param down how far down the side seam they end
     * @throws org.oaktag.PatternException if one is out of its range
     */
    public static ClothStep slantPocket(Length fromSide, Length down) {
        return new SlantPocket(fromSide, down, Optional.empty());
    }

    /**
     * Returns the step that lays a pocket on each half of the front or the back, 60 mm from the centre and 160 mm below
     * the waist.
     *
     * @param half the front or the back
     * @param width how wide it is
     * @param height how high it is
     * @throws org.oaktag.PatternException if one is out of its range
     */
    public static SkirtPatchPocket patchPocket(Name half, Length width, Length height) {
        return new SkirtPatchPocket(half, width, height, Length.mm(60), Length.mm(160), Optional.empty());
    }

    /**
     * Returns the step that lines the skirt: 25 mm shorter, each half of the back 10 mm wider, its darts as pleats.
     *
     * @param cloth what it is cut from
     */
    public static LineSkirt lineSkirt(Cloth cloth) {
        return new LineSkirt(Length.mm(25), Length.mm(10), true, cloth);
    }

    /**
     * Returns the step that faces the hem instead of turning it up.
     *
     * @param width how wide the facing is
     * @param cloth what it is cut from
     * @throws org.oaktag.PatternException if the width is out of its range
     */
    public static Step faceHem(Length width, Cloth cloth) {
        return new FaceHem(width, cloth);
    }
}
