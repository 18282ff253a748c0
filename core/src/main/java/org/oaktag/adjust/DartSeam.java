package org.oaktag.adjust;

import org.oaktag.garment.Name;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamRule;
import org.oaktag.garment.SeamSide;

/** The seam that joins the legs of a dart. */
final class DartSeam {

    private DartSeam() {}

    static Name name(Name piece, Name dart) {
        return piece.with(dart.value());
    }

    static Seam of(Name piece, Name dart) {
        return Seam.of(
                name(piece, dart),
                SeamSide.along(piece, Dart.legA(dart)),
                SeamSide.against(piece, Dart.legB(dart)),
                SeamRule.flat(),
                "open the " + dart + " of the " + piece + " anew");
    }
}
