package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;

/** Makes curves meet exactly whose ends agree but for a tolerance: an end is moved, and its control point with it. */
final class Joined {
    private Joined() {}

    /** Returns the run with its start moved to the point. */
    static List<Curve> from(Point start, List<Curve> run) {
        List<Curve> moved = new ArrayList<>(run);
        moved.set(0, withEnds(run.get(0), start, run.get(0).end()));
        return moved;
    }

    /** Returns the run with its end moved to the point. */
    static List<Curve> to(Point end, List<Curve> run) {
        List<Curve> moved = new ArrayList<>(run);
        int last = run.size() - 1;
        moved.set(last, withEnds(run.get(last), run.get(last).start(), end));
        return moved;
    }

    static Curve withEnds(Curve curve, Point start, Point end) {
        if (curve.start().equals(start) && curve.end().equals(end)) {
            return curve;
        }
        if (curve instanceof Cubic cubic) {
            return new Cubic(
                    start,
                    cubic.control1().plus(start.minus(cubic.start())),
                    cubic.control2().plus(end.minus(cubic.end())),
                    end);
        }
        return new Line(start, end);
    }
}
