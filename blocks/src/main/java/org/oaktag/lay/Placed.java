package org.oaktag.lay;

import java.util.ArrayList;
import java.util.List;

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
