package org.oaktag.lay;

import java.util.stream.IntStream;

/**
 * Moves one part after another to where it overlaps the others least, until none does; overlaps that last gain weight.
 * This is the guided local search of Egeblad, Nielsen and Odgaard, "Fast neighborhood search for two- and
 * three-dimensional nesting problems", European Journal of Operational Research 183 (2007), 1249 to 1266, with the
 * depth of an overlap measured as by Umetani, Yagiura, Imahori and others, "Solving the irregular strip packing problem
 * via guided local search for overlap minimization", International Transactions in Operational Research 16 (2009), 661
 * to 683.
 */
final class Separation {

    /** How many moves for each part are tried before it is given up. */
    private static final int PATIENCE = 15;

    /** How many pitches apart the columns are that are tried first; then all those near the best of them are. */
    private static final int STRIDE = 8;

    private final Nesting nesting;
    private final Lots lots;
    private final int[] parts;
    private int left;

    /**
     * @param lots where the order of moves comes from
     * @param moves how many moves may be tried in all
     */
    Separation(Nesting nesting, Lots lots, int moves) {
        this.nesting = nesting;
        this.lots = lots;
        this.parts = IntStream.range(0, nesting.parts().size()).toArray();
        this.left = moves;
    }

    /** Returns how many moves are left. */
    int left() {
        return left;
    }

    /**
     * Moves parts until none overlaps, or until patience or moves run out.
     *
     * @param placed where the parts lie, within the length; at the end, where least overlapped
     * @return what overlaps at the end, mm in all; 0 if nothing does
     */
    double separate(Placed placed, double length) {
        Overlaps overlaps = new Overlaps(nesting, placed);
        Column column = new Column(nesting, placed, overlaps);
        int until = Math.max(0, left - PATIENCE * parts.length);
        Placed best = placed.copy();
        double least = overlaps.total();
        while (least > 0 && left > until) {
            int[] order = parts.clone();
            lots.shuffle(order);
            for (int part : order) {
                if (overlaps.of(part) > 0 && left > until) {
                    left--;
                    relocate(part, placed, overlaps, column, length);
                }
            }
            overlaps.weigh();
            if (overlaps.total() < least) {
                least = overlaps.total();
                best = placed.copy();
            }
        }
        placed.take(best);
        return least;
    }

    /** Moves a part to where it overlaps least. */
    private void relocate(int part, Placed placed, Overlaps overlaps, Column column, double length) {
        Place place = new Place(part, placed, overlaps, column, length);
        for (int way : nesting.ways(part)) {
            int columns = nesting.lastColumn(way) + 1;
            int first = lots.below(columns);
            for (int k = 0; k < columns; k += STRIDE) {
                place.look(way, (first + k) % columns);
            }
        }
        int middle = place.column;
        for (int k = 1; k < STRIDE; k++) {
            place.look(place.shape, middle - k);
            place.look(place.shape, middle + k);
        }
        placed.put(part, place.shape, place.column, place.y);
        overlaps.update(part);
    }

    /** The best place of a part so far. */
    private final class Place {

        private final int part;
        private final double length;
        private final Column there;
        private double least;
        private int shape;
        private int column;
        private double y;

        Place(int part, Placed placed, Overlaps overlaps, Column there, double length) {
            this.part = part;
            this.there = there;
            this.length = length;
            this.least = overlaps.of(part) - Placed.TOUCHING;
            this.shape = placed.shape[part];
            this.column = placed.column[part];
            this.y = placed.y[part];
        }

        /** Looks for a better place in a column. */
        void look(int way, int at) {
            double end = length - nesting.height(way);
            if (least <= 0 || end < 0 || at < 0 || at > nesting.lastColumn(way)) {
                return;
            }
            there.look(part, way, at);
            for (double place : there.places(end)) {
                double sum = there.overlap(place, least);
                if (sum < least) {
                    least = sum;
                    shape = way;
                    column = at;
                    y = place;
                }
            }
        }
    }
}
