package org.oaktag.garment;

import java.util.Objects;
import org.oaktag.geometry.Path;

/**
 * A line drawn inside a piece that is not part of its outline. Immutable.
 *
 * <pre>{@code
 * InnerLine quilting = new InnerLine(
 *         Name.of("quilting"), InnerLine.Use.PLACEMENT, Path.polyline(Point.of(20, 300), Point.of(180, 300)));
 * Piece quilted = front.withLines(List.of(quilting));
 * }</pre>
 *
 * @param name what it is, such as {@code "hood fold"}
 * @param use what the maker does there
 * @param path where it runs, in the piece's own millimetres
 */
public record InnerLine(Name name, Use use, Path path) {
    /** Refuses null. */
    public InnerLine {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(use, "use");
        Objects.requireNonNull(path, "path");
    }

    /** What the maker does at an inner line. */
    public enum Use {
        /** The cloth is folded here. */
        FOLD,
        /** The piece may be parted here. */
        STYLE,
        /** Something is laid on here. */
        PLACEMENT
    }
}
