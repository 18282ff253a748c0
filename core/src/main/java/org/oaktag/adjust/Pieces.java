package org.oaktag.adjust;

import java.util.List;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.EdgeFinish;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.Name;
import org.oaktag.measure.Length;

/**
 * Adjustments of any piece.
 *
 * <pre>{@code
 * block.adjust(movePoint(FRONT, Place.corner(HEM, End.END), mm(0), mm(15), mm(120)))
 *         .adjust(cutFrom(SLEEVE, contrast));
 * }</pre>
 */
public final class Pieces {

    private static final StepCatalogue STEPS = StepCatalogue.of(
            StepKind.of(SlashAndSpread.class),
            StepKind.of(SplitPiece.class),
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
            StepKind.of(FinishEdges.class),
            StepKind.of(CutOnFacing.class).usually("width", 20, 60),
            StepKind.of(SeparateFacing.class).usually("width", 25, 70).usually("cloth stretch", 0, 80),
            StepKind.of(TrueCorner.class).usually("reach", 20, 60));

    private Pieces() {}

    /** Returns the kinds of these steps, with what is usual for their amounts (common practice of the trade). */
    public static StepCatalogue steps() {
        return STEPS;
    }

    /** Slashes a piece and spreads it; the gaps are closed by smooth curves. */
    public static SlashAndSpread slashAndSpread(Name piece, Slash... slashes) {
        return new SlashAndSpread(piece, List.of(slashes), Closing.smooth());
    }

    /** Splits a piece along a style line into the part on its left and that on its right. */
    public static SplitPiece splitPiece(Name piece, LineAcross line, Part left, Part right, Name seam) {
        return new SplitPiece(piece, line, left, right, seam);
    }

    /** Joins two pieces along an edge of each; the second is moved to the first. */
    public static JoinPieces joinPieces(EdgeRef first, EdgeRef second, Name joined) {
        return new JoinPieces(first, second, joined);
    }

    /** Cuts a piece from another cloth. */
    public static Step cutFrom(Name piece, Cloth cloth) {
        return new CutFrom(piece, cloth);
    }

    /** Turns a piece over, left to right. */
    public static Step mirrorPiece(Name piece) {
        return new MirrorPiece(piece);
    }

    /** Draws a piece that is cut on the fold whole. */
    public static PieceStep unfoldPiece(Name piece) {
        return new UnfoldPiece(piece);
    }

    /** Moves a corner or a place on an edge, and with it what lies within reach, less and less. */
    public static PieceStep movePoint(Name piece, Place place, Length right, Length down, Length reach) {
        return new MovePoint(piece, place, right, down, reach);
    }

    /** Extends a piece at an edge by an even width. */
    public static PieceStep extendEdge(EdgeRef edge, Length by) {
        return new ExtendEdge(edge, by);
    }

    /** Cuts a facing on to a straight edge, which becomes a fold. */
    public static CutOnFacing cutOnFacing(EdgeRef edge, Length width) {
        return new CutOnFacing(edge, width);
    }

    /** Draws a facing of its own for an edge. */
    public static SeparateFacing separateFacing(EdgeRef edge, Length width, Name facing, Cloth cloth) {
        return new SeparateFacing(edge, width, facing, cloth);
    }

    /** Sets notches on every seam whose edges could be mistaken for those of another. */
    public static Step notchSeams() {
        return new NotchSeams();
    }

    /** Turns edges back that no seam takes in, and stitches them down. */
    public static Step turnBack(EdgeRef... edges) {
        return new FinishEdges(List.of(edges), EdgeFinish.TURNED_BACK);
    }

    /** Leaves edges as they are cut, on purpose. */
    public static Step leaveRaw(EdgeRef... edges) {
        return new FinishEdges(List.of(edges), EdgeFinish.RAW);
    }

    /** Trues the corners at one end of a seam, so that the edges run on smoothly across it when it is closed. */
    public static Step trueCorner(Name seam, End end, Length reach) {
        return new TrueCorner(seam, end, reach);
    }
}
