package org.oaktag.testkit.curves;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * Drawings by a random hand, of the kinds at which offsets go wrong: dust handles, hooks, mouths, near cusps and ends
 * that come back to their own path. Each is made from a {@link Random}, so a case is known by its seed.
 */
public final class HardDrawings {
    private final Random hand;

    private HardDrawings(Random hand) {
        this.hand = hand;
    }

    /** Returns drawings that follow from the seed alone. */
    public static HardDrawings of(long seed) {
        return new HardDrawings(new Random(seed * 7919 + 13));
    }

    /** Returns a number between the two. */
    public double between(double least, double most) {
        return least + (most - least) * hand.nextDouble();
    }

    private Vector anywhere(double length) {
        return Vector.polar(length, between(0, 2 * Math.PI));
    }

    private Point onTable() {
        return Point.of(between(0, 300), between(0, 300));
    }

    /** Returns a cubic one of whose handles is 3e-14 to 1e-5 mm long and points anywhere. */
    public Cubic dustHandle() {
        Cubic cubic = new Cubic(onTable(), onTable(), onTable(), onTable());
        return dusty(cubic, -13.5, -5);
    }

    private Cubic dusty(Cubic cubic, double leastDigits, double mostDigits) {
        Vector dust = anywhere(Math.pow(10, between(leastDigits, mostDigits)));
        return hand.nextBoolean()
                ? new Cubic(cubic.start(), cubic.start().plus(dust), cubic.control2(), cubic.end())
                : new Cubic(cubic.start(), cubic.control1(), cubic.end().plus(dust), cubic.end());
    }

    /** Returns a cubic that comes within 1e-12 to 1 mm of having a cusp inside. */
    public Cubic nearCusp() {
        while (true) {
            Point a = onTable();
            Point b = onTable();
            Point c = onTable();
            double t = between(0.1, 0.9);
            double s = 1 - t;
            Vector last =
                    b.minus(a).times(s * s).plus(c.minus(b).times(2 * s * t)).times(-1 / (t * t));
            double off = Math.pow(10, -12 * hand.nextDouble());
            if (last.length() < 3000) {
                return new Cubic(a.plus(Vector.of(off, -off / 2)), b, c, c.plus(last));
            }
        }
    }

    /**
     * Returns an outline that does not meet itself: a star of bulging edges or a smooth blob, some of whose handles are
     * dust.
     */
    public Outline dustyOutline() {
        List<Curve> curves = new ArrayList<>();
        for (Curve curve : plain().curves()) {
            curves.add(curve instanceof Cubic cubic && hand.nextBoolean() ? dusty(cubic, -13.5, -5) : curve);
        }
        return simple(Path.of(curves), this::dustyOutline);
    }

    /**
     * Returns an outline that does not meet itself, with hooks of a thousandth to a tenth of a millimetre at some of
     * its corners.
     */
    public Outline hookedOutline() {
        return simple(hooked(plain(), -3, -1), this::hookedOutline);
    }

    /** Returns an outline of four to nine edges, straight or bent, that does not meet itself. */
    public Outline starOutline() {
        return simple(star(4 + hand.nextInt(6)), this::starOutline);
    }

    /** Returns a wandering path with hooks of a ten-thousandth to a hundredth of a millimetre at its joins and ends. */
    public Path hookedPath() {
        return hooked(wandering(), -4, -2);
    }

    /** Returns an outline with a recess whose mouth is narrower than its floor, or as wide. */
    public Outline mouth() {
        double from = between(40, 90);
        double to = from + between(3, 40);
        double depth = between(10, 80);
        double left = from - between(0, 30);
        double right = to + between(0, 30);
        double neck = between(2, 0.5 * depth);
        Path path = Path.from(Point.of(0, 0))
                .lineTo(Point.of(from, 0))
                .lineTo(Point.of(from + between(-1, 1), neck))
                .curveTo(Point.of(left, neck + 1), Point.of(left, depth - 1), Point.of(left, depth))
                .lineTo(Point.of(right, depth + between(0, 5)))
                .curveTo(Point.of(right, depth - 1), Point.of(right, neck + 1), Point.of(to + between(-1, 1), neck))
                .lineTo(Point.of(to, 0))
                .lineTo(Point.of(200, between(-20, 20)))
                .lineTo(Point.of(200, 160))
                .lineTo(Point.of(0, 150))
                .lineTo(Point.of(0, 0))
                .build();
        return simple(path, this::mouth);
    }

    private Outline simple(Path path, Supplier<Outline> again) {
        Outline outline = Outline.of(path);
        return outline.meetsItself() ? again.get() : outline;
    }

    /**
     * Returns an open path of two to six curves that turn anywhere, so that it comes back to its own ends and sides.
     */
    public Path wandering() {
        List<Curve> curves = new ArrayList<>();
        Point at = Point.of(0, 0);
        double way = between(0, 2 * Math.PI);
        int count = 2 + hand.nextInt(5);
        for (int i = 0; i < count; i++) {
            double length = between(10, 130);
            if (hand.nextBoolean()) {
                Point end = at.plus(Vector.polar(length, way));
                curves.add(new Line(at, end));
                at = end;
            } else {
                double next = way + between(-3, 3);
                Point end = at.plus(Vector.polar(length, way + (next - way) * between(0.25, 0.75)));
                double handle = length * between(0.2, 0.7);
                curves.add(
                        new Cubic(at, at.plus(Vector.polar(handle, way)), end.plus(Vector.polar(-handle, next)), end));
                at = end;
                way = next;
            }
            way += hand.nextInt(3) == 0 ? 0 : between(-2.5, 2.5);
        }
        return Path.of(curves);
    }

    private Path plain() {
        int corners = 3 + hand.nextInt(7);
        return hand.nextBoolean() ? star(corners) : blob(corners);
    }

    private Path star(int corners) {
        Point centre = Point.of(between(-100, 100), between(-100, 100));
        Point[] at = new Point[corners];
        for (int i = 0; i < corners; i++) {
            at[i] = centre.plus(Vector.polar(between(40, 300), i * 2 * Math.PI / corners));
        }
        List<Curve> curves = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            Point from = at[i];
            Point to = at[(i + 1) % corners];
            curves.add(
                    hand.nextInt(5) == 0
                            ? new Line(from, to)
                            : new Cubic(
                                    from,
                                    bulged(centre, from.lerp(to, 1.0 / 3)),
                                    bulged(centre, from.lerp(to, 2.0 / 3)),
                                    to));
        }
        return Path.of(curves);
    }

    private Point bulged(Point centre, Point on) {
        return centre.plus(on.minus(centre).times(between(0.67, 1.33)));
    }

    private Path blob(int corners) {
        Point[] at = new Point[corners];
        for (int i = 0; i < corners; i++) {
            at[i] = Point.ORIGIN.plus(Vector.polar(between(50, 250), i * 2 * Math.PI / corners));
        }
        double share = between(0.05, 0.17);
        List<Curve> curves = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            Point to = at[(i + 1) % corners];
            Vector leaving = to.minus(at[(i + corners - 1) % corners]).times(share);
            Vector arriving = at[(i + 2) % corners].minus(at[i]).times(share);
            curves.add(Cubic.hermite(at[i], leaving, to, arriving));
        }
        return Path.of(curves);
    }

    private Path hooked(Path plain, double leastDigits, double mostDigits) {
        List<Curve> curves = new ArrayList<>();
        Point pen = plain.start();
        for (int i = 0; i < plain.curves().size(); i++) {
            Curve curve = plain.curves().get(i);
            curves.add(
                    curve instanceof Cubic cubic
                            ? new Cubic(
                                    pen, cubic.control1().plus(pen.minus(cubic.start())), cubic.control2(), cubic.end())
                            : new Line(pen, curve.end()));
            pen = curve.end();
            if (i + 1 < plain.curves().size() && hand.nextInt(3) == 0) {
                double size = Math.pow(10, between(leastDigits, mostDigits));
                Point tip = pen.plus(anywhere(size));
                curves.add(
                        hand.nextBoolean()
                                ? new Line(pen, tip)
                                : new Cubic(pen, pen.plus(anywhere(size)), tip.plus(anywhere(size)), tip));
                pen = tip;
            }
        }
        return Path.of(curves);
    }
}
