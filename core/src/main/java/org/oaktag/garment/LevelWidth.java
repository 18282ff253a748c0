package org.oaktag.garment;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/** Measures along a level, square to a centre; places on it are signed distances from the centre, in millimetres. */
final class LevelWidth {

    /** Places nearer to each other than this are one. */
    private static final double SAME = 1e-6;

    private static final double[] NONE = {};

    private final Point centre;
    private final Vector outward;

    private LevelWidth(Point centre, Vector outward) {
        this.centre = centre;
        this.outward = outward;
    }

    static OptionalDouble of(Garment garment, Quantity.Across across) {
        Point start = across.from().point(garment);
        Vector along = across.to().point(garment).minus(start);
        double share = across.through().minus(start).dot(along) / along.dot(along);
        if (share < 0 || share > 1) {
            return OptionalDouble.empty();
        }
        return new LevelWidth(start.plus(along.times(share)), along.unit().perpendicular()).width(garment, across);
    }

    private OptionalDouble width(Garment garment, Quantity.Across across) {
        double end = Double.POSITIVE_INFINITY;
        for (EdgeRef edge : across.edges()) {
            for (double place : places(garment.edge(edge).path())) {
                end = Math.abs(place) < Math.abs(end) ? place : end;
            }
        }
        return Double.isInfinite(end) ? OptionalDouble.empty() : OptionalDouble.of(inside(garment, across, end));
    }

    /** How much of the level from the centre to a place lies in the pieces. */
    private double inside(Garment garment, Quantity.Across across, double end) {
        List<Piece> pieces = new ArrayList<>(across.pieces().size());
        for (Name name : across.pieces()) {
            pieces.add(garment.piece(name));
        }
        List<Double> between = new ArrayList<>();
        for (Piece piece : pieces) {
            for (Edge edge : piece.edges()) {
                for (double place : places(edge.path())) {
                    double share = place / end;
                    if (share * Math.abs(end) > SAME && (1 - share) * Math.abs(end) > SAME) {
                        between.add(share);
                    }
                }
            }
        }
        if (between.isEmpty()) {
            return Math.abs(end);
        }
        between.add(0.0);
        between.add(1.0);
        between.sort(Double::compare);
        double inside = 0;
        for (int i = 1; i < between.size(); i++) {
            double stretch = between.get(i) - between.get(i - 1);
            Point middle = at(end * (between.get(i) + between.get(i - 1)) / 2);
            if (stretch * Math.abs(end) > SAME && lieIn(pieces, middle)) {
                inside += stretch;
            }
        }
        return inside * Math.abs(end);
    }

    private static boolean lieIn(List<Piece> pieces, Point point) {
        for (Piece piece : pieces) {
            if (piece.outline().contains(point)) {
                return true;
            }
        }
        return false;
    }

    private Point at(double place) {
        return centre.plus(outward.times(place));
    }

    private double[] places(Path path) {
        List<Point> points = Crossings.pointsOnLine(path, centre, outward);
        double[] places = points.isEmpty() ? NONE : new double[points.size()];
        for (int i = 0; i < places.length; i++) {
            places[i] = points.get(i).minus(centre).dot(outward);
        }
        return places;
    }
}
