package org.oaktag.export.drawing;

import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * A filled shape without a line round it. Immutable.
 *
 * <pre>{@code
 * Fill tip = Fill.arrowhead(Point.of(0, 0), Vector.of(0, -1), 4, Colours.INK);
 * }</pre>
 *
 * @param paint a colour, or a reference to a texture
 * @param outline the closed path that is filled
 */
public record Fill(String paint, Path outline) implements Ink {

    /** An arrowhead is this many times as long as it is wide (ISO 129-1: an opening angle of 15 to 20 degrees). */
    private static final double SLENDER = 3.2;

    private static final double SHADE_OPACITY = 0.25;

    /** Returns a filled arrowhead. */
    public static Fill arrowhead(Point tip, Vector direction, double length, String colour) {
        Vector back = direction.unit().times(-length);
        Vector aside = back.perpendicular().times(0.5 / SLENDER);
        Point foot = tip.plus(back);
        return new Fill(colour, Path.polyline(tip, foot.plus(aside), foot.plus(aside.negated()), tip));
    }

    /** Returns a filled upright rectangle. */
    public static Fill rectangle(Bounds box, String paint) {
        return new Fill(paint, rim(box));
    }

    /** Returns the four sides of a rectangle as a closed path. */
    public static Path rim(Bounds box) {
        Point first = Point.of(box.minX(), box.minY());
        return Path.polyline(
                first,
                Point.of(box.maxX(), box.minY()),
                Point.of(box.maxX(), box.maxY()),
                Point.of(box.minX(), box.maxY()),
                first);
    }

    /** Returns the shade that darkens what lies below it, as on the inside of a garment. */
    public static Fill shade(Path outline) {
        return new Fill(Colours.SHADE, outline);
    }

    @Override
    public Bounds bounds() {
        return outline.bounds();
    }

    /** Returns how much of what lies below it hides, 0 to 1. */
    public double opacity() {
        return paint.equals(Colours.SHADE) ? SHADE_OPACITY : 1;
    }
}
