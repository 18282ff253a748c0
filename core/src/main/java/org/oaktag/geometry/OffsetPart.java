package org.oaktag.geometry;

import java.util.Objects;

/**
 * A part of an offset outline and where it comes from.
 *
 * <pre>{@code
 * OutlineOffset cutLine = OutlineOffset.outward(front.outline(), 10, CornerStyle.mitre(4), 0.01);
 * for (OffsetPart part : cutLine.parts()) {
 *     String drawn = part.corner() ? "corner after edge " + part.edge() : "beside edge " + part.edge();
 * }
 * }</pre>
 *
 * @param path the part, in the sense of the outline
 * @param edge index of the source edge that it runs beside, or after which its corner comes
 * @param corner true if it joins the parallels of this edge and the next round their corner
 */
public record OffsetPart(Path path, int edge, boolean corner) {
    /** Refuses null. */
    public OffsetPart {
        Objects.requireNonNull(path, "path");
    }

    /** Returns the same part along another path, as when it is cut off. */
    public OffsetPart along(Path other) {
        return new OffsetPart(other, edge, corner);
    }
}
