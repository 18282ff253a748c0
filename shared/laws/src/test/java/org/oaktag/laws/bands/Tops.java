package org.oaktag.laws.bands;

import static org.oaktag.adjustments.Bands.hemBand;
import static org.oaktag.adjustments.Bands.ribCuff;
import static org.oaktag.adjustments.Hoods.hood;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.measure.Percent.percent;

import org.oaktag.adjustments.FitHood;
import org.oaktag.adjustments.HemBand;
import org.oaktag.adjustments.RibCuff;
import org.oaktag.blocks.HoodShape;
import org.oaktag.blocks.KnitTop;
import org.oaktag.blocks.TopEase;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;

/** The tops, cloths and steps with which the laws of fitted parts are tried. */
final class Tops {

    /** How far two lengths may lie apart that are equal by construction, in millimetres. */
    static final double EXACT = 1e-6;

    static final Cloth SHELL = Cloth.knit("brushed knit", percent(35));
    static final Cloth JERSEY = Cloth.knit("jersey", percent(40));
    static final Cloth RIB = Cloth.rib("two by two rib", percent(80));

    static final FitHood HOOD = hood(HoodShape.threePanel()).lapped(mm(50));
    static final HemBand HEM_BAND = hemBand(mm(60), mm(30));
    static final RibCuff CUFF = ribCuff(mm(70), RIB);

    private Tops() {}

    static Garment block(BodyMeasurements body) {
        return KnitTop.draft(body, TopEase.standard(), SHELL);
    }

    static double length(Garment garment, Name piece, Name edge) {
        return garment.edge(EdgeRef.of(piece, edge)).length().mm();
    }

    /** Half the neckline, or half the hem: an edge of front and back together. */
    static double half(Garment garment, Name edge) {
        return length(garment, TopNames.FRONT, edge) + length(garment, TopNames.BACK, edge);
    }
}
