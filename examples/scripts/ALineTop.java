import static org.oaktag.adjustments.Bodies.*;
import static org.oaktag.adjustments.Finishes.*;
import static org.oaktag.adjustments.Necklines.*;
import static org.oaktag.adjustments.Sleeves.*;
import static org.oaktag.measure.Length.*;
import static org.oaktag.measure.Percent.*;

import java.nio.file.*;
import org.oaktag.blocks.*;
import org.oaktag.body.*;
import org.oaktag.export.svg.*;
import org.oaktag.garment.*;

/** Haldis keeps her keys and pencils in the pockets of a long A-line. */
class ALineTop {
    public static void main(String[] args) throws Exception {
        var haldis = BodyMeasurements.builder().name("Haldis").figure(Figure.WOMAN)
                .bustGirth(cm(112)).hipGirth(cm(118)).upperArmGirth(cm(36)).height(cm(157)).build();
        var ponte = Cloth.knit("double knit", percent(25));

        Garment top = KnitTop.draft(haldis, TopEase.standard(), ponte).titled("A-line long top")
                .adjust(widenNeckline(cm(3)))
                .adjust(lowerFrontNeckline(cm(4)))
                .adjust(lengthenBody(cm(26)))
                .adjust(flareSideSeams(cm(6)))
                .adjust(fitCapToArmhole(mm(5)))
                .adjust(bellSleeve(cm(50)))
                .adjust(patchPocket(cm(14), cm(16), cm(7), cm(48)))
                .adjust(faceNeckline(cm(5), ponte));

        Path folder = Files.createDirectories(Path.of("a-line-top"));
        SvgSheet.pattern(top, KnitTop.allowances(top)).writeTo(folder.resolve("pattern.svg"));
        SvgSheet.flat(top).writeTo(folder.resolve("flat.svg"));
        System.out.print(top.walkSeams().text());
    }
}
