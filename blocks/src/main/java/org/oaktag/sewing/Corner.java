package org.oaktag.sewing;

import org.oaktag.garment.Edge;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;

/**
 * A corner of a piece, named by the edge that starts there.
 *
 * @param piece the piece
 * @param edge the edge that starts at the corner
 */
record Corner(Name piece, Name edge) {

    /** Returns the corner at which a run of a seam begins or ends. */
    static Corner of(Garment garment, SeamSide.Run run, End end) {
        Piece piece = garment.piece(run.edge().piece());
        Name edge = run.edge().edge();
        Edge starting = run.cornerAt(end) == End.START ? piece.edge(edge) : piece.after(edge);
        return new Corner(piece.name(), starting.name());
    }

    static Corner ofA(Garment garment, Seam seam, End end) {
        return of(garment, seam.a().runAt(end), end);
    }

    static Corner ofB(Garment garment, Seam seam, End end) {
        return of(garment, seam.b().runAt(end), end);
    }
}
