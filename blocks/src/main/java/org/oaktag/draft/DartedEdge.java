package org.oaktag.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.garment.Dart;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Name;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * An edge drawn as it lies once its darts are sewn, one smooth line, and then opened at each dart, so that sewing them
 * gives that line again. Drawn the other way about, a smooth edge with wedges cut out of it, it would have a dent at
 * each dart.
 *
 * <pre>{@code
 * Path waist = Path.polyline(Point.of(0, 0), Point.of(200, 0));
 * DartedEdge edge = DartedEdge.open(
 *         Name.of("waist"), waist, List.of(new DartedEdge.Wedge(Name.of("dart"), 100, mm(20), mm(100))));
 * edge.edges().size();                          // = 4
 * Length.mm(edge.end().distanceTo(Point.of(0, 0))).text();   // = 219.0 mm
 * }</pre>
 *
 * <p>Opening a dart turns everything beyond it about its apex by the angle of the dart, which is square below its
 * mouth. The piece lies to the right of the edge. Immutable.
 *
 * @param edges the stretches of the edge and the legs between them, in order
 * @param turned the angle by which the end was turned, radians
 */
public record DartedEdge(List<Edge> edges, double turned) {

    /**
     * A dart to be opened.
     *
     * @param name its name
     * @param along where its legs meet on the sewn edge, mm from the start
     * @param width how wide its mouth is, straight across
     * @param depth how far its apex lies from the mouth
     */
    public record Wedge(Name name, double along, Length width, Length depth) {
        /** Refuses null. */
        public Wedge {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(width, "width");
            Objects.requireNonNull(depth, "depth");
        }

        /** Returns the angle between its legs, radians. */
        public double angle() {
            return 2 * Math.atan(width.mm() / 2 / depth.mm());
        }

        private double leg() {
            return Math.hypot(width.mm() / 2, depth.mm());
        }
    }

    /** Copies the list. */
    public DartedEdge {
        edges = List.copyOf(edges);
    }

    /**
     * Opens the darts of an edge.
     *
     * @param name the name of the edge
     * @param sewn where it runs when its darts are sewn
     * @param darts the darts, from its start
     * @throws PatternException if a dart does not lie on the edge, beyond the one before it
     */
    public static DartedEdge open(Name name, Path sewn, List<Wedge> darts) {
        List<Edge> edges = new ArrayList<>();
        double from = 0;
        double turned = 0;
        Transform opened = Transform.IDENTITY;
        Name stretch = name;
        for (Wedge dart : darts) {
            if (!(dart.along() > from && dart.along() < sewn.length())) {
                throw PatternException.of(
                        "dart '" + dart.name() + "'",
                        "must lie on edge '" + name + "', above "
                                + Length.mm(from).text() + " and below "
                                + Length.mm(sewn.length()).text(),
                        Length.mm(dart.along()).text(),
                        "");
            }
            Path before = sewn.sub(from, dart.along()).transformed(opened);
            Vector inward = before.endDirection().rightNormal();
            Point apex = before.end().plus(inward.times(dart.leg()));
            opened = opened.then(Transform.rotation(dart.angle(), apex));
            Point mouth = opened.apply(sewn.pointAt(dart.along()));
            edges.add(new Edge(stretch, from(edges, before)));
            edges.add(Edge.straight(Dart.legA(dart.name()), before.end(), apex));
            edges.add(Edge.straight(Dart.legB(dart.name()), apex, mouth));
            stretch = Dart.past(name, dart.name());
            from = dart.along();
            turned += dart.angle();
        }
        Path last = from == 0 ? sewn : sewn.sub(from, sewn.length()).transformed(opened);
        edges.add(new Edge(stretch, from(edges, last)));
        return new DartedEdge(edges, turned);
    }

    /**
     * Returns where an edge ends when its darts are opened, without drawing it.
     *
     * @param sewn where it runs when its darts are sewn
     * @param darts the darts, from its start, each on the edge
     */
    public static Point endOf(Path sewn, List<Wedge> darts) {
        Transform opened = Transform.IDENTITY;
        for (Wedge dart : darts) {
            Path.Location at = sewn.locate(dart.along());
            Curve curve = sewn.curves().get(at.curve());
            Point apex = opened.apply(curve.pointAt(at.t())
                    .plus(curve.directionAt(at.t()).rightNormal().times(dart.leg())));
            opened = opened.then(Transform.rotation(dart.angle(), apex));
        }
        return opened.apply(sewn.end());
    }

    /** Returns where the edge ends. */
    public Point end() {
        return edges.get(edges.size() - 1).path().end();
    }

    /** Returns the edge with its very end in another place, which rounding has moved it off. */
    public DartedEdge endingAt(Point end) {
        List<Edge> all = new ArrayList<>(edges);
        int last = all.size() - 1;
        Path path = all.get(last).path();
        all.set(last, all.get(last).withPath(path.withEnds(path.start(), end)));
        return new DartedEdge(all, turned);
    }

    /** A stretch begins at the very point at which the leg before it ends. */
    private static Path from(List<Edge> before, Path stretch) {
        return before.isEmpty()
                ? stretch
                : stretch.withEnds(before.get(before.size() - 1).path().end(), stretch.end());
    }
}
