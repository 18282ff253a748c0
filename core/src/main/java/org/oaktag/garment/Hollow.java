package org.oaktag.garment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oaktag.garment.CutBorder.Stretch;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.OffsetPart;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;

/**
 * A stretch of an edge that no cut line runs beside, because the allowances on its two sides meet before they reach its
 * bottom: cloth would be left standing that no allowance asks for.
 *
 * <p>A place on an edge is <em>reached</em> if the cut line lies within twice its allowance of it (the edge's own, or
 * the greater one that the cut line keeps there). So a dent no deeper than the allowance is reached, and an inner
 * corner of 60 degrees or more. A sharper one, {@code a} degrees wide, holds the cut line back by the allowance over
 * {@code sin(a/2)}: within that of it nothing is amiss as long as some of both its sides is cut.
 *
 * <p>How near a place is to the cut line changes by no more than one steps along the edge, so a place tells of all
 * others within what it has to spare.
 *
 * @param edge the edge
 * @param from where the stretch begins, mm from the start of the edge
 * @param to where it ends
 */
record Hollow(Name edge, double from, double to) {

    private static final double REACH = 2;

    /** The length of the parts that are looked at, in widths: less than the two that a place tells of. */
    private static final double STEP = 1.6;

    /** Turns sharper than this, radians, are corners. */
    private static final double CORNER = 0.1;

    /** As many points of one curve are looked at first; where these do not tell, the nearest place does. */
    private static final int MANY = 64;

    /** At how many places a side of a corner is looked at. */
    private static final int PLACES = 64;

    /** Places no further apart than this, mm, are one; so near to its distance is a cut line beside its edge. */
    private static final double FINE = 2 * CutLine.TOLERANCE;

    /** Returns the first hollow of a border that its cut line leaves standing. */
    static Optional<Hollow> first(List<Stretch> border, List<OffsetPart> cutLine) {
        Search search = new Search(border, cuts(border, cutLine));
        for (int i = 0; i < border.size(); i++) {
            if (border.get(i).isCutBeside()) {
                Optional<Hollow> found = search.in(i);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    /**
     * A curve of the cut line, some points of it, the index of the stretch that it runs beside, and the greatest width
     * that it keeps.
     */
    private record Scissors(Curve curve, Bounds box, List<Point> points, int beside, double width) {

        static Scissors of(Curve curve, int beside, double width) {
            Bounds box = curve.bounds();
            int count = curve instanceof Line
                    ? 0
                    : (int) Math.min(MANY, Math.ceil(2 * (box.width() + box.height()) / Math.max(width, FINE)));
            List<Point> points = new ArrayList<>(count);
            for (int k = 0; k < count; k++) {
                points.add(curve.pointAt((k + 0.5) / count));
            }
            return new Scissors(curve, box, points, beside, width);
        }

        double distanceOfBox(Point place) {
            double x = Math.max(0, Math.max(box.minX() - place.x(), place.x() - box.maxX()));
            double y = Math.max(0, Math.max(box.minY() - place.y(), place.y() - box.maxY()));
            return Math.hypot(x, y);
        }
    }

    /** An inner corner at a place along a stretch, and how far from it the cut line may stay. */
    private record Corner(double along, Point point, double turn) {

        boolean explains(Point place, double width) {
            return turn < 0 && place.distanceTo(point) <= width / Math.cos(0.5 * turn) + FINE;
        }
    }

    private static List<Scissors> cuts(List<Stretch> border, List<OffsetPart> cutLine) {
        List<Scissors> cuts = new ArrayList<>();
        for (OffsetPart part : cutLine) {
            double width = border.get(part.edge()).width();
            if (part.corner()) {
                width = Math.max(
                        width, border.get((part.edge() + 1) % border.size()).width());
            }
            for (Curve curve : part.path().curves()) {
                cuts.add(Scissors.of(curve, part.edge(), width));
            }
        }
        return cuts;
    }

    private record Search(List<Stretch> border, List<Scissors> cuts) {

        /** Looks at parts so short that one place tells of all of each where the cut line runs beside it. */
        Optional<Hollow> in(int i) {
            double length = border.get(i).path().length();
            int count = (int) Math.ceil(length / (STEP * border.get(i).width()));
            for (int k = 0; k < count; k++) {
                Optional<Hollow> found = in(i, length * k / count, length * (k + 1) / count);
                if (found.isPresent()) {
                    return found;
                }
            }
            return Optional.empty();
        }

        /** Halves a part of a stretch until its middle tells of all of it. */
        private Optional<Hollow> in(int i, double from, double to) {
            double middle = 0.5 * (from + to);
            double half = 0.5 * (to - from);
            Point place = border.get(i).path().pointAt(middle);
            double spare = spare(i, place, half);
            if (spare < 0 && !isExplained(i, middle, place)) {
                return Optional.of(around(i, middle));
            }
            if (spare >= half || half < FINE) {
                return Optional.empty();
            }
            Optional<Hollow> before = in(i, from, middle);
            return before.isPresent() ? before : in(i, middle, to);
        }

        /**
         * Returns how much further off the cut line might be; only up to what is enough, which some point beside it
         * mostly tells.
         */
        private double spare(int i, Point place, double enough) {
            double best = Double.NEGATIVE_INFINITY;
            for (Scissors cut : cuts) {
                if (cut.beside() == i) {
                    double reach = REACH * Math.max(border.get(i).width(), cut.width());
                    for (Point point : cut.points()) {
                        best = Math.max(best, reach - place.distanceTo(point));
                    }
                    if (best >= enough) {
                        return best;
                    }
                }
            }
            for (boolean own : new boolean[] {true, false}) {
                for (Scissors cut : cuts) {
                    double reach = REACH * Math.max(border.get(i).width(), cut.width());
                    if ((cut.beside() == i) == own && reach - cut.distanceOfBox(place) > best) {
                        best = Math.max(best, reach - cut.curve().nearest(place).distance());
                        if (best >= enough) {
                            return best;
                        }
                    }
                }
            }
            return best;
        }

        private boolean isExplained(int i, double along, Point place) {
            List<Corner> corners = corners(i);
            int next = 0;
            while (next < corners.size() - 1 && corners.get(next).along() < along) {
                next++;
            }
            return isCut(i, corners, next)
                    && (isExplained(i, corners, next - 1, place) || isExplained(i, corners, next, place));
        }

        /** Whether a corner of a stretch explains it, which also the part on its other side must. */
        private boolean isExplained(int i, List<Corner> corners, int k, Point place) {
            int other = i;
            boolean cut;
            if (k == 0) {
                other = Math.floorMod(i - 1, border.size());
                List<Corner> before = corners(other);
                cut = isCut(other, before, before.size() - 1);
            } else if (k == corners.size() - 1) {
                other = (i + 1) % border.size();
                cut = isCut(other, corners(other), 1);
            } else {
                cut = isCut(i, corners, k) && isCut(i, corners, k + 1);
            }
            double width = Math.max(border.get(i).width(), border.get(other).width());
            return cut && corners.get(k).explains(place, width);
        }

        /** Whether a cut line runs somewhere beside the part of a stretch between a corner and the one before it. */
        private boolean isCut(int i, List<Corner> corners, int k) {
            return !border.get(i).isCutBeside()
                    || isCut(i, corners.get(k - 1).along(), corners.get(k).along());
        }

        private boolean isCut(int i, double from, double to) {
            Path path = border.get(i).path();
            double width = border.get(i).width();
            for (int k = 0; k < PLACES; k++) {
                double along = from + (k + 0.5) / PLACES * (to - from);
                Point parallel = path.pointAt(along)
                        .plus(path.directionAt(along).leftNormal().times(width));
                if (distance(parallel) <= FINE) {
                    return true;
                }
            }
            return false;
        }

        private double distance(Point place) {
            double nearest = Double.POSITIVE_INFINITY;
            for (Scissors cut : cuts) {
                if (cut.distanceOfBox(place) < nearest) {
                    nearest = Math.min(nearest, cut.curve().nearest(place).distance());
                }
            }
            return nearest;
        }

        /** The start, the corners and the end of a stretch. */
        private List<Corner> corners(int i) {
            int count = border.size();
            Path path = border.get(i).path();
            Path before = border.get(Math.floorMod(i - 1, count)).path();
            Path after = border.get((i + 1) % count).path();
            List<Corner> corners = new ArrayList<>();
            corners.add(new Corner(0, path.start(), before.endDirection().angleTo(path.startDirection())));
            List<Curve> curves = path.curves();
            for (int k = 1; k < curves.size(); k++) {
                if (curves.get(k - 1).isPoint() || curves.get(k).isPoint()) {
                    continue;
                }
                double turn =
                        curves.get(k - 1).directionAt(1).angleTo(curves.get(k).directionAt(0));
                if (Math.abs(turn) > CORNER) {
                    double along = path.distanceAt(new Path.Location(k - 1, 1));
                    corners.add(new Corner(along, curves.get(k).start(), turn));
                }
            }
            corners.add(
                    new Corner(path.length(), path.end(), path.endDirection().angleTo(after.startDirection())));
            return corners;
        }

        /** The part of the stretch on both sides of a place where nothing is cut beside it. */
        private Hollow around(int i, double along) {
            double from = along;
            for (double off = off(i, from); off > 0 && from > 0; off = off(i, from)) {
                from = Math.max(0, from - Math.max(off, FINE));
            }
            double to = along;
            double end = border.get(i).path().length();
            for (double off = off(i, to); off > 0 && to < end; off = off(i, to)) {
                to = Math.min(end, to + Math.max(off, FINE));
            }
            return new Hollow(border.get(i).edge(), from, to);
        }

        /** How much further than its width the cut line is from a place. */
        private double off(int i, double along) {
            Stretch stretch = border.get(i);
            return distance(stretch.path().pointAt(along)) - stretch.width() - FINE;
        }
    }
}
