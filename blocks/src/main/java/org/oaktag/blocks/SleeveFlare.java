package org.oaktag.blocks;

import java.util.Optional;
import java.util.OptionalDouble;
import org.oaktag.PatternException;
import org.oaktag.garment.Name;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * One half of a flared sleeve, its front: the underarm edge leaves the place where the flare begins in the direction that
 * it has there, so that the cap still runs on smoothly across the underarm seam, and comes out straight to the hem. The
 * hem leaves it square and comes level to the middle. Immutable.
 *
 * @param kept the underarm edge above the flare, or empty where it flares from the underarm point
 * @param from where the flare begins
 * @param direction the direction of the underarm edge there, downwards
 * @param level the level of the hem at its middle
 * @param middle how far right the middle lies
 */
record SleeveFlare(Optional<Path> kept, Point from, Vector direction, double level, double middle) {

    /** How much of the underarm edge must lie above and below where the flare begins, in millimetres. */
    private static final double LEAST_PART = 1;

    private static final double HANDLE_ABOVE = 0.45;
    private static final double HANDLE_BELOW = 0.33;

    /** The underarm edge and half the hem. */
    record Drawn(Path underarm, Path half) {}

    static SleeveFlare below(Path front, double level, double middle) {
        return new SleeveFlare(Optional.empty(), front.start(), front.startDirection(), level, middle);
    }

    /**
     * A flare that begins at a height above the hem.
     *
     * @throws PatternException if the underarm edge does not cross that height
     */
    static SleeveFlare below(Path front, double level, double middle, Length height) {
        double most = level - front.start().y() - LEAST_PART;
        OptionalDouble place = height.mm() < LEAST_PART || height.mm() > most
                ? OptionalDouble.empty()
                : Unknown.solve(along -> front.pointAt(along).y() - (level - height.mm()), 0, front.length());
        Path.Split split = front.splitAt(place.orElseThrow(() -> PatternException.of(
                "flare of the sleeve",
                "must begin above the hem and below the underarm points, "
                        + Length.mm(LEAST_PART).text() + " to "
                        + Length.mm(most).roundedDown().text() + " above the hem",
                height.text(),
                "")));
        Path kept = split.before();
        return new SleeveFlare(Optional.of(kept), kept.end(), kept.endDirection(), level, middle);
    }

    /**
     * Draws the flare so that the whole hem has a length.
     *
     * @throws PatternException if the hem would be no longer than the sleeve is wide where the flare begins, or so long
     *     that its ends would rise by more than half the height of the flare
     */
    Drawn drawn(Name piece, Length hem) {
        double least = from.x() - middle;
        double height = level - from.y();
        double most = (least + Math.sqrt(least * least + 4 * height * height)) / 2;
        OptionalDouble half = Unknown.solve(tried -> hem(tried) - hem.mm(), least, most);
        return at(half.orElseThrow(() -> PatternException.of(
                "flared hem of the " + piece,
                "below a flare " + Length.mm(height).text() + " high it can be "
                        + Length.mm(hem(least)).roundedUp().text() + " to "
                        + Length.mm(hem(most)).roundedDown().text() + " long",
                hem.text(),
                "lengthen the sleeve, or begin the flare at another height")));
    }

    private double hem(double half) {
        return 2 * at(half).half().length(1e-9);
    }

    private Drawn at(double half) {
        Vector down = Point.of(middle + half, level).minus(from).unit();
        Point corner = Point.of(middle + half, level - half * down.x() / down.y() / 2);
        double chord = from.distanceTo(corner);
        Path flare = Path.of(
                Cubic.hermite(from, direction.times(HANDLE_ABOVE * chord), corner, down.times(HANDLE_BELOW * chord)));
        return new Drawn(
                kept.map(above -> above.then(flare)).orElse(flare),
                HemShape.draw(corner, down, Point.of(middle, level)));
    }
}
