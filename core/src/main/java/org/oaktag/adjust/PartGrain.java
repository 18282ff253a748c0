package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oaktag.garment.Grainline;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/** Finds the grainline of a part of a piece: in the direction of the whole, as far as it runs inside the part. */
final class PartGrain {

    /** How much of the way across the part the arrow keeps clear of its outline at either end. */
    private static final double CLEAR = 0.2;

    /**
     * An arrow that ends nearer to the outline than this, in millimetres, or a tenth of the way across, runs out of it.
     */
    private static final double NEAR = 5;

    private static final double NEAR_SHARE = 0.1;

    /**
     * Where the grainline of the whole crosses less of the part than this, in millimetres, the part gets one of its
     * own.
     */
    private static final double LEAST = 40;

    /** Where the part is looked for beside its middle, in shares of the way from there to its farthest. */
    private static final double[] ASIDE = {0, -0.25, 0.25, -0.5, 0.5, -0.75, 0.75};

    /** So near to a joint of the outline, in millimetres, a line meets it there. */
    private static final double JOINT = 1e-3;

    /** The least sine of the angle at which a curve plainly runs off a line. */
    private static final double TURNED = 1e-2;

    private PartGrain() {}

    /** Tells whether a grainline lies inside an outline, clear of it at both ends. */
    static boolean isWithin(Grainline grain, Outline outline) {
        double to = grain.bottom().minus(grain.top()).length();
        Vector down = grain.bottom().minus(grain.top()).unit();
        if (isPlainlyWithin(grain.top(), down, to, outline)) {
            return true;
        }
        double above = Double.NEGATIVE_INFINITY;
        double below = Double.POSITIVE_INFINITY;
        List<Point> hits = Crossings.pointsOnLine(outline.path(), grain.top(), down);
        for (Point hit : hits) {
            double at = hit.minus(grain.top()).dot(down);
            if (at < to / 2) {
                above = Math.max(above, at);
            } else {
                below = Math.min(below, at);
            }
        }
        double clear = Math.min(NEAR, NEAR_SHARE * (below - above));
        // A line that meets the outline once above and once below is inside between the two.
        boolean plain = hits.size() == 2 && above > Double.NEGATIVE_INFINITY && below < Double.POSITIVE_INFINITY;
        return above <= -clear
                && below >= to + clear
                && (plain || outline.contains(grain.top().midpoint(grain.bottom())));
    }

    /**
     * Tells by the control points alone, as it can for nearly every piece, that no curve comes near the arrow: each lies
     * beside its line, above it or below it. The arrow is inside if an odd number of those above lead across the line.
     */
    private static boolean isPlainlyWithin(Point top, Vector down, double to, Outline outline) {
        List<Curve> curves = outline.path().curves();
        boolean inside = false;
        for (int i = 0; i < curves.size(); i++) {
            Curve curve = curves.get(i);
            Vector start = curve.start().minus(top);
            Vector end = curve.end().minus(top);
            Vector one = curve instanceof Cubic cubic ? cubic.control1().minus(top) : start;
            Vector two = curve instanceof Cubic cubic ? cubic.control2().minus(top) : end;
            double from = down.cross(start);
            double until = down.cross(end);
            double left = Math.min(Math.min(from, until), Math.min(down.cross(one), down.cross(two)));
            double right = Math.max(Math.max(from, until), Math.max(down.cross(one), down.cross(two)));
            if (left <= 0 && right >= 0) {
                double highest =
                        Math.min(Math.min(down.dot(start), down.dot(end)), Math.min(down.dot(one), down.dot(two)));
                double lowest =
                        Math.max(Math.max(down.dot(start), down.dot(end)), Math.max(down.dot(one), down.dot(two)));
                if (highest <= to + NEAR && lowest >= -NEAR) {
                    return false;
                }
                inside ^= lowest < -NEAR && from > 0 != until > 0;
            }
        }
        return inside;
    }

    static Grainline of(Grainline whole, Outline part) {
        Vector down = whole.bottom().minus(whole.top()).unit();
        Span own = longest(part, whole.top(), down);
        if (own.length() >= LEAST) {
            double to = whole.bottom().minus(whole.top()).length();
            double margin = CLEAR * own.length();
            double from = own.from() > -NEAR ? own.from() + margin : 0;
            double until = own.to() < to + NEAR ? own.to() - margin : to;
            if (until - from >= LEAST / 2) {
                return new Grainline(
                        whole.top().plus(down.times(from)), whole.top().plus(down.times(until)));
            }
        }
        return across(part, down).orElse(whole);
    }

    /** The middle may lie beside a hollow part: then a line beside it is taken. */
    private static Optional<Grainline> across(Outline part, Vector down) {
        Point centre = part.centroid();
        Vector sideways = down.leftNormal();
        double reach = 0;
        for (Point hit : Crossings.pointsOnLine(part.path(), centre, sideways)) {
            reach = Math.max(reach, Math.abs(hit.minus(centre).dot(sideways)));
        }
        Optional<Grainline> best = Optional.empty();
        double longest = 0;
        for (double aside : ASIDE) {
            Point through = centre.plus(sideways.times(aside * reach));
            Span span = longest(part, through, down);
            if (span.length() > 2 * longest) {
                longest = span.length();
                best = Optional.of(new Grainline(
                        through.plus(down.times(span.from() + CLEAR * span.length())),
                        through.plus(down.times(span.to() - CLEAR * span.length()))));
            }
        }
        return best;
    }

    private record Span(double from, double to) {
        double length() {
            return to - from;
        }
    }

    private static Span longest(Outline part, Point through, Vector direction) {
        List<Double> hits = hits(part, through, direction);
        hits.sort(Double::compare);
        Span best = new Span(0, 0);
        for (int i = 1; i < hits.size(); i++) {
            Span span = new Span(hits.get(i - 1), hits.get(i));
            boolean inside = part.contains(through.plus(direction.times((span.from() + span.to()) / 2)));
            if (inside && span.length() > best.length()) {
                best = span;
            }
        }
        return best;
    }

    /**
     * How far along a line it meets an outline; one that meets it at a joint may come twice. Where no curve runs along
     * the line from a joint the meetings are plain.
     */
    private static List<Double> hits(Outline part, Point through, Vector direction) {
        List<Double> hits = new ArrayList<>();
        List<Point> points = Crossings.pointsOnLine(part.path(), through, direction);
        if (isPlain(part, points, direction)) {
            points.forEach(point -> hits.add(point.minus(through).dot(direction)));
        } else {
            Crossings.ofLine(part.path(), through, direction).forEach(crossing -> hits.add(crossing.second()));
        }
        return hits;
    }

    private static boolean isPlain(Outline part, List<Point> points, Vector direction) {
        List<Curve> curves = part.path().curves();
        for (int i = 0; i < points.size(); i++) {
            Point point = points.get(i);
            for (int k = 0; k < curves.size(); k++) {
                Curve curve = curves.get(k);
                if ((curve.start().isCloseTo(point, JOINT) && !leaves(curve, 0, direction))
                        || (curve.end().isCloseTo(point, JOINT) && !leaves(curve, 1, direction))) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Tells whether a curve runs off a line at one of its ends. */
    private static boolean leaves(Curve curve, double end, Vector line) {
        return !curve.isPoint() && Math.abs(curve.directionAt(end).cross(line)) > TURNED;
    }
}
