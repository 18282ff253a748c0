package org.oaktag.blocks;

import java.util.Optional;
import java.util.OptionalDouble;
import org.oaktag.PatternException;
import org.oaktag.draft.RootFinder;
import org.oaktag.garment.Name;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * One half of a sleeve whose underarm edge comes straight to the hem, its front: the edge leaves the place where it
 * begins in the direction that it has there, so that the cap still runs on smoothly across the underarm seam, turns in
 * one bend and comes straight out, or in, to the hem. The hem leaves it square and comes level to the middle.
 * Immutable.
 *
 * @param kept the underarm edge above the flare, or empty where it flares from the underarm point
 * @param from where the flare begins
 * @param direction the direction of the underarm edge there, downwards
 * @param level the level of the lowest points of the hem
 * @param middle how far right the middle lies
 */
record SleeveFlare(Optional<Path> kept, Point from, Vector direction, double level, double middle) {

    /** How much of the underarm edge must lie above and below where the flare begins, in millimetres. */
    private static final double LEAST_PART = 1;

    /** Where the directions at both ends of the edge meet, as a share of the height. */
    private static final double BEND = 0.3;

    private static final double TO_CORNER = 2.0 / 3;

    /** The narrowest hem, as a share of the width of the sleeve where the edge begins. */
    private static final double NARROWEST = 0.25;

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
                : SleeveEnd.placeAt(front, level - height.mm());
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
        return drawn(piece, hem, from.x() - middle);
    }

    /**
     * Draws the edge so that the whole hem has a length, which may be less than the sleeve is wide.
     *
     * @throws PatternException if the hem would be shorter than a quarter of that width, or so long that its ends would
     *     rise by more than half the height of the flare
     */
    Drawn straightTo(Name piece, Length hem) {
        return drawn(piece, hem, NARROWEST * (from.x() - middle));
    }

    private Drawn drawn(Name piece, Length hem, double least) {
        double width = from.x() - middle;
        double height = level - from.y();
        double most = (width + Math.sqrt(width * width + 4 * (1 - BEND) * height * height)) / 2;
        OptionalDouble half = RootFinder.solve(tried -> hem(tried) - hem.mm(), least, most);
        return at(half.orElseThrow(() -> PatternException.of(
                "hem of the " + piece,
                "below an edge that is straight for " + Length.mm(height).text() + " it can be "
                        + Length.mm(hem(least)).roundedUp().text() + " to "
                        + Length.mm(hem(most)).roundedDown().text() + " long",
                hem.text(),
                "lengthen the sleeve, or begin the flare at another height")));
    }

    private double hem(double half) {
        return 2 * at(half).half().length(1e-9);
    }

    private Drawn at(double half) {
        Point bend = from.plus(direction.times(BEND * (level - from.y())));
        Point unraised = Point.of(middle + half, level);
        Vector down = unraised.minus(bend).unit();
        boolean narrows = down.x() < 0;
        Point corner = narrows ? unraised : unraised.plus(down.times(-HemShape.raise(half, down)));
        double atMiddle = narrows ? level + HemShape.sag(half, down) : level;
        Path edge = Path.of(
                half == from.x() - middle && direction.x() == 0
                        ? new Line(from, corner)
                        : new Cubic(from, from.lerp(bend, TO_CORNER), corner.lerp(bend, TO_CORNER), corner));
        return new Drawn(
                kept.map(above -> above.then(edge)).orElse(edge),
                HemShape.draw(corner, down, Point.of(middle, atMiddle)));
    }
}
