package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntUnaryOperator;

/**
 * The parts of a path beside which the kept curves of its offset run.
 *
 * <p>A point of a parallel comes from the place whose own point of the exact parallel it is. Where the parallel crosses
 * itself there are two such places, so the ends of a curve are looked for on either side of the place of its middle.
 *
 * @param length of the path, mm
 * @param parts from where to where along it, in order of where they begin
 */
record OffsetCover(double length, List<OffsetRuns.Stretch> parts) {
    private static final int PLACES = 24;

    /** Each leaves two thirds of what is searched. */
    private static final int THIRDS = 40;

    OffsetCover {
        parts = List.copyOf(parts);
    }

    /** Returns what is covered of a path by the parallels at the distance to its left. */
    static OffsetCover of(Path path, double left, List<RawCurve> kept, double tolerance) {
        return of(path, path, k -> k, left, kept, tolerance);
    }

    /**
     * Returns what is covered of a whole path by parallels of what is left of it without its dust.
     *
     * @param origins where each curve of what is left was on the whole
     */
    static OffsetCover of(
            Path path, Path whole, IntUnaryOperator origins, double left, List<RawCurve> kept, double tolerance) {
        List<OffsetRuns.Stretch> parts = new ArrayList<>();
        for (RawCurve raw : kept) {
            if (raw.source() == RawCurve.NONE) {
                continue;
            }
            Curve source = path.curves().get(raw.source());
            double middle = place(source, left, raw.curve().pointAt(0.5), 0, 1, 0);
            double[] smooth = smooth(source, left, middle);
            double before = place(source, left, raw.curve().start(), middle, smooth[0], tolerance);
            double after = place(source, left, raw.curve().end(), middle, smooth[1], tolerance);
            int origin = origins.applyAsInt(raw.source());
            parts.add(new OffsetRuns.Stretch(
                    whole.distanceAt(new Path.Location(origin, before)),
                    whole.distanceAt(new Path.Location(origin, after))));
        }
        parts.sort(Comparator.comparingDouble(OffsetRuns.Stretch::from));
        return new OffsetCover(whole.length(), parts);
    }

    /** Returns from where to where about a place the parallel has no cusp, which no curve of it passes. */
    private static double[] smooth(Curve source, double left, double place) {
        double[] smooth = {0, 1};
        if (source instanceof Cubic cubic) {
            for (double cusp : OffsetCusps.of(cubic, left)) {
                smooth[cusp <= place ? 0 : 1] = cusp <= place ? cusp : Math.min(cusp, smooth[1]);
            }
        }
        return smooth;
    }

    /**
     * Returns the parameter, on the way from one to the other, whose point of the parallel is nearest to this one: the
     * first of those that are near enough, else of all.
     */
    private static double place(Curve source, double left, Point point, double from, double to, double enough) {
        double step = (to - from) / PLACES;
        double best = from;
        for (int i = 0; i <= PLACES; i++) {
            double here = off(source, left, point, from + i * step);
            if (here > off(source, left, point, from + Math.max(i - 1, 0) * step)
                    || here > off(source, left, point, from + Math.min(i + 1, PLACES) * step)) {
                continue;
            }
            double found =
                    least(source, left, point, from + Math.max(i - 1, 0) * step, from + Math.min(i + 1, PLACES) * step);
            if (off(source, left, point, found) <= enough) {
                return found;
            }
            if (off(source, left, point, found) < off(source, left, point, best)) {
                best = found;
            }
        }
        return best;
    }

    private static double least(Curve source, double left, Point point, double from, double to) {
        double low = from;
        double high = to;
        for (int i = 0; i < THIRDS; i++) {
            double first = low + (high - low) / 3;
            double second = high - (high - low) / 3;
            if (off(source, left, point, first) <= off(source, left, point, second)) {
                high = second;
            } else {
                low = first;
            }
        }
        return Math.min(Math.max(0.5 * (low + high), 0), 1);
    }

    private static double off(Curve source, double left, Point point, double t) {
        double inside = Math.min(Math.max(t, 0), 1);
        return source.pointAt(inside)
                .plus(source.directionAt(inside).leftNormal().times(left))
                .distanceTo(point);
    }

    /** Returns what is not covered and longer than the least length. */
    List<OffsetRuns.Stretch> gaps(double least) {
        List<OffsetRuns.Stretch> gaps = new ArrayList<>();
        double covered = 0;
        for (OffsetRuns.Stretch part : parts) {
            if (part.from() - covered > least) {
                gaps.add(new OffsetRuns.Stretch(covered, part.from()));
            }
            covered = Math.max(covered, part.to());
        }
        if (length - covered > least) {
            gaps.add(new OffsetRuns.Stretch(covered, length));
        }
        return gaps;
    }

    /** Tells whether nothing is covered that is longer than the least length. */
    boolean isNone(double least) {
        return parts.stream().noneMatch(part -> part.length() > least);
    }
}
