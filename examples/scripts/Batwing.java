import static org.oaktag.adjust.Pieces.*;
import static org.oaktag.adjustments.Bodies.*;
import static org.oaktag.adjustments.Necklines.*;
import static org.oaktag.adjustments.Sleeves.*;
import static org.oaktag.body.EaseCategory.*;
import static org.oaktag.measure.Length.*;
import static org.oaktag.measure.Percent.*;

import java.nio.file.*;
import org.oaktag.blocks.*;
import org.oaktag.body.*;
import org.oaktag.export.svg.*;
import org.oaktag.garment.*;

/** Ines, who sits at the console with folded arms: a batwing in something that drapes. */
class Batwing {
    public static void main(String[] args) throws Exception {
        var ines = BodyMeasurements.builder().name("Ines").figure(Figure.WOMAN)
                .bustGirth(cm(89)).hipGirth(cm(112)).height(cm(160.5)).build();
        // A cloth that is named by another part than the shell is drawn in another colour.
        var drape = Cloth.knit("viscose jersey, rust", percent(50)).as(Name.of("main"));

        Garment batwing = KnitTop.draft(ines, TopEase.of(LOOSE), drape).titled("Batwing")
                .adjust(widenNeckline(cm(2.5)))
                .adjust(lowerFrontNeckline(cm(3)))
                .adjust(lengthenBody(cm(8)))
                .adjust(batwingSleeve(cm(20)))
                .adjust(turnBack(
                        EdgeRef.of(TopNames.FRONT, TopEdges.NECKLINE), EdgeRef.of(TopNames.BACK, TopEdges.NECKLINE)));

        Path folder = Files.createDirectories(Path.of("batwing"));
        SvgSheet.pattern(batwing, KnitTop.allowances(batwing)).writeTo(folder.resolve("pattern.svg"));
        SvgSheet.flat(batwing).writeTo(folder.resolve("flat.svg"));
        System.out.print(batwing.walkSeams().text());
    }
}
