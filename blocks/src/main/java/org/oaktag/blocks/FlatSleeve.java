package org.oaktag.blocks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oaktag.draft.BandDepth;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.FlatShape;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;

/**
 * A sleeve laid flat beside a body, folded along the line from the top of its cap to the middle of its hem, so that its
 * front half is seen from the front and its back half from the back.
 *
 * <p>A rigid motion puts the top of the cap on the shoulder point and the sleeve's underarm point on the ray from there
 * to the body's: so a low cap makes the sleeve stand out and a high one lets it hang. What the cap is longer than the
 * armhole, and how it curves, does not show; it is bounded by the armhole.
 */
final class FlatSleeve {

    /**
     * How far above a cuff a gathered sleeve begins to narrow, as a share of what is gathered in, and at the most, mm.
     */
    private static final double NARROWING = 0.6;

    private static final double MOST_NARROWING = 60;
    private static final double GATHER = 22;
    private static final double GATHER_PITCH = 14;

    private final Garment garment;
    private final FlatBody body;
    private final boolean front;

    FlatSleeve(Garment garment, FlatBody body, boolean front) {
        this.garment = garment;
        this.body = body;
        this.front = front;
    }

    /** Returns the parts of the sleeve at the right of the sheet, the upper first, or nothing where there is none. */
    List<FlatShape> parts() {
        Optional<Piece> sleeve = garment.findPiece(TopNames.SLEEVE);
        if (sleeve.isEmpty()) {
            return List.of();
        }
        Piece upper = sleeve.get();
        Optional<Piece> lower = garment.findPiece(TopNames.SLEEVE_LOWER);
        Transform motion = motion(upper);
        List<FlatShape> shapes = new ArrayList<>();
        Half end = half(upper, Optional.empty()).transformed(motion);
        Half last = lower.map(piece -> half(piece, Optional.of(EdgeNames.TOP)).transformed(motion))
                .orElse(end);
        Optional<Cuff> cuff = garment.findPiece(TopNames.CUFF).map(piece -> Cuff.below(last, piece));
        shapes.add(upperShape(end, upper, lower.isPresent() ? Optional.empty() : cuff));
        lower.ifPresent(piece -> shapes.add(lowerShape(last, piece, cuff)));
        cuff.ifPresent(each -> shapes.add(each.shape()));
        return shapes;
    }

    /**
     * Half of a sleeve, or of its lower part.
     *
     * @param underarm from the upper to the lower end, on the side of the body
     * @param hem from the underarm to the fold
     * @param foldTop the upper end of the fold
     */
    private record Half(Path underarm, Path hem, Point foldTop) {
        Half transformed(Transform transform) {
            return new Half(underarm.transformed(transform), hem.transformed(transform), transform.apply(foldTop));
        }

        Point foldEnd() {
            return hem.end();
        }
    }

    /** A folded cuff below a sleeve, centred on its gathered hem. */
    private record Cuff(Point underarm, Point fold, Vector down, Piece piece) {
        static Cuff below(Half sleeve, Piece piece) {
            Vector across = sleeve.foldEnd().minus(sleeve.hem().start());
            Point middle = sleeve.hem().start().midpoint(sleeve.foldEnd());
            double width = Math.min(piece.path(EdgeNames.TOP).length() / 2, across.length());
            Vector half = across.unit().times(width / 2);
            Vector along = sleeve.foldEnd().minus(sleeve.foldTop()).unit();
            return new Cuff(
                    middle.plus(half.negated()),
                    middle.plus(half),
                    along.times(BandDepth.folded(piece, BandNames.FOLD)),
                    piece);
        }

        FlatShape shape() {
            return FlatShape.outside(
                            Path.polyline(fold, fold.plus(down), underarm.plus(down), underarm, fold), piece.cloth())
                    .ribbedAlong(down);
        }
    }

    private Half half(Piece piece, Optional<Name> top) {
        Name hemName = piece.hasEdge(EdgeNames.BOTTOM) ? EdgeNames.BOTTOM : EdgeNames.HEM;
        Path hem = piece.path(hemName);
        double middle = hem.length() / 2;
        Point foldTop = top.map(name -> {
                    Path edge = piece.path(name);
                    return edge.pointAt(edge.length() / 2);
                })
                .orElseGet(() -> piece.path(TopEdges.CAP_FRONT).start());
        return front
                ? new Half(piece.path(TopEdges.UNDERARM_FRONT), hem.sub(0, middle), foldTop)
                : new Half(
                        piece.path(TopEdges.UNDERARM_BACK).reversed(),
                        hem.sub(middle, hem.length()).reversed(),
                        foldTop);
    }

    private Transform motion(Piece sleeve) {
        Half half = half(sleeve, Optional.empty());
        // Seen from the front the half that lies at the right of the piece is turned over its fold.
        Transform turnedOver = front ? Transform.mirror(half.foldTop(), half.foldEnd()) : Transform.IDENTITY;
        Point underarm = turnedOver.apply(half.underarm().start());
        Vector own = underarm.minus(half.foldTop());
        Vector wanted = body.underarmPoint().minus(body.shoulderPoint());
        return turnedOver
                .then(Transform.rotation(own.angleTo(wanted), half.foldTop()))
                .then(Transform.translation(body.shoulderPoint().minus(half.foldTop())));
    }

    private FlatShape upperShape(Half half, Piece piece, Optional<Cuff> cuff) {
        List<Path> outline = new ArrayList<>();
        outline.add(body.armhole());
        outline.addAll(sides(half, cuff));
        return FlatShape.outside(FlatShape.closed(outline), piece.cloth())
                .ribbedAlong(half.foldEnd().minus(half.foldTop()))
                .withSeams(cuff.map(FlatSleeve::gathers).orElse(List.of()));
    }

    private FlatShape lowerShape(Half half, Piece piece, Optional<Cuff> cuff) {
        List<Path> outline = new ArrayList<>(sides(half, cuff));
        outline.add(Path.polyline(half.foldTop(), half.underarm().start()));
        return FlatShape.outside(FlatShape.closed(outline), piece.cloth())
                .ribbedAlong(half.foldEnd().minus(half.foldTop()))
                .withSeams(cuff.map(FlatSleeve::gathers).orElse(List.of()));
    }

    /** Down the underarm, along the hem and up the fold; towards a cuff both sides narrow in a curve. */
    private static List<Path> sides(Half half, Optional<Cuff> cuff) {
        Path fold = Path.polyline(half.foldEnd(), half.foldTop());
        if (cuff.isEmpty()) {
            return List.of(half.underarm(), half.hem(), fold);
        }
        Point underarmEnd = half.underarm().end();
        double gathered = underarmEnd.distanceTo(cuff.get().underarm());
        double shortest = Math.min(half.underarm().length(), fold.length()) / 2;
        double above = Math.min(Math.min(NARROWING * gathered * 2, MOST_NARROWING), shortest);
        if (above < 1) {
            return List.of(half.underarm(), half.hem(), fold);
        }
        Path upper = half.underarm().sub(0, half.underarm().length() - above);
        Path upperFold = fold.sub(above, fold.length());
        Vector back = cuff.get().down().unit().times(-above * 0.35);
        Path in = Path.of(new Cubic(
                upper.end(),
                underarmEnd,
                cuff.get().underarm().plus(back),
                cuff.get().underarm()));
        Path out =
                Path.of(new Cubic(cuff.get().fold(), cuff.get().fold().plus(back), half.foldEnd(), upperFold.start()));
        return List.of(
                upper, in, Path.polyline(cuff.get().underarm(), cuff.get().fold()), out, upperFold);
    }

    private static List<Path> gathers(Cuff cuff) {
        Vector across = cuff.fold().minus(cuff.underarm());
        Vector up = cuff.down().unit().times(-GATHER);
        int count = (int) Math.max(2, Math.rint(across.length() / GATHER_PITCH));
        List<Path> gathers = new ArrayList<>();
        for (int i = 1; i < count; i++) {
            Point foot = cuff.underarm().plus(across.times((double) i / count));
            double share = i % 2 == 0 ? 1 : 0.6;
            gathers.add(Path.polyline(foot, foot.plus(up.times(share))));
        }
        return gathers;
    }
}
