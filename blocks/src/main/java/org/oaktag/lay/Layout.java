package org.oaktag.lay;

import java.util.List;

/**
 * Where every part lies.
 *
 * @param seats the place of each part
 * @param length how much of the length of the cloth all take, mm
 * @param spread the distances of the lower edges from the beginning, each times its height and width, summed: of two
 *     lays that are equally long, the one with the lesser has more room left at its end
 */
record Layout(List<Seat> seats, double length, double spread) {

    /** Lengths nearer to each other than this, mm, are the same. */
    private static final double SAME = 1e-9;

    /**
     * Where a part lies.
     *
     * @param shape its shape, as an index of {@link Nesting#shapes()}
     * @param x how far it lies from the left selvage or the fold, mm
     * @param y how far it lies from the beginning, mm
     */
    record Seat(int shape, double x, double y) {}

    Layout {
        seats = List.copyOf(seats);
    }

    /** Returns the layout of parts whose seats are known. */
    static Layout of(List<Seat> seats, Nesting nesting) {
        double length = 0;
        double spread = 0;
        for (Seat seat : seats) {
            Shape shape = nesting.shapes().get(seat.shape);
            double end = seat.y + shape.height();
            length = Math.max(length, end);
            spread += end * shape.height() * shape.width();
        }
        return new Layout(seats, length, spread);
    }

    /** Returns the other where that is shorter, or as short with more room at its end; else this. */
    Layout orBetter(Layout other) {
        boolean better = other.length < length - SAME || (other.length <= length + SAME && other.spread < spread);
        return better ? other : this;
    }
}
