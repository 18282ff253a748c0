import static org.oaktag.adjust.Pieces.*;
import static org.oaktag.adjustments.Bands.*;
import static org.oaktag.adjustments.Bodies.*;
import static org.oaktag.adjustments.Necklines.*;
import static org.oaktag.adjustments.Sleeves.*;
import static org.oaktag.measure.Length.*;
import static org.oaktag.measure.Percent.*;

import java.nio.file.*;
import org.oaktag.blocks.*;
import org.oaktag.body.*;
import org.oaktag.export.svg.*;
import org.oaktag.garment.*;

/** A funnel neck for Soren, who will not wear a scarf near the gears. */
class FunnelNeck {
    public static void main(String[] args) throws Exception {
        var soren = BodyMeasurements.builder().name("Soren").figure(Figure.MAN)
                .bustGirth(cm(116)).waistGirth(cm(90)).hipGirth(cm(102)).neckBaseGirth(cm(46.2)).height(cm(166)).build();
        var fleece = Cloth.knit("brushed fleece", percent(45));
        var rib = Cloth.rib("2 x 2 rib", percent(90));

        Garment funnel = KnitTop.draft(soren, TopEase.standard(), fleece).titled("Funnel neck")
                .adjust(straightenSideSeams())
                .adjust(fitCapToArmhole(mm(5)))
                .adjust(widenNeckline(cm(6)))
                .adjust(lowerFrontNeckline(cm(2)))
                .adjust(growStand(cm(8)))
                .adjust(turnBack(
                        EdgeRef.of(TopNames.FRONT, TopEdges.NECKLINE), EdgeRef.of(TopNames.BACK, TopEdges.NECKLINE)))
                .adjust(ribCuff(cm(7), rib));

        Path folder = Files.createDirectories(Path.of("funnel-neck"));
        SvgSheet.pattern(funnel, KnitTop.allowances(funnel)).writeTo(folder.resolve("pattern.svg"));
        SvgSheet.flat(funnel).writeTo(folder.resolve("flat.svg"));
        System.out.print(funnel.walkSeams().text());
    }
}
