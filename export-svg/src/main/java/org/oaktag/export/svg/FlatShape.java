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

/**
 * A part of a garment laid flat: what is seen of one piece. Immutable.
 *
 * @param outline its closed outline
 * @param cloth what it is cut from
 * @param inside whether its inside is seen, which is shown darker
 * @param seams seams and gathers drawn on it
 */
record FlatShape(Path outline, Cloth cloth, boolean inside, List<Path> seams) {

    FlatShape {
        seams = List.copyOf(seams);
    }

    static FlatShape outside(Path outline, Cloth cloth) {
        return new FlatShape(outline, cloth, false, List.of());
    }

    static FlatShape inside(Path outline, Cloth cloth) {
        return new FlatShape(outline, cloth, true, List.of());
    }

    FlatShape withSeams(List<Path> other) {
        return new FlatShape(outline, cloth, inside, other);
    }

    FlatShape transformed(Transform transform) {
        return new FlatShape(
                outline.transformed(transform),
                cloth,
                inside,
                seams.stream().map(seam -> seam.transformed(transform)).toList());
    }

    /** Returns the other side of the garment's middle, x = 0. */
    FlatShape mirrored() {
        return transformed(Transform.mirrorX(0));
    }

    void drawSilhouette(Figure figure) {
        figure.add(Stroke.of(LineType.SILHOUETTE, outline));
    }

    void draw(Figure figure, Cloths cloths) {
        figure.add(new Fill(cloths.of(cloth).paint(), outline));
        if (inside) {
            figure.add(Fill.shade(outline));
        }
        figure.add(Stroke.of(LineType.SEAM, outline));
        seams.forEach(seam -> figure.add(Stroke.of(LineType.SEAM, seam)));
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
