package org.oaktag.lay;

import java.util.stream.IntStream;

/**
 * Lays the parts on {@link Shelves} and by {@link Packing}, the greatest first, and then makes the best of these
 * shorter by force: it takes a little of the cloth away, pushes everything into what is left, and lets a {@link
 * Separation} move the parts apart. Where that fails, parts that do not look alike change places and it is tried again;
 * where that fails several times, less is taken away; where nothing can be taken away any more, it begins anew with a
 * layout packed in an order drawn by lot, pushed into less than the best one takes.
 *
 * <p>Two parts change places as in Imamichi, Yagiura and Nagamochi, "An iterated local search algorithm based on
 * nonlinear programming for the irregular strip packing problem", Discrete Optimization 6 (2009), 345 to 361.
 *
 * <p>Lots come from a fixed seed, and it stops after so many moves and not after a time, so that the same parts give
 * the same lay everywhere. With more moves the same ones come first, so that they are never worse. Where parts may be
 * turned, they are laid without turning as well, with as many moves, so that without a nap no lay is longer than with
 * one.
 */
final class LaySearch {

    /** By how much of the length a layout is first shortened. */
    private static final double FIRST_STEP = 0.01;

    /** Steps below this are not tried. */
    private static final double LAST_STEP = 0.001;

    /** How often it is tried to fit everything into one length. */
    private static final int ATTEMPTS = 6;

    /** How many pairs change places before another attempt. */
    private static final int EXCHANGES = 2;

    private final Nesting nesting;
    private final Packing packing;
    private final Lots lots = new Lots();
    private final Separation separation;
    private final double tallest;
    private Layout best;

    private LaySearch(Nesting nesting, Effort effort) {
        this.nesting = nesting;
        this.packing = new Packing(nesting);
        this.separation = new Separation(nesting, lots, effort.tries());
        this.tallest = nesting.tallest();
        this.best = Shelves.of(nesting).orBetter(packing.greatestFirst());
    }

    static Layout best(Nesting nesting, Effort effort) {
        Layout upright = new LaySearch(nesting.upright(), effort).search();
        return nesting.isTurnable() ? upright.orBetter(new LaySearch(nesting, effort).search()) : upright;
    }

    private Layout search() {
        int[] order = IntStream.range(0, nesting.parts().size()).toArray();
        for (Layout start = best; isGoingOn(); start = packing.lay(order)) {
            shorten(start);
            lots.shuffle(order);
        }
        return best;
    }

    /** Tells whether there are moves left, and cloth that no part needs for itself. */
    private boolean isGoingOn() {
        return separation.left() > 0 && best.length() > tallest + Placed.TOUCHING;
    }

    private void shorten(Layout start) {
        Layout from = start;
        for (double step = FIRST_STEP; step >= LAST_STEP && isGoingOn(); ) {
            if (isFitted(from, Math.max(tallest, best.length() * (1 - step)))) {
                from = best;
            } else {
                step /= 2;
            }
        }
    }

    /** Tries to fit a layout into a length; where that is done, it is the best, and true is returned. */
    private boolean isFitted(Layout from, double length) {
        Failures failures = new Failures(lots);
        Placed placed = Placed.pushedInto(nesting, from, length);
        for (int i = 0; i < ATTEMPTS && separation.left() > 0; i++) {
            double overlap = separation.separate(placed, length);
            if (overlap == 0) {
                placed.drop();
                best = best.orBetter(placed.layout());
                return true;
            }
            failures.add(placed, overlap);
            placed = failures.draw();
            for (int k = 0; k < EXCHANGES; k++) {
                exchange(placed, length);
            }
        }
        return false;
    }

    /** Lets two parts that are not of the same shape change places. */
    private void exchange(Placed placed, double length) {
        int a = lots.below(placed.shape.length);
        int[] others = IntStream.range(0, placed.shape.length)
                .filter(part -> placed.shape[part] != placed.shape[a])
                .toArray();
        if (others.length > 0) {
            placed.exchange(a, others[lots.below(others.length)], length);
        }
    }
}
