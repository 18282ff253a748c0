package org.oaktag.skirt;

import java.util.List;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;

/** Interfacing of the very shape of a piece, laid on it all the way round. */
final class Interfacing {

    private static final Cloth FUSIBLE = Cloth.woven("fusible interfacing").as(Cloth.INTERFACING);

    private Interfacing() {}

    static Name name(Name piece) {
        return piece.with("interfacing");
    }

    /** Puts the interfacing of a piece on. */
    static Finishing of(Finishing finishing, Piece piece) {
        Name own = name(piece.name());
        return finishing
                .put(piece.renamed(own).withCloth(FUSIBLE).withLines(List.of()).withMarks(List.of()))
                .sew(Seam.flat(own, round(piece, piece.name()), round(piece, own), "interface it again"));
    }

    private static SeamSide round(Piece shell, Name of) {
        SeamSide side = SeamSide.along(of, shell.edges().get(0).name());
        for (Edge edge : shell.edges().subList(1, shell.edges().size())) {
            side = side.then(SeamSide.along(of, edge.name()));
        }
        return side;
    }
}
