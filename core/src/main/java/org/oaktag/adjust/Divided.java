package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.PatternException;
import org.oaktag.garment.Cut;
import org.oaktag.garment.DartInTheWay;
import org.oaktag.garment.Edge;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Crossing;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * A piece cut in two along a line and not yet put together again.
 *
 * <p>As outlines run clockwise, the stretches from the start of the line to its end, clockwise, lie on its left.
 *
 * @param piece the piece as it was
 * @param line the line
 * @param cut where the line runs, put on the very points at which the outline was cut
 * @param left the outline left of the line, clockwise from its start to its end
 * @param right the outline right of the line, clockwise from its end to its start
 * @param leftOutline the outline of the part on the left of the line
 */
record Divided(Piece piece, LaidLine line, Path cut, List<Fragment> left, List<Fragment> right, Outline leftOutline) {

    /** A cut nearer than this, in millimetres, to the end of an edge is made at the end. */
    private static final double ROUNDING = 1e-6;

    /** Nearer to its ends than this, in millimetres, the line may touch the outline. */
    private static final double AT_END = 1e-4;

    /** A stretch of an inner line on one side of the cut. */
    record LinePart(Path path, boolean left) {}

    static Divided of(Piece piece, LaidLine line) {
        List<Fragment> ring = new ArrayList<>();
        int from = -1;
        int to = -1;
        double fromAt = line.from().distanceOn(piece);
        double toAt = line.to().distanceOn(piece);
        for (Edge edge : piece.edges()) {
            double length = edge.path().length();
            boolean cutFrom = edge.name().equals(line.from().edge());
            boolean cutTo = edge.name().equals(line.to().edge());
            boolean fromFirst = !cutTo || fromAt <= toAt;
            double begun = 0;
            for (int turn = 0; turn < 2; turn++) {
                boolean isFrom = (turn == 0) == fromFirst;
                if (isFrom ? !cutFrom : !cutTo) {
                    continue;
                }
                double at = isFrom ? fromAt : toAt;
                if (at - begun > ROUNDING) {
                    double until = length - at <= ROUNDING ? length : at;
                    ring.add(Fragment.of(edge, edge.path().sub(begun, until), begun));
                    begun = until;
                }
                if (isFrom) {
                    from = ring.size();
                } else {
                    to = ring.size();
                }
            }
            if (length - begun > ROUNDING) {
                ring.add(
                        Fragment.of(edge, begun == 0 ? edge.path() : edge.path().sub(begun, length), begun));
            }
        }
        List<Fragment> left = cyclic(ring, from, to);
        List<Fragment> right = cyclic(ring, to, from);
        if (left.isEmpty() || right.isEmpty() || from % ring.size() == to % ring.size()) {
            throw PatternException.of(
                    thing(piece),
                    "must run between two places of the outline",
                    line.from().text() + " to " + line.to().text(),
                    "");
        }
        Path cut = line.path()
                .withEnds(left.get(0).path().start(), right.get(0).path().start());
        Divided divided =
                new Divided(piece, line, cut, List.copyOf(left), List.copyOf(right), outline(left, cut.reversed()));
        divided.requireInside();
        return divided;
    }

    private static List<Fragment> cyclic(List<Fragment> ring, int from, int to) {
        List<Fragment> chain = new ArrayList<>();
        int size = ring.size();
        for (int i = from % size; i != to % size; i = (i + 1) % size) {
            chain.add(ring.get(i));
        }
        return chain;
    }

    private static String thing(Piece piece) {
        return "line across piece '" + piece.name() + "'";
    }

    /** Where both parts meet themselves nowhere, the line meets no edge between its ends. */
    private void requireInside() {
        Outline outline = piece.outline();
        if (leftOutline.meetsItself() || outline(right, cut).meetsItself()) {
            requireNoMeeting(outline);
        }
        if (!outline.contains(cut.pointAt(cut.length() / 2))) {
            throw PatternException.of(
                    thing(piece), "must run inside the piece", "a line outside it", "choose other ends");
        }
    }

    private void requireNoMeeting(Outline outline) {
        for (Crossing crossing : Crossings.between(cut, outline.path())) {
            boolean runsAlong = !crossing.from().point().isCloseTo(crossing.to().point(), AT_END);
            if (runsAlong
                    || !isAtEnd(crossing.from().point())
                    || !isAtEnd(crossing.to().point())) {
                DartInTheWay.requireOffLegs(piece, crossing.point());
                throw PatternException.of(
                        thing(piece),
                        "must not meet the outline between its ends",
                        "a meeting " + Length.mm(crossing.point().x()).text() + " right and "
                                + Length.mm(crossing.point().y()).text() + " down",
                        "choose other ends, or a line that runs inside the piece");
            }
        }
    }

    private boolean isAtEnd(Point point) {
        return point.isCloseTo(cut.start(), AT_END) || point.isCloseTo(cut.end(), AT_END);
    }

    private static Outline outline(List<Fragment> chain, Path closing) {
        List<Curve> curves = new ArrayList<>();
        chain.forEach(fragment -> curves.addAll(fragment.path().curves()));
        curves.addAll(closing.curves());
        return Outline.of(Path.of(curves));
    }

    boolean isLeft(Point point) {
        return leftOutline.contains(point);
    }

    boolean isLeft(Notch notch) {
        Name edge = notch.edge();
        double at = notch.fromStart(piece.path(edge).length());
        return left.stream().anyMatch(fragment -> fragment.covers(edge, at, ROUNDING));
    }

    /**
     * Tells whether the left part is the one to lie still: that on the fold, else that with the middle of the
     * grainline.
     */
    boolean leftStays() {
        if (piece.cut() instanceof Cut.OnFold fold) {
            boolean onLeft = left.stream().anyMatch(each -> each.edge().equals(fold.edge()));
            boolean onRight = right.stream().anyMatch(each -> each.edge().equals(fold.edge()));
            if (onLeft != onRight) {
                return onLeft;
            }
        }
        return isLeft(piece.grainline().top().midpoint(piece.grainline().bottom()));
    }

    /** The stretches of an inner line on either side of the cut, in order. */
    List<LinePart> parts(InnerLine inner) {
        Path path = inner.path();
        List<Double> places = new ArrayList<>();
        for (Crossing crossing : Crossings.between(path, cut)) {
            if (crossing.first() > ROUNDING && crossing.first() < path.length() - ROUNDING) {
                places.add(crossing.first());
            }
        }
        places.add(path.length());
        List<LinePart> parts = new ArrayList<>();
        double begun = 0;
        for (double place : places) {
            Path part = begun == 0 && place == path.length() ? path : path.sub(begun, place);
            parts.add(new LinePart(part, isLeft(part.pointAt(part.length() / 2))));
            begun = place;
        }
        return parts;
    }
}
