package org.oaktag.blocks;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.oaktag.PatternException;
import org.oaktag.draft.RootFinder;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * The lower end of a sleeve, of its upper or of its lower part: the edge between both underarm edges, to be moved.
 * Immutable.
 *
 * <pre>{@code
 * SleeveEnd end = SleeveEnd.of(block.piece(SLEEVE));
 * end.width();             // of the sleeve at its hem
 * end.shortenedBy(cm(5));
 * }</pre>
 *
 * @param part the sleeve or a part of it, with both underarm edges
 */
public record SleeveEnd(Piece part) {

    /** How much of both underarm edges has to be left, in millimetres. */
    private static final double LEAST_PART = 20;

    /** A direction that leads aside by no more than this on a length of 1 is upright. */
    private static final double UPRIGHT = 1e-9;

    /** Refuses null. */
    public SleeveEnd {
        Objects.requireNonNull(part, "part");
    }

    /** Returns the lower end of a sleeve or of a part of it. */
    public static SleeveEnd of(Piece part) {
        return new SleeveEnd(part);
    }

    /**
     * Returns by how much the lower end can be moved up: 20 mm are left below what it hangs from, or below the last
     * joint of an underarm edge of several curves, of which only the last is redrawn.
     */
    public Length mostShortening() {
        List<Curve> front = part.path(TopEdges.UNDERARM_FRONT).curves();
        Curve back = part.path(TopEdges.UNDERARM_BACK).curves().get(0);
        double upper =
                Math.max(front.get(front.size() - 1).start().y(), back.end().y());
        if (part.hasEdge(EdgeNames.TOP)) {
            upper = Math.max(upper, part.path(EdgeNames.TOP).bounds().maxY());
        }
        return Length.mm(Math.max(0, lowerEdge().path().bounds().minY() - upper - LEAST_PART));
    }

    /**
     * Returns the piece with its lower end moved up by this much, its width and shape kept; both underarm edges are
     * redrawn to meet it. Negative to move it down.
     */
    public Piece shortenedBy(Length by) {
        if (by.equals(Length.ZERO)) {
            return part;
        }
        return movedTo(lowerEdge().path().transformed(Transform.translation(0, -by.mm())));
    }

    /**
     * Returns the piece cut off this far above its lower end along underarm edges that stay as they are, square to
     * both: as wide as it is there. Negative to let the underarm edges run on straight.
     */
    public Piece cutOff(Length by) {
        Path front = part.path(TopEdges.UNDERARM_FRONT);
        double level = front.end().y() - by.mm();
        Path left = by.mm() < 0
                ? front.then(onTo(front, level))
                : front.sub(0, placeAt(front, level).orElse(front.length()));
        Vector down = left.endDirection();
        double sag = HemShape.sag(left.end().x() - middle(), down);
        Path half =
                HemShape.draw(left.end(), down, Point.of(middle(), left.end().y() + sag));
        return grained(withFront(left, half), half.bounds().maxY());
    }

    private static Path onTo(Path downwards, double level) {
        Vector down = downwards.endDirection();
        double along = (level - downwards.end().y()) / down.y();
        return Path.of(new Line(downwards.end(), downwards.end().plus(down.times(along))));
    }

    /** Returns how far along an edge that runs downwards a level is reached, in mm, or empty where it is not. */
    public static OptionalDouble placeAt(Path downwards, double level) {
        return RootFinder.solve(along -> downwards.pointAt(along).y() - level, 0, downwards.length());
    }

    /** Returns the piece with another lower edge; both underarm edges are redrawn to meet it. */
    public Piece movedTo(Path lower) {
        Piece moved = redrawn(
                lower,
                Redraw.between(
                        part.path(TopEdges.UNDERARM_FRONT),
                        part.path(TopEdges.UNDERARM_FRONT).start(),
                        lower.start()),
                Redraw.between(
                        part.path(TopEdges.UNDERARM_BACK),
                        lower.end(),
                        part.path(TopEdges.UNDERARM_BACK).end()));
        return grained(moved, lower.bounds().maxY());
    }

    /** Returns a piece that ends at a level with the grainline of this one, as much longer or shorter. */
    private Piece grained(Piece moved, double level) {
        double top = part.outline().bounds().minY();
        double growth = (level - top) / (lowerEdge().path().bounds().maxY() - top);
        Grainline grain = part.grainline();
        return moved.withGrainline(
                new Grainline(within(grain.top(), top, growth), within(grain.bottom(), top, growth)));
    }

    /**
     * Returns the piece with its lower edge this long, centred under the underarm points. Up to their distance both
     * underarm edges are redrawn as they were, and the edge is level, or square to them where they come down aslant, as
     * those of a sleeve that was cut off do; beyond that it flares out.
     *
     * @throws PatternException if no edge of that length can be drawn
     */
    public Piece withHem(Length length) {
        if (length.compareTo(width()) > 0) {
            return flaredTo(length, Optional.empty());
        }
        Path lower = lowerEdge().path();
        double level = lower.bounds().maxY();
        double middle = middle();
        Vector down = part.path(TopEdges.UNDERARM_FRONT).endDirection();
        if (Math.abs(down.x()) > UPRIGHT) {
            return squareTo(down, length, level, middle);
        }
        return movedTo(Path.of(
                new Line(Point.of(middle + length.mm() / 2, level), Point.of(middle - length.mm() / 2, level))));
    }

    /** The lower edge square to underarm edges that come down in a direction, its lowest points on a level. */
    private Piece squareTo(Vector down, Length length, double level, double middle) {
        double half = RootFinder.solve(
                        tried -> 2 * squareHalf(down, tried, level, middle).length(1e-9) - length.mm(),
                        length.mm() / 4,
                        length.mm() / 2)
                .orElse(length.mm() / 2);
        Path right = squareHalf(down, half, level, middle);
        Path front = part.path(TopEdges.UNDERARM_FRONT);
        return withFront(Redraw.between(front, front.start(), right.start()), right);
    }

    private static Path squareHalf(Vector down, double half, double level, double middle) {
        double sag = HemShape.sag(half, down);
        return HemShape.draw(
                Point.of(middle + half, level - Math.max(0, sag)), down, Point.of(middle, level + Math.min(0, sag)));
    }

    /** The piece with another underarm edge in front and half the lower edge, both mirrored to its back. */
    private Piece withFront(Path underarm, Path half) {
        Transform mirror = Transform.mirrorX(middle());
        Path lower = half.then(half.transformed(mirror).reversed());
        Path back = underarm.transformed(mirror).reversed();
        Point backUnderarm = part.path(TopEdges.UNDERARM_BACK).end();
        return redrawn(lower, underarm, Redraw.between(back, lower.end(), backUnderarm));
    }

    /**
     * Returns the piece with its lower edge this long, centred under the underarm points and flared: both underarm
     * edges run on from the underarm points, or from where they are at a height above the hem, and come out straight to
     * the ends of the edge, which is square to them and as low at its middle as it was.
     *
     * @param length how long the lower edge shall be; more than the width at which the flare begins
     * @param above how far above the lowest point of the edge the flare begins; empty for the underarm points
     * @throws PatternException if no such edge can be drawn; the message gives the lengths or heights that work
     */
    public Piece flaredTo(Length length, Optional<Length> above) {
        double level = lowerEdge().path().bounds().maxY();
        Path front = part.path(TopEdges.UNDERARM_FRONT);
        SleeveFlare flare = above.map(height -> SleeveFlare.below(front, level, middle(), height))
                .orElseGet(() -> SleeveFlare.below(front, level, middle()));
        SleeveFlare.Drawn drawn = flare.drawn(part.name(), length);
        return withFront(drawn.underarm(), drawn.half());
    }

    /**
     * Returns the piece with its lower edge this long, centred under the underarm points: both underarm edges leave
     * those points as they did and come straight to the ends of the edge, which is square to them and whose lowest
     * points are as low as they were.
     *
     * @throws PatternException if no such edge can be drawn; the message gives the lengths that work
     */
    public Piece straightTo(Length length) {
        double level = lowerEdge().path().bounds().maxY();
        SleeveFlare.Drawn drawn = SleeveFlare.below(part.path(TopEdges.UNDERARM_FRONT), level, middle())
                .straightTo(part.name(), length);
        return withFront(drawn.underarm(), drawn.half());
    }

    /** Returns the straight distance between both underarm points. */
    public Length width() {
        return Length.mm(part.path(TopEdges.UNDERARM_FRONT)
                .start()
                .distanceTo(part.path(TopEdges.UNDERARM_BACK).end()));
    }

    private double middle() {
        return part.path(TopEdges.UNDERARM_FRONT)
                .start()
                .midpoint(part.path(TopEdges.UNDERARM_BACK).end())
                .x();
    }

    /**
     * Returns the piece with another lower edge and other underarm edges; notches below stay at their share of the
     * edge.
     */
    public Piece redrawn(Path lower, Path underarmFront, Path underarmBack) {
        Name edge = lowerEdge().name();
        double growth = lower.length() / lowerEdge().path().length();
        Piece bare = part.withoutNotchesOn(edge)
                .redrawn(Map.of(
                        edge, lower, TopEdges.UNDERARM_FRONT, underarmFront, TopEdges.UNDERARM_BACK, underarmBack));
        for (Notch notch : part.notches()) {
            if (notch.edge().equals(edge)) {
                bare = bare.withNotch(notch.at(Length.mm(notch.distance() * growth)));
            }
        }
        return bare;
    }

    private Edge lowerEdge() {
        return part.after(TopEdges.UNDERARM_FRONT);
    }

    private static Point within(Point point, double top, double growth) {
        return Point.of(point.x(), top + (point.y() - top) * growth);
    }
}
