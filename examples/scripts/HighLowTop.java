import static org.oaktag.adjustments.Bodies.*;
import static org.oaktag.adjustments.Finishes.*;
import static org.oaktag.adjustments.Necklines.*;
import static org.oaktag.adjustments.Sleeves.*;
import static org.oaktag.measure.Length.*;
import static org.oaktag.measure.Percent.*;

import java.nio.file.*;
import org.oaktag.adjust.*;
import org.oaktag.block.*;
import org.oaktag.blocks.*;
import org.oaktag.body.*;
import org.oaktag.export.svg.*;
import org.oaktag.garment.*;

/** A hem that covers the back of whoever bends over the eyepiece, drawn step by step. */
class HighLowTop {
    public static void main(String[] args) throws Exception {
        var juno = BodyMeasurements.builder().name("Juno").figure(Figure.WOMAN)
                .bustGirth(cm(94)).hipGirth(cm(101.5)).height(cm(165)).build();
        var style = new Style(KnitTop.BLOCK, TopEase.standard(), Cloth.knit("slub jersey", percent(30)),
                Recipe.of("High-low top",
                        widenNeckline(cm(3)), lowerFrontNeckline(cm(3)),
                        straightenSideSeams(),
                        fitCapToArmhole(mm(5)),
                        lengthenBody(cm(6)), highLowHem(cm(4), cm(7)),
                        shortSleeve(),
                        ribNeckband(mm(18), Cloth.rib("1 x 1 rib", percent(80)))));

        var steps = style.play(juno);
        Garment top = steps.get(steps.size() - 1).after();
        Path folder = Files.createDirectories(Path.of("high-low-top"));
        SvgSheet.pattern(top, KnitTop.allowances(top)).writeTo(folder.resolve("pattern.svg"));
        SvgSheet.flat(top).writeTo(folder.resolve("flat.svg"));
        for (int i = 0; i < steps.size(); i++) {
            SvgSheet.step(i + 1, steps.get(i)).writeTo(folder.resolve("step-" + (i + 1) + ".svg"));
        }
        System.out.print(top.walkSeams().text());
    }
}
