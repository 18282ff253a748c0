package org.oaktag.testkit.laws;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * Finds where outlines pass a level by halving the stretches of their curves on which the side of the level changes,
 * and what lies inside by counting the passages: another way than the library's own.
 */
final class BisectedWidth {

    private static final int STRETCHES = 64;
    private static final int HALVINGS = 60;

    private final Point centre;
    private final Vector outward;

    private BisectedWidth(Point centre, Vector outward) {
        this.centre = centre;
        this.outward = outward;
    }

    /** Returns the width, or NaN where the level misses the centre or all edges. */
    static double of(Garment garment, Quantity.Across across) {
        Point start = corner(garment, across.from());
        Point end = corner(garment, across.to());
        Vector up = end.minus(start).unit();
        double reach = across.through().minus(start).dot(up);
        if (reach < 0 || reach > start.distanceTo(end)) {
            return Double.NaN;
        }
        return new BisectedWidth(start.plus(up.times(reach)), Vector.of(up.y(), -up.x())).width(garment, across);
    }

    private static Point corner(Garment garment, Quantity.Corner corner) {
        return garment.piece(corner.edge().piece()).corner(corner.edge().edge(), corner.end());
    }

    private double width(Garment garment, Quantity.Across across) {
        List<Double> ends =
                places(across.edges().stream().map(edge -> garment.edge(edge).path()));
        if (ends.isEmpty()) {
            return Double.NaN;
        }
        double side = Math.signum(ends.get(0));
        double end = ends.stream().mapToDouble(Math::abs).min().orElseThrow();
        double inside = 0;
        for (Piece piece : across.pieces().stream().map(garment::piece).toList()) {
            List<Double> passed = new ArrayList<>(places(piece.edges().stream().map(Edge::path)).stream()
                    .map(place -> Math.min(Math.max(side * place, 0), end))
                    .toList());
            passed.sort(Double::compare);
            for (int i = 1; i < passed.size(); i += 2) {
                inside += passed.get(i) - passed.get(i - 1);
            }
        }
        return inside;
    }

    private List<Double> places(Stream<Path> paths) {
        List<Double> places = new ArrayList<>();
        paths.flatMap(path -> path.curves().stream()).forEach(curve -> {
            for (int i = 0; i < STRETCHES; i++) {
                double from = (double) i / STRETCHES;
                double to = (double) (i + 1) / STRETCHES;
                boolean below = isBelow(curve, from);
                if (below != isBelow(curve, to)) {
                    places.add(passage(curve, from, to, below));
                }
            }
        });
        return places;
    }

    private double passage(Curve curve, double from, double to, boolean below) {
        double before = from;
        double behind = to;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (before + behind) / 2;
            if (isBelow(curve, middle) == below) {
                before = middle;
            } else {
                behind = middle;
            }
        }
        return curve.pointAt(before).minus(centre).dot(outward);
    }

    private boolean isBelow(Curve curve, double t) {
        Point point = t == 0 ? curve.start() : t == 1 ? curve.end() : curve.pointAt(t);
        return outward.cross(point.minus(centre)) < 0;
    }
}
