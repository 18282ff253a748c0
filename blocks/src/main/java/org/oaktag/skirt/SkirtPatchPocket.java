package org.oaktag.skirt;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.draft.Patch;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * Lays a pocket on either half of the front or the back: its place is a line, with a hole drilled inside each corner.
 *
 * <pre>{@code
 * skirt.adjust(patchPocket(SkirtNames.FRONT, mm(130), mm(150)));
 * }</pre>
 *
 * @param half the front or the back
 * @param width how wide it is, 60 to 220 mm
 * @param height how high it is, 60 to 260 mm
 * @param fromCentre how far its nearer edge lies from the centre, 10 to 300 mm
 * @param belowWaist how far its upper edge lies below the waist at the centre, 40 to 700 mm
 * @param cloth what it is cut from, or empty for the cloth of the half
 */
public record SkirtPatchPocket(
        Name half, Length width, Length height, Length fromCentre, Length belowWaist, Optional<Cloth> cloth)
        implements Step {

    /**
     * Checks the amounts.
     *
     * @throws PatternException if one is out of its range
     */
    public SkirtPatchPocket {
        Objects.requireNonNull(half, "half");
        Objects.requireNonNull(width, "width");
        Objects.requireNonNull(height, "height");
        Objects.requireNonNull(fromCentre, "fromCentre");
        Objects.requireNonNull(belowWaist, "belowWaist");
        Objects.requireNonNull(cloth, "cloth");
        Range.check("width of the pocket", "must be", width, Length.mm(60), Length.mm(220));
        Range.check("height of the pocket", "must be", height, Length.mm(60), Length.mm(260));
        Range.check("pocket from the centre", "must be", fromCentre, Length.mm(10), Length.mm(300));
        Range.check("pocket below the waist", "must be", belowWaist, Length.mm(40), Length.mm(700));
    }

    /** Returns the step with the pocket in another place. */
    public SkirtPatchPocket at(Length otherFromCentre, Length otherBelowWaist) {
        return new SkirtPatchPocket(half, width, height, otherFromCentre, otherBelowWaist, cloth);
    }

    /** Returns the step with a pocket cut from another cloth. */
    public SkirtPatchPocket cutFrom(Cloth other) {
        return new SkirtPatchPocket(half, width, height, fromCentre, belowWaist, Optional.of(other));
    }

    @Override
    public String name() {
        return "lay a pocket on the " + half;
    }

    @Override
    public List<Amount> amounts() {
        return List.of(
                Amount.of("width", width),
                Amount.of("height", height),
                Amount.of("from the centre", fromCentre),
                Amount.of("below the waist", belowWaist));
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if the pocket does not lie inside the half, clear of its darts
     */
    @Override
    public Reshaped reshape(Garment garment) {
        Piece shell = Shell.of(garment, half);
        Point centre = shell.corner(SkirtNames.WAIST, End.START);
        Name own = half.with(SkirtFinishNames.POCKET.value());
        Patch patch = new Patch(own, centre.plus(Vector.of(fromCentre.mm(), belowWaist.mm())), width, height);
        List<Point> corners = patch.corners();
        boolean inside = corners.stream().allMatch(shell.outline()::contains)
                && Crossings.between(patch.line(), shell.outline().path()).isEmpty();
        if (!inside) {
            throw PatternException.of(
                    "pocket on the " + half,
                    "must lie inside the piece, clear of its darts",
                    fromCentre.text() + " from the centre and " + belowWaist.text() + " below the waist",
                    "make it smaller or move it");
        }
        return new Reshaped(
                Finishing.of(garment)
                        .put(patch.laidOn().on(shell))
                        .put(patch.piece(cloth.orElse(shell.cloth())))
                        .done(),
                List.of(Note.rule("its place is marked on the " + half + ", " + fromCentre.text()
                        + " from the centre and " + belowWaist.text() + " below the waist")),
                List.of(
                        new Dimension(half, corners.get(0), corners.get(1), "width " + width.text()),
                        new Dimension(half, corners.get(0), corners.get(3), "height " + height.text())));
    }
}
