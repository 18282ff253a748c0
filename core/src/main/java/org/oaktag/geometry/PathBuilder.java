package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Draws a path curve by curve, each from where the last ended. Not thread-safe; the built path is.
 *
 * <pre>{@code
 * Path pocket = Path.from(Point.ORIGIN)
 *         .lineTo(Point.of(140, 0))
 *         .lineTo(Point.of(140, 110))
 *         .curveTo(Point.of(140, 150), Point.of(0, 150), Point.of(0, 110))
 *         .close()
 *         .build();
 * pocket.isClosed();   // = true
 * }</pre>
 *
 * <p>Coordinates are mm. A curve of no length is drawn as it was asked for.
 */
public final class PathBuilder {
    private final List<Curve> curves = new ArrayList<>();
    private final Point start;
    private Point pen;

    PathBuilder(Point start) {
        this.start = Objects.requireNonNull(start, "start");
        this.pen = start;
    }

    public PathBuilder lineTo(Point end) {
        return add(new Line(pen, Objects.requireNonNull(end, "end")));
    }

    public PathBuilder curveTo(Point control1, Point control2, Point end) {
        return add(new Cubic(
                pen,
                Objects.requireNonNull(control1, "control1"),
                Objects.requireNonNull(control2, "control2"),
                Objects.requireNonNull(end, "end")));
    }

    /**
     * Adds all the curves of a path.
     *
     * @throws IllegalArgumentException if it does not start where this one has come to
     */
    public PathBuilder append(Path path) {
        if (!path.start().equals(pen)) {
            throw new IllegalArgumentException("an appended path must start at " + pen + ", got " + path.start());
        }
        path.curves().forEach(this::add);
        return this;
    }

    /** Adds the straight segment back to the start, unless the path is there already. */
    public PathBuilder close() {
        return pen.equals(start) ? this : lineTo(start);
    }

    /**
     * Returns the path.
     *
     * @throws IllegalArgumentException if nothing was drawn
     */
    public Path build() {
        return Path.of(curves);
    }

    private PathBuilder add(Curve curve) {
        curves.add(curve);
        pen = curve.end();
        return this;
    }
}
