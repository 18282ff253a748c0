package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Makes one meeting of the points at which two curves were found to meet and between which they do not part. Where
 * curves touch with the same curvature they are within the tolerance of each other for a stretch, a millimetre and more
 * on large curves, and a search finds one place of it or twenty.
 *
 * <p>An end of a curve among them is the meeting, as it is what neighbours on a path share; else it is the middle of
 * the stretch.
 */
final class FlatContacts {
    /** Eighths of the way between two points, the one first at which curves are most likely to part. */
    private static final int[] BETWEEN = {4, 2, 6, 1, 3, 5, 7};

    private static final double EIGHTH = 0.125;

    private final Curve a;
    private final Curve b;
    private final double apart;

    /**
     * Curves that come no further from each other than twice the tolerance do not part: the points may be a tolerance
     * off each.
     */
    FlatContacts(Curve a, Curve b, double tolerance) {
        this.a = a;
        this.b = b;
        this.apart = 2 * tolerance;
    }

    /** Returns the meetings of these points, which come in order along the first curve. */
    List<Contact> joined(List<Contact> points) {
        if (points.size() < 2) {
            return points;
        }
        List<List<Contact>> groups = new ArrayList<>();
        for (Contact point : points) {
            groups.stream()
                    .filter(group -> isOneWith(group.get(group.size() - 1), point))
                    .findFirst()
                    .orElseGet(() -> {
                        List<Contact> group = new ArrayList<>();
                        groups.add(group);
                        return group;
                    })
                    .add(point);
        }
        List<Contact> meetings = new ArrayList<>();
        for (List<Contact> group : groups) {
            List<Contact> ends = group.stream().filter(FlatContacts::isEnd).toList();
            if (ends.isEmpty()) {
                meetings.add(group.size() == 1 ? group.get(0) : middle(group));
            }
            meetings.addAll(ends);
        }
        return meetings;
    }

    private static boolean isEnd(Contact point) {
        return point.t0() == 0 || point.t0() == 1 || point.u0() == 0 || point.u0() == 1;
    }

    private Contact middle(List<Contact> group) {
        double t = 0.5 * (group.get(0).t0() + group.get(group.size() - 1).t0());
        return Contact.point(t, b.nearest(a.pointAt(t)).t());
    }

    /** Tells whether between the two the one curve keeps to the part of the other that lies between them too. */
    private boolean isOneWith(Contact one, Contact other) {
        double least = Math.min(one.u0(), other.u0());
        double most = Math.max(one.u0(), other.u0());
        Curve part = b.sub(least, most);
        for (int eighths : BETWEEN) {
            Point between = a.pointAt(one.t0() + EIGHTH * eighths * (other.t0() - one.t0()));
            if (part.nearest(between).distance() > apart) {
                return false;
            }
        }
        return true;
    }
}
