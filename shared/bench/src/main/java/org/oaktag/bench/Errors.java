package org.oaktag.bench;

import java.util.List;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.oaktag.geometry.Crossing;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/** How far off the answers are whose time is taken, mm where nothing else is said. */
final class Errors {
    private static final double HAIR = 1e-6;

    private Errors() {}

    /** The greatest error of a length; an empty accuracy is none. */
    static String ofLength(String who, String cubics, String asked) {
        Sample sample = sample(cubics);
        Fineness fineness = Fineness.of(asked);
        double accuracy = asked.isEmpty() ? Double.NaN : Double.parseDouble(asked);
        IntToDoubleFunction length = switch (who) {
            case "oaktag" -> i -> sample.all.get(i).length(accuracy);
            case "commonsMath" -> i -> Peers.integratedLength(sample.all.get(i), accuracy);
            case "javaAwt" -> i -> Peers.flattenedLength(sample.awt.get(i), fineness);
            case "jts" -> i -> Peers.jts(sample.all.get(i), fineness.segments()).getLength();
            default -> i -> Peers.batikLength(sample.awt.get(i));
        };
        return greatest(sample, i -> Math.abs(length.applyAsDouble(i) - Reference.length(sample.all.get(i), 0, 1)));
    }

    /**
     * The greatest distance along the curve from where the place should be, or in the plane from where Batik puts it.
     */
    static String ofInverse(String who, String cubics, double accuracy) {
        Sample sample = sample(cubics);
        return greatest(sample, i -> {
            Cubic cubic = sample.all.get(i);
            double wanted = InverseLengthBenchmark.SHARE * sample.lengths[i];
            if (who.equals("batik")) {
                var point = Peers.batikPoint(sample.awt.get(i), wanted);
                return cubic.pointAt(cubic.parameterAt(wanted, 1e-11)).distanceTo(Point.of(point.getX(), point.getY()));
            }
            double t = who.equals("oaktag")
                    ? cubic.parameterAt(wanted, accuracy)
                    : Peers.solvedParameter(cubic, wanted, accuracy);
            return Double.isNaN(t) ? t : Math.abs(Reference.length(cubic, 0, t) - wanted);
        });
    }

    /** The greatest difference between the distance from the source and the one asked for. */
    static String ofOffset(String who, String tolerance) {
        OffsetBenchmark bench = new OffsetBenchmark();
        bench.tolerance = tolerance;
        ToDoubleFunction<Point> off = p -> Math.abs(bench.cubic.nearest(p).distance() - OffsetBenchmark.DISTANCE);
        double greatest = 0;
        if (who.equals("oaktag")) {
            Path path = bench.oaktag();
            for (Curve curve : path.curves()) {
                for (int i = 0; i <= 500; i++) {
                    greatest = Math.max(greatest, off.applyAsDouble(curve.pointAt(i / 500.0)));
                }
            }
            return String.format(
                    Locale.ROOT, "%.1e (%d cubics)", greatest, path.curves().size());
        }
        Coordinate[] points = bench.jts().getCoordinates();
        for (int i = 1; i < points.length; i++) {
            Point a = Point.of(points[i - 1].x, points[i - 1].y);
            Point b = Point.of(points[i].x, points[i].y);
            greatest = Math.max(greatest, Math.max(off.applyAsDouble(a), off.applyAsDouble(a.midpoint(b))));
        }
        return String.format(Locale.ROOT, "%.1e (%d segments)", greatest, points.length - 1);
    }

    /** The greatest distance of a crossing from either curve, and how many there are. */
    static String ofCrossings(String who) {
        if (who.equals("javaAwt")) {
            return "finds no points";
        }
        CrossingsBenchmark bench = new CrossingsBenchmark();
        double greatest = 0;
        int found = 0;
        for (int i = 0; i < CrossingsBenchmark.PAIRS; i++) {
            Cubic a = bench.cubics.get(2 * i);
            Cubic b = bench.cubics.get(2 * i + 1);
            for (Point point : who.equals("oaktag")
                    ? points(a, b)
                    : points(bench.lines.get(2 * i).intersection(bench.lines.get(2 * i + 1)))) {
                found++;
                greatest = Math.max(
                        greatest,
                        Math.max(a.nearest(point).distance(), b.nearest(point).distance()));
            }
        }
        return String.format(Locale.ROOT, "%.1e (%d points)", greatest, found);
    }

    private static List<Point> points(Cubic a, Cubic b) {
        return Crossings.between(a, b).stream().map(Crossing::point).toList();
    }

    private static List<Point> points(Geometry geometry) {
        return java.util.Arrays.stream(geometry.getCoordinates())
                .map(c -> Point.of(c.x, c.y))
                .toList();
    }

    /** How many points a millionth of a millimetre off the line are told to lie on its wrong side. */
    static String ofContainment(String who) {
        OutlineBenchmark bench = new OutlineBenchmark();
        Predicate<Point> contains = switch (who) {
            case "oaktag" -> bench.outline::contains;
            case "javaAwt" -> p -> bench.awt.contains(p.x(), p.y());
            default -> p -> bench.jts.contains(Peers.jts(p));
        };
        int wrong = 0;
        int asked = 0;
        for (Curve curve : bench.outline.path().curves()) {
            for (int i = 1; i < 200; i++) {
                Vector right = curve.directionAt(i / 200.0).rightNormal().times(HAIR);
                Point on = curve.pointAt(i / 200.0);
                // An outline runs clockwise: its inside is on the right.
                wrong += contains.test(on.plus(right)) ? 0 : 1;
                wrong += contains.test(on.plus(right.negated())) ? 1 : 0;
                asked += 2;
            }
        }
        return wrong + " of " + asked + " wrong at 1e-6 mm";
    }

    /**
     * The error in mm² of the area, by Green's integral over the curves with Simpson's rule on 10,000 stretches of
     * each.
     */
    static String ofArea(String who) {
        OutlineBenchmark bench = new OutlineBenchmark();
        double area = who.equals("oaktag") ? bench.areaOaktag() : bench.areaJts();
        Point origin = bench.outline.path().start();
        double exact = 0;
        int n = 10_000;
        for (Curve curve : bench.outline.path().curves()) {
            for (int i = 0; i <= n; i++) {
                double weight = i == 0 || i == n ? 1 : 2 + 2 * (i % 2);
                double t = (double) i / n;
                exact += weight / (6.0 * n) * curve.pointAt(t).minus(origin).cross(curve.derivativeAt(t));
            }
        }
        return String.format(Locale.ROOT, "%.1e mm²", Math.abs(area - Math.abs(exact)));
    }

    private static Sample sample(String cubics) {
        Sample sample = new Sample();
        sample.cubics = cubics;
        sample.fill();
        return sample;
    }

    private static String greatest(Sample sample, IntToDoubleFunction error) {
        int different = sample.cubics.equals("hard") ? HardCubics.COUNT : Sample.COUNT;
        double greatest = 0;
        int gaveUp = 0;
        for (int i = 0; i < different; i++) {
            double e = error.applyAsDouble(i);
            if (Double.isNaN(e)) {
                gaveUp++;
            } else {
                greatest = Math.max(greatest, e);
            }
        }
        String text = String.format(Locale.ROOT, "%.1e", greatest);
        return gaveUp == 0 ? text : text + String.format(Locale.ROOT, " (gives up on %d %%)", 100 * gaveUp / different);
    }
}
