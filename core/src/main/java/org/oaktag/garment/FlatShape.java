package org.oaktag.garment;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;

/**
 * A part of a garment laid flat: what is seen of one piece. Immutable.
 *
 * <pre>{@code
 * FlatShape.outside(FlatShape.unfolded(front), front.cloth()).mirrored();
 * }</pre>
 *
 * @param outline its closed outline
 * @param cloth what it is cut from
 * @param inside whether its inside is seen, which is shown darker
 * @param seams seams and gathers drawn on it
 * @param wales the direction in which the ribs of a knit run
 * @param ribs where each of its ribs runs, if not straight over the whole of it in that direction
 */
public record FlatShape(Path outline, Cloth cloth, boolean inside, List<Path> seams, Vector wales, List<Path> ribs) {

    private static final Vector DOWN = Vector.of(0, 1);

    /** Copies the lists. */
    public FlatShape {
        Objects.requireNonNull(outline, "outline");
        Objects.requireNonNull(cloth, "cloth");
        Objects.requireNonNull(wales, "wales");
        seams = List.copyOf(seams);
        ribs = List.copyOf(ribs);
    }

    /** Returns a shape of which the outside of the cloth is seen. */
    public static FlatShape outside(Path outline, Cloth cloth) {
        return new FlatShape(outline, cloth, false, List.of(), DOWN, List.of());
    }

    /** Returns a shape of which the inside of the cloth is seen. */
    public static FlatShape inside(Path outline, Cloth cloth) {
        return new FlatShape(outline, cloth, true, List.of(), DOWN, List.of());
    }

    /** Returns the shape with its inside seen. */
    public FlatShape seenInside() {
        return new FlatShape(outline, cloth, true, seams, wales, ribs);
    }

    /** Returns the shape with these seams drawn on it. */
    public FlatShape withSeams(List<Path> other) {
        return new FlatShape(outline, cloth, inside, other, wales, ribs);
    }

    /** Returns the shape with ribs that run in a direction, as down an arm. */
    public FlatShape ribbedAlong(Vector direction) {
        return new FlatShape(outline, cloth, inside, seams, direction, ribs);
    }

    /** Returns the shape with these ribs, as those that stand round a neckline. */
    public FlatShape withRibs(List<Path> other) {
        return new FlatShape(outline, cloth, inside, seams, wales, other);
    }

    /** Returns the shape moved, turned or scaled. */
    public FlatShape transformed(Transform transform) {
        return new FlatShape(
                outline.transformed(transform),
                cloth,
                inside,
                seams.stream().map(seam -> seam.transformed(transform)).toList(),
                transform.apply(wales),
                ribs.stream().map(rib -> rib.transformed(transform)).toList());
    }

    /** Returns the other side of the garment's middle, x = 0. */
    public FlatShape mirrored() {
        return transformed(Transform.mirrorX(0));
    }

    /**
     * Returns the outline of a piece, whole: one cut on the fold of a straight edge with its mirror image beside it.
     */
    public static Path unfolded(Piece piece) {
        return piece.cut() instanceof Cut.OnFold fold
                ? unfolded(piece, fold.edge())
                : piece.outline().path();
    }

    /** Returns the outline of a piece and of its mirror image beside a straight edge, without that edge. */
    public static Path unfolded(Piece piece, Name edge) {
        Path line = piece.path(edge);
        Transform mirror = Transform.mirror(line.start(), line.end());
        List<Path> drawn = new ArrayList<>();
        Edge next = piece.after(edge);
        while (!next.name().equals(edge)) {
            drawn.add(next.path());
            next = piece.after(next.name());
        }
        List<Path> all = new ArrayList<>(drawn);
        for (int i = drawn.size() - 1; i >= 0; i--) {
            all.add(drawn.get(i).transformed(mirror).reversed());
        }
        return closed(all);
    }

    /** Joins paths end to end, by straight lines where they do not meet. */
    public static Path joined(List<Path> paths) {
        List<Curve> curves = new ArrayList<>();
        for (Path path : paths) {
            if (!curves.isEmpty() && !pen(curves).equals(path.start())) {
                curves.addAll(Path.polyline(pen(curves), path.start()).curves());
            }
            curves.addAll(path.curves());
        }
        return Path.of(curves);
    }

    /** Joins paths end to end and closes the last onto the first. */
    public static Path closed(List<Path> paths) {
        Path joined = joined(paths);
        return joined.isClosed() ? joined : joined.then(Path.polyline(joined.end(), joined.start()));
    }

    private static Point pen(List<Curve> curves) {
        return curves.get(curves.size() - 1).end();
    }
}
