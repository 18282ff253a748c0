package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;

/** Outlines of straight edges, to be offset edge by edge. */
final class Polygons {

    private Polygons() {}

    /** Returns the edges of the polygon with these corners, x and y one after the other, one path each. */
    static List<Path> polygon(double... c) {
        List<Path> edges = new ArrayList<>();
        for (int i = 0; i < c.length; i += 2) {
            int j = (i + 2) % c.length;
            edges.add(Path.polyline(Point.of(c[i], c[i + 1]), Point.of(c[j], c[j + 1])));
        }
        return edges;
    }
}
