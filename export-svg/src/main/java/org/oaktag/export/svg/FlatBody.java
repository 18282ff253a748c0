package org.oaktag.export.svg;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.oaktag.blocks.BandNames;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;

/**
 * The front or the back of a top laid flat: the half piece and its mirror image, and the band at its hem.
 *
 * <p>All in the piece's own millimetres, its centre at x = 0.
 */
final class FlatBody {

    private final Garment garment;
    private final Piece half;
    private final Name band;

    FlatBody(Garment garment, boolean front) {
        this.garment = garment;
        this.half = garment.piece(front ? TopNames.FRONT : TopNames.BACK);
        this.band = front ? TopNames.HEM_BAND_FRONT : TopNames.HEM_BAND_BACK;
    }

    Piece half() {
        return half;
    }

    Point shoulderPoint() {
        return half.path(EdgeNames.ARMHOLE).start();
    }

    Point underarmPoint() {
        return half.path(EdgeNames.ARMHOLE).end();
    }

    Path armhole() {
        return half.path(EdgeNames.ARMHOLE);
    }

    /** Returns the whole neckline, from the side neck point at the left over the centre to the one at the right. */
    Path neckline() {
        Path right = half.path(EdgeNames.NECKLINE);
        return FlatShape.joined(List.of(mirrored(right).reversed(), right));
    }

    FlatShape body() {
        List<Path> right = new ArrayList<>();
        for (Edge edge : half.edges()) {
            if (!edge.name().equals(EdgeNames.CENTRE)) {
                right.add(edge.path());
            }
        }
        // Edges are listed from the one after the centre, wherever the piece begins.
        int afterCentre = half.edges().indexOf(half.edge(EdgeNames.CENTRE)) % right.size();
        Collections.rotate(right, -afterCentre);
        List<Path> all = new ArrayList<>(right);
        for (int i = right.size() - 1; i >= 0; i--) {
            all.add(mirrored(right.get(i)).reversed());
        }
        return FlatShape.outside(FlatShape.closed(all), half.cloth());
    }

    /** The band hangs from the hem as deep as it is folded; what it laps lies behind the side seam. */
    Optional<FlatShape> band() {
        return garment.findPiece(band).map(piece -> {
            Path right = half.path(EdgeNames.HEM);
            Path upper = FlatShape.joined(List.of(right, mirrored(right).reversed()));
            Path lower = upper.transformed(Transform.translation(0, depth(piece)));
            return FlatShape.outside(FlatShape.closed(List.of(upper, lower.reversed())), piece.cloth());
        });
    }

    /** Returns how deep a band is once it is folded, or as it is drawn where it is not. */
    static double depth(Piece band) {
        Path top = band.path(EdgeNames.TOP);
        return band.lines().stream()
                .filter(line -> line.name().equals(BandNames.FOLD) && line.use() == InnerLine.Use.FOLD)
                .map(InnerLine::path)
                .findFirst()
                .orElseGet(() -> band.path(EdgeNames.BOTTOM))
                .nearest(top.start())
                .distance();
    }

    private static Path mirrored(Path path) {
        return path.transformed(Transform.mirrorX(0));
    }
}
