package org.oaktag.lay;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.PatternException;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Cut;
import org.oaktag.garment.CutLine;
import org.oaktag.garment.CutList;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;

/**
 * One shape to be cut out, once, in one layer or through two.
 *
 * @param item the piece
 * @param through how many layers it is cut through, and whether they are joined at the fold
 * @param outline the cut line in the piece's own millimetres, opened out where a half piece is
 *     cut from a single layer
 * @param shapes the ways in which it may be laid; shapes of other parts that are equal are the very same
 */
record Part(CutList.Item item, LaidPiece.Through through, Outline outline, List<Shape> shapes) {

    /** How far from parallel to the grain a fold may run: a hundredth of a millimetre in a metre. */
    private static final double PARALLEL = 1e-5;

    private static final Transform HALF_TURN = new Transform(-1, 0, 0, -1, 0, 0);
    private static final Transform UPSIDE_DOWN = new Transform(1, 0, 0, -1, 0, 0);

    Part {
        shapes = List.copyOf(shapes);
    }

    /** Returns everything that is laid for a piece. */
    static List<Part> of(CutList.Item item, Allowances allowances, Spread spread) {
        Piece piece = item.piece();
        CutLine cut = CutLine.of(piece, allowances);
        Transform upright = upright(piece.grainline());
        if (piece.cut() instanceof Cut.OnFold fold) {
            return spread.folded()
                    ? onFold(item, fold, cut.outline(), upright, spread.nap())
                    : copies(
                            item,
                            OpenedOut.of(piece, fold, cut),
                            upright,
                            spread,
                            fold.count(),
                            LaidPiece.Through.ONE_LAYER);
        }
        Outline outline = cut.outline();
        if (piece.cut() instanceof Cut.MirroredPair pair) {
            if (spread.folded()) {
                return copies(item, outline, upright, spread, pair.pairs(), LaidPiece.Through.BOTH_LAYERS);
            }
            List<Part> both =
                    new ArrayList<>(copies(item, outline, upright, spread, pair.pairs(), LaidPiece.Through.ONE_LAYER));
            both.addAll(copies(
                    item,
                    outline,
                    upright.then(Transform.mirrorX(0)),
                    spread,
                    pair.pairs(),
                    LaidPiece.Through.ONE_LAYER));
            return both;
        }
        return copies(item, outline, upright, spread, piece.cut().count(), LaidPiece.Through.ONE_LAYER);
    }

    private static List<Part> copies(
            CutList.Item item, Outline outline, Transform laid, Spread spread, int count, LaidPiece.Through through) {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Shape.of(outline, laid, false));
        if (!spread.nap()) {
            shapes.add(Shape.of(outline, laid.then(HALF_TURN), false));
        }
        List<Part> copies = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            copies.add(new Part(item, through, outline, shapes));
        }
        return copies;
    }

    private static List<Part> onFold(CutList.Item item, Cut.OnFold fold, Outline half, Transform upright, boolean nap) {
        Path edge = item.piece().path(fold.edge());
        Vector along = upright.apply(edge.end().minus(edge.start()));
        if (Math.abs(along.x()) > PARALLEL * Math.abs(along.y())) {
            throw PatternException.of(
                    "lay of piece '" + item.piece().name() + "'",
                    "edge '" + fold.edge() + "' must run with the grain to lie on the fold of cloth that is folded"
                            + " lengthwise",
                    "an edge across the grain or on the bias",
                    "spread the cloth in a single layer");
        }
        boolean leftOfFold = half.transformed(upright).centroid().x()
                < upright.apply(edge.start()).x();
        Transform laid = leftOfFold ? upright.then(Transform.mirrorX(0)) : upright;
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Shape.of(half, laid, true));
        if (!nap) {
            // Both halves are alike, so that turned by half a turn is the same as turned upside down.
            shapes.add(Shape.of(half, laid.then(UPSIDE_DOWN), true));
        }
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < fold.count(); i++) {
            parts.add(new Part(item, LaidPiece.Through.ON_FOLD, half, shapes));
        }
        return parts;
    }

    /** Turns the grain upright, its top up; without a sine, whose last digit is not the same on every machine. */
    private static Transform upright(Grainline grain) {
        Vector up = grain.top().minus(grain.bottom()).unit();
        return new Transform(-up.y(), -up.x(), up.x(), -up.y(), 0, 0);
    }
}
