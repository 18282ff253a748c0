package org.oaktag.lay;

import java.util.Arrays;

/**
 * What lies in the way of one part in one column: where along it the part can be put, and what it would overlap there.
 */
final class Column {

    private final Nesting nesting;
    private final Placed placed;
    private final Overlaps overlaps;

    /** The parts that come near the column, and for each where the part may not lie, as distances from it. */
    private final int[] near;

    private final double[][] forbidden;

    private int count;
    private int part;
    private int way;
    private int column;
    private double[] places = new double[16];

    Column(Nesting nesting, Placed placed, Overlaps overlaps) {
        this.nesting = nesting;
        this.placed = placed;
        this.overlaps = overlaps;
        this.near = new int[placed.shape.length];
        this.forbidden = new double[placed.shape.length][];
    }

    /** Looks at where a part would lie in one of its ways, so many pitches from the left. */
    void look(int moving, int shape, int at) {
        part = moving;
        way = shape;
        column = at;
        count = 0;
        for (int other = 0; other < placed.shape.length; other++) {
            if (other != moving) {
                double[] slice = nesting.along(placed.shape[other], shape).at(at - placed.column[other]);
                if (slice.length > 0) {
                    near[count] = other;
                    forbidden[count++] = slice;
                }
            }
        }
    }

    /**
     * Returns the places where the overlap can be least, those beyond the end left out: it falls and rises between the
     * ends of forbidden intervals only.
     */
    double[] places(double end) {
        places[0] = 0;
        places[1] = end;
        int found = 2;
        for (int i = 0; i < count; i++) {
            for (double each : forbidden[i]) {
                double place = placed.y[near[i]] + each;
                if (place > 0 && place < end) {
                    places = found == places.length ? Arrays.copyOf(places, 2 * places.length) : places;
                    places[found++] = place;
                }
            }
        }
        return Arrays.copyOf(places, found);
    }

    /** Returns what the part would overlap at a place, weighted; it stops adding where that is not below a limit. */
    double overlap(double y, double limit) {
        double sum = 0;
        for (int i = 0; i < count && sum < limit; i++) {
            int other = near[i];
            double dy = y - placed.y[other];
            double along = Overlaps.depth(forbidden[i], dy);
            if (along > 0) {
                sum += overlaps.weight(part, other) * overlaps.depth(along, way, column, dy, other);
            }
        }
        return sum;
    }
}
