package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;

/** Numbered places; one that lies within a distance of a known one is that. */
final class OverlayVertices {
    private final double apart;
    private final List<Point> points = new ArrayList<>();
    private final NavigableMap<Double, List<Integer>> byX = new TreeMap<>();

    OverlayVertices(double apart) {
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
        int nearest = -1;
        double distance = apart;
        for (List<Integer> column :
                byX.subMap(point.x() - apart, true, point.x() + apart, true).values()) {
            for (int known : column) {
                double apartFromIt = points.get(known).distanceTo(point);
                if (apartFromIt <= distance) {
                    nearest = known;
                    distance = apartFromIt;
                }
            }
        }
        if (nearest < 0) {
            nearest = points.size();
            points.add(point);
            byX.computeIfAbsent(point.x(), x -> new ArrayList<>()).add(nearest);
        }
        return nearest;
    }
}
