package org.oaktag.garment;

import java.util.List;
import org.oaktag.geometry.Path;

/** INTERIM. */
public record CutLine(List<Path> runs) {
    public static CutLine of(Piece piece, Allowances allowances) {
        return new CutLine(List.of(piece.outline().path()));
    }
}
