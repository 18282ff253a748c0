package org.oaktag.export.sheet;

import java.util.Objects;
import org.oaktag.garment.Name;

/**
 * Something that should stand on a piece and for which there is no room there. Immutable.
 *
 * <pre>{@code
 * Printout atHome = Printout.tiled(top, KnitTop.allowances(top), Tiling.on(Paper.A4));
 * for (LeftOut missing : atHome.leftOut()) {
 *     String line = "write on the " + missing.piece() + " by hand: " + missing.label();
 * }
 * }</pre>
 *
 * @param piece the piece
 * @param label what should be there, such as {@code "side 12.0 mm"} or {@code "up"}
 */
public record LeftOut(Name piece, String label) {
    /** Refuses null. */
    public LeftOut {
        Objects.requireNonNull(piece, "piece");
        Objects.requireNonNull(label, "label");
    }
}
