package org.oaktag.blocks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * The neckline of a half front or half back: from the centre, which it leaves square, to the side neck point, where it
 * arrives square to the shoulder, so that front and back run on smoothly across the shoulder seam.
 */
final class NeckShape {

    /** A neckline less deep than this, in millimetres, has no shape that could be stretched down. */
    private static final double LEAST_DEPTH = 1;

    /**
     * The square of a neckline's depth over its half-width, in millimetres, from which it bends to a radius of 14 mm.
     */
    private static final double LEAST_DEPTH_SQUARED = 2.8;

    private static final double FLAT_LEVEL = 0.7;

    private static final double RISE_IN_HALF_WIDTH = 1.0 / 3;
    private static final double LEAST_RISE = 18;
    private static final double MOST_RISE = 25;

    private NeckShape() {}

    /** Returns where the side neck point of a body with this neck base girth lies on paper. */
    static Point sideNeck(Length neckBaseGirth) {
        return Point.of(neckBaseGirth.mm() / 5 - 2, 0);
    }

    /** Returns how far the nape lies above the side neck point on a body with this neck base girth, in millimetres. */
    static double backRise(Length neckBaseGirth) {
        double third = RISE_IN_HALF_WIDTH * sideNeck(neckBaseGirth).x();
        return Math.min(Math.max(third, LEAST_RISE), MOST_RISE);
    }

    static Path front(Point centre, Point sideNeck, Vector alongShoulder) {
        return round(centre, sideNeck, alongShoulder.leftNormal());
    }

    static Path back(Point centre, Point sideNeck, Vector alongShoulder) {
        return round(centre, sideNeck, alongShoulder.leftNormal());
    }

    /**
     * Returns how deep a neckline of a half-width must be to be sewn and banded: to bend to no less than some 14 mm.
     */
    static double leastDepth(double halfWidth) {
        return Math.sqrt(LEAST_DEPTH_SQUARED * halfWidth);
    }

    /** Draws a round neckline that arrives at the side neck point in a direction of its own. */
    static Path round(Point centre, Point sideNeck, Vector arriving) {
        return Path.of(NeckHandles.round(centre, sideNeck, arriving).draw(centre, sideNeck, arriving));
    }

    /** Draws a neckline that is flat across the middle and turns up to the shoulder at its end. */
    static Path boat(Point centre, Point sideNeck, Vector arriving) {
        return Path.of(
                NeckHandles.shallow(centre, sideNeck, arriving, FLAT_LEVEL).draw(centre, sideNeck, arriving));
    }

    /**
     * Draws a neckline between other ends, level at the centre as before, arriving in a direction of its own. Drawn
     * back to the old ends and the old direction it is the old neckline.
     *
     * <p>One of a single curve keeps its roundness: each handle keeps the share that it had of that of a round
     * neckline. One of several, a part of which came from the other piece with a seam that was moved, stretches with
     * the corner in which its end directions meet: the one map of the plane that takes centre, corner and side neck
     * point to the new ones keeps what bends one way bending that way. Where there is no such corner it stretches
     * across as its width does and down as its depth does.
     */
    static Path redrawn(Path neckline, Point centre, Point sideNeck, Vector arriving) {
        boolean stays = neckline.start().equals(centre)
                && neckline.end().equals(sideNeck)
                && neckline.endDirection().equals(arriving);
        if (stays) {
            return neckline;
        }
        if (neckline.curves().size() == 1 && neckline.curves().get(0) instanceof Cubic cubic) {
            return Path.of(NeckHandles.of(cubic).carried(cubic, centre, sideNeck, arriving));
        }
        return stretchedWithCorner(neckline, centre, sideNeck, arriving)
                .orElseGet(() -> stretched(neckline, centre, sideNeck, arriving));
    }

    private static Path stretched(Path neckline, Point centre, Point sideNeck, Vector arriving) {
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
        Optional<Point> was = NeckHandles.corner(neckline.start(), neckline.end(), neckline.endDirection());
        Optional<Point> is = NeckHandles.corner(centre, sideNeck, arriving);
        if (was.isEmpty() || is.isEmpty()) {
            return Optional.empty();
        }
        Vector from = neckline.end().minus(neckline.start());
        Vector to = sideNeck.minus(centre);
        double across =
                (is.get().x() - centre.x()) / (was.get().x() - neckline.start().x());
        Transform stretch = new Transform(across, 0, (to.x() - across * from.x()) / from.y(), to.y() / from.y(), 0, 0);
        return Optional.of(pinned(neckline.transformed(stretch), centre, sideNeck));
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
}
