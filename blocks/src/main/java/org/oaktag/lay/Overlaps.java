package org.oaktag.lay;

import java.util.Arrays;

/**
 * By how much parts overlap each other that are placed: for each pair, the least way along or across the cloth by which one
 * would have to move to be clear of the other, and a weight that grows while it does not.
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

    /** Returns what the overlaps of a part would be elsewhere, weighted; it stops adding where they are not below a limit. */
    double at(int part, int shape, int column, double y, double limit) {
        double sum = 0;
        for (int other = 0; other < depth.length && sum < limit; other++) {
            if (other != part) {
                sum += weight[part][other] * depth(shape, column, y, other);
            }
        }
        return sum;
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
        int columns = column - placed.column[other];
        double dy = y - placed.y[other];
        double along = depth(nesting.along(placed.shape[other], shape).at(columns), dy);
        if (along == 0) {
            return 0;
        }
        double[] across = nesting.across(placed.shape[other], shape).at((int) Math.rint(dy / Nesting.PITCH));
        return Math.min(along, Math.max(SLIGHT, depth(across, columns * Nesting.PITCH)));
    }

    /** Returns how far a distance lies within one of the intervals, low and high by turns. */
    private static double depth(double[] intervals, double distance) {
        for (int k = 0; k < intervals.length; k += 2) {
            if (distance > intervals[k] + Placed.TOUCHING && distance < intervals[k + 1] - Placed.TOUCHING) {
                return Math.min(distance - intervals[k], intervals[k + 1] - distance);
            }
        }
        return 0;
    }
}
