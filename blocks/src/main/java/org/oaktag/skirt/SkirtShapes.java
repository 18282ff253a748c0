package org.oaktag.skirt;

import java.util.List;
import org.oaktag.adjust.Step;
import org.oaktag.adjust.StepCatalogue;
import org.oaktag.adjust.StepKind;
import org.oaktag.garment.Note;
import org.oaktag.measure.Length;

/**
 * The shape of a skirt: how long it is, how it widens, and of what pieces.
 *
 * <pre>{@code
 * Garment skirt = StraightSkirt.BLOCK.draft(mira, SkirtEase.standard(), Cloth.woven("tweed, moss"));
 * Garment flared = skirt.adjust(skirtLength(mm(560))).adjust(aLine(1)).adjust(flareSides(mm(20)));
 * }</pre>
 */
public final class SkirtShapes {

    private static final StepCatalogue STEPS = StepCatalogue.of(
            StepKind.of(SetSkirtLength.class).usually("length", 450, 900),
            StepKind.of(FlareFromDarts.class).usually("share", 0.3, 1),
            StepKind.of(FlareSkirt.class).usually("out", -25, 80),
            StepKind.of(GoreSkirt.class).usually("spread", 0, 120),
            StepKind.of(YokeSkirt.class).usually("depth", 60, 150),
            StepKind.of(CircleSkirt.class).usually("share", 0.25, 1),
            StepKind.of(GatherSkirt.class).usually("ratio", 1.5, 3),
            StepKind.of(PleatSkirt.class).usually("number", 12, 40).usually("depth", 15, 40),
            StepKind.of(WrapSkirt.class).usually("overlap", 100, 300).usually("facing", 0, 60));

    private SkirtShapes() {}

    /** Returns the kinds of these steps, with what is usual for their amounts (common practice of the trade). */
    public static StepCatalogue steps() {
        return STEPS;
    }

    /** Makes the skirt so long at the centre front. */
    public static Step skirtLength(Length length) {
        return new SetSkirtLength(length);
    }

    /**
     * Closes a share of every dart into the hem.
     *
     * @param share how much of each dart, above 0 and up to 1
     */
    public static Step aLine(double share) {
        return new FlareFromDarts(share);
    }

    /** Flares the skirt from the hip down by so much on each of the four edges, its sides straight. */
    public static Step flareSides(Length out) {
        return new FlareSkirt(out, false);
    }

    /** Flares the skirt from the hip down by so much on each of the four edges, its sides curved down to the hem. */
    public static Step curveSidesOut(Length out) {
        return new FlareSkirt(out, true);
    }

    /** Takes the skirt in at the hem by so much on each of the four edges, from the hip down. */
    public static Step pegSides(Length in) {
        return new FlareSkirt(in.negated(), false);
    }

    /** Draws the skirt anew in so many gores, spread below the hip by so much on each of their edges. */
    public static Step goreSkirt(GoreCount gores, Length spread) {
        return new GoreSkirt(gores, spread);
    }

    /** Cuts a yoke of this depth off the skirt, its darts closed. */
    public static Step yokeSkirt(Length depth) {
        return new YokeSkirt(depth);
    }

    /**
     * Draws the skirt anew as a circle skirt.
     *
     * @param share the share of a whole circle: 1, or 0.25, 0.5, 0.75
     */
    public static CircleSkirt circleSkirt(double share) {
        return new CircleSkirt(share, false);
    }

    /**
     * Draws the skirt anew as a gathered one.
     *
     * @param ratio how many times the waist the cloth is wide
     */
    public static Step gatherSkirt(double ratio) {
        return new GatherSkirt(ratio);
    }

    /** Draws the skirt anew with pleats: so many round the waist, each fold so deep. */
    public static Step pleatSkirt(PleatKind kind, int number, Length depth) {
        return new PleatSkirt(kind, number, depth);
    }

    /** Makes a wrap skirt, whose two fronts lap over each other by so much, with a facing cut on. */
    public static Step wrapSkirt(Length overlap, Length facing) {
        return new WrapSkirt(overlap, facing);
    }

    static void tellLonger(List<Note> notes, Length longer) {
        if (Math.abs(longer.mm()) > 0.05) {
            notes.add(Note.done(
                    "both side seams are " + Length.mm(Math.abs(longer.mm())).text()
                            + (longer.mm() > 0 ? " longer" : " shorter")
                            + " at the hem, so that it runs square into them in a fair line"));
        }
    }
}
