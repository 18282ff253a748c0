package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.oaktag.PatternException;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Mark;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/** Marks on a shell where something is laid on: a placement line, and a point at each of its corners. */
record LaidOn(Name part, Path line, List<Point> corners) {

    /** How far a corner may lie outside through rounding, where the part ends on an edge, in millimetres. */
    private static final double ROUNDING = 1e-6;

    /** Returns the shell with the marks in the place of any that it has for this part. */
    Piece on(Piece shell) {
        for (Point corner : corners) {
            if (!shell.outline().contains(corner)
                    && shell.outline().path().nearest(corner).distance() > ROUNDING) {
                double past = shell.outline().path().nearest(corner).distance();
                throw PatternException.of(
                        part + " on the " + shell.name(),
                        "must lie inside the piece",
                        "a corner " + Length.mm(past).roundedUp().text() + " outside it",
                        "make it smaller or move it");
            }
        }
        List<InnerLine> lines = new ArrayList<>(shell.lines());
        lines.removeIf(each -> each.name().equals(part));
        lines.add(new InnerLine(part, InnerLine.Use.PLACEMENT, line));
        Set<Name> names = Set.copyOf(names());
        List<Mark> marks = new ArrayList<>(shell.marks());
        marks.removeIf(each -> names.contains(each.name()));
        for (int i = 0; i < corners.size(); i++) {
            marks.add(new Mark(names().get(i), Mark.Use.DRILL, corners.get(i)));
        }
        return shell.withLines(lines).withMarks(marks);
    }

    private List<Name> names() {
        List<Name> names = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            names.add(Name.of(part.value() + " corner " + (i + 1)));
        }
        return names;
    }
}
