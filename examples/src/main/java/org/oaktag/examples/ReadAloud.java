package org.oaktag.examples;

import static org.oaktag.adjustments.Armholes.lowerArmhole;
import static org.oaktag.adjustments.Bands.hemBand;
import static org.oaktag.adjustments.Bodies.straightenSideSeams;
import static org.oaktag.adjustments.Hoods.hood;
import static org.oaktag.adjustments.Necklines.lowerFrontNeckline;
import static org.oaktag.adjustments.Necklines.widenNeckline;
import static org.oaktag.adjustments.Shoulders.dropShoulder;
import static org.oaktag.adjustments.Sleeves.fitCapToArmhole;
import static org.oaktag.adjustments.Sleeves.straightenSleeve;
import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Length.inches;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.measure.Percent.percent;

import java.io.PrintStream;
import org.oaktag.blocks.HoodShape;
import org.oaktag.blocks.KnitTop;
import org.oaktag.blocks.TopEase;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Garment;
import org.oaktag.garment.WalkedSeam;

/** The only purpose of this file is to be read aloud: if a line of it does not read as a sentence, a name is wrong. */
public final class ReadAloud {

    private ReadAloud() {}

    /**
     * Makes a top and says what became of its seams.
     *
     * @param out where it is said
     */
    public static Garment hoodedTop(PrintStream out) {
        BodyMeasurements body = BodyMeasurements.builder()
                .name("Juno")
                .figure(Figure.WOMAN)
                .bustGirth(cm(94))
                .neckBaseGirth(cm(37.2))
                .shoulderLength(inches(5.375))
                .height(cm(165))
                .build();

        Garment block = KnitTop.draft(body, TopEase.standard(), Cloth.knit("brushed fleece", percent(45)));

        Garment top = block.adjust(widenNeckline(mm(22)))
                .adjust(lowerFrontNeckline(mm(30)))
                .adjust(dropShoulder(mm(25)))
                .adjust(lowerArmhole(mm(12)))
                .adjust(straightenSideSeams())
                .adjust(fitCapToArmhole(mm(6)))
                .adjust(straightenSleeve(cm(23.2)))
                .adjust(hemBand(cm(6), cm(3)))
                .adjust(hood(HoodShape.threePanel()).lapped(cm(5)));

        out.println("chest " + top.finished(TopNames.CHEST_GIRTH).text());
        for (WalkedSeam seam : top.walkSeams().seams()) {
            out.println(seam.seam().name()
                    + (seam.isTrue() ? " is true" : ": " + seam.mend().orElseThrow()));
        }
        return top;
    }

    /** Says it on the terminal. */
    public static void main(String[] args) {
        hoodedTop(System.out);
    }
}
