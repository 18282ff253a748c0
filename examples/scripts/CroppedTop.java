import static org.oaktag.adjustments.Armholes.*;
import static org.oaktag.adjustments.Bodies.*;
import static org.oaktag.adjustments.Finishes.*;
import static org.oaktag.adjustments.Necklines.*;
import static org.oaktag.adjustments.Shoulders.*;
import static org.oaktag.adjustments.Sleeves.*;
import static org.oaktag.body.EaseCategory.*;
import static org.oaktag.measure.Length.*;
import static org.oaktag.measure.Percent.*;

import java.nio.file.*;
import org.oaktag.blocks.*;
import org.oaktag.body.*;
import org.oaktag.export.svg.*;
import org.oaktag.garment.*;

/** A cropped box for Mira to pull over a dress when the dome is opened. */
class CroppedTop {
    public static void main(String[] args) throws Exception {
        var mira = BodyMeasurements.builder().name("Mira").figure(Figure.WOMAN)
                .bustGirth(cm(86.5)).hipGirth(cm(94)).shoulderLength(inches(5.25)).height(cm(178)).build();
        var terry = Cloth.knit("loop terry, rust", percent(25)).as(Name.of("main"));
        var rib = Cloth.rib("1 x 1 rib", percent(80));

        Garment box = KnitTop.draft(mira, TopEase.of(LOOSE), terry).titled("Cropped boxy top")
                .adjust(widenNeckline(cm(3))).adjust(lowerFrontNeckline(cm(4)))
                .adjust(dropShoulder(cm(2)))
                .adjust(lowerArmhole(cm(2)).withSleeve())
                .adjust(squareSideSeams())
                .adjust(shortenBody(cm(16)))
                .adjust(fitCapToArmhole(mm(5)))
                .adjust(threeQuarterSleeve())
                .adjust(ribNeckband(mm(20), rib));

        Path folder = Files.createDirectories(Path.of("cropped-top"));
        SvgSheet.pattern(box, KnitTop.allowances(box)).writeTo(folder.resolve("pattern.svg"));
        SvgSheet.flat(box).writeTo(folder.resolve("flat.svg"));
        System.out.print(box.walkSeams().text());
    }
}
