import static org.oaktag.adjustments.Bodies.*;
import static org.oaktag.adjustments.Finishes.*;
import static org.oaktag.adjustments.Necklines.*;
import static org.oaktag.adjustments.Sleeves.*;
import static org.oaktag.body.EaseCategory.*;
import static org.oaktag.measure.Length.*;
import static org.oaktag.measure.Percent.*;

import java.nio.file.*;
import org.oaktag.blocks.*;
import org.oaktag.body.*;
import org.oaktag.export.pdf.*;
import org.oaktag.export.sheet.*;
import org.oaktag.export.svg.*;
import org.oaktag.garment.*;

/** The tee that Juno wears under everything else: close, short sleeved, its neck bound with rib. */
class Tee {
    public static void main(String[] args) throws Exception {
        var juno = BodyMeasurements.builder().name("Juno").figure(Figure.WOMAN)
                .bustGirth(cm(94)).hipGirth(cm(101.5)).height(cm(165)).build();
        var jersey = Cloth.knit("single jersey, night blue", percent(40));

        Garment tee = KnitTop.draft(juno, TopEase.of(CLOSE), jersey).titled("Tee")
                .adjust(straightenSideSeams())
                .adjust(fitCapToArmhole(mm(5)))
                .adjust(widenNeckline(mm(15)))
                .adjust(lowerFrontNeckline(mm(20)))
                .adjust(shortSleeve())
                .adjust(insetNecklineForBand(mm(20)))
                .adjust(ribNeckband(mm(20), Cloth.rib("1 x 1 rib", percent(80))));

        Path folder = Files.createDirectories(Path.of("tee"));
        SvgSheet.pattern(tee, KnitTop.allowances(tee)).writeTo(folder.resolve("pattern.svg"));
        SvgSheet.flat(tee).writeTo(folder.resolve("flat.svg"));
        Printout sheets = Printout.tiled(tee, KnitTop.allowances(tee), Tiling.on(Paper.A4));
        PdfPages.of(sheets).writeTo(folder.resolve("pattern-a4.pdf"));
        System.out.print(tee.walkSeams().text());
    }
}
