package org.oaktag.garment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.oaktag.geometry.Crossing;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * One cut of a notch, carried from the seam line to the cut line: square to the seam line, or along the fold of the
 * cloth where it marks the centre. Immutable.
 *
 * <pre>{@code
 * for (Snip snip : CutLine.of(front, allowances).snips()) {
 *     snip.seam().distanceTo(snip.cut());   // how deep the allowance is there, mm
 * }
 * }</pre>
 *
 * @param seam its place on the seam line
 * @param cut where it meets the cut line; inside the piece where the edge has no allowance, as the mark is then drawn
 * @param path what is drawn: from the seam line to the cut line, in which a wedge stands if that is how it is cut
 */
public record Snip(Point seam, Point cut, Path path) {

    /** The distance between the cuts of a multiple notch, mm; common practice is 3 to 6. */
    private static final double PITCH = 4;

    /** The length of a notch on an edge without an allowance, mm. */
    private static final double INSIDE = 5;

    /**
     * How deep a notch is cut at the most, mm, and in shares of the allowance: common practice, so that the seam holds.
     */
    private static final double DEEPEST = 5;

    private static final double SHARE = 0.5;

    /** How wide half a wedge is at the edge of the cloth, in depths. */
    private static final double HALF_WIDTH = 0.5;

    /** How much further than the allowance the cut line is looked for, mm: it may lie further out at a corner. */
    private static final double FURTHER = 60;

    /** Below this a point of the cut line lies on the seam line, mm. */
    private static final double NOTHING = 1e-3;

    /** Refuses null. */
    public Snip {
        Objects.requireNonNull(seam, "seam");
        Objects.requireNonNull(cut, "cut");
        Objects.requireNonNull(path, "path");
    }

    /**
     * Returns every cut of every notch of a piece, in their order, then those of the legs of folded darts, then those
     * of the ends of a fold: the centre points.
     */
    static List<Snip> of(Piece piece, Allowances allowances, CutLine cutLine, List<FoldedDart> darts) {
        Path border = cutLine.outline().path();
        List<Snip> snips = new ArrayList<>();
        for (Notch notch : piece.notches()) {
            Path edge = piece.path(notch.edge());
            double length = edge.length();
            double width = allowances.on(piece, notch.edge()).mm();
            for (int i = 0; i < notch.count(); i++) {
                double at = notch.fromStart(length) + (i - (notch.count() - 1) / 2.0) * PITCH;
                double inside = Math.min(Math.max(at, 0), length);
                Vector outward = edge.directionAt(inside).leftNormal();
                snips.add(of(edge.pointAt(inside), outward, width, border, allowances.notches()));
            }
        }
        for (FoldedDart folded : darts) {
            double width = allowances.on(piece, folded.host(piece).name()).mm();
            for (Point mouth : List.of(folded.dart().mouthA(), folded.dart().mouthB())) {
                Vector alongLeg = mouth.minus(folded.dart().apex()).unit();
                snips.add(of(mouth, alongLeg, width, border, allowances.notches()));
            }
        }
        if (piece.cut() instanceof Cut.OnFold fold) {
            Path path = piece.path(fold.edge());
            for (Path run : cutLine.runs()) {
                centre(path.end(), run.start(), allowances.notches(), snips);
                centre(path.start(), run.end(), allowances.notches(), snips);
            }
        }
        return List.copyOf(snips);
    }

    private static Snip of(Point foot, Vector outward, double width, Path border, NotchCut shape) {
        return width > 0 ? carried(foot, outward, width, border, shape) : inside(foot, outward);
    }

    private static void centre(Point corner, Point cut, NotchCut shape, List<Snip> snips) {
        double width = corner.distanceTo(cut);
        if (width > NOTHING && width < FURTHER) {
            snips.add(drawn(corner, cut, cut.minus(corner).unit(), width, shape));
        }
    }

    private static Snip inside(Point foot, Vector outward) {
        Point tip = foot.plus(outward.times(-INSIDE));
        return new Snip(foot, tip, Path.polyline(foot, tip));
    }

    private static Snip carried(Point foot, Vector outward, double width, Path border, NotchCut shape) {
        Path ray = Path.polyline(foot.plus(outward.times(width / 2)), foot.plus(outward.times(width + FURTHER)));
        Point cut = Crossings.between(ray, border).stream()
                .min(Comparator.comparingDouble(Crossing::first))
                .map(Crossing::point)
                .orElse(foot.plus(outward.times(width)));
        return drawn(foot, cut, outward, width, shape);
    }

    private static Snip drawn(Point foot, Point cut, Vector outward, double width, NotchCut shape) {
        if (shape == NotchCut.SLIT) {
            return new Snip(foot, cut, Path.polyline(foot, cut));
        }
        double depth = Math.min(SHARE * width, DEEPEST);
        Point apex = cut.plus(outward.times(-depth));
        Vector half = outward.rightNormal().times(HALF_WIDTH * depth);
        return new Snip(foot, cut, Path.polyline(foot, apex, cut.plus(half), cut.plus(half.negated()), apex));
    }
}
