package org.oaktag.lay;

import java.util.Arrays;

/**
 * By how much parts overlap each other that are placed: for each pair, the least way along or across the cloth by which
 * one would have to move to be clear of the other, and a weight that grows while it does not.
 */
final class Overlaps {

    /** Where the slices across the cloth, a pitch apart, miss a slight overlap it is taken to be this deep, mm. */
    private static final double SLIGHT = 0.5;

    private final Nesting nesting;
    private final Placed placed;
    private final double[][] depth;
    private final double[][] weight;

    Overlaps(Nesting nesting, Placed placed) {
        int count = nesting.parts().size();
        this.nesting = nesting;
        this.placed = placed;
        this.depth = new double[count][count];
        this.weight = new double[count][count];
        for (int part = 0; part < count; part++) {
            Arrays.fill(weight[part], 1);
            update(part);
        }
    }

    /** Measures the overlaps of a part anew, after it moved. */
    void update(int part) {
        for (int other = 0; other < depth.length; other++) {
            double now = other == part ? 0 : depth(placed.shape[part], placed.column[part], placed.y[part], other);
            depth[part][other] = now;
            depth[other][part] = now;
        }
    }

    /** Returns the overlaps of a part where it lies, weighted. */
    double of(int part) {
        double sum = 0;
        for (int other = 0; other < depth.length; other++) {
            sum += weight[part][other] * depth[part][other];
        }
        return sum;
    }

    /** Returns all overlaps, not weighted. */
    double total() {
        return Arrays.stream(depth).flatMapToDouble(Arrays::stream).sum() / 2;
    }

    /** Returns how much the overlap of two parts weighs. */
    double weight(int part, int other) {
        return weight[part][other];
    }

    /** Gives the pairs that overlap more weight, the deepest the most. */
    void weigh() {
        double deepest =
                Arrays.stream(depth).flatMapToDouble(Arrays::stream).max().orElse(0);
        if (deepest > 0) {
            for (int a = 0; a < depth.length; a++) {
                for (int b = 0; b < depth.length; b++) {
                    weight[a][b] += depth[a][b] / deepest;
                }
            }
        }
    }

    private double depth(int shape, int column, double y, int other) {
        double dy = y - placed.y[other];
        double along = depth(nesting.along(placed.shape[other], shape).at(column - placed.column[other]), dy);
        return along == 0 ? 0 : depth(along, shape, column, dy, other);
    }

    /** Returns the depth of an overlap whose depth along the cloth is known. */
    double depth(double along, int shape, int column, double dy, int other) {
        double[] across = nesting.across(placed.shape[other], shape).at((int) Math.rint(dy / Nesting.PITCH));
        return Math.min(along, Math.max(SLIGHT, depth(across, (column - placed.column[other]) * Nesting.PITCH)));
    }

    /** Returns how far a distance lies within one of the intervals, low and high by turns. */
    static double depth(double[] intervals, double distance) {
        for (int k = 0; k < intervals.length; k += 2) {
            if (distance > intervals[k] + Placed.TOUCHING && distance < intervals[k + 1] - Placed.TOUCHING) {
                return Math.min(distance - intervals[k], intervals[k + 1] - distance);
            }
        }
        return 0;
    }
}
