package org.oaktag.blocks;

import java.util.Optional;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * The handles of a neckline of one curve: level at the centre, and back along the direction in which it arrives at the
 * side neck point. With these a neckline has the greatest least radius that one curve can give it, nearly, at any
 * depth: a shallow one, as of a back, runs level for about half of its width and then goes up in one sweep, a deep one
 * is a hollow. Found by trying all handles; there is no published source. Immutable.
 *
 * @param level the handle at the centre, in millimetres
 * @param back the handle at the side neck point, in millimetres
 */
record NeckHandles(double level, double back) {

    /** A depth up to this share of the half-width makes a neckline shallow. */
    private static final double SHALLOW = 0.45;

    /** A depth from this share of the half-width on makes it deep. */
    private static final double DEEP = 1.0;

    private static final double SHALLOW_LEVEL = 0.62;
    private static final double DEEP_LEVEL = 0.52;
    private static final double DEEP_BACK = 0.52;
    private static final double DEEPER_BACK = 0.9;

    /** Nearer to the centre than this, in millimetres, a corner leaves no room for a curve. */
    private static final double LEAST_CORNER = 1;

    /** Less deep than this, in millimetres, a neckline has no corner. */
    private static final double LEAST_DEPTH = 1;

    /** Returns the handles of a round neckline. */
    static NeckHandles round(Point centre, Point sideNeck, Vector arriving) {
        double half = sideNeck.x() - centre.x();
        double share = ((centre.y() - sideNeck.y()) / half - SHALLOW) / (DEEP - SHALLOW);
        if (share <= 0) {
            return shallow(centre, sideNeck, arriving, SHALLOW_LEVEL);
        }
        NeckHandles deep = deep(centre, sideNeck, arriving);
        if (share >= 1) {
            return deep;
        }
        double eased = share * share * (3 - 2 * share);
        NeckHandles shallow = shallow(centre, sideNeck, arriving, SHALLOW_LEVEL);
        return new NeckHandles(
                shallow.level + eased * (deep.level - shallow.level),
                shallow.back + eased * (deep.back - shallow.back));
    }

    /**
     * Returns the handles of a line that runs level and then sweeps up: the one at its end reaches down to the level,
     * where it meets the line along which it arrives.
     *
     * @param along the level handle, as a share of the way to where the tangents meet
     */
    static NeckHandles shallow(Point centre, Point sideNeck, Vector arriving, double along) {
        return corner(centre, sideNeck, arriving)
                .map(corner -> new NeckHandles(along * (corner.x() - centre.x()), corner.distanceTo(sideNeck)))
                .orElseGet(() -> plain(centre, sideNeck));
    }

    private static NeckHandles deep(Point centre, Point sideNeck, Vector arriving) {
        Optional<Point> corner = corner(centre, sideNeck, arriving);
        if (corner.isEmpty()) {
            return plain(centre, sideNeck);
        }
        double half = sideNeck.x() - centre.x();
        double level = corner.get().x() - centre.x();
        double reach = (1 - DEEPER_BACK * level / half) * corner.get().distanceTo(sideNeck);
        return new NeckHandles(
                Math.min(DEEP_LEVEL * half, level), Math.max(DEEP_BACK * (centre.y() - sideNeck.y()), reach));
    }

    private static NeckHandles plain(Point centre, Point sideNeck) {
        Vector across = sideNeck.minus(centre);
        return new NeckHandles(DEEP_LEVEL * across.x(), DEEP_BACK * Math.abs(across.y()));
    }

    /** Returns the handles that a curve has. */
    static NeckHandles of(Cubic cubic) {
        return new NeckHandles(
                cubic.start().distanceTo(cubic.control1()), cubic.end().distanceTo(cubic.control2()));
    }

    /** Draws a neckline with these handles. */
    Cubic draw(Point centre, Point sideNeck, Vector arriving) {
        return new Cubic(centre, centre.plus(Vector.of(level, 0)), sideNeck.plus(arriving.times(-back)), sideNeck);
    }

    /** Draws the neckline of these handles between other ends, each handle with its share of that of a round one. */
    Cubic carried(Cubic old, Point centre, Point sideNeck, Vector arriving) {
        NeckHandles was = round(old.start(), old.end(), old.directionAt(1));
        NeckHandles is = round(centre, sideNeck, arriving);
        return new NeckHandles(carried(level, was.level, is.level), carried(back, was.back, is.back))
                .draw(centre, sideNeck, arriving);
    }

    private static double carried(double handle, double was, double is) {
        return was > 0 ? handle * is / was : handle;
    }

    /**
     * Returns where the level through the centre meets the line on which the neckline arrives; empty if not between.
     */
    static Optional<Point> corner(Point centre, Point sideNeck, Vector arriving) {
        Vector across = sideNeck.minus(centre);
        if (!(across.y() <= -LEAST_DEPTH) || !(arriving.y() < 0)) {
            return Optional.empty();
        }
        double level = across.x() - arriving.x() / arriving.y() * across.y();
        return level >= LEAST_CORNER ? Optional.of(Point.of(centre.x() + level, centre.y())) : Optional.empty();
    }
}
