package org.oaktag.skirt;

import org.oaktag.geometry.Arcs;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * An arc that leaves the centre level and turns up, or down, until it ends square to the side: a waist without darts.
 *
 * @param from where it leaves the centre
 * @param length how long it is, mm
 * @param turn by how much it turns up, radians
 */
record LevelArc(Point from, double length, double turn) {

    private static final double LEVEL = 1e-7;
    private static final double FINE = 1e-5;

    Point end() {
        if (Math.abs(turn) < LEVEL) {
            return from.plus(Vector.of(length, 0));
        }
        return from.plus(Vector.of(length * Math.sin(turn) / turn, -length * (1 - Math.cos(turn)) / turn));
    }

    Path path() {
        if (Math.abs(turn) < LEVEL) {
            return Path.polyline(from, end());
        }
        return Arcs.circular(from.plus(Vector.of(0, -length / turn)), from, -turn, FINE)
                .withEnds(from, end());
    }

    /** Returns the arc about the same middle so far below. */
    LevelArc below(double by) {
        return new LevelArc(from.plus(Vector.of(0, by)), length + by * turn, turn);
    }
}
