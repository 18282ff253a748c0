package org.oaktag.skirt;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeFinish;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Mark;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
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
        Point a = centre.plus(Vector.of(fromCentre.mm(), belowWaist.mm()));
        Point b = a.plus(Vector.of(width.mm(), 0));
        Point c = b.plus(Vector.of(0, height.mm()));
        Point d = a.plus(Vector.of(0, height.mm()));
        List<Point> corners = List.of(a, b, c, d);
        Path line = Path.polyline(a, b, c, d, a);
        boolean inside = corners.stream().allMatch(shell.outline()::contains)
                && org.oaktag.geometry.Crossings.between(line, shell.outline().path())
                        .isEmpty();
        if (!inside) {
            throw PatternException.of(
                    "pocket on the " + half,
                    "must lie inside the piece, clear of its darts",
                    fromCentre.text() + " from the centre and " + belowWaist.text() + " below the waist",
                    "make it smaller or move it");
        }
        Name own = half.with(SkirtFinishNames.POCKET.value());
        Piece pocket = Piece.of(
                own,
                List.of(
                        Edge.straight(EdgeNames.OPENING, a, b).withFinish(EdgeFinish.TURNED_BACK_SQUARE),
                        Edge.straight(EdgeNames.SIDE, b, c),
                        Edge.straight(EdgeNames.BOTTOM, c, d),
                        Edge.straight(EdgeNames.CENTRE, d, a)),
                new Grainline(
                        a.midpoint(b).plus(Vector.of(0, 0.2 * height.mm())),
                        a.midpoint(b).plus(Vector.of(0, 0.8 * height.mm()))),
                Cut.pair(),
                cloth.orElse(shell.cloth()));
        return new Reshaped(
                Finishing.of(garment)
                        .put(marked(shell, own, line, corners))
                        .put(pocket)
                        .done(),
                List.of(Note.rule("its place is marked on the " + half + ", " + fromCentre.text()
                        + " from the centre and " + belowWaist.text() + " below the waist")),
                List.of(
                        new Dimension(half, a, b, "width " + width.text()),
                        new Dimension(half, a, d, "height " + height.text())));
    }

    private static Piece marked(Piece shell, Name own, Path line, List<Point> corners) {
        List<InnerLine> lines = new ArrayList<>(shell.lines());
        lines.removeIf(each -> each.name().equals(own));
        lines.add(new InnerLine(own, InnerLine.Use.PLACEMENT, line));
        List<Mark> marks = new ArrayList<>(shell.marks());
        Point middle = corners.get(0).midpoint(corners.get(2));
        for (int i = 0; i < corners.size(); i++) {
            Name name = own.with("corner " + (i + 1));
            marks.removeIf(each -> each.name().equals(name));
            Point corner = corners.get(i);
            Vector in = Vector.of(Math.signum(middle.x() - corner.x()), Math.signum(middle.y() - corner.y()))
                    .unit();
            marks.add(new Mark(name, Mark.Use.DRILL, corner.plus(in.times(Mark.INSIDE_CORNER.mm()))));
        }
        return shell.withLines(lines).withMarks(marks);
    }
}
