package org.oaktag.export.drawing;

import java.util.Optional;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;

/**
 * A drawn line. Immutable.
 *
 * <pre>{@code
 * Stroke seam = Stroke.edge(LineType.SEAM, hem.path(), "front.hem");
 * }</pre>
 *
 * @param type its type, which says what it means
 * @param path where it runs
 * @param edge the identifier of the edge that it draws, whose length is then written beside it; empty for any other
 *     line
 */
public record Stroke(LineType type, Path path, Optional<String> edge) implements Ink {

    /** Returns a line that is no edge. */
    public static Stroke of(LineType type, Path path) {
        return new Stroke(type, path, Optional.empty());
    }

    /** Returns the line of an edge. */
    public static Stroke edge(LineType type, Path path, String id) {
        return new Stroke(type, path, Optional.of(id));
    }

    /** Returns a straight line that is no edge. */
    public static Stroke line(LineType type, Point from, Point to) {
        return of(type, Path.polyline(from, to));
    }

    @Override
    public Bounds bounds() {
        return path.bounds().expanded(type.width() / 2);
    }
}
