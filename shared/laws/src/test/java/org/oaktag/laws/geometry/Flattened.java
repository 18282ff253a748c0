package org.oaktag.laws.geometry;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;

/** Curves as fine polygons of the JTS Topology Suite, which knows no curves: an independent second opinion. */
final class Flattened {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Flattened() {}

    static Polygon polygon(Outline outline, int chordsPerCubic) {
        Coordinate[] ring = coordinates(outline.path(), chordsPerCubic);
        return FACTORY.createPolygon(ring);
    }

    static LineString line(Path path, int chordsPerCubic) {
        return FACTORY.createLineString(coordinates(path, chordsPerCubic));
    }

    /** Returns the area of the greatest part with its holes filled. */
    static double withoutHoles(Geometry geometry) {
        double greatest = 0;
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            if (geometry.getGeometryN(i) instanceof Polygon polygon) {
                greatest = Math.max(
                        greatest,
                        FACTORY.createPolygon(polygon.getExteriorRing()).getArea());
            }
        }
        return greatest;
    }

    private static Coordinate[] coordinates(Path path, int chordsPerCubic) {
        List<Coordinate> run = new ArrayList<>();
        run.add(new Coordinate(path.start().x(), path.start().y()));
        for (Curve curve : path.curves()) {
            int chords = curve instanceof Line ? 1 : chordsPerCubic;
            for (int i = 1; i <= chords; i++) {
                Point p = curve.pointAt((double) i / chords);
                run.add(new Coordinate(p.x(), p.y()));
            }
        }
        return run.toArray(new Coordinate[0]);
    }
}
