package org.oaktag.garment;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.geometry.OffsetPart;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * Where a piece is cut: the seam line moved outwards by the allowance of each edge. Nowhere is it nearer to an edge
 * than that edge's allowance, less 0.01 mm; only at the ends of an edge that is folded back may it come as near as the
 * neighbour's allowance. Immutable.
 *
 * <pre>{@code
 * CutLine line = CutLine.of(front, Allowances.of("home sewing", mm(15)));
 * line.outline().area() > front.outline().area();   // = true
 * line.runs().size();                               // = 1
 * }</pre>
 *
 * @param outline all the way round; along the fold of the cloth it is the fold itself
 * @param runs where the scissors go: all the way round, or from fold to fold where an edge lies on the fold
 * @param snips the notches carried to it, the legs of darts that are folded, and the centre points at the ends of a
 *     fold
 * @param drillHoles where a hole is drilled in the cloth of a dart that is folded, short of its apex
 */
public record CutLine(Outline outline, List<Path> runs, List<Snip> snips, List<Point> drillHoles) {

    static final double TOLERANCE = 0.01;

    /** Copies the lists. */
    public CutLine {
        Objects.requireNonNull(outline, "outline");
        runs = List.copyOf(runs);
        snips = List.copyOf(snips);
        drillHoles = List.copyOf(drillHoles);
    }

    /**
     * Returns the cut line of a piece.
     *
     * @throws PatternException if the outline encloses no area, an allowance is so wide that an edge, or a hollow of
     *     one, is closed before anything is cut beside it, or an edge cannot be folded back
     */
    public static CutLine of(Piece piece, Allowances allowances) {
        Outline seamLine = piece.outline();
        if (!seamLine.isClockwise()) {
            throw PatternException.of(
                    "cut line of piece '" + piece.name() + "'",
                    "needs an outline that runs clockwise round an area",
                    String.format(Locale.ROOT, "an area of %.1f mm²", seamLine.signedArea()),
                    "");
        }
        CutBorder border = CutBorder.of(piece, allowances);
        List<OffsetPart> parts = border.parts();
        border.uncut(parts).ifPresent(uncut -> {
            throw refused(piece, border, uncut, allowances.on(piece, uncut.edge()));
        });
        CutLine bare = new CutLine(outline(parts), runs(border, parts), List.of(), List.of());
        List<FoldedDart> darts = border.darts();
        return new CutLine(
                bare.outline,
                bare.runs,
                Snip.of(piece, allowances, bare, darts),
                darts.stream().map(FoldedDart::drillHole).toList());
    }

    /** Names the greatest tenth of a millimetre that works; the next is refused as well. */
    private static PatternException refused(Piece piece, CutBorder border, CutBorder.Uncut uncut, Length width) {
        Length works = Length.greatestTenth(width, each -> border.isCutAt(each.mm() / width.mm()));
        return PatternException.of(
                "allowance of '" + EdgeRef.of(piece.name(), uncut.edge()) + "'",
                "must leave room to cut along the edge; here " + uncut.why(),
                width.text(),
                works.equals(Length.ZERO)
                        ? "draw it wider, or cut it open without an allowance"
                        : "use at most " + works.text()
                                + ", and the other allowances of the piece narrower by the same share");
    }

    private static Outline outline(List<OffsetPart> parts) {
        return Outline.of(Path.of(
                parts.stream().flatMap(part -> part.path().curves().stream()).toList()));
    }

    /** Leaves the fold out and joins the rest, from the end of the fold onwards. */
    private static List<Path> runs(CutBorder border, List<OffsetPart> parts) {
        int fold = 0;
        while (fold < parts.size() && !border.isFold(parts.get(fold))) {
            fold++;
        }
        if (fold == parts.size()) {
            return List.of(outline(parts).path());
        }
        List<Path> runs = new ArrayList<>();
        for (int i = 1; i < parts.size(); i++) {
            OffsetPart part = parts.get((fold + i) % parts.size());
            int last = runs.size() - 1;
            if (border.isFold(part)) {
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
}
