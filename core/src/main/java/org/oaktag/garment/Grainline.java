package org.oaktag.garment;

import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;

/**
 * The direction in which the warp, or the wales of a knit, run through a piece. Immutable.
 *
 * <pre>{@code
 * Grainline grain = front.grainline();
 * grain.top().distanceTo(grain.bottom());   // how long its arrow is drawn, mm
 * }</pre>
 *
 * @param top the upper end of the arrow, in the piece's own millimetres
 * @param bottom the lower end
 */
public record Grainline(Point top, Point bottom) {

    /**
     * Checks that the line has a direction.
     *
     * @throws PatternException if both ends are the same point
     */
    public Grainline {
        Objects.requireNonNull(top, "top");
        Objects.requireNonNull(bottom, "bottom");
        if (top.equals(bottom)) {
            throw PatternException.of("grainline", "must have two ends apart", "both at " + top, "");
        }
    }

    /** Returns the grainline moved with its piece. */
    public Grainline transformed(Transform transform) {
        return new Grainline(transform.apply(top), transform.apply(bottom));
    }
}
