package org.oaktag.garment;

import java.util.Objects;
import org.oaktag.measure.Length;

/**
 * An edge that would be left as it is cut without anybody having said so. Immutable.
 *
 * <pre>{@code
 * RawEdge neckline = block.rawEdges().get(0);
 * neckline.edge();   // = front.neckline
 * neckline.mend();   // what would finish it
 * }</pre>
 *
 * @param edge which edge of which piece
 * @param length how long it is
 */
public record RawEdge(EdgeRef edge, Length length) {

    /** Refuses null. */
    public RawEdge {
        Objects.requireNonNull(edge, "edge");
        Objects.requireNonNull(length, "length");
    }

    /** Returns what would finish it, as a maker reads it. */
    public String mend() {
        return "sew a band or a facing to it, turn it back, or leave it raw on purpose";
    }

    /** Returns it with its length and what would finish it on one line. */
    public String text() {
        return edge.id() + " is raw, " + length.text() + ": " + mend();
    }
}
