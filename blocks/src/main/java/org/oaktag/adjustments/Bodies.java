package org.oaktag.adjustments;

import org.oaktag.adjust.Step;
import org.oaktag.adjust.StepCatalogue;
import org.oaktag.adjust.StepKind;
import org.oaktag.blocks.BodyLine;
import org.oaktag.garment.Cloth;
import org.oaktag.measure.Length;

/**
 * Adjustments of the body of a top: its side seams and its length. Those that draw the side seams at another slant, or
 * lengthen the body at a line, may change the armholes: the sleeve stays as it is, and its seams are reported, unless
 * it is asked to follow: {@code squareSideSeams().withSleeve()}.
 *
 * <pre>{@code
 * block.adjust(straightenSideSeams())
 *         .adjust(lengthenBody(cm(4)))
 *         .adjust(curveHem(cm(3)));
 * }</pre>
 */
public final class Bodies {

    private static final StepCatalogue STEPS = StepCatalogue.of(
            StepKind.of(StraightenSideSeams.class),
            StepKind.of(SquareSides.class),
            StepKind.of(FlareSides.class).usually("out", -40, 80),
            StepKind.of(ShapeWaist.class).usually("in", -30, 40),
            StepKind.of(LengthenBody.class).usually("by", -60, 250),
            StepKind.of(LengthenAtLine.class).usually("by", -20, 60),
            StepKind.of(HighLowHem.class).usually("front up", 0, 60).usually("back down", 0, 80),
            StepKind.of(SplitBody.class).usually("above hem", 150, 300).usually("below stretch", 15, 80),
            StepKind.of(CurveHem.class).usually("rise", 10, 80),
            StepKind.of(CutVent.class).usually("height", 60, 180).usually("width", 20, 40));

    private Bodies() {}

    /** Returns the kinds of these steps, with what is usual for their amounts (common practice of the trade). */
    public static StepCatalogue steps() {
        return STEPS;
    }

    /** Draws the side seams straight, the front copied to the back. */
    public static BodyStep straightenSideSeams() {
        return new StraightenSideSeams(false);
    }

    /** Lengthens front and back at the hem. */
    public static Step lengthenBody(Length by) {
        return new LengthenBody(by);
    }

    /** Shortens front and back at the hem. */
    public static Step shortenBody(Length by) {
        return new LengthenBody(by.negated());
    }

    /** Lengthens front and back at a line across them. */
    public static BodyStep lengthenBody(BodyLine line, Length by) {
        return new LengthenAtLine(line, by, false);
    }

    /** Shortens front and back at a line across them. */
    public static BodyStep shortenBody(BodyLine line, Length by) {
        return new LengthenAtLine(line, by.negated(), false);
    }

    /** Draws the side seams straight to a hem that is narrower by this much on each of the four edges. */
    public static BodyStep taperSideSeams(Length in) {
        return new FlareSides(in.negated(), false);
    }

    /** Draws the side seams straight to a hem that is wider by this much on each of the four edges: an A-line. */
    public static BodyStep flareSideSeams(Length out) {
        return new FlareSides(out, false);
    }

    /** Draws the side seams upright from the underarm points: a box. */
    public static BodyStep squareSideSeams() {
        return new SquareSides(false);
    }

    /** Takes the side seams in at the waist by this much on each of the four edges. */
    public static Step shapeWaist(Length in) {
        return new ShapeWaist(in);
    }

    /** Lets the side seams out at the waist by this much on each of the four edges. */
    public static Step letOutWaist(Length out) {
        return new ShapeWaist(out.negated());
    }

    /** Draws a hem that is higher at centre front than at centre back. */
    public static Step highLowHem(Length frontUp, Length backDown) {
        return new HighLowHem(frontUp, backDown);
    }

    /** Curves the hem up at the side seams, as on a shirt tail. */
    public static Step curveHem(Length rise) {
        return new CurveHem(rise);
    }

    /**
     * Splits front and back along a style line and cuts what lies below it from another cloth.
     *
     * @param aboveHem how far above the hem the line lies
     * @param below the cloth below it
     */
    public static Step splitBody(Length aboveHem, Cloth below) {
        return new SplitBody(aboveHem, below);
    }

    /** Cuts a vent into the side seams, with extensions that fold under. */
    public static Step cutSideVent(Length height, Length width) {
        return new CutVent(height, width);
    }
}
