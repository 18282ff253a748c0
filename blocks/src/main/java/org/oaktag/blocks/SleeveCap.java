package org.oaktag.blocks;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.measure.Length;

/**
 * The cap of a sleeve that is already drawn, to be lowered or fitted anew. Each half is a crown and, as its
 * last curve, the underarm curve of the armhole. Immutable.
 *
 * <pre>{@code
 * SleeveCap cap = SleeveCap.of(block.piece(SLEEVE));
 * cap.height();           // from the top down to the underarm points
 * cap.loweredBy(mm(10));  // wider, as a lower cap on the same armhole has to be
 * }</pre>
 *
 * @param sleeve the sleeve
 */
public record SleeveCap(Piece sleeve) {

    private static final double LEAST_CROWN = 5;

    /** A direction that falls by no more than this on a length of 1 is level. */
    private static final double LEVEL = 1e-9;

    /** Refuses null. */
    public SleeveCap {
        Objects.requireNonNull(sleeve, "sleeve");
    }

    /** Returns the cap of a sleeve. */
    public static SleeveCap of(Piece sleeve) {
        return new SleeveCap(sleeve);
    }

    /**
     * Returns the height of the cap: from its top straight down to the underarm points. Its top is where its halves
     * meet or, if a shoulder seam was moved and they meet on the slope, the highest point of its crown.
     */
    public Length height() {
        Path front = sleeve.path(TopEdges.CAP_FRONT);
        if (Math.abs(front.startDirection().y()) <= LEVEL) {
            return Length.mm(underarmLevel() - top().y());
        }
        double highest = Math.min(
                front.bounds().minY(), sleeve.path(TopEdges.CAP_BACK).bounds().minY());
        return Length.mm(underarmLevel() - highest);
    }

    /** Returns by how much the top of the cap can be moved down before its crown sinks to its underarm curves. */
    public Length mostLowering() {
        double joint = Math.min(
                joint(sleeve.path(TopEdges.CAP_FRONT)).y(),
                joint(sleeve.path(TopEdges.CAP_BACK).reversed()).y());
        return Length.mm(Math.max(0, joint - LEAST_CROWN - top().y()));
    }

    /**
     * Returns the sleeve with the top of the cap moved down; the underarm curves stay as they are, and each half of the
     * crown is redrawn.
     *
     * @param by how far down, no more than {@link #mostLowering()}; negative to raise the cap
     * @throws PatternException if the crown would sink to its underarm curves
     */
    public Piece loweredBy(Length by) {
        if (by.compareTo(mostLowering()) > 0) {
            throw PatternException.of(
                    "sleeve cap",
                    "a cap " + height().text() + " high can lose "
                            + mostLowering().roundedDown().text()
                            + " at the most before its crown sinks to its underarm curves",
                    by.text(),
                    "lower it by less");
        }
        Path front = sleeve.path(TopEdges.CAP_FRONT);
        Path back = sleeve.path(TopEdges.CAP_BACK).reversed();
        Point lower = Point.of(top().x(), top().y() + by.mm());
        return sleeve.redrawn(Map.of(
                TopEdges.CAP_FRONT, withTop(front, lower),
                TopEdges.CAP_BACK, withTop(back, lower).reversed()));
    }

    /**
     * Returns the sleeve with a cap fitted to an armhole, its underarm level where it was. The underarm points move to
     * the new width; the hem keeps its width and is centred under them.
     *
     * @param fit the cap, prepared for the armholes
     * @param solved its height and widths
     * @throws PatternException if the sleeve below is so short or so narrow that the new outline would cross itself
     */
    public Piece fitted(CapFit fit, CapFit.Solved solved) {
        Point top = Point.of(top().x(), underarmLevel() - solved.height());
        Path front = SleeveShape.capFront(fit, solved, top);
        Path back = SleeveShape.capBack(fit, solved, top);
        Edge hem = sleeve.after(TopEdges.UNDERARM_FRONT);
        double middle = (front.end().x() + back.start().x()) / 2;
        double hemMiddle = hem.path().start().midpoint(hem.path().end()).x();
        Path moved = hem.path().transformed(Transform.translation(middle - hemMiddle, 0));
        Piece bare = sleeve.withoutNotchesOn(TopEdges.CAP_FRONT).withoutNotchesOn(TopEdges.CAP_BACK);
        Point frontUnderarm = front.end();
        Point backUnderarm = back.start();
        Point hemFront = moved.start();
        Point hemBack = moved.end();
        Piece capped = bare.redrawn(Map.of(
                TopEdges.CAP_FRONT,
                front,
                TopEdges.CAP_BACK,
                back,
                hem.name(),
                moved,
                TopEdges.UNDERARM_FRONT,
                Redraw.between(bare.path(TopEdges.UNDERARM_FRONT), frontUnderarm, hemFront),
                TopEdges.UNDERARM_BACK,
                Redraw.between(bare.path(TopEdges.UNDERARM_BACK), hemBack, backUnderarm)));
        if (capped.outline().meetsItself()) {
            throw PatternException.of(
                    "sleeve",
                    "must not overlap itself under the cap that the armhole asks for",
                    "a cap " + Length.mm(solved.height()).text() + " high and "
                            + Length.mm(solved.width()).text() + " wide",
                    "fit the cap before the sleeve is cut, split or spread");
        }
        return SleeveShape.notched(capped, fit);
    }

    /** Returns the garment with the seams of both halves of the cap eased by this much in all. */
    public static Garment easedBy(Garment garment, Length ease) {
        return garment.withSeams(garment.seams().stream()
                .map(seam -> List.of(TopNames.FRONT_ARMHOLE_SEAM, TopNames.BACK_ARMHOLE_SEAM)
                                .contains(seam.name())
                        ? TopSeams.cap(seam.name(), ease)
                        : seam)
                .toList());
    }

    private Point top() {
        return sleeve.path(TopEdges.CAP_FRONT).start();
    }

    private double underarmLevel() {
        return sleeve.path(TopEdges.CAP_FRONT).end().y();
    }

    /** Returns where the crown of a half, given from the top, runs into its underarm curve. */
    private static Point joint(Path half) {
        List<Curve> curves = half.curves();
        return curves.get(curves.size() - 1).start();
    }

    /** Redraws a half of the cap, given from the top to the underarm point, above its underarm curve. */
    private static Path withTop(Path half, Point top) {
        List<Curve> curves = half.curves();
        Curve underarm = curves.get(curves.size() - 1);
        return Path.of(CapHalf.crown(top, underarm.start(), underarm.directionAt(0)), underarm);
    }
}
