package org.oaktag.blocks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oaktag.draft.BandDepth;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.FlatShape;
import org.oaktag.garment.Garment;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.geometry.CornerStyle;
import org.oaktag.geometry.OffsetPath;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;

/**
 * The front or the back of a top laid flat: the half piece and its mirror image, with the pieces that were split off
 * it, and the bands at its hem and its neckline.
 *
 * <p>All in the piece's own millimetres, its centre at x = 0. A piece that was split off lies on paper where it lay in
 * the whole, so that it is known by an edge that is the very line of the edge it is sewn to.
 */
final class FlatBody {

    /** How exact a parallel is drawn here, in millimetres of the garment. */
    private static final double ON_SHEET = 0.05;

    /** From rib to rib of a neckband, in millimetres of the garment. */
    private static final double RIB_PITCH = 14;

    private final Garment garment;
    private final Piece half;
    private final Name band;
    private final Optional<FlatRaglan> raglan;

    FlatBody(Garment garment, boolean front) {
        this.garment = garment;
        this.half = garment.piece(front ? TopNames.FRONT : TopNames.BACK);
        this.band = front ? TopNames.HEM_BAND_FRONT : TopNames.HEM_BAND_BACK;
        this.raglan = garment.findPiece(front ? TopNames.SLEEVE_FRONT : TopNames.SLEEVE_BACK)
                .filter(sleeve -> half.hasEdge(TopEdges.RAGLAN) && sleeve.hasEdge(TopEdges.RAGLAN))
                .map(sleeve -> FlatRaglan.beside(armhole(), sleeve));
    }

    Point shoulderPoint() {
        return armhole().start();
    }

    Point underarmPoint() {
        return armhole().end();
    }

    /** Returns the line at which the sleeve begins: the armhole, and above it the raglan line where there is one. */
    Path armhole() {
        if (!half.hasEdge(TopEdges.RAGLAN)) {
            return half.path(TopEdges.ARMHOLE);
        }
        Name below = half.hasEdge(TopEdges.GUSSET_LOWER) ? TopEdges.GUSSET_LOWER : TopEdges.ARMHOLE;
        return half.path(TopEdges.RAGLAN).then(half.path(below));
    }

    /** Returns the sleeve at the right where it is that of a raglan. */
    Optional<FlatRaglan> raglan() {
        return raglan;
    }

    /** Returns the whole neckline, from the side neck point at the left over the centre to the one at the right. */
    Path neckline() {
        Path own = half.path(TopEdges.NECKLINE);
        Path right = raglan.map(sleeve -> FlatShape.joined(List.of(own, sleeve.neckline())))
                .orElse(own);
        return FlatShape.joined(List.of(mirrored(right).reversed(), right));
    }

    /** Returns what is seen through the neckline, down to the neckline of the other side of the body. */
    FlatShape opening(FlatBody other) {
        return FlatShape.inside(
                FlatShape.closed(List.of(neckline(), other.neckline().reversed())), other.half.cloth());
    }

    List<FlatShape> body() {
        List<FlatShape> shapes = new ArrayList<>();
        for (Piece part : parts()) {
            List<Path> laidOn = part.lines().stream()
                    .filter(line -> line.use() == InnerLine.Use.PLACEMENT)
                    .map(InnerLine::path)
                    .toList();
            if (part.hasEdge(EdgeNames.CENTRE)) {
                List<Path> both = new ArrayList<>(laidOn);
                laidOn.forEach(line -> both.add(mirrored(line)));
                shapes.add(FlatShape.outside(FlatShape.unfolded(part, EdgeNames.CENTRE), part.cloth())
                        .withSeams(both));
            } else {
                FlatShape right =
                        FlatShape.outside(part.outline().path(), part.cloth()).withSeams(laidOn);
                shapes.add(right);
                shapes.add(right.mirrored());
            }
        }
        return shapes;
    }

    /** Returns the half and whatever was split off it, and off that in turn. */
    private List<Piece> parts() {
        List<Piece> parts = new ArrayList<>(List.of(half));
        for (int i = 0; i < parts.size(); i++) {
            Piece part = parts.get(i);
            for (Piece other : garment.pieces()) {
                if (!parts.contains(other) && garment.seams().stream().anyMatch(seam -> parts(seam, part, other))) {
                    parts.add(other);
                }
            }
        }
        return parts;
    }

    private static boolean parts(Seam seam, Piece one, Piece other) {
        return one.edges().stream()
                .filter(edge -> seam.has(EdgeRef.of(one.name(), edge.name())))
                .anyMatch(edge -> other.edges().stream()
                        .filter(each -> seam.has(EdgeRef.of(other.name(), each.name())))
                        .anyMatch(each -> each.path().equals(edge.path().reversed())));
    }

    /** A neckband stands up from the neckline as deep as it is folded. */
    Optional<FlatShape> neckband() {
        return garment.findPiece(FinishNames.NECKBAND).map(band -> standing(band, neckline()));
    }

    /** A band stands out from an armhole without a sleeve, at the right. */
    Optional<FlatShape> armholeBand() {
        return garment.findPiece(BandNames.ARMHOLE_BAND).map(band -> standing(band, half.path(TopEdges.ARMHOLE)));
    }

    /** An edge runs with what is beyond it, where its band stands, on its left. */
    private static FlatShape standing(Piece band, Path foot) {
        double depth = BandDepth.folded(band, BandNames.FOLD);
        Path rim = OffsetPath.of(foot, depth, CornerStyle.mitre(3), ON_SHEET);
        return FlatShape.outside(FlatShape.closed(List.of(foot, rim.reversed())), band.cloth())
                .withRibs(standingOn(foot, depth, RIB_PITCH));
    }

    /**
     * Returns ribs that stand on an edge, square to it at its left, and end where another part of the edge is as near.
     *
     * @param length how long they are, mm
     * @param pitch from rib to rib along the edge, mm
     */
    private static List<Path> standingOn(Path edge, double length, double pitch) {
        List<Path> ribs = new ArrayList<>();
        double whole = edge.length();
        int count = Math.max(1, (int) Math.rint(whole / pitch));
        for (int i = 0; i < count; i++) {
            Point foot = edge.pointAt((i + 0.5) * whole / count);
            Vector out = edge.directionAt((i + 0.5) * whole / count).leftNormal();
            double free = length;
            while (free > length / 16
                    && edge.nearest(foot.plus(out.times(free))).distance() < 0.98 * free) {
                free -= length / 16;
            }
            ribs.add(Path.polyline(foot, foot.plus(out.times(free))));
        }
        return ribs;
    }

    /** The band hangs from the hem as deep as it is folded; what it laps lies behind the side seam. */
    Optional<FlatShape> band() {
        return garment.findPiece(band).map(piece -> {
            Path right = hem();
            Path upper = FlatShape.joined(List.of(right, mirrored(right).reversed()));
            Path lower = upper.transformed(Transform.translation(0, BandDepth.folded(piece, BandNames.FOLD)));
            return FlatShape.outside(FlatShape.closed(List.of(upper, lower.reversed())), piece.cloth());
        });
    }

    private Path hem() {
        return parts().stream()
                .filter(part -> part.hasEdge(EdgeNames.HEM))
                .findFirst()
                .orElse(half)
                .path(EdgeNames.HEM);
    }

    private static Path mirrored(Path path) {
        return path.transformed(Transform.mirrorX(0));
    }
}
