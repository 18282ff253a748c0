package org.oaktag.laws.garment;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;

/** Our curves as chains of short chords for JTS, which knows no others. */
final class Jts {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** 300 chords on a curve of 300 mm whose radius is 100 mm lie within 0.002 mm of it. */
    private static final int CHORDS = 300;

    private Jts() {}

    static Polygon polygon(Outline outline) {
        return FACTORY.createPolygon(coordinates(outline.path()));
    }

    static LineString line(Path path) {
        return FACTORY.createLineString(coordinates(path));
    }

    static Geometry point(Point point) {
        return FACTORY.createPoint(coordinate(point));
    }

    /** Returns the strip of a width beside a line, on both sides, square at its ends. */
    static Geometry strip(Path path, double width) {
        BufferParameters parameters = new BufferParameters(64, BufferParameters.CAP_FLAT);
        return BufferOp.bufferOp(line(path), width, parameters);
    }

    /** Returns an area grown by a width, its corners mitred. */
    static Geometry mitred(Geometry area, double width, double limit) {
        BufferParameters parameters = new BufferParameters(64);
        parameters.setJoinStyle(BufferParameters.JOIN_MITRE);
        parameters.setMitreLimit(limit);
        return BufferOp.bufferOp(area, width, parameters);
    }

    private static Coordinate[] coordinates(Path path) {
        List<Coordinate> all = new ArrayList<>();
        for (Curve curve : path.curves()) {
            int chords = curve instanceof Line ? 1 : CHORDS;
            for (int i = 0; i < chords; i++) {
                all.add(coordinate(i == 0 ? curve.start() : curve.pointAt((double) i / chords)));
            }
        }
        all.add(coordinate(path.end()));
        return all.toArray(Coordinate[]::new);
    }

    private static Coordinate coordinate(Point point) {
        return new Coordinate(point.x(), point.y());
    }
}
