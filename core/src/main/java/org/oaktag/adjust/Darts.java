package org.oaktag.adjust;

import org.oaktag.garment.End;
import org.oaktag.garment.Name;
import org.oaktag.measure.Length;

/**
 * Adjustments of the darts of any piece.
 *
 * <pre>{@code
 * block.adjust(openDart(FRONT, Name.of("bust"), Place.share(SIDE, 0.2), mm(25), mm(110)))
 *         .adjust(moveDart(FRONT, Name.of("bust"), Place.share(SHOULDER, 0.5)));
 * }</pre>
 */
public final class Darts {

    private static final StepCatalogue STEPS = StepCatalogue.of(
            StepKind.of(OpenDart.class).usually("width", 10, 40).usually("depth", 60, 140),
            StepKind.of(MoveDart.class).usually("share", 0, 1),
            StepKind.of(EaseDart.class),
            StepKind.of(TrueDartFold.class));

    private Darts() {}

    /** Returns the kinds of these steps, with what is usual for their amounts (common practice of the trade). */
    public static StepCatalogue steps() {
        return STEPS;
    }

    /** Opens a dart at an edge, so wide and so deep. */
    public static PieceStep openDart(Name piece, Name dart, Place place, Length width, Length depth) {
        return new OpenDart(piece, place, width, depth, dart);
    }

    /** Moves a dart to another place on the outline, its apex staying where it is. */
    public static MoveDart moveDart(Name piece, Name dart, Place to) {
        return new MoveDart(piece, dart, to, 1, dart);
    }

    /**
     * Moves a share of a dart to another place, where it is a dart of its own.
     *
     * @throws org.oaktag.PatternException if the share is not above 0 and up to 1
     */
    public static MoveDart splitDart(Name piece, Name dart, Place to, double share, Name second) {
        return new MoveDart(piece, dart, to, share, second);
    }

    /** Closes a dart into ease along its edge, with a smooth line across its mouth. */
    public static PieceStep easeDart(Name piece, Name dart) {
        return easeDart(piece, dart, Closing.smooth());
    }

    /** Closes a dart into ease along its edge, with the line across its mouth that is asked for. */
    public static PieceStep easeDart(Name piece, Name dart, Closing closing) {
        return new EaseDart(piece, dart, closing);
    }

    /** Draws the fold of a dart and the peak that meets the edge when the cloth is folded and laid towards a leg. */
    public static PieceStep trueDartFold(Name piece, Name dart, End towards) {
        return new TrueDartFold(piece, dart, towards);
    }
}
