package org.oaktag.lay;

import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Transform;

/**
 * A cut line in one of the ways in which it may be laid, ready to be packed: its left and top edges at 0. Where it lies on
 * the fold of the cloth, the fold is at x = 0.
 *
 * @param orientation how the piece's own drawing was turned and moved to lie so
 * @param slabs the shape with its curves replaced by chords, cut into trapezoids
 * @param error how far a chord may lie from its curve, mm
 * @param width the width of the shape itself, mm
 * @param height its height, mm
 * @param onFold whether it lies on the fold of the cloth
 */
record Shape(Transform orientation, Slabs slabs, double error, double width, double height, boolean onFold) {

    /** Returns the shape of an outline that is turned in this way. */
    static Shape of(Outline outline, Transform turned, boolean onFold) {
        Outline laid = outline.transformed(turned);
        Bounds bounds = laid.bounds();
        Slabs slabs = Slabs.of(Chords.of(laid)).moved(-bounds.minX(), -bounds.minY());
        return new Shape(
                turned.then(Transform.translation(-bounds.minX(), -bounds.minY())),
                slabs,
                Chords.error(outline),
                bounds.width(),
                bounds.height(),
                onFold);
    }
}
