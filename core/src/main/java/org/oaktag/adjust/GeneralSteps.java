package org.oaktag.adjust;

/**
 * Every kind of step for any piece of any garment, a line for each, with what is usual for its amounts (common practice
 * of the trade).
 *
 * <pre>{@code
 * GeneralSteps.catalogue().kind("extend edge").amount("by").unit();   // = mm
 * }</pre>
 */
public final class GeneralSteps {

    private static final StepCatalogue CATALOGUE = StepCatalogue.of(
            StepKind.of(SlashAndSpread.class),
            StepKind.of(SplitPiece.class),
            StepKind.of(OpenDart.class).usually("width", 10, 40).usually("depth", 60, 140),
            StepKind.of(MoveDart.class).usually("share", 0, 1),
            StepKind.of(EaseDart.class),
            StepKind.of(TrueDartFold.class),
            StepKind.of(JoinPieces.class),
            StepKind.of(CutFrom.class).usually("cloth stretch", 0, 80),
            StepKind.of(MirrorPiece.class),
            StepKind.of(UnfoldPiece.class),
            StepKind.of(MovePoint.class)
                    .usually("right", -10, 10)
                    .usually("down", -10, 10)
                    .usually("reach", 30, 120),
            StepKind.of(ExtendEdge.class).usually("by", 5, 50),
            StepKind.of(NotchSeams.class),
            StepKind.of(CutOnFacing.class).usually("width", 20, 60),
            StepKind.of(SeparateFacing.class).usually("width", 25, 70).usually("cloth stretch", 0, 80),
            StepKind.of(TrueCorner.class).usually("reach", 20, 60));

    private GeneralSteps() {}

    /** Returns the catalogue of these kinds. */
    public static StepCatalogue catalogue() {
        return CATALOGUE;
    }
}
