import static org.oaktag.adjustments.Bands.*;
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

/** Teodor in three cloths, so that the crew find him in the dark: blocks across body and sleeves. */
class ColourBlock {
    public static void main(String[] args) throws Exception {
        var teodor = BodyMeasurements.builder().name("Teodor").figure(Figure.MAN)
                .bustGirth(cm(128)).waistGirth(cm(126)).hipGirth(cm(121)).height(cm(175.5)).build();
        var night = Cloth.knit("fleece, night blue", percent(30));
        var amber = Cloth.knit("fleece, amber", percent(30)).as(Cloth.CONTRAST);
        var rib = Cloth.rib("2 x 2 rib", percent(90));

        Garment shirt = KnitTop.draft(teodor, TopEase.standard(), night).titled("Colour-block sweatshirt")
                .adjust(widenNeckline(mm(30)))
                .adjust(lowerFrontNeckline(mm(30)))
                .adjust(straightenSideSeams())
                .adjust(fitCapToArmhole(mm(6)))
                .adjust(taperSleeve(cm(26)))
                .adjust(splitBody(cm(24), amber))
                .adjust(ribCuff(cm(6), rib))
                .adjust(splitSleeve(cm(12), amber))
                .adjust(ribNeckband(mm(22), rib));

        Path folder = Files.createDirectories(Path.of("colour-block"));
        SvgSheet.pattern(shirt, KnitTop.allowances(shirt)).writeTo(folder.resolve("pattern.svg"));
        SvgSheet.flat(shirt).writeTo(folder.resolve("flat.svg"));
        System.out.print(shirt.walkSeams().text());
    }
}
