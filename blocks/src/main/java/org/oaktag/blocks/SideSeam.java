package org.oaktag.blocks;

import org.oaktag.PatternException;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Crossing;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * The side seam of a front or a back, and the hem that meets it.
 *
 * <pre>{@code
 * Path straight = SideSeam.straight(front);   // from the underarm point straight down to the hem
 * Path hem = SideSeam.hem(front, straight);
 * }</pre>
 */
public final class SideSeam {

    private static final Vector DOWN = Vector.of(0, 1);
    private static final double HANDLE = 0.38;

    /** Where the tangents of the side above the waist meet, up from the waist, as a share of the way. */
    private static final double CORNER_ABOVE_WAIST = 0.35;

    private static final double TO_CORNER = 2.0 / 3;

    /** How much steeper than the way to the hip a side is at a waist that it only passes, so that it does not wave. */
    private static final double STEEPER = 1.6;

    private SideSeam() {}

    /**
     * Draws the side from the underarm point through the waist to the hip, upright at the hip, so that it changes the
     * way it bends once at the most: hollow at a waist and swelling over the hip, or the other way round.
     */
    static Path shaped(Point underarm, Point waist, Point hip) {
        Vector atWaist = atWaist(underarm, waist, hip);
        return Path.of(upper(underarm, waist, atWaist), lower(waist, atWaist, hip));
    }

    /**
     * The direction at the waist: upright where it is the narrowest or widest, else on towards the hip, and steeper.
     */
    private static Vector atWaist(Point underarm, Point waist, Point hip) {
        double on = (hip.x() - waist.x()) / (hip.y() - waist.y());
        boolean goesOn = (waist.x() - underarm.x()) * on > 0;
        return goesOn ? Vector.of(STEEPER * on, 1).unit() : DOWN;
    }

    private static Curve upper(Point underarm, Point waist, Vector atWaist) {
        double up = CORNER_ABOVE_WAIST * (waist.y() - underarm.y()) / atWaist.y();
        Point corner = waist.plus(atWaist.times(-up));
        return underarm.x() == waist.x() && atWaist.x() == 0
                ? new Line(underarm, waist)
                : new Cubic(underarm, underarm.lerp(corner, TO_CORNER), waist.lerp(corner, TO_CORNER), waist);
    }

    private static Curve lower(Point waist, Vector atWaist, Point hip) {
        if (atWaist.x() == 0) {
            return waist.x() == hip.x() ? new Line(waist, hip) : smooth(waist, DOWN, hip, DOWN);
        }
        Point corner = Point.of(hip.x(), waist.y() + (hip.x() - waist.x()) * atWaist.y() / atWaist.x());
        return new Cubic(waist, waist.lerp(corner, TO_CORNER), hip.lerp(corner, TO_CORNER), hip);
    }

    /**
     * Returns the side seam drawn straight from the underarm point to the hem, its lower end raised so far that a hem
     * square to it does not dip. A seam that is straight already is returned as it is.
     *
     * @param piece a front or a back
     * @throws PatternException if the side seam does not run down to the hem
     */
    public static Path straight(Piece piece) {
        TopPieces.require(piece, EdgeNames.SIDE, EdgeNames.HEM);
        Path side = piece.path(EdgeNames.SIDE);
        if (isStraight(side)) {
            return side;
        }
        Point underarm = side.start();
        Point corner = side.end();
        Vector down = corner.minus(underarm).unit();
        double across = corner.x() - piece.path(EdgeNames.HEM).end().x();
        return Path.of(new Line(underarm, corner.plus(down.times(-HemShape.raise(across, down)))));
    }

    /** Returns the hem drawn from the end of a side seam, square to it, to the centre of the piece. */
    public static Path hem(Piece piece, Path side) {
        return HemShape.draw(
                side.end(), side.endDirection(), piece.path(EdgeNames.HEM).end());
    }

    /**
     * Returns how far from the centre line the side seam comes down to a level, were its hem not raised: where a
     * straight seam, run on, meets the level, or the lower end of a shaped one.
     *
     * @param piece a front or a back
     * @param level the level of the unraised hem
     */
    public static double reach(Piece piece, double level) {
        Path side = piece.path(EdgeNames.SIDE);
        if (!isStraight(side)) {
            return side.end().x();
        }
        Vector down = side.endDirection();
        return side.start().x() + down.x() / down.y() * (level - side.start().y());
    }

    /**
     * Returns the side seam drawn straight from the underarm point towards a point of the level of the hem. Its end is
     * raised so that a hem square to it does not dip, and by as much more as the end of the old seam was raised
     * besides.
     *
     * @param piece a front or a back
     * @param reach how far from the centre line the seam shall come down to the level
     * @param level the level of the unraised hem
     */
    public static Path straightTo(Piece piece, double reach, double level) {
        Path side = piece.path(EdgeNames.SIDE);
        double centre = TopBody.centreEnd(piece).x();
        Point underarm = side.start();
        double raised = isStraight(side)
                ? straightLength(underarm, Point.of(reach(piece, level), level), centre) - side.length()
                : level - side.end().y();
        Point corner = Point.of(reach, level);
        Vector down = corner.minus(underarm).unit();
        return Path.of(
                new Line(underarm, underarm.plus(down.times(straightLength(underarm, corner, centre) - raised))));
    }

    /**
     * Returns where the side seam crosses a level.
     *
     * @param piece a front or a back
     * @param level the level, below the underarm point and above the hem
     * @throws PatternException if the side seam does not reach that level
     */
    public static Point at(Piece piece, double level) {
        Path side = piece.path(EdgeNames.SIDE);
        return Crossings.ofLine(side, Point.of(0, level), Vector.of(1, 0)).stream()
                .map(Crossing::point)
                .filter(point -> level > side.start().y() && level < side.end().y())
                .findFirst()
                .orElseThrow(() -> PatternException.of(
                        "side seam of the " + piece.name(),
                        "runs from " + Length.mm(side.start().y()).text() + " to "
                                + Length.mm(side.end().y()).text()
                                + " below the side neck point and must cross the line there",
                        Length.mm(level).text(),
                        "lengthen the body first"));
    }

    /**
     * Returns a side seam drawn through a point, parallel there to the line between its ends, which it leaves and
     * reaches in the directions that it had.
     */
    public static Path through(Path side, Point point) {
        Vector onward = side.end().minus(side.start()).unit();
        return Path.of(
                smooth(side.start(), side.startDirection(), point, onward),
                smooth(point, onward, side.end(), side.endDirection()));
    }

    /** Returns a side seam that ends higher by a length along it, or lower, run on in its own direction. */
    public static Path shortened(Path side, double by) {
        if (by == 0) {
            return side;
        }
        if (by > 0) {
            return side.splitAt(side.length() - by).before();
        }
        Point end = side.end().plus(side.endDirection().times(-by));
        return isStraight(side) ? Path.of(new Line(side.start(), end)) : side.then(Path.of(new Line(side.end(), end)));
    }

    private static Cubic smooth(Point from, Vector leaving, Point to, Vector arriving) {
        double handle = HANDLE * (to.y() - from.y());
        return new Cubic(from, from.plus(leaving.times(handle)), to.plus(arriving.times(-handle)), to);
    }

    private static double straightLength(Point underarm, Point corner, double centre) {
        return underarm.distanceTo(corner)
                - HemShape.raise(corner.x() - centre, corner.minus(underarm).unit());
    }

    private static boolean isStraight(Path side) {
        return side.curves().size() == 1 && side.curves().get(0) instanceof Line;
    }
}
