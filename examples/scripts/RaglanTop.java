import static org.oaktag.adjust.Pieces.*;
import static org.oaktag.adjustments.Bodies.*;
import static org.oaktag.adjustments.Finishes.*;
import static org.oaktag.adjustments.Necklines.*;
import static org.oaktag.adjustments.Sleeves.*;
import static org.oaktag.blocks.TopNames.*;
import static org.oaktag.measure.Length.*;
import static org.oaktag.measure.Percent.*;

import java.nio.file.*;
import org.oaktag.blocks.*;
import org.oaktag.body.*;
import org.oaktag.export.svg.*;
import org.oaktag.garment.*;

/** Oskar hauls on the shutter ropes, in a raglan with sleeves of another colour and a rib at the neck. */
class RaglanTop {
    public static void main(String[] args) throws Exception {
        var oskar = BodyMeasurements.builder().name("Oskar").figure(Figure.MAN)
                .bustGirth(cm(104)).waistGirth(cm(92)).neckBaseGirth(cm(43)).height(cm(177)).build();
        var jersey = Cloth.knit("heavy jersey, night blue", percent(35));
        var amber = Cloth.knit("heavy jersey, amber", percent(35)).as(Cloth.CONTRAST);
        var rib = Cloth.rib("2 x 2 rib", percent(90));

        Garment raglan = KnitTop.draft(oskar, TopEase.standard(), jersey).titled("Raglan top")
                .adjust(widenNeckline(cm(2.5))).adjust(lowerFrontNeckline(cm(2.5)))
                .adjust(straightenSideSeams())
                .adjust(taperSleeve(cm(24)))
                .adjust(fitCapToArmhole(mm(4)))
                .adjust(raglanSleeve(mm(35), mm(25)))
                .adjust(cutFrom(SLEEVE_FRONT, amber))
                .adjust(cutFrom(SLEEVE_BACK, amber))
                .adjust(ribNeckband(mm(25), rib));

        Path folder = Files.createDirectories(Path.of("raglan-top"));
        SvgSheet.pattern(raglan, KnitTop.allowances(raglan)).writeTo(folder.resolve("pattern.svg"));
        SvgSheet.flat(raglan).writeTo(folder.resolve("flat.svg"));
        System.out.print(raglan.walkSeams().text());
    }
}
