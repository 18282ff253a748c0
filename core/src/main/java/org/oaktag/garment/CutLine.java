package org.oaktag.garment;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.oaktag.PatternException;
import org.oaktag.geometry.CornerStyle;
import org.oaktag.geometry.OffsetPart;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.OutlineOffset;
import org.oaktag.geometry.Path;

/**
 * Where a piece is cut: the seam line moved outwards by the allowance of each edge, its corners mitred. Nowhere is it
 * nearer to an edge than that edge's allowance, less 0.01 mm. Immutable.
 *
 * @param outline all the way round; along the fold of the cloth it is the fold itself
 * @param runs where the scissors go: all the way round, or from fold to fold where an edge lies on the fold
 */
public record CutLine(Outline outline, List<Path> runs) {

    private static final double TOLERANCE = 0.01;

    /** A tip further from its corner than three times the allowance is cut off. */
    private static final CornerStyle CORNERS = CornerStyle.mitre(3);

    /** Copies the list. */
    public CutLine {
        runs = List.copyOf(runs);
    }

    /**
     * Returns the cut line of a piece.
     *
     * @throws PatternException if the outline encloses no area
     */
    public static CutLine of(Piece piece, Allowances allowances) {
        List<Path> edges = piece.edges().stream().map(Edge::path).toList();
        double[] widths = piece.edges().stream()
                .mapToDouble(edge -> allowances.on(piece, edge.name()).mm())
                .toArray();
        Outline seamLine = piece.outline();
        if (!seamLine.isClockwise()) {
            throw PatternException.of(
                    "cut line of piece '" + piece.name() + "'",
                    "needs an outline that runs clockwise round an area",
                    String.format(Locale.ROOT, "an area of %.1f mm²", seamLine.signedArea()),
                    "");
        }
        OutlineOffset offset = OutlineOffset.outward(edges, widths, CORNERS, TOLERANCE);
        return new CutLine(offset.outline(), runs(piece, offset));
    }

    /** Leaves the fold out and joins the rest, from the end of the fold onwards. */
    private static List<Path> runs(Piece piece, OutlineOffset offset) {
        List<OffsetPart> parts = offset.parts();
        int fold = fold(piece, parts);
        if (fold < 0) {
            return List.of(offset.outline().path());
        }
        List<Path> runs = new ArrayList<>();
        for (int i = 1; i < parts.size(); i++) {
            OffsetPart part = parts.get((fold + i) % parts.size());
            int last = runs.size() - 1;
            if (isFold(piece, part)) {
                continue;
            }
            if (last >= 0 && runs.get(last).end().equals(part.path().start())) {
                runs.set(last, runs.get(last).then(part.path()));
            } else {
                runs.add(part.path());
            }
        }
        return runs;
    }

    private static int fold(Piece piece, List<OffsetPart> parts) {
        for (int i = 0; i < parts.size(); i++) {
            if (isFold(piece, parts.get(i))) {
                return i;
            }
        }
        return -1;
    }

    private static boolean isFold(Piece piece, OffsetPart part) {
        return piece.cut() instanceof Cut.OnFold fold
                && !part.corner()
                && piece.edges().get(part.edge()).name().equals(fold.edge());
    }
}
