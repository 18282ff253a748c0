package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Turns contacts of curves into crossings of their paths: joins what meets at the joins of curves, and tells crosses
 * from touches.
 *
 * <p>Contacts within 1e-6 mm of each other along both paths are one, round the end of a closed path as well; an overlap
 * that passes it is told as two, and so is one at whose middle one of the paths turns back. A point is a cross if, in
 * the order of the angles at which they are seen from it, exactly one branch of the second path lies between the two of
 * the first. They are looked at up to 0.1 mm away, nearer where another meeting or an end is near, further off where
 * the paths have not parted there yet. At an end of an open path, or on one of no length, it is a touch.
 */
final class CrossingCollector {
    private static final double SAME = 1e-6;

    /** How far from a point its branches are looked at, mm, if nothing else is nearer. */
    private static final double LOOK = 0.1;

    /** Branches that are further from each other than this, mm, are apart: ten times what counts as a meeting. */
    private static final double PARTED = 10 * CurveContacts.NEAR;

    /** So many times as far off as it is looked at another meeting must be. */
    private static final double APART = 4;

    private final Path first;
    private final Path second;

    /** Whether it is one path that meets itself. */
    private final boolean itself;

    private final List<Crossing> found = new ArrayList<>();

    CrossingCollector(Path first, Path second) {
        this.first = first;
        this.second = second;
        this.itself = first.equals(second);
    }

    void add(int i, int j, Contact contact) {
        Crossing.Place from = place(i, contact.t0(), j, contact.u0());
        if (contact.isPoint()) {
            found.add(new Crossing(Crossing.Kind.TOUCH, from, from));
        } else {
            found.add(new Crossing(Crossing.Kind.OVERLAP, from, place(i, contact.t1(), j, contact.u1())));
        }
    }

    private Crossing.Place place(int i, double t, int j, double u) {
        Curve curve = first.curves().get(i);
        Curve other = second.curves().get(j);
        // An end is the more exact of the two, and is what neighbouring curves share.
        Point point = u == 0 || u == 1 ? other.pointAt(u) : curve.pointAt(t);
        return new Crossing.Place(
                point, first.distanceAt(new Path.Location(i, t)), second.distanceAt(new Path.Location(j, u)));
    }

    List<Crossing> crossings() {
        found.sort(Comparator.comparingDouble(Crossing::first).thenComparingDouble(Crossing::second));
        List<Crossing> overlaps = joinedOverlaps();
        List<Crossing> points = new ArrayList<>();
        for (Crossing point : found) {
            if (point.kind() == Crossing.Kind.TOUCH
                    && near(points, point.first(), SAME).stream().noneMatch(known -> isSame(known, point))
                    && overlaps.stream().noneMatch(known -> isPart(known, point))) {
                points.add(point);
            }
        }
        List<Crossing> all = new ArrayList<>(overlaps);
        for (Crossing point : points) {
            all.add(new Crossing(kind(point, points), point.from(), point.to()));
        }
        all.sort(Comparator.comparingDouble(Crossing::first).thenComparingDouble(Crossing::second));
        return List.copyOf(all);
    }

    /**
     * Returns those of the points, which come in order along the first path, that lie this near to a place on it, the
     * short way round.
     */
    private List<Crossing> near(List<Crossing> points, double distance, double reach) {
        double room = 2 * reach;
        int low = firstFrom(points, distance - room);
        int high = firstFrom(points, distance + room);
        if (!first.isClosed() || (distance >= room && distance <= first.length() - room)) {
            return points.subList(low, high);
        }
        List<Crossing> round = new ArrayList<>(points.subList(low, high));
        round.addAll(0, points.subList(0, Math.min(low, firstFrom(points, distance + room - first.length()))));
        round.addAll(points.subList(
                Math.max(high, firstFrom(points, distance - room + first.length())), points.size()));
        return round;
    }

    /** Returns the index of the first point from this distance on. */
    private static int firstFrom(List<Crossing> points, double distance) {
        int low = 0;
        int high = points.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (points.get(middle).first() < distance) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** An overlap that ends at a join goes on with the one that starts there. */
    private List<Crossing> joinedOverlaps() {
        List<Crossing> joined = new ArrayList<>();
        for (Crossing overlap : found) {
            if (overlap.kind() == Crossing.Kind.OVERLAP) {
                Crossing.Place from = overlap.from();
                for (Crossing earlier : List.copyOf(joined)) {
                    if (isNext(earlier, overlap)) {
                        joined.remove(earlier);
                        from = earlier.from();
                    }
                }
                joined.add(new Crossing(Crossing.Kind.OVERLAP, from, overlap.to()));
            }
        }
        return joined;
    }

    /**
     * Tells whether one overlap goes on with the other: the same way along the second path, and not round the end of a
     * closed one, so that along an overlap the distances only rise or only fall.
     */
    private static boolean isNext(Crossing overlap, Crossing next) {
        double onFirst = Math.abs(overlap.to().first() - next.first());
        double onSecond = Math.abs(overlap.to().second() - next.second());
        return Math.max(onFirst, onSecond) <= SAME && sense(overlap) == sense(next);
    }

    private static double sense(Crossing overlap) {
        return Math.signum(overlap.to().second() - overlap.second());
    }

    private boolean isSame(Crossing a, Crossing b) {
        return Math.max(apart(first, a.first(), b.first()), apart(second, a.second(), b.second())) <= SAME;
    }

    private boolean isPart(Crossing overlap, Crossing point) {
        double low = Math.min(overlap.from().second(), overlap.to().second());
        double high = Math.max(overlap.from().second(), overlap.to().second());
        return within(first, point.first(), overlap.from().first(), overlap.to().first())
                && within(second, point.second(), low, high);
    }

    private static boolean within(Path path, double distance, double low, double high) {
        return (distance > low && distance < high)
                || Math.min(apart(path, distance, low), apart(path, distance, high)) <= SAME;
    }

    /** Returns the distance along the path from one place to the other, the short way round if it is closed. */
    private static double apart(Path path, double a, double b) {
        double apart = Math.abs(a - b);
        return path.isClosed() ? Math.min(apart, Math.abs(path.length() - apart)) : apart;
    }

    /**
     * The second path crosses the first if exactly one of its branches leaves between the two branches of the first.
     * Where two of them are not apart yet it is looked further off, as long as nothing else is near.
     */
    private Crossing.Kind kind(Crossing point, List<Crossing> all) {
        if (isEnd(first, point.first()) || isEnd(second, point.second())) {
            return Crossing.Kind.TOUCH;
        }
        double most = 0.1 * Math.min(first.length(), second.length());
        double look = Math.min(clear(point, all, LOOK), most);
        Branches seen = seen(point, look);
        while (seen.gap() * look < PARTED && 2 * look <= most && clear(point, all, 2 * look) == 2 * look) {
            look *= 2;
            seen = seen(point, look);
        }
        return seen.isCross() ? Crossing.Kind.CROSS : Crossing.Kind.TOUCH;
    }

    /**
     * Returns the distance, or as much of it as leaves other meetings four times as far off, and the way back to the
     * point four times as long where one path comes back to it.
     */
    private double clear(Crossing point, List<Crossing> all, double distance) {
        double clear = distance;
        double back = itself ? apart(first, point.first(), point.second()) : 0;
        if (back > SAME) {
            clear = Math.min(clear, back / APART);
        }
        for (Crossing other : near(all, point.first(), APART * distance)) {
            if (!other.equals(point)) {
                double gap = Math.max(
                        apart(first, point.first(), other.first()), apart(second, point.second(), other.second()));
                clear = Math.min(clear, gap / APART);
            }
        }
        return clear;
    }

    private Branches seen(Crossing point, double look) {
        double ahead = branch(first, point.first() + look, point.point());
        return new Branches(
                turn(ahead, branch(first, point.first() - look, point.point())),
                turn(ahead, branch(second, point.second() + look, point.point())),
                turn(ahead, branch(second, point.second() - look, point.point())));
    }

    /**
     * The angles from the branch of the first path ahead, clockwise, to that behind and to both of the second, radians,
     * up to a turn.
     */
    private record Branches(double behind, double leaving, double arriving) {

        boolean isCross() {
            return leaving < behind == arriving > behind;
        }

        /** Returns the least angle between a branch of the one path and one of the other. */
        double gap() {
            return Math.min(
                    Math.min(between(leaving, 0), between(arriving, 0)),
                    Math.min(between(leaving, behind), between(arriving, behind)));
        }

        private static double between(double a, double b) {
            double turn = Math.abs(a - b);
            return Math.min(turn, 2 * Math.PI - turn);
        }
    }

    private static boolean isEnd(Path path, double distance) {
        if (path.length() == 0) {
            return true;
        }
        return !path.isClosed() && (distance <= SAME || distance >= path.length() - SAME);
    }

    /** Angle at which the path is seen from the point, at this distance, wrapped round if the path is closed. */
    private static double branch(Path path, double distance, Point from) {
        double length = path.length();
        double inside = path.isClosed() ? distance - length * Math.floor(distance / length) : distance;
        return path.pointAt(Math.min(Math.max(inside, 0), length)).minus(from).angle();
    }

    private static double turn(double from, double to) {
        double turn = to - from;
        return turn < 0 ? turn + 2 * Math.PI : turn;
    }
}
