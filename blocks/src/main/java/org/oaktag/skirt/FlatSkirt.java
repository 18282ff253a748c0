package org.oaktag.skirt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oaktag.draft.BandDepth;
import org.oaktag.garment.Aspect;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Dart;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.FlatLay;
import org.oaktag.garment.FlatShape;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;

/**
 * A skirt laid flat: each half as wide at the waist as it is with its darts sewn, the darts as seams. The side seams
 * lie a little off the edges where one half is wider; they are shown at the edges. A likeness: cloth shaped by darts
 * does not lie flat. Where a skirt is no longer a front and a back whose waist runs from the centre to the side, its
 * pieces lie in a row.
 */
record FlatSkirt() implements FlatLay {

    private static final double NEAR = 1e-6;

    @Override
    public List<FlatShape> shapes(Garment garment, Aspect seen) {
        Optional<Piece> half = half(garment, seen);
        Optional<Piece> behind = half(garment, seen.opposite());
        if (half.isEmpty() || behind.isEmpty()) {
            return IN_A_ROW.shapes(garment, seen);
        }
        double width = width(half.get());
        Transform toTheEdge = new Transform((width + width(behind.get())) / (2 * width), 0, 0, 1, 0, 0);
        List<FlatShape> shapes = new ArrayList<>();
        shapes.add(FlatShape.outside(outline(half.get()), half.get().cloth())
                .withSeams(seams(half.get()))
                .transformed(toTheEdge));
        band(garment, half.get())
                .ifPresent(band -> shapes.add(FlatShape.outside(
                                bandOn(half.get(), BandDepth.folded(band, SkirtFinishNames.BAND_FOLD)), band.cloth())
                        .transformed(toTheEdge)));
        return shapes;
    }

    /** Returns the band at the waist of a half, where there is one. */
    private static Optional<Piece> band(Garment garment, Piece half) {
        return garment.findPiece(SkirtFinishNames.waistband(half.name()))
                .or(() -> garment.findPiece(SkirtFinishNames.WAISTBAND));
    }

    /** The band stands straight up from the waist. */
    private static Path bandOn(Piece half, double depth) {
        Path right = waist(half);
        Path whole = FlatShape.joined(
                List.of(right.transformed(Transform.mirrorX(right.start().x())).reversed(), right));
        return FlatShape.closed(List.of(
                whole, whole.transformed(Transform.translation(0, -depth)).reversed()));
    }

    /** How far the half reaches from the middle, x = 0. */
    private static double width(Piece half) {
        return half.path(EdgeNames.SIDE).bounds().maxX();
    }

    private static Optional<Piece> half(Garment garment, Aspect seen) {
        return garment.findPiece(seen == Aspect.FRONT ? SkirtNames.FRONT : SkirtNames.BACK)
                .filter(piece -> piece.hasEdge(SkirtNames.WAIST)
                        && piece.hasEdge(EdgeNames.SIDE)
                        && piece.hasEdge(EdgeNames.HEM)
                        && isAtCentre(piece.path(SkirtNames.WAIST).start())
                        && isAtCentre(piece.path(EdgeNames.HEM).end()));
    }

    private static boolean isAtCentre(Point point) {
        return Math.abs(point.x()) < NEAR;
    }

    /** The half with its waist drawn in to its sewn width, and its mirror image. */
    private static Path outline(Piece half) {
        Point centre = half.path(SkirtNames.WAIST).start();
        Path side = half.path(EdgeNames.SIDE);
        double in = side.start().x() - centre.x() - SkirtBody.sewnWaist(half);
        Path shaped = Math.abs(in) < NEAR ? side : drawnIn(side, in);
        Path right = FlatShape.joined(List.of(waist(half), shaped, half.path(EdgeNames.HEM)));
        Path left = right.transformed(Transform.mirrorX(centre.x())).reversed();
        return FlatShape.closed(List.of(right, left));
    }

    /** The waist from the centre to the side, as long across as it is sewn. */
    private static Path waist(Piece half) {
        Point centre = half.path(SkirtNames.WAIST).start();
        Point top = Point.of(
                centre.x() + SkirtBody.sewnWaist(half),
                half.path(EdgeNames.SIDE).start().y());
        return Path.of(Cubic.hermite(
                centre,
                Vector.of((top.x() - centre.x()) / 3, 0),
                top,
                Vector.of(top.x() - centre.x(), 2 * (top.y() - centre.y())).times(1.0 / 3)));
    }

    /** The side with the start of its hip curve moved in, by less the nearer it comes to the curve's end. */
    private static Path drawnIn(Path side, double in) {
        List<Curve> curves = new ArrayList<>(side.curves());
        Curve first = curves.get(0);
        Cubic curve = Cubic.from(first);
        curves.set(
                0,
                Cubic.of(
                        curve.start().plus(Vector.of(-in, 0)),
                        curve.control1().plus(Vector.of(-in * 2 / 3, 0)),
                        curve.control2(),
                        curve.end()));
        return Path.of(curves);
    }

    /** The darts as they are seen sewn, on both sides of the centre, and a seam down it. */
    private static List<Path> seams(Piece half) {
        Point centre = half.path(SkirtNames.WAIST).start();
        List<Path> seams = new ArrayList<>();
        double along = 0;
        for (Edge edge : SkirtBody.stretches(half, SkirtNames.WAIST)) {
            along += edge.path().length();
            Optional<Dart> dart = Dart.all(half).stream()
                    .filter(each -> each.mouthA().equals(edge.path().end()))
                    .findFirst();
            if (dart.isPresent()) {
                Point mouth = Point.of(centre.x() + along, edge.path().end().y());
                Point apex = Point.of(
                        mouth.x() + (dart.get().apex().x() - mouth.x()) / 3,
                        dart.get().apex().y());
                seams.add(Path.polyline(mouth, apex));
            }
        }
        if (!(half.cut() instanceof Cut.OnFold)) {
            seams.add(Path.polyline(centre, half.path(EdgeNames.HEM).end()));
        }
        List<Path> both = new ArrayList<>(seams);
        seams.forEach(seam -> both.add(seam.transformed(Transform.mirrorX(centre.x()))));
        return both;
    }
}
