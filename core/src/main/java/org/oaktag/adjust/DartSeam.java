package org.oaktag.adjust;

import org.oaktag.garment.Dart;
import org.oaktag.garment.Name;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;

/** The seam that joins the legs of a dart. */
final class DartSeam {

    private DartSeam() {}

    static Name name(Name piece, Name dart) {
        return piece.with(dart.value());
    }

    static Seam of(Name piece, Name dart) {
        return Seam.flat(
                name(piece, dart),
                SeamSide.along(piece, Dart.legA(dart)),
                SeamSide.against(piece, Dart.legB(dart)),
                "open the " + dart + " of the " + piece + " anew");
    }
}
