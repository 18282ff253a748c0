package org.oaktag.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** The places of parts while they are being laid: the one thing here that changes. */
final class Placed {

    /** Shapes that come nearer than this to where they touch are said to touch, mm. */
    static final double TOUCHING = 1e-9;

    /** The shape of each part, as an index of {@link Nesting#shapes()}. */
    final int[] shape;

    /** How many pitches each part lies to the right. */
    final int[] column;

    /** How far each part lies from the beginning, mm. */
    final double[] y;

    private final Nesting nesting;

    Placed(Nesting nesting) {
        int count = nesting.parts().size();
        this.nesting = nesting;
        this.shape = new int[count];
        this.column = new int[count];
        this.y = new double[count];
    }

    /**
     * Returns the parts in the columns nearest to where they lie, moved towards the beginning where they lie beyond a
     * length.
     */
    static Placed pushedInto(Nesting nesting, Layout layout, double length) {
        Placed placed = new Placed(nesting);
        for (int part = 0; part < placed.shape.length; part++) {
            Layout.Seat seat = layout.seats().get(part);
            double end = length - nesting.height(seat.shape());
            placed.put(part, seat.shape(), placed.column(seat.shape(), seat.x()), Math.min(seat.y(), end));
        }
        return placed;
    }

    Placed copy() {
        Placed copy = new Placed(nesting);
        copy.take(this);
        return copy;
    }

    /** Puts every part where it lies elsewhere. */
    void take(Placed other) {
        System.arraycopy(other.shape, 0, shape, 0, shape.length);
        System.arraycopy(other.column, 0, column, 0, column.length);
        System.arraycopy(other.y, 0, y, 0, y.length);
    }

    void put(int part, int way, int at, double from) {
        shape[part] = way;
        column[part] = at;
        y[part] = from;
    }

    /** Puts each of two parts with its middle where that of the other was, or as near as the cloth allows. */
    void exchange(int a, int b, double length) {
        double x = middleX(a);
        double along = middleY(a);
        centre(a, middleX(b), middleY(b), length);
        centre(b, x, along, length);
    }

    private double middleX(int part) {
        return column[part] * Nesting.PITCH + nesting.shapes().get(shape[part]).width() / 2;
    }

    private double middleY(int part) {
        return y[part] + nesting.height(shape[part]) / 2;
    }

    private void centre(int part, double x, double along, double length) {
        int way = shape[part];
        double top = along - nesting.height(way) / 2;
        column[part] = column(way, x - nesting.shapes().get(way).width() / 2);
        y[part] = Math.max(0, Math.min(top, length - nesting.height(way)));
    }

    /** Returns the column on the cloth that is nearest to a distance from its left edge. */
    private int column(int way, double x) {
        return (int) Math.max(0, Math.min(Math.rint(x / Nesting.PITCH), nesting.lastColumn(way)));
    }

    /** Moves parts towards the beginning as far as they go one after another, none past another. */
    void drop() {
        boolean moved = true;
        while (moved) {
            moved = false;
            for (int part = 0; part < shape.length; part++) {
                double lowest = lowest(shape[part], column[part], others(part), shape.length - 1, y[part]);
                if (lowest < y[part]) {
                    y[part] = lowest;
                    moved = true;
                }
            }
        }
    }

    private int[] others(int part) {
        return IntStream.range(0, shape.length).filter(other -> other != part).toArray();
    }

    /**
     * Returns the least y at which a shape overlaps none of some parts, or infinity where it is not below a limit.
     *
     * @param candidate the shape
     * @param at how many pitches it lies to the right
     * @param laid the parts
     * @param count how many of them, from the first
     */
    double lowest(int candidate, int at, int[] laid, int count, double limit) {
        double lowest = 0;
        boolean raised = true;
        while (raised) {
            raised = false;
            for (int i = 0; i < count; i++) {
                int other = laid[i];
                double[] forbidden = nesting.along(shape[other], candidate).at(at - column[other]);
                for (int k = 0; k < forbidden.length; k += 2) {
                    double below = lowest - y[other];
                    if (below > forbidden[k] + TOUCHING && below < forbidden[k + 1] - TOUCHING) {
                        lowest = y[other] + forbidden[k + 1];
                        raised = true;
                    }
                }
                if (lowest >= limit) {
                    return Double.POSITIVE_INFINITY;
                }
            }
        }
        return lowest;
    }

    Layout layout() {
        List<Layout.Seat> seats = new ArrayList<>();
        for (int part = 0; part < shape.length; part++) {
            seats.add(new Layout.Seat(shape[part], column[part] * Nesting.PITCH, y[part]));
        }
        return Layout.of(seats, nesting);
    }
}
