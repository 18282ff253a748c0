package org.oaktag.blocks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;

/**
 * The neckline of a half front or half back: from the centre, which it leaves square, to the side neck point, where it
 * arrives square to the shoulder, so that front and back run on smoothly across the shoulder seam.
 */
final class NeckShape {

    private static final double FRONT_ALONG = 0.52;
    private static final double FRONT_DOWN = 0.52;
    private static final double BACK_ALONG = 0.62;
    private static final double BACK_DOWN = 0.465;
    private static final double BOAT_ALONG = 0.66;
    private static final double BOAT_DOWN = 0.55;

    /** A neckline less deep than this, in millimetres, has no shape that could be stretched down. */
    private static final double LEAST_DEPTH = 1;

    /** Nearer to the centre than this, in millimetres, a corner leaves no room for a curve. */
    private static final double LEAST_CORNER = 1;

    private NeckShape() {}

    static Path front(Point centre, Point sideNeck, Vector alongShoulder) {
        return round(BodyHalf.FRONT, centre, sideNeck, alongShoulder.leftNormal());
    }

    static Path back(Point centre, Point sideNeck, Vector alongShoulder) {
        return round(BodyHalf.BACK, centre, sideNeck, alongShoulder.leftNormal());
    }

    /** Draws a neckline that arrives at the side neck point in a direction of its own. */
    static Path round(BodyHalf half, Point centre, Point sideNeck, Vector arriving) {
        return half == BodyHalf.FRONT
                ? draw(centre, sideNeck, arriving, FRONT_ALONG, FRONT_DOWN)
                : draw(centre, sideNeck, arriving, BACK_ALONG, BACK_DOWN);
    }

    /** Draws a neckline that is flat across the middle and turns up to the shoulder at its end. */
    static Path boat(Point centre, Point sideNeck, Vector arriving) {
        return draw(centre, sideNeck, arriving, BOAT_ALONG, BOAT_DOWN);
    }

    /**
     * Draws a round neckline between other ends, level at the centre as before, arriving in a direction of its own. Drawn
     * back to the old ends and the old direction it is the old neckline.
     *
     * <p>A back neckline is shallow beside its width. It stretches with the corner in which its end directions meet: the
     * one map of the plane that takes centre, corner and side neck point to the new ones keeps what bends one way bending
     * that way, so that no hook comes before the shoulder and no dip beside the centre, and keeps both directions.
     *
     * <p>A front neckline may go so deep that its end directions meet beyond the centre. One of a single curve keeps its
     * roundness as {@link Redraw} does; one of several, a part of which came from the back with a seam that was moved,
     * stretches across as its width does and down as its depth does.
     */
    static Path redrawn(BodyHalf half, Path neckline, Point centre, Point sideNeck, Vector arriving) {
        if (half == BodyHalf.BACK) {
            Optional<Path> cornered = stretchedWithCorner(neckline, centre, sideNeck, arriving);
            if (cornered.isPresent()) {
                return cornered.get();
            }
        }
        Vector was = neckline.end().minus(neckline.start());
        Vector is = sideNeck.minus(centre);
        boolean stretches = neckline.curves().size() > 1 && hasDepth(was) && hasDepth(is);
        if (!stretches) {
            return arriving(Redraw.between(neckline, centre, sideNeck), neckline, 1, arriving);
        }
        double down = is.y() / was.y();
        Transform stretch = new Transform(is.x() / was.x(), 0, 0, down, 0, 0);
        return arriving(pinned(neckline.transformed(stretch), centre, sideNeck), neckline, down, arriving);
    }

    private static boolean hasDepth(Vector across) {
        return across.y() <= -LEAST_DEPTH;
    }

    private static Optional<Path> stretchedWithCorner(Path neckline, Point centre, Point sideNeck, Vector arriving) {
        OptionalDouble was = corner(neckline.start(), neckline.end(), neckline.endDirection());
        OptionalDouble is = corner(centre, sideNeck, arriving);
        if (was.isEmpty() || is.isEmpty()) {
            return Optional.empty();
        }
        Vector from = neckline.end().minus(neckline.start());
        Vector to = sideNeck.minus(centre);
        double across = is.getAsDouble() / was.getAsDouble();
        Transform stretch = new Transform(across, 0, (to.x() - across * from.x()) / from.y(), to.y() / from.y(), 0, 0);
        return Optional.of(pinned(neckline.transformed(stretch), centre, sideNeck));
    }

    /** How far from the centre the level through it meets the line on which the neckline arrives; empty if not between. */
    private static OptionalDouble corner(Point centre, Point sideNeck, Vector arriving) {
        Vector across = sideNeck.minus(centre);
        if (!hasDepth(across) || !(arriving.y() < 0)) {
            return OptionalDouble.empty();
        }
        double corner = across.x() - arriving.x() / arriving.y() * across.y();
        return corner >= LEAST_CORNER ? OptionalDouble.of(corner) : OptionalDouble.empty();
    }

    /** Moves a path that is drawn in its shape to where it belongs, its ends to the very points. */
    private static Path pinned(Path path, Point start, Point end) {
        Path moved = path.transformed(Transform.translation(
                start.x() - path.start().x(), start.y() - path.start().y()));
        return Redraw.between(moved, start, end);
    }

    /** Turns the last handle, as long as it was in the old neckline times a factor, into a direction. */
    private static Path arriving(Path drawn, Path old, double factor, Vector arriving) {
        List<Curve> curves = new ArrayList<>(drawn.curves());
        int last = curves.size() - 1;
        double turn = old.endDirection().angleTo(arriving);
        boolean stays = turn == 0 && factor == 1;
        if (stays
                || !(curves.get(last) instanceof Cubic cubic)
                || !(old.curves().get(last) instanceof Cubic before)) {
            return drawn;
        }
        Vector handle = factor == 1
                ? cubic.control2().minus(cubic.end())
                : before.control2().minus(before.end()).times(factor);
        curves.set(
                last, new Cubic(cubic.start(), cubic.control1(), cubic.end().plus(handle.rotated(turn)), cubic.end()));
        return Path.of(curves);
    }

    private static Path draw(Point centre, Point sideNeck, Vector arriving, double along, double down) {
        Vector across = sideNeck.minus(centre);
        return Path.of(new Cubic(
                centre,
                centre.plus(Vector.of(along * across.x(), 0)),
                sideNeck.plus(arriving.times(-down * Math.abs(across.y()))),
                sideNeck));
    }
}
