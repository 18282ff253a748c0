package org.oaktag.lay;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Makes a layout shorter by force: it takes a little of the cloth away, pushes everything into what is left, and moves one
 * part after another to where it overlaps the others least, until none does. Where nothing more helps, overlaps that last gain
 * weight. This is the guided local search of Egeblad, Nielsen and Odgaard, "Fast neighborhood search for two- and
 * three-dimensional nesting problems", European Journal of Operational Research 183 (2007), 1249 to 1266, with the depth of
 * an overlap measured as by Umetani, Yagiura, Imahori and others, "Solving the irregular strip packing problem via guided local
 * search for overlap minimization", International Transactions in Operational Research 16 (2009), 661 to 683.
 */
final class Squeeze {

    /** By how much of the length a layout is first shortened. */
    private static final double FIRST_STEP = 0.01;

    /** Steps below this are not tried. */
    private static final double LAST_STEP = 0.001;

    /** How many moves for each part are tried at one length before it is given up. */
    private static final int PATIENCE = 30;

    private final Nesting nesting;
    private final SplittableRandom random;
    private final int[] parts;
    private int left;

    /**
     * @param random where its random numbers come from
     * @param moves how many moves may be tried in all
     */
    Squeeze(Nesting nesting, SplittableRandom random, int moves) {
        this.nesting = nesting;
        this.random = random;
        this.parts = IntStream.range(0, nesting.parts().size()).toArray();
        this.left = moves;
    }

    /** Returns how many moves are left. */
    int left() {
        return left;
    }

    /**
     * Returns a layout shorter than the best, or the best.
     *
     * @param start the layout to set out from; every part lies on a whole number of pitches
     */
    Layout shorter(Layout start, Layout best) {
        Layout shortest = best;
        Layout from = start;
        for (double step = FIRST_STEP; step >= LAST_STEP && left > 0; ) {
            Placed placed = pushedInto(from, shortest.length() * (1 - step));
            if (isCleared(placed, shortest.length() * (1 - step))) {
                drop(placed);
                shortest = placed.layout();
                from = shortest;
            } else {
                step /= 2;
            }
        }
        return shortest;
    }

    private Placed pushedInto(Layout layout, double length) {
        Placed placed = new Placed(nesting);
        for (int part : parts) {
            Layout.Seat seat = layout.seats().get(part);
            placed.shape[part] = seat.shape();
            placed.column[part] = (int) Math.rint(seat.x() / Nesting.PITCH);
            placed.y[part] = Math.max(0, Math.min(seat.y(), length - height(seat.shape())));
        }
        return placed;
    }

    /** Moves parts until none overlaps, or until patience or moves run out. */
    private boolean isCleared(Placed placed, double length) {
        Overlaps overlaps = new Overlaps(nesting, placed);
        int until = Math.max(0, left - PATIENCE * parts.length);
        while (true) {
            int[] overlapping =
                    Arrays.stream(parts).filter(part -> overlaps.of(part) > 0).toArray();
            if (overlapping.length == 0) {
                return Arrays.stream(parts).allMatch(part -> placed.y[part] + height(placed.shape[part]) <= length);
            }
            shuffle(overlapping);
            boolean moved = false;
            for (int part : overlapping) {
                if (left <= until) {
                    return false;
                }
                left--;
                moved |= relocate(part, placed, overlaps, length);
            }
            if (!moved) {
                overlaps.weigh();
            }
        }
    }

    /**
     * Moves a part to where it overlaps least. Overlap along one line falls and rises between the ends of forbidden
     * intervals only, so that these are the places to try.
     */
    private boolean relocate(int part, Placed placed, Overlaps overlaps, double length) {
        double least = overlaps.of(part) - Placed.TOUCHING;
        int shape = placed.shape[part];
        int column = placed.column[part];
        double y = placed.y[part];
        boolean moved = false;
        for (int way : nesting.ways(part)) {
            double end = length - height(way);
            int columns = nesting.lastColumn(way) + 1;
            int first = random.nextInt(columns);
            for (int k = 0; k < columns && end >= 0 && least > 0; k++) {
                int at = (first + k) % columns;
                for (double place : places(part, way, at, end, placed)) {
                    double sum = overlaps.at(part, way, at, place, least);
                    if (sum < least) {
                        least = sum;
                        shape = way;
                        column = at;
                        y = place;
                        moved = true;
                    }
                }
            }
        }
        placed.shape[part] = shape;
        placed.column[part] = column;
        placed.y[part] = y;
        overlaps.update(part);
        return moved;
    }

    private double[] places(int part, int shape, int column, double end, Placed placed) {
        double[] places = new double[] {0, end};
        int count = 2;
        for (int other : parts) {
            if (other != part) {
                double[] forbidden = nesting.along(placed.shape[other], shape).at(column - placed.column[other]);
                for (double each : forbidden) {
                    double place = placed.y[other] + each;
                    if (place > 0 && place < end) {
                        places = count == places.length ? Arrays.copyOf(places, 2 * count) : places;
                        places[count++] = place;
                    }
                }
            }
        }
        return Arrays.copyOf(places, count);
    }

    /** Lets every part slide towards the beginning, in its own column, until none can. */
    private void drop(Placed placed) {
        boolean moved = true;
        while (moved) {
            moved = false;
            for (int part : parts) {
                int[] others =
                        Arrays.stream(parts).filter(other -> other != part).toArray();
                double lowest =
                        placed.lowest(placed.shape[part], placed.column[part], others, others.length, placed.y[part]);
                if (lowest < placed.y[part]) {
                    placed.y[part] = lowest;
                    moved = true;
                }
            }
        }
    }

    private double height(int shape) {
        return nesting.shapes().get(shape).height();
    }

    private void shuffle(int[] all) {
        for (int i = all.length - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            int swapped = all[i];
            all[i] = all[j];
            all[j] = swapped;
        }
    }
}
