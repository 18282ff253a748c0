package org.oaktag.export.svg;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import org.oaktag.export.drawing.ClothPaint;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.drawing.Fill;
import org.oaktag.export.drawing.LineType;
import org.oaktag.export.drawing.Stroke;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * The ribs of a knit on a shape: lines along its wales, which run with the grain of the piece, so that it is seen which
 * way it stretches. A pattern that fills a page has one direction; a cuff, the arm it is on, and a lay have their own.
 */
final class Ribs {

    /** From rib to rib, mm on the page: as in the swatch of the cloth. */
    private static final double PITCH = ClothPaint.TILE / 2;

    /** How near to the end of a rib shorter ones are left out, mm. */
    private static final double SHORTEST = 0.3;

    private Ribs() {}

    /**
     * Fills a shape with its paint; a ribbed one with its colour and its own ribs on it.
     *
     * @param ribs the ribs, asked for only where there are some
     */
    static void fill(Figure figure, Path outline, ClothPaint paint, Supplier<List<Path>> ribs) {
        if (paint == ClothPaint.RIBBED) {
            figure.add(new Fill(paint.colour(), outline));
            ribs.get().forEach(rib -> figure.add(Stroke.of(LineType.RIB, rib)));
        } else {
            figure.add(new Fill(paint.paint(), outline));
        }
    }

    /** Returns straight ribs in a direction, as far as they run inside an outline. */
    static List<Path> along(Path outline, Vector wales) {
        Vector along = wales.unit();
        Vector across = along.leftNormal();
        Bounds box = outline.bounds();
        double reach = Math.hypot(box.width(), box.height()) / 2;
        List<Path> ribs = new ArrayList<>();
        for (double aside = -reach + PITCH / 2; aside < reach; aside += PITCH) {
            Point through = box.center().plus(across.times(aside));
            List<Double> hits = new ArrayList<>();
            for (Point hit : Crossings.pointsOnLine(outline, through, along)) {
                hits.add(hit.minus(through).dot(along));
            }
            hits.sort(Comparator.naturalOrder());
            // An odd number comes of a corner or of a touch; the rib beside it shows as much.
            for (int i = 0; hits.size() % 2 == 0 && i < hits.size(); i += 2) {
                if (hits.get(i + 1) - hits.get(i) > SHORTEST) {
                    ribs.add(Path.polyline(
                            through.plus(along.times(hits.get(i))), through.plus(along.times(hits.get(i + 1)))));
                }
            }
        }
        return ribs;
    }
}
