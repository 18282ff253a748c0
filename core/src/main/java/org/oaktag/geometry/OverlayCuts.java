package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Cuts curves where they meet each other and themselves, and brings the ends of the pieces together. */
final class OverlayCuts {
    private final List<OverlayStrand> strands;
    private final Vertices vertices;
    private final double near;
    private final List<List<Double>> cuts = new ArrayList<>();

    OverlayCuts(List<OverlayStrand> strands) {
        this.strands = strands;
        strands.forEach(strand -> cuts.add(new ArrayList<>(List.of(0.0, 1.0))));
        if (strands.isEmpty()) {
            near = 0;
            vertices = new Vertices(0);
            return;
        }
        List<Curve> curves = strands.stream().map(OverlayStrand::curve).toList();
        CurveTree tree = CurveTree.of(curves);
        near = CurveContacts.near(tree, tree);
        vertices = new Vertices(10 * near);
        for (int i = 0; i < curves.size(); i++) {
            if (curves.get(i) instanceof Cubic cubic) {
                cut(i, i, SelfContacts.of(cubic));
                cut(i, i, Folds.within(cubic));
                for (double fold : Folds.of(cubic, CurveContacts.tolerance(cubic, cubic))) {
                    cuts.get(i).add(fold);
                }
            }
        }
        for (CurvePair pair : tree.pairsWithin(near)) {
            cut(
                    pair.first(),
                    pair.second(),
                    CurveContacts.between(curves.get(pair.first()), curves.get(pair.second())));
        }
        for (Curve curve : curves) {
            vertices.at(curve.start());
            vertices.at(curve.end());
        }
    }

    private void cut(int i, int j, List<Contact> contacts) {
        for (Contact contact : contacts) {
            cuts.get(i).addAll(List.of(contact.t0(), contact.t1()));
            cuts.get(j).addAll(List.of(contact.u0(), contact.u1()));
        }
    }

    /** Returns how near to each other curves run along each other, mm. */
    double together() {
        return near;
    }

    List<Point> vertices() {
        return vertices.points();
    }

    /** Returns the pieces in order; those that are shorter than the ends are brought together are left out. */
    List<OverlayPiece> pieces() {
        List<OverlayPiece> pieces = new ArrayList<>();
        for (int i = 0; i < strands.size(); i++) {
            OverlayStrand strand = strands.get(i);
            double[] places =
                    cuts.get(i).stream().mapToDouble(Double::doubleValue).toArray();
            Arrays.sort(places);
            double from = 0;
            int start = vertices.at(strand.curve().start());
            for (double to : places) {
                if (to <= from) {
                    continue;
                }
                int end = vertices.at(strand.curve().pointAt(to));
                if (start != end || !isDust(strand.curve(), from, to)) {
                    pieces.add(piece(strand, from, to, start, end));
                    start = end;
                    from = to;
                }
            }
        }
        return pieces;
    }

    private boolean isDust(Curve curve, double from, double to) {
        return curve.lengthBetween(from, to, vertices.apart()) <= 4 * vertices.apart();
    }

    private OverlayPiece piece(OverlayStrand strand, double from, double to, int start, int end) {
        Curve piece = Joined.withEnds(strand.curve().sub(from, to), points(start), points(end));
        return new OverlayPiece(strand, piece, onSource(strand, from), onSource(strand, to), start, end);
    }

    private Point points(int vertex) {
        return vertices.points().get(vertex);
    }

    private static double onSource(OverlayStrand strand, double t) {
        Region.Edge edge = strand.edge();
        return t == 1 ? edge.to() : edge.from() + (edge.to() - edge.from()) * t;
    }
}
