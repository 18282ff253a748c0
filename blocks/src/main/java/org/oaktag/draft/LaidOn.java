package org.oaktag.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.oaktag.PatternException;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Mark;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * Marks on a shell where something is laid on: a placement line, and a drill hole inside each of its corners, so that
 * the part covers it. Immutable.
 *
 * <pre>{@code
 * Patch patch = new Patch(Name.of("pocket"), Point.of(60, 250), mm(130), mm(150));
 * patch.laidOn().on(front).marks().size() >= 4;   // = true
 * }</pre>
 *
 * @param part what is laid on
 * @param line where its edge comes to lie
 * @param corners the corners that are drilled, each between two curves of the line
 */
public record LaidOn(Name part, Path line, List<Point> corners) {

    /** How far a corner may lie outside through rounding, where the part ends on an edge, in millimetres. */
    private static final double ROUNDING = 1e-6;

    /** Copies the list. */
    public LaidOn {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(line, "line");
        corners = List.copyOf(corners);
    }

    /**
     * Returns the shell with the marks in the place of any that it has for this part.
     *
     * @throws PatternException if a corner or the hole inside it lies beside the shell or in a dart of it
     */
    public Piece on(Piece shell) {
        for (Point corner : corners) {
            checkInside(shell, corner, "a corner ");
            checkInside(shell, hole(corner), "the hole at a corner ");
        }
        List<InnerLine> lines = new ArrayList<>(shell.lines());
        lines.removeIf(each -> each.name().equals(part));
        lines.add(new InnerLine(part, InnerLine.Use.PLACEMENT, line));
        Set<Name> names = Set.copyOf(names());
        List<Mark> marks = new ArrayList<>(shell.marks());
        marks.removeIf(each -> names.contains(each.name()));
        for (int i = 0; i < corners.size(); i++) {
            marks.add(new Mark(names().get(i), Mark.Use.DRILL, hole(corners.get(i))));
        }
        return shell.withLines(lines).withMarks(marks);
    }

    /** Refuses a point that lies beside the shell or in a dart of it. */
    private void checkInside(Piece shell, Point point, String what) {
        Outline outline = shell.outline();
        if (outline.contains(point)) {
            return;
        }
        double past = outline.path().nearest(point).distance();
        if (past > ROUNDING) {
            throw PatternException.of(
                    part + " on the " + shell.name(),
                    "must lie inside the piece",
                    what + Length.mm(past).roundedUp().text() + " outside it",
                    "make it smaller or move it");
        }
    }

    /** Returns the point inside a corner, on the line that halves it. */
    private Point hole(Point corner) {
        List<Curve> curves = line.curves();
        for (int i = 0; i < curves.size(); i++) {
            Curve next = curves.get((i + 1) % curves.size());
            if (curves.get(i).end().equals(corner) && next.start().equals(corner)) {
                Vector back = curves.get(i).directionAt(1).negated();
                return corner.plus(back.plus(next.directionAt(0)).unit().times(Mark.INSIDE_CORNER.mm()));
            }
        }
        throw new IllegalStateException("no corner of the " + part + " at " + corner);
    }

    private List<Name> names() {
        List<Name> names = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            names.add(Name.of(part.value() + " corner " + (i + 1)));
        }
        return names;
    }
}
