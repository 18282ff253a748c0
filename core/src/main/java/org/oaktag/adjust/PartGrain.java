package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.garment.Grainline;
import org.oaktag.geometry.Crossing;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/** Finds the grainline of a part of a piece: in the direction of the whole, as far as it runs inside the part. */
final class PartGrain {

    /** How much of the way across the part the arrow keeps clear of its outline at either end. */
    private static final double CLEAR = 0.2;

    /** Where the grainline of the whole crosses less of the part than this, in millimetres, the part gets one of its own. */
    private static final double LEAST = 40;

    private PartGrain() {}

    static Grainline of(Grainline whole, Outline part) {
        Vector down = whole.bottom().minus(whole.top()).unit();
        Span own = longest(part, whole.top(), down);
        if (own.length() >= LEAST) {
            double to = whole.bottom().minus(whole.top()).length();
            double margin = CLEAR * own.length();
            double from = Math.max(0, own.from() + (own.from() > 0 ? margin : 0));
            double until = Math.min(to, own.to() - (own.to() < to ? margin : 0));
            if (until - from >= LEAST / 2) {
                return new Grainline(
                        whole.top().plus(down.times(from)), whole.top().plus(down.times(until)));
            }
        }
        Point centre = part.centroid();
        Span across = longest(part, centre, down);
        if (across.length() == 0) {
            return whole;
        }
        return new Grainline(
                centre.plus(down.times(across.from() + CLEAR * across.length())),
                centre.plus(down.times(across.to() - CLEAR * across.length())));
    }

    private record Span(double from, double to) {
        double length() {
            return to - from;
        }
    }

    private static Span longest(Outline part, Point through, Vector direction) {
        List<Double> hits = new ArrayList<>();
        for (Crossing crossing : Crossings.ofLine(part.path(), through, direction)) {
            hits.add(crossing.second());
        }
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
}
