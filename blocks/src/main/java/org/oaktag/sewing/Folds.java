package org.oaktag.sewing;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamRule;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;

/**
 * The bands that are folded in half along their length: their two long edges, with the fold drawn between them, lie on
 * each other, and both are sewn to what the band hangs on. One whose inner half is stitched down by itself, as that of a
 * waistband is, is not among them: it is sewn on before it is folded.
 */
final class Folds {

    /** How far, in mm, the end of a fold may lie off the edge on which it ends, through rounding. */
    private static final double ON_EDGE = 1e-6;

    private final Garment garment;

    /** The bands by the seams that lay their long edges on each other. */
    private final Map<Seam, Band> bands = new LinkedHashMap<>();

    /** A band and the edges on which its fold ends. */
    private record Band(Name piece, Set<EdgeRef> ends) {}

    private Folds(Garment garment) {
        this.garment = garment;
    }

    static Folds of(Garment garment) {
        Folds folds = new Folds(garment);
        for (Seam seam : garment.seams()) {
            if (seam.rule() instanceof SeamRule.Flat && isLaidOnItself(seam)) {
                Name piece = seam.edges().get(0).piece();
                Set<EdgeRef> ends = ends(garment.piece(piece));
                if (!ends.isEmpty() && ends.stream().noneMatch(seam::has)) {
                    folds.bands.put(seam, new Band(piece, ends));
                }
            }
        }
        return folds;
    }

    private static boolean isLaidOnItself(Seam seam) {
        return seam.edges().stream().map(EdgeRef::piece).distinct().count() == 1
                && seam.a().edges().stream().noneMatch(seam.b()::has);
    }

    private static boolean isFold(InnerLine line) {
        return line.use() == InnerLine.Use.FOLD;
    }

    /** Returns the seams that fold a band. */
    Set<Seam> seams() {
        return bands.keySet();
    }

    /** Returns the band that a seam folds, empty where it is an ordinary one. */
    Optional<Name> bandOf(Seam seam) {
        return Optional.ofNullable(bands.get(seam)).map(Band::piece);
    }

    /** Returns the seams that must be sewn before one: those of a band's ends before its fold, and its fold before others. */
    Set<Seam> before(Seam seam) {
        Set<Seam> before = new LinkedHashSet<>();
        bands.forEach((fold, band) -> {
            if (fold.equals(seam)) {
                garment.seams().stream()
                        .filter(each -> band.ends.stream().anyMatch(each::has))
                        .forEach(before::add);
            } else if (fold.edges().stream().anyMatch(seam::has)
                    && band.ends.stream().noneMatch(seam::has)
                    && !Sequence.isFused(garment, seam)) {
                before.add(fold);
            }
        });
        return before;
    }

    /** Returns the edges on which the folds of a band end. */
    private static Set<EdgeRef> ends(Piece band) {
        Set<EdgeRef> ends = new HashSet<>();
        for (Edge edge : band.edges()) {
            if (band.lines().stream()
                    .filter(Folds::isFold)
                    .map(InnerLine::path)
                    .anyMatch(fold -> isOn(edge.path(), fold.start()) || isOn(edge.path(), fold.end()))) {
                ends.add(EdgeRef.of(band.name(), edge.name()));
            }
        }
        return ends;
    }

    private static boolean isOn(Path path, Point point) {
        return path.nearest(point).distance() <= ON_EDGE;
    }
}
