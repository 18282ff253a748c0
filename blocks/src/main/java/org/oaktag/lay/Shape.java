package org.oaktag.lay;

import java.util.List;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;

/**
 * A cut line in one of the ways in which it may be laid, ready to be packed: grown by half the gap, its left and top
 * edges at 0. Where it lies on the fold of the cloth, the fold is at x = 0 instead.
 *
 * @param orientation how the piece's own drawing was turned and moved to lie so
 * @param slabs the grown shape, cut into trapezoids
 * @param width the width of the grown shape, mm
 * @param height its height, mm
 * @param onFold whether it lies on the fold of the cloth
 */
record Shape(Transform orientation, Slabs slabs, double width, double height, boolean onFold) {

    /** Returns the shape of an outline that may lie anywhere. */
    static Shape free(Outline outline, Transform turned, double margin) {
        return of(outline, turned, margin, Double.NEGATIVE_INFINITY);
    }

    /**
     * Returns the right half of an outline whose middle lies on the fold.
     *
     * @param opened the outline of the whole piece
     * @param turned how it is turned; it takes the fold to the upright line at {@code fold}
     */
    static Shape onFold(Outline opened, Transform turned, double margin, double fold) {
        return of(opened, turned, margin, fold);
    }

    private static Shape of(Outline outline, Transform turned, double margin, double fold) {
        List<Point> corners = Flattened.around(outline.transformed(turned), margin);
        boolean onFold = Double.isFinite(fold);
        Slabs slabs = Slabs.of(corners, fold);
        double left =
                onFold ? fold : corners.stream().mapToDouble(Point::x).min().orElseThrow();
        double right = corners.stream().mapToDouble(Point::x).max().orElseThrow();
        double top = slabs.trapezoids().stream()
                .mapToDouble(t -> Math.min(t.topLeft(), t.topRight()))
                .min()
                .orElseThrow();
        double bottom = slabs.trapezoids().stream()
                .mapToDouble(t -> Math.max(t.bottomLeft(), t.bottomRight()))
                .max()
                .orElseThrow();
        return new Shape(
                turned.then(Transform.translation(-left, -top)),
                slabs.moved(-left, -top),
                right - left,
                bottom - top,
                onFold);
    }
}
