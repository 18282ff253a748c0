package org.oaktag.export.svg;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.drawing.Fill;
import org.oaktag.export.drawing.LineType;
import org.oaktag.export.drawing.Stroke;
import org.oaktag.export.sheet.Cloths;
import org.oaktag.garment.Cloth;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;

/**
 * A part of a garment laid flat: what is seen of one piece. Immutable.
 *
 * @param outline its closed outline
 * @param cloth what it is cut from
 * @param inside whether its inside is seen, which is shown darker
 * @param seams seams and gathers drawn on it
 * @param wales the direction in which the ribs of a knit run
 * @param ribs where each of its ribs runs, if not straight over the whole of it in that direction
 */
record FlatShape(Path outline, Cloth cloth, boolean inside, List<Path> seams, Vector wales, List<Path> ribs) {

    private static final Vector DOWN = Vector.of(0, 1);

    FlatShape {
        seams = List.copyOf(seams);
        ribs = List.copyOf(ribs);
    }

    static FlatShape outside(Path outline, Cloth cloth) {
        return new FlatShape(outline, cloth, false, List.of(), DOWN, List.of());
    }

    static FlatShape inside(Path outline, Cloth cloth) {
        return new FlatShape(outline, cloth, true, List.of(), DOWN, List.of());
    }

    /** Returns the shape with its inside seen. */
    FlatShape seenInside() {
        return new FlatShape(outline, cloth, true, seams, wales, ribs);
    }

    FlatShape withSeams(List<Path> other) {
        return new FlatShape(outline, cloth, inside, other, wales, ribs);
    }

    /** Returns the shape with ribs that run in a direction, as down an arm. */
    FlatShape ribbedAlong(Vector direction) {
        return new FlatShape(outline, cloth, inside, seams, direction, ribs);
    }

    /** Returns the shape with these ribs, as those that stand round a neckline. */
    FlatShape withRibs(List<Path> other) {
        return new FlatShape(outline, cloth, inside, seams, wales, other);
    }

    FlatShape transformed(Transform transform) {
        return new FlatShape(
                outline.transformed(transform),
                cloth,
                inside,
                seams.stream().map(seam -> seam.transformed(transform)).toList(),
                transform.apply(wales),
                ribs.stream().map(rib -> rib.transformed(transform)).toList());
    }

    /** Returns the other side of the garment's middle, x = 0. */
    FlatShape mirrored() {
        return transformed(Transform.mirrorX(0));
    }

    void drawSilhouette(Figure figure) {
        figure.add(Stroke.of(LineType.SILHOUETTE, outline));
    }

    void draw(Figure figure, Cloths cloths) {
        Ribs.fill(figure, outline, cloths.of(cloth), this::drawnRibs);
        if (inside) {
            figure.add(Fill.shade(outline));
        }
        figure.add(Stroke.of(LineType.SEAM, outline));
        seams.forEach(seam -> figure.add(Stroke.of(LineType.SEAM, seam)));
    }

    private List<Path> drawnRibs() {
        return ribs.isEmpty() ? Ribs.along(outline, wales) : ribs;
    }

    /** Joins paths end to end, by straight lines where they do not meet. */
    static Path joined(List<Path> paths) {
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
    static Path closed(List<Path> paths) {
        Path joined = joined(paths);
        return joined.isClosed() ? joined : joined.then(Path.polyline(joined.end(), joined.start()));
    }

    private static Point pen(List<Curve> curves) {
        return curves.get(curves.size() - 1).end();
    }
}
