package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Joins two runs of parallels, the head and the tail, at the corner between them.
 *
 * <p>T1 and T2 are the unit tangents that arrive and leave, d1 and d2 the distances to the left, a the clockwise turn.
 * The prolongations meet at {@code (d2 T1 - d1 T2) / sin a} from the corner: the one point at d1 from the first line
 * and d2 from the second. A mitre goes there; a square one stops at a line across the way there; an arc is drawn about
 * the corner to half the tolerance.
 */
final class OffsetCorner {
    /** How far a tip may lie, in distances, where a style does not cut it off. */
    private static final double FAR = 1e3;

    /** How far an arc goes on past a straight edge, radians, so that it meets the parallel of a curved one as well. */
    private static final double PAST = 1.5;

    private final CornerStyle style;
    private final double tolerance;
    private final List<Curve> cutOff = new ArrayList<>();

    OffsetCorner(CornerStyle style, double tolerance) {
        this.style = style;
        this.tolerance = tolerance;
    }

    /** Returns what has been cut off the parallels. */
    List<Curve> cutOff() {
        return cutOff;
    }

    /** An outer corner: beside an edge at distance 0 always the meeting of the prolongations, else in the style. */
    void outer(
            List<RawCurve> head,
            List<RawCurve> tail,
            Point corner,
            Vector arriving,
            Vector leaving,
            double d1,
            double d2) {
        if (style instanceof CornerStyle.Round && d1 == d2) {
            arc(head, tail, corner, arriving.angleTo(leaving));
            return;
        }
        double limit = Math.max(d1, d2) * (d1 == 0 || d2 == 0 ? FAR : mitreLimit());
        double sin = arriving.cross(leaving);
        if (style instanceof CornerStyle.SquaredTo squared
                && d1 > 0
                && d2 > 0
                && (squared.second() ? d1 : d2) <= limit * sin
                && (squared.second()
                        ? squaredToSecond(head, tail, corner, arriving, leaving, d1 / sin, d2)
                        : squaredToFirst(head, tail, corner, arriving, leaving, d2 / sin, d1))) {
            return;
        }
        Vector toTip = leaving.times(d1).minus(arriving.times(d2)).times(-1 / sin);
        if (toTip.length() > limit) {
            square(head, tail, corner, toTip.unit(), limit, arriving, leaving);
        } else {
            prolong(head, corner.plus(toTip));
            prolongBack(tail, corner.plus(toTip));
        }
    }

    private double mitreLimit() {
        return style instanceof CornerStyle.Mitre mitre
                ? mitre.limit()
                : style instanceof CornerStyle.SquaredTo squared ? squared.limit() : 1;
    }

    /**
     * Ends the head square to its edge where the edge, prolonged by {@code reach}, meets the tail; past a right angle
     * the tail is prolonged to there, else it is cut off there.
     */
    private boolean squaredToFirst(
            List<RawCurve> head,
            List<RawCurve> tail,
            Point corner,
            Vector arriving,
            Vector leaving,
            double reach,
            double width) {
        Point meeting = corner.plus(arriving.times(reach));
        if (arriving.dot(leaving) <= 0) {
            prolongBack(tail, meeting);
        } else if (trimStart(tail, corner, arriving)) {
            meeting = tail.get(0).curve().start();
        } else {
            return false;
        }
        prolong(head, meeting.plus(arriving.leftNormal().times(width)));
        addLine(head, head.get(head.size() - 1).curve().end(), meeting, true, false);
        return true;
    }

    private boolean squaredToSecond(
            List<RawCurve> head,
            List<RawCurve> tail,
            Point corner,
            Vector arriving,
            Vector leaving,
            double reach,
            double width) {
        Point meeting = corner.plus(leaving.times(-reach));
        if (arriving.dot(leaving) <= 0) {
            prolong(head, meeting);
        } else if (trimEnd(head, corner, leaving)) {
            meeting = head.get(head.size() - 1).curve().end();
        } else {
            return false;
        }
        Point foot = meeting.plus(leaving.leftNormal().times(width));
        addLine(head, meeting, foot, true, false);
        prolongBack(tail, foot);
        return true;
    }

    /** A turn back on itself: round the end, or square off it. */
    void back(List<RawCurve> head, List<RawCurve> tail, Point corner, Vector arriving, double d1, double d2) {
        if (style instanceof CornerStyle.Round && d1 == d2) {
            arc(head, tail, corner, Math.PI);
        } else {
            square(head, tail, corner, arriving, Math.max(d1, d2), arriving, arriving.negated());
        }
    }

    /** The parallels cross: linked through the corner until they are trimmed. */
    void inner(List<RawCurve> head, List<RawCurve> tail, Point corner) {
        RawCurve last = head.get(head.size() - 1);
        Point to = tail.get(0).curve().start();
        addLine(head, last.curve().end(), corner, true, true);
        addLine(head, corner, to, true, true);
    }

    /** A straight step between two very different distances. */
    void step(List<RawCurve> head, List<RawCurve> tail) {
        addLine(
                head,
                head.get(head.size() - 1).curve().end(),
                tail.get(0).curve().start(),
                true,
                false);
    }

    /**
     * Carries the greater of two different distances round the corner in an arc, from its parallel past the other edge;
     * the trim finds where the arc meets the other parallel.
     */
    void carryRound(
            List<RawCurve> head,
            List<RawCurve> tail,
            Point corner,
            Vector arriving,
            Vector leaving,
            double d1,
            double d2) {
        double angle = Math.max(0.5 * Math.PI + arriving.angleTo(leaving), 0) + PAST;
        Point from = head.get(head.size() - 1).curve().end();
        Point to = tail.get(0).curve().start();
        if (d1 > d2) {
            Point past = corner.plus(arriving.leftNormal().times(d1).rotated(angle));
            addArc(head, corner, from, past, angle);
            addLine(head, past, to, true, true);
        } else {
            Point past = corner.plus(leaving.leftNormal().times(d2).rotated(-angle));
            addLine(head, from, past, true, true);
            addArc(head, corner, past, to, angle);
        }
    }

    /**
     * Cuts the head off where it last crosses the prolongation of the tail, an edge at distance 0, and prolongs the
     * tail to there.
     */
    void cutEnd(List<RawCurve> head, List<RawCurve> tail, Point corner, Vector direction) {
        if (trimEnd(head, corner, direction)) {
            prolongBack(tail, head.get(head.size() - 1).curve().end());
        } else {
            step(head, tail);
        }
    }

    /**
     * Cuts the tail off where it first crosses the prolongation of the head, an edge at distance 0, and prolongs the
     * head to there.
     */
    void cutStart(List<RawCurve> head, List<RawCurve> tail, Point corner, Vector direction) {
        if (trimStart(tail, corner, direction)) {
            prolong(head, tail.get(0).curve().start());
        } else {
            step(head, tail);
        }
    }

    /** Cuts off the head where it last crosses a line; false and untouched where it does not. */
    private boolean trimEnd(List<RawCurve> head, Point corner, Vector direction) {
        for (int i = head.size() - 1; i >= 0; i--) {
            Curve curve = head.get(i).curve();
            double[] cuts = LineContacts.parameters(Cubic.from(curve), corner, direction, tolerance);
            if (cuts.length > 0) {
                double t = Arrays.stream(cuts).max().getAsDouble();
                cutOff.add(curve.sub(t, 1));
                head.subList(i + 1, head.size()).forEach(raw -> cutOff.add(raw.curve()));
                head.subList(i + 1, head.size()).clear();
                head.set(i, head.get(i).with(curve.sub(0, t)));
                return true;
            }
        }
        return false;
    }

    /** Cuts off the tail where it first crosses a line; false and untouched where it does not. */
    private boolean trimStart(List<RawCurve> tail, Point corner, Vector direction) {
        for (int i = 0; i < tail.size(); i++) {
            Curve curve = tail.get(i).curve();
            double[] cuts = LineContacts.parameters(Cubic.from(curve), corner, direction, tolerance);
            if (cuts.length > 0) {
                double t = Arrays.stream(cuts).min().getAsDouble();
                cutOff.add(curve.sub(0, t));
                tail.subList(0, i).forEach(raw -> cutOff.add(raw.curve()));
                tail.set(i, tail.get(i).with(curve.sub(t, 1)));
                tail.subList(0, i).clear();
                return true;
            }
        }
        return false;
    }

    private void arc(List<RawCurve> head, List<RawCurve> tail, Point corner, double angle) {
        addArc(
                head,
                corner,
                head.get(head.size() - 1).curve().end(),
                tail.get(0).curve().start(),
                angle);
    }

    private void addArc(List<RawCurve> head, Point corner, Point from, Point to, double angle) {
        int edge = head.get(head.size() - 1).edge();
        for (Curve curve : Arcs.of(corner, from, to, angle, 0.5 * tolerance)) {
            head.add(new RawCurve(curve, edge, RawCurve.NONE, true, false));
        }
    }

    /** Prolongs both parallels up to the line square to the way out, at this distance from the corner. */
    private void square(
            List<RawCurve> head,
            List<RawCurve> tail,
            Point corner,
            Vector out,
            double reach,
            Vector arriving,
            Vector leaving) {
        Point from = head.get(head.size() - 1).curve().end();
        Point to = tail.get(0).curve().start();
        double ahead = (reach - from.minus(corner).dot(out)) / arriving.dot(out);
        double back = (reach - to.minus(corner).dot(out)) / -leaving.dot(out);
        Point first = ahead > 0 ? from.plus(arriving.times(ahead)) : from;
        Point second = back > 0 ? to.plus(leaving.times(-back)) : to;
        prolong(head, first);
        addLine(head, first, second, true, false);
        prolongBack(tail, second);
    }

    /** Prolongs the end of the run straight to the point; a straight last curve simply grows. */
    private void prolong(List<RawCurve> head, Point tip) {
        int end = head.size() - 1;
        RawCurve last = head.get(end);
        if (last.curve() instanceof Line line) {
            head.set(end, last.with(new Line(line.start(), tip)));
        } else {
            addLine(head, last.curve().end(), tip, false, false);
        }
    }

    private void prolongBack(List<RawCurve> tail, Point tip) {
        RawCurve first = tail.get(0);
        if (first.curve() instanceof Line line) {
            tail.set(0, first.with(new Line(tip, line.end())));
        } else if (!tip.equals(first.curve().start())) {
            tail.add(0, first.prolongedBy(new Line(tip, first.curve().start())));
        }
    }

    private void addLine(List<RawCurve> head, Point from, Point to, boolean corner, boolean link) {
        if (!from.equals(to)) {
            int edge = head.get(head.size() - 1).edge();
            head.add(new RawCurve(new Line(from, to), edge, RawCurve.NONE, corner, link));
        }
    }
}
