package org.oaktag.adjustments;

import static org.oaktag.measure.Length.mm;
import static org.oaktag.measure.Percent.percent;

import org.oaktag.blocks.KnitTop;
import org.oaktag.blocks.TopEase;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Opening;
import org.oaktag.garment.Passage;

/** A top of an invented night observer, round numbers all, to try single adjustments on. */
final class Tops {

    static final Cloth RIB = Cloth.rib("two by two rib", percent(80));
    static final Cloth JERSEY = Cloth.knit("jersey", percent(40));

    private Tops() {}

    static Garment observersTop() {
        return KnitTop.draft(observer(), TopEase.standard(), Cloth.knit("brushed knit", percent(35)));
    }

    static BodyMeasurements observer() {
        return BodyMeasurements.builder()
                .name("Ilse")
                .figure(Figure.WOMAN)
                .bustGirth(mm(940))
                .height(mm(1650))
                .neckBaseGirth(mm(370))
                .headGirth(mm(560))
                .wristGirth(mm(155))
                .handGirthWithThumb(mm(225))
                .build();
    }

    /** The numbers of an opening of a garment that it asks about. */
    static Passage passage(Garment garment, Name check) {
        return garment.checks().stream()
                .filter(each -> each.name().equals(check))
                .map(Opening.class::cast)
                .findFirst()
                .orElseThrow()
                .measured(garment)
                .orElseThrow();
    }
}
