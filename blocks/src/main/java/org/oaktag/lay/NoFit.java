package org.oaktag.lay;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;

/**
 * Where one shape may not lie beside another: their no-fit polygon, grown by the room that they must keep and cut by
 * upright lines a pitch apart.
 *
 * <p>Not thread-safe: it fills as it is asked. For each number of pitches by which the second shape lies to the right
 * of the first, it holds the open intervals of its distance below the first in which the two would come too near. Two
 * trapezoids overlap where the displacement of one from the other lies in a convex polygon, whose upper and lower
 * bounds are found at each distance to the right from the ends of the stretch of x that they share. The room is a
 * square, within which the disc of that radius lies: over a band of distances as wide as it, a bound is greatest at an
 * end of the band or where corner comes under corner. The slices are therefore exact for polygons, and take in the
 * hollows of the no-fit polygon; only x is bound to the grid.
 *
 * <p>The no-fit polygon is that of Adamowicz and Albano, "Nesting two-dimensional shapes in rectangular modules",
 * Computer-Aided Design 8 (1976), 27 to 33.
 */
final class NoFit {

    private static final double[] NONE = {};

    private final int reachLeft;
    private final double[] @Nullable [] slices;
    private final IntFunction<double[]> source;

    private NoFit(int reachLeft, int count, IntFunction<double[]> source) {
        this.reachLeft = reachLeft;
        this.slices = new double[count][];
        this.source = source;
    }

    /**
     * Returns the slices of every number of pitches at which the shapes come near each other; each is cut when it is
     * first asked for.
     *
     * @param pitch how far apart the upright lines are, mm
     * @param room the room between the two, mm
     */
    static NoFit of(Slabs fixed, Slabs moving, double pitch, double room) {
        int reachLeft = (int) Math.ceil((moving.right() - fixed.left() + room) / pitch);
        int reachRight = (int) Math.ceil((fixed.right() - moving.left() + room) / pitch);
        return new NoFit(
                reachLeft,
                reachLeft + reachRight + 1,
                pitches -> slice(fixed.trapezoids(), moving.trapezoids(), pitches * pitch, room));
    }

    /** Returns the forbidden intervals, low and high by turns, rising and apart; not to be changed. */
    double[] at(int pitches) {
        int i = pitches + reachLeft;
        if (i < 0 || i >= slices.length) {
            return NONE;
        }
        double[] slice = slices[i];
        if (slice == null) {
            slice = source.apply(pitches);
            slices[i] = slice;
        }
        return slice;
    }

    /** Returns the same seen from the second shape: where the first may not lie beside it. */
    NoFit reversed() {
        return new NoFit(slices.length - 1 - reachLeft, slices.length, pitches -> negated(at(-pitches)));
    }

    private static double[] negated(double[] slice) {
        double[] back = new double[slice.length];
        for (int k = 0; k < slice.length; k++) {
            back[k] = -slice[slice.length - 1 - k];
        }
        return back;
    }

    private static double[] slice(List<Slabs.Trapezoid> fixed, List<Slabs.Trapezoid> moving, double dx, double radius) {
        List<double[]> intervals = new ArrayList<>();
        int first = 0;
        for (Slabs.Trapezoid a : fixed) {
            while (first < moving.size() && moving.get(first).right() + dx + radius <= a.left()) {
                first++;
            }
            for (int j = first; j < moving.size() && moving.get(j).left() + dx - radius < a.right(); j++) {
                Slabs.Trapezoid b = moving.get(j);
                double from = Math.max(dx - radius, a.left() - b.right());
                double to = Math.min(dx + radius, a.right() - b.left());
                double[] interval = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
                widen(interval, a, b, from);
                widen(interval, a, b, to);
                widenWithin(interval, a, b, a.left() - b.left(), from, to);
                widenWithin(interval, a, b, a.right() - b.right(), from, to);
                add(intervals, interval[0] - radius, interval[1] + radius);
            }
        }
        return merged(intervals);
    }

    private static void widenWithin(
            double[] interval, Slabs.Trapezoid a, Slabs.Trapezoid b, double dx, double from, double to) {
        if (dx > from && dx < to) {
            widen(interval, a, b, dx);
        }
    }

    /** Takes in the distances at which the trapezoids overlap when the second lies so far to the right. */
    private static void widen(double[] interval, Slabs.Trapezoid a, Slabs.Trapezoid b, double dx) {
        double left = Math.max(a.left(), b.left() + dx);
        double right = Math.max(left, Math.min(a.right(), b.right() + dx));
        interval[0] = Math.min(
                interval[0], Math.min(a.topAt(left) - b.bottomAt(left - dx), a.topAt(right) - b.bottomAt(right - dx)));
        interval[1] = Math.max(
                interval[1], Math.max(a.bottomAt(left) - b.topAt(left - dx), a.bottomAt(right) - b.topAt(right - dx)));
    }

    /** Neighbouring trapezoids mostly forbid the same distances, so the interval before mostly grows. */
    private static void add(List<double[]> intervals, double low, double high) {
        if (!intervals.isEmpty()) {
            double[] last = intervals.get(intervals.size() - 1);
            if (low <= last[1] && high >= last[0]) {
                last[0] = Math.min(last[0], low);
                last[1] = Math.max(last[1], high);
                return;
            }
        }
        intervals.add(new double[] {low, high});
    }

    private static double[] merged(List<double[]> intervals) {
        intervals.sort(Comparator.comparingDouble(interval -> interval[0]));
        double[] merged = new double[2 * intervals.size()];
        int count = 0;
        for (double[] interval : intervals) {
            if (count > 0 && interval[0] <= merged[count - 1]) {
                merged[count - 1] = Math.max(merged[count - 1], interval[1]);
            } else {
                merged[count++] = interval[0];
                merged[count++] = interval[1];
            }
        }
        return Arrays.copyOf(merged, count);
    }
}
