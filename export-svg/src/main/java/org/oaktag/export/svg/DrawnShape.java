package org.oaktag.export.svg;

import java.util.List;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.drawing.Fill;
import org.oaktag.export.drawing.LineType;
import org.oaktag.export.drawing.Stroke;
import org.oaktag.export.sheet.Cloths;
import org.oaktag.garment.FlatShape;
import org.oaktag.geometry.Path;

/** Draws the parts of a garment laid flat. */
final class DrawnShape {

    private DrawnShape() {}

    static void silhouette(FlatShape shape, Figure figure) {
        figure.add(Stroke.of(LineType.SILHOUETTE, shape.outline()));
    }

    static void draw(FlatShape shape, Figure figure, Cloths cloths) {
        Ribs.fill(figure, shape.outline(), cloths.of(shape.cloth()), () -> ribs(shape));
        if (shape.inside()) {
            figure.add(Fill.shade(shape.outline()));
        }
        figure.add(Stroke.of(LineType.SEAM, shape.outline()));
        shape.seams().forEach(seam -> figure.add(Stroke.of(LineType.SEAM, seam)));
    }

    private static List<Path> ribs(FlatShape shape) {
        return shape.ribs().isEmpty() ? Ribs.along(shape.outline(), shape.wales()) : shape.ribs();
    }
}
