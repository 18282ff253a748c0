package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Numbered places at which curves are cut, each made one with the nearest known that lies within a distance, so that
 * all that meets there meets exactly. They are found in a grid, so that many cost no more each than few.
 */
final class Vertices {
    private final double apart;
    private final List<Point> points = new ArrayList<>();
    private final Map<Cell, List<Integer>> grid = new HashMap<>();

    private record Cell(double x, double y) {}

    /** @param apart places no further apart than this, mm, are one */
    Vertices(double apart) {
        this.apart = apart;
    }

    /** Returns the distance, mm. */
    double apart() {
        return apart;
    }

    List<Point> points() {
        return points;
    }

    /** Returns the number of the nearest place known that is near enough, else a new one. */
    int at(Point point) {
        // Cells beside each other touch at 0 and -0, which are one.
        double x = Math.floor(point.x() / apart) + 0.0;
        double y = Math.floor(point.y() / apart) + 0.0;
        int nearest = -1;
        double distance = apart;
        for (int dx = -1; dx <= 1; dx++) {
            for (int dy = -1; dy <= 1; dy++) {
                for (int known : grid.getOrDefault(new Cell(x + dx, y + dy), List.of())) {
                    double apartFromIt = points.get(known).distanceTo(point);
                    if (apartFromIt < distance || (apartFromIt == distance && known > nearest)) {
                        nearest = known;
                        distance = apartFromIt;
                    }
                }
            }
        }
        if (nearest < 0) {
            nearest = points.size();
            points.add(point);
            grid.computeIfAbsent(new Cell(x, y), none -> new ArrayList<>(1)).add(nearest);
        }
        return nearest;
    }

    /** Returns the nearest place known that is near enough, else this one, which is known from now on. */
    Point pointAt(Point point) {
        return points.get(at(point));
    }
}
