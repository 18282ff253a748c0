package org.oaktag.geometry;

import java.util.function.BiConsumer;

/**
 * A stretch of one curve of a path, with bounds that its control points give.
 *
 * @param curve the index of the curve
 * @param piece the stretch of it
 */
record PathPiece(int curve, CubicPiece piece) {
    static PathPiece of(Path path, int curve) {
        return new PathPiece(curve, new CubicPiece(Cubic.from(path.curves().get(curve)), 0, 1));
    }

    Cubic cubic() {
        return piece.cubic();
    }

    PathPiece firstHalf() {
        return new PathPiece(curve, piece.firstHalf());
    }

    PathPiece secondHalf() {
        return new PathPiece(curve, piece.secondHalf());
    }

    /** Tells whether halving it leads nowhere: it is as short as rounding. */
    boolean isSpent() {
        return piece.to() - piece.from() < 0x1p-44;
    }

    /** Halves one of a pair, the longer if it is not spent, and hands on the two pairs that come of it. */
    static void halve(PathPiece a, PathPiece b, BiConsumer<PathPiece, PathPiece> pairs) {
        if (!a.isSpent() && (b.isSpent() || a.piece.size() >= b.piece.size())) {
            pairs.accept(a.firstHalf(), b);
            pairs.accept(a.secondHalf(), b);
        } else {
            pairs.accept(a, b.firstHalf());
            pairs.accept(a, b.secondHalf());
        }
    }

    Path.Location middle() {
        return new Path.Location(curve, piece.middle());
    }

    Point middlePoint() {
        return cubic().pointAt(0.5);
    }

    /** Returns how far the curve may be from its chord, mm: as far as a control point is. */
    double sag() {
        Line chord = new Line(cubic().start(), cubic().end());
        return Math.max(
                chord.nearest(cubic().control1()).distance(),
                chord.nearest(cubic().control2()).distance());
    }

    /** Returns how far a point of the stretch may be from the place, mm. */
    double reachFrom(Point place) {
        double reach = 0;
        for (Point control : cubic().controls()) {
            reach = Math.max(reach, control.distanceTo(place));
        }
        return reach;
    }

    /** Returns the least distance of the chords of two stretches, mm. */
    static double betweenChords(PathPiece a, PathPiece b) {
        Line one = new Line(a.cubic().start(), a.cubic().end());
        Line other = new Line(b.cubic().start(), b.cubic().end());
        if (areCrossed(one, other)) {
            return 0;
        }
        return Math.min(
                Math.min(
                        one.nearest(other.start()).distance(),
                        one.nearest(other.end()).distance()),
                Math.min(
                        other.nearest(one.start()).distance(),
                        other.nearest(one.end()).distance()));
    }

    private static boolean areCrossed(Line one, Line other) {
        return arePartedBy(one, other) && arePartedBy(other, one);
    }

    private static boolean arePartedBy(Line line, Line ends) {
        Vector along = line.end().minus(line.start());
        double start = along.cross(ends.start().minus(line.start()));
        double end = along.cross(ends.end().minus(line.start()));
        return (start < 0 && end > 0) || (start > 0 && end < 0);
    }
}
