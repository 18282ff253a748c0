package org.oaktag.adjust;

import java.util.Objects;
import java.util.Optional;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Name;

/**
 * What one part of a split piece is to be called and cut from. Immutable.
 *
 * <pre>{@code
 * Part yoke = Part.of(Name.of("yoke"), Name.of("yoke seam")).in(contrast);
 * }</pre>
 *
 * @param piece the name of the part
 * @param edge the name of its new edge along the line
 * @param cloth what it is cut from, or empty for the cloth of the whole
 */
public record Part(Name piece, Name edge, Optional<Cloth> cloth) {
    /** Refuses null. */
    public Part {
        Objects.requireNonNull(piece, "piece");
        Objects.requireNonNull(edge, "edge");
        Objects.requireNonNull(cloth, "cloth");
    }

    /** Returns a part cut from the cloth of the whole. */
    public static Part of(Name piece, Name edge) {
        return new Part(piece, edge, Optional.empty());
    }

    /** Returns the part cut from another cloth. */
    public Part in(Cloth other) {
        return new Part(piece, edge, Optional.of(other));
    }
}
