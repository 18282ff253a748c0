package org.oaktag.lay;

import java.util.List;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;

/**
 * A cut line in one of the ways in which it may be laid, ready to be packed: its left and top edges at 0. Where it lies
 * on the fold of the cloth, the fold is at x = 0.
 *
 * @param orientation how the piece's own drawing was turned and moved to lie so
 * @param slabs the shape with its curves replaced by chords, cut into trapezoids by lines along the cloth
 * @param sideways the same with x and y exchanged, cut by lines across the cloth
 * @param error how far a chord may lie from its curve, mm
 * @param width the width of the shape itself, mm
 * @param height its height, mm
 * @param onFold whether it lies on the fold of the cloth
 */
record Shape(
        Transform orientation, Slabs slabs, Slabs sideways, double error, double width, double height, boolean onFold) {

    /** Returns the shape of an outline that is turned in this way. */
    static Shape of(Outline outline, Transform turned, boolean onFold) {
        Outline laid = outline.transformed(turned);
        Bounds bounds = laid.bounds();
        Transform toCorner = Transform.translation(-bounds.minX(), -bounds.minY());
        List<Point> corners = Chords.of(laid).stream().map(toCorner::apply).toList();
        return new Shape(
                turned.then(toCorner),
                Slabs.of(corners),
                Slabs.of(corners.stream()
                        .map(corner -> Point.of(corner.y(), corner.x()))
                        .toList()),
                Chords.error(outline),
                bounds.width(),
                bounds.height(),
                onFold);
    }
}
