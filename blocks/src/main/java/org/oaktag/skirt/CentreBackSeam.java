package org.oaktag.skirt;

import java.util.List;
import org.oaktag.PatternException;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cut;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;

/**
 * Cuts the back as a mirrored pair with a seam at its centre, as a zip or a vent there asks for.
 *
 * <pre>{@code
 * Garment seamed = skirt.adjust(centreBackSeam());
 * seamed.piece(SkirtNames.BACK).cut().instruction();   // = cut 1 pair (mirrored)
 * }</pre>
 */
record CentreBackSeam() implements Step {

    @Override
    public String name() {
        return "seam the centre back";
    }

    @Override
    public List<Amount> amounts() {
        return List.of();
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if the back is not cut on the fold of its centre
     */
    @Override
    public Reshaped reshape(Garment garment) {
        Piece back = Shell.of(garment, SkirtNames.BACK);
        if (!back.isOnFold(EdgeNames.CENTRE)) {
            throw PatternException.of(
                    "centre back seam",
                    "needs a back cut on the fold of its centre",
                    back.cut().instruction(),
                    "leave this step out");
        }
        SeamSide centre = SeamSide.along(SkirtNames.BACK, EdgeNames.CENTRE);
        Garment seamed = Finishing.of(garment)
                .put(back.withCut(Cut.pair()))
                .sew(Seam.flat(SkirtFinishNames.CENTRE_BACK_SEAM, centre, centre, "redraw the centre back"))
                .done();
        return Reshaped.of(
                seamed,
                Note.rule("the back is cut twice, mirrored, and sewn along its centre, "
                        + back.edge(EdgeNames.CENTRE).length().text() + " long, instead of once on the fold"));
    }
}
