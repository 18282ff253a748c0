package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Points at which curves are cut, each made one with the first that was as near as it, so that all that meets there
 * meets exactly. They are found in a grid, so that many cost no more each than few.
 */
final class Anchors {
    /** Cuts nearer than this, mm, are at one point. */
    static final double SAME = 1e-7;

    private final List<Point> points = new ArrayList<>();
    private final Map<Cell, List<Integer>> grid = new HashMap<>();

    private record Cell(double x, double y) {
        static Cell of(Point point) {
            return new Cell(Math.floor(point.x() / SAME), Math.floor(point.y() / SAME));
        }
    }

    /** Returns the first known point this near, or else this one, which is known from now on. */
    Point at(Point point) {
        Cell home = Cell.of(point);
        int first = points.size();
        for (int dx = -1; dx <= 1; dx++) {
            for (int dy = -1; dy <= 1; dy++) {
                for (int known : grid.getOrDefault(new Cell(home.x + dx, home.y + dy), List.of())) {
                    if (known < first && points.get(known).isCloseTo(point, SAME)) {
                        first = known;
                    }
                }
            }
        }
        if (first < points.size()) {
            return points.get(first);
        }
        points.add(point);
        grid.computeIfAbsent(home, none -> new ArrayList<>(1)).add(first);
        return point;
    }
}
