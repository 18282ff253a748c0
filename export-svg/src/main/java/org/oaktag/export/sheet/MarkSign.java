package org.oaktag.export.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.oaktag.garment.Dart;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Mark;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * The signs of marks inside a piece: a cross, and round it a circle for what is drilled or set, or a bar for a
 * buttonhole.
 */
final class MarkSign {

    private static final double CROSS = 3;
    private static final double DRILL = 2;
    private static final double EYELET = 4;
    private static final double BUTTONHOLE = 9;

    /** The handle of a quarter of a circle as a cubic, in radii. */
    private static final double HANDLE = 4.0 / 3 * Math.tan(Math.PI / 8);

    private static final Vector RIGHT = Vector.of(1, 0);
    private static final Vector DOWN = Vector.of(0, 1);

    private MarkSign() {}

    /** Returns the lines of the sign of a mark. */
    static List<Path> of(Mark.Use use, Point at) {
        List<Path> lines = new ArrayList<>(List.of(across(at, CROSS, RIGHT), across(at, CROSS, DOWN)));
        switch (use) {
            case POINT -> {}
            case DRILL -> lines.add(circle(at, DRILL));
            case EYELET -> lines.add(circle(at, EYELET));
            case BUTTONHOLE -> {
                lines.set(0, across(at, BUTTONHOLE, RIGHT));
                lines.set(1, across(at.plus(Vector.of(-BUTTONHOLE, 0)), CROSS, DOWN));
                lines.add(across(at.plus(Vector.of(BUTTONHOLE, 0)), CROSS, DOWN));
            }
        }
        return lines;
    }

    /** Returns what the legend says of a sign. */
    static String meaning(Mark.Use use) {
        return switch (use) {
            case POINT -> "point to be marked";
            case DRILL -> "drill hole";
            case EYELET -> "eyelet";
            case BUTTONHOLE -> "buttonhole";
        };
    }

    /** Returns the uses of marks that occur, in their order; darts are drilled. */
    static SortedSet<Mark.Use> used(Garment garment) {
        SortedSet<Mark.Use> used = new TreeSet<>();
        for (Piece piece : garment.pieces()) {
            piece.marks().forEach(mark -> used.add(mark.use()));
            if (!Dart.all(piece).isEmpty()) {
                used.add(Mark.Use.DRILL);
            }
        }
        return used;
    }

    private static Path across(Point middle, double half, Vector direction) {
        return Path.polyline(middle.plus(direction.times(-half)), middle.plus(direction.times(half)));
    }

    private static Path circle(Point middle, double radius) {
        List<Curve> quarters = new ArrayList<>();
        Vector arm = Vector.of(radius, 0);
        for (int i = 0; i < 4; i++) {
            Vector next = Vector.of(-arm.y(), arm.x());
            quarters.add(Cubic.of(
                    middle.plus(arm),
                    middle.plus(arm).plus(next.times(HANDLE)),
                    middle.plus(next).plus(arm.times(HANDLE)),
                    middle.plus(next)));
            arm = next;
        }
        return Path.of(quarters);
    }
}
