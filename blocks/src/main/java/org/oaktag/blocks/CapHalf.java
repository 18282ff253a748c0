package org.oaktag.blocks;

import java.util.List;
import java.util.OptionalDouble;
import org.oaktag.PatternException;
import org.oaktag.draft.RootFinder;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Angle;

/**
 * One half of a sleeve cap, drawn as its front half: the top at the origin, the underarm point to the right and below.
 *
 * <pre>{@code
 * CapHalf half = CapHalf.ontoFront(front.path(ARMHOLE));
 * double around = half.length(170, 110);            // of a half 170 mm wide and 110 mm high
 * half.widthFor(110, around).getAsDouble();         // = 170.0
 * }</pre>
 *
 * <p>Its lower part is the armhole's own curve from the underarm point up to where that has turned by 45 degrees, so
 * that sleeve and body lie on each other there; from there a crown leaves in the curve's own direction and comes level
 * to the top. A longer copy would stand upright and cost width. The notch lies higher, at a share of the armhole's
 * length that is the same in every size, and as far from the underarm point on the cap as on the armhole, so that no
 * ease lies below it. With the armhole given, the half is known by its width and its height, and its length grows with
 * either. Immutable.
 */
public final class CapHalf {

    private static final double COPIED_TURN = Math.toRadians(45);
    private static final double HANDLE_AT_COPY = 0.36;
    private static final double HANDLE_AT_TOP = 0.42;

    /** The least radius at the top of a steep cap, as a share of the crown's chord: some 45 mm. */
    private static final double LEAST_TOP_RADIUS = 0.3;

    private static final double LEAST_CROWN = 1;

    private final Path lower;
    private final double lowerLength;
    private final double notch;
    private final Vector rise;
    private final Vector leaving;

    private CapHalf(Path lower, double notch) {
        this.lower = lower;
        this.lowerLength = lower.length();
        this.notch = notch;
        this.rise = lower.start().minus(Point.of(0, 0));
        this.leaving = lower.startDirection();
    }

    /**
     * Takes the lower part of the front half from the front armhole.
     *
     * @param armhole the armhole of a half front, from the shoulder to the underarm point, its side at the right
     * @throws PatternException if the armhole's last curve turns by less than 45 degrees
     */
    public static CapHalf ontoFront(Path armhole) {
        return onto(armhole, BodyHalf.FRONT);
    }

    /**
     * Takes the lower part of the back half from the back armhole.
     *
     * @param armhole the armhole of a half back, drawn like that of a front, its side at the right
     * @throws PatternException if the armhole's last curve turns by less than 45 degrees
     */
    public static CapHalf ontoBack(Path armhole) {
        return onto(armhole, BodyHalf.BACK);
    }

    private static CapHalf onto(Path armhole, BodyHalf half) {
        Path scoop = scoop(armhole);
        Transform toOrigin = Transform.translation(Point.of(0, 0).minus(scoop.end()))
                .then(Transform.rotation(-scoop.endDirection().angle(), Point.of(0, 0)));
        return new CapHalf(endingAtOrigin(scoop.transformed(toOrigin)), half.notchShare() * armhole.length());
    }

    /** Returns how far above the underarm point, along the seam, the notch lies, in millimetres. */
    public double notchFromUnderarm() {
        return notch;
    }

    /** Returns how long the part is that is the armhole's own curve, in millimetres. */
    public double copiedLength() {
        return lowerLength;
    }

    /** Returns how far above the underarm point, straight up, the copied part ends: no cap can be lower. */
    public double copiedHeight() {
        return -rise.y();
    }

    /** Returns the least width that this half can have, in millimetres. */
    public double leastWidth() {
        return -rise.x() + LEAST_CROWN;
    }

    /** Returns the length of the half at a width and a height, in millimetres. */
    public double length(double width, double height) {
        return lowerLength + crown(width, height).length(1e-9);
    }

    /**
     * Returns the width at which the half has a length.
     *
     * @param height the height of the cap
     * @param length the length wanted
     * @return the width, or empty where the half is longer than that even at its least width
     */
    public OptionalDouble widthFor(double height, double length) {
        return height < copiedHeight() + LEAST_CROWN
                ? OptionalDouble.empty()
                : widthFor(height, length, length(leastWidth(), height) - length);
    }

    /** As the other, where it is known how much longer than that the half is at its least width. */
    OptionalDouble widthFor(double height, double length, double excess) {
        double most = length + lowerLength;
        return RootFinder.solve(
                width -> length(width, height) - length, leastWidth(), excess, most, length(most, height) - length);
    }

    /** Draws the half from the top at the origin to the underarm point. */
    public Path draw(double width, double height) {
        Path placed = lower.transformed(Transform.translation(width, height));
        return Path.of(crown(width, height)).then(placed);
    }

    private Cubic crown(double width, double height) {
        return crown(Point.of(0, 0), Point.of(width, height).plus(rise), leaving);
    }

    /**
     * Draws a crown from the top to the end of the copied part, which it reaches in the direction in which that goes
     * on. It leaves the top level and falls all the way: where the end lies so little below the top that the handle
     * there would reach above it, the handle ends level with the top.
     */
    static Cubic crown(Point top, Point copyEnd, Vector direction) {
        double chord = top.distanceTo(copyEnd);
        Point fromCopy = copyEnd.plus(direction.times(-HANDLE_AT_COPY * chord));
        if (fromCopy.y() < top.y() && copyEnd.y() > top.y()) {
            double share = (copyEnd.y() - top.y()) / (copyEnd.y() - fromCopy.y());
            fromCopy = Point.of(copyEnd.x() + share * (fromCopy.x() - copyEnd.x()), top.y());
        }
        double round = Math.sqrt(LEAST_TOP_RADIUS * chord * Math.abs(fromCopy.y() - top.y()) * 2 / 3);
        double level = Math.signum(copyEnd.x() - top.x()) * Math.max(HANDLE_AT_TOP * chord, round);
        return new Cubic(top, top.plus(Vector.of(level, 0)), fromCopy, copyEnd);
    }

    /** Moves the very last point to the origin, off which it lies by rounding. */
    private static Path endingAtOrigin(Path path) {
        List<Curve> curves = path.curves();
        return Redraw.between(Path.of(curves), path.start(), Point.of(0, 0));
    }

    private static Path scoop(Path armhole) {
        List<Curve> curves = armhole.curves();
        Curve last = curves.get(curves.size() - 1);
        Vector atEnd = last.directionAt(1).rotated(COPIED_TURN);
        if (!(last instanceof Cubic cubic)) {
            throw noScoop(0);
        }
        OptionalDouble end = lastParameterAlong(cubic, atEnd);
        return Path.of(cubic.sub(end.orElseThrow(() -> noScoop(Math.toDegrees(Math.abs(cubic.turning())))), 1));
    }

    /** Finds where the derivative, a quadratic in t, is parallel to a direction: the last such t before the end. */
    private static OptionalDouble lastParameterAlong(Cubic cubic, Vector direction) {
        Vector first = cubic.control1().minus(cubic.start());
        Vector middle = cubic.control2().minus(cubic.control1());
        Vector last = cubic.end().minus(cubic.control2());
        double c = direction.cross(first);
        double b = 2 * (direction.cross(middle) - c);
        double a = c - 2 * direction.cross(middle) + direction.cross(last);
        double root = Math.sqrt(b * b - 4 * a * c);
        double q = -0.5 * (b + Math.copySign(root, b));
        OptionalDouble found = OptionalDouble.empty();
        for (double t : new double[] {q / a, c / q}) {
            boolean along = t >= 0 && t < 1 && direction.dot(cubic.derivativeAt(t)) > 0;
            if (along && (found.isEmpty() || t > found.getAsDouble())) {
                found = OptionalDouble.of(t);
            }
        }
        return found;
    }

    private static PatternException noScoop(double turned) {
        return PatternException.of(
                "sleeve cap",
                "the armhole must turn by at least 45° in its last curve, under the arm, for the cap to be copied from it",
                Angle.degrees(turned).text(),
                "scoop the armhole out below its pitch point");
    }
}
