package org.oaktag.adjust;

import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.garment.End;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Length;

/**
 * How far a slash is opened. A closed family of immutable values.
 *
 * <pre>{@code
 * Spread even = Spread.parallel(mm(20));               // both edges grow by 20 mm
 * Spread fan = Spread.hinged(End.END, degrees(4));     // the edge at the hinge keeps its length
 * Spread hem = Spread.opened(End.END, mm(30));         // as far as opens the other edge by 30 mm
 * }</pre>
 */
public sealed interface Spread {

    /** Returns the motion of the part that moves away. */
    Transform motion(LaidLine line, boolean leftMoves);

    /** Returns the amount as it is read. */
    String text();

    /**
     * Returns a spread by the same distance along the whole slash, square to the straight line between its ends.
     *
     * @throws PatternException if it is not 0 to 1 m
     */
    static Spread parallel(Length by) {
        return new Parallel(by);
    }

    /**
     * Returns a spread that turns about one end of the slash.
     *
     * @param hinge the end that stays closed
     * @throws PatternException if the angle is not 0 to 90 degrees
     */
    static Spread hinged(End hinge, Angle angle) {
        return new Hinged(hinge, angle);
    }

    /**
     * Returns a spread that turns about one end of the slash until the other has opened by so much, straight across.
     *
     * @param hinge the end that stays closed
     * @throws PatternException if the opening is negative
     */
    static Spread opened(End hinge, Length opening) {
        return new Opened(hinge, opening);
    }

    /**
     * Apart by one distance.
     *
     * @param by the distance
     */
    record Parallel(Length by) implements Spread {

        private static final Length MOST = Length.mm(1000);

        /**
         * Checks the distance.
         *
         * @throws PatternException if it is not 0 to 1 m
         */
        public Parallel {
            Range.check("parallel spread", "must be", by, Length.ZERO, MOST);
        }

        @Override
        public Transform motion(LaidLine line, boolean leftMoves) {
            Path path = line.path();
            Vector left = path.end().minus(path.start()).unit().leftNormal();
            return Transform.translation(left.times(leftMoves ? by.mm() : -by.mm()));
        }

        @Override
        public String text() {
            return by.text() + " parallel";
        }
    }

    /**
     * Turned about one end.
     *
     * @param hinge the end that stays closed
     * @param angle by how much
     */
    record Hinged(End hinge, Angle angle) implements Spread {

        private static final Angle MOST = Angle.degrees(90);

        /**
         * Checks the angle.
         *
         * @throws PatternException if it is not 0 to 90 degrees
         */
        public Hinged {
            Objects.requireNonNull(hinge, "hinge");
            Range.check("hinged spread", "must be", angle, Angle.degrees(0), MOST);
        }

        @Override
        public Transform motion(LaidLine line, boolean leftMoves) {
            Point about = hinge == End.START ? line.path().start() : line.path().end();
            // Seen from its end, the start of the line goes to the left when it turns clockwise.
            boolean clockwise = leftMoves == (hinge == End.END);
            return Transform.rotation(clockwise ? angle.radians() : -angle.radians(), about);
        }

        @Override
        public String text() {
            return angle.text() + " about its " + (hinge == End.START ? "start" : "end");
        }
    }

    /**
     * Turned about one end until the other is open.
     *
     * @param hinge the end that stays closed
     * @param opening how far the other end opens, straight across
     */
    record Opened(End hinge, Length opening) implements Spread {

        /**
         * Checks the opening.
         *
         * @throws PatternException if it is negative
         */
        public Opened {
            Objects.requireNonNull(hinge, "hinge");
            if (opening.mm() < 0) {
                throw PatternException.of("opening of a slash", "must be 0 mm or more", opening.text(), "");
            }
        }

        @Override
        public Transform motion(LaidLine line, boolean leftMoves) {
            double chord = line.path().chord();
            Length most = Length.mm(chord * Math.sqrt(2));
            Range.check("opening of a slash", "up to a right angle at its hinge it can be", opening, Length.ZERO, most);
            double angle = 2 * Math.asin(opening.mm() / (2 * chord));
            return new Hinged(hinge, Angle.degrees(Math.min(Math.toDegrees(angle), 90))).motion(line, leftMoves);
        }

        @Override
        public String text() {
            return "opened by " + opening.text() + " about its " + (hinge == End.START ? "start" : "end");
        }
    }
}
