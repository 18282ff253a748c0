import static org.oaktag.adjustments.Bodies.*;
import static org.oaktag.adjustments.Finishes.*;
import static org.oaktag.adjustments.Hoods.*;
import static org.oaktag.adjustments.Necklines.*;
import static org.oaktag.adjustments.Sleeves.*;
import static org.oaktag.measure.Length.*;
import static org.oaktag.measure.Percent.*;

import java.nio.file.*;
import org.oaktag.blocks.*;
import org.oaktag.body.*;
import org.oaktag.export.svg.*;
import org.oaktag.garment.*;

/** A light hood of two pieces for Bram, who is on duty when the wind gets up. */
class TwoPieceHood {
    public static void main(String[] args) throws Exception {
        var bram = BodyMeasurements.builder().name("Bram").figure(Figure.MAN)
                .bustGirth(cm(92.5)).waistGirth(cm(77)).headGirth(cm(57)).height(cm(196)).build();
        var fleece = Cloth.knit("light fleece", percent(35));
        var jersey = Cloth.knit("single jersey", percent(40)).as(Cloth.LINING);

        Garment hooded = KnitTop.draft(bram, TopEase.standard(), fleece).titled("Two-piece hood")
                .adjust(widenNeckline(cm(2.5)))
                .adjust(lowerFrontNeckline(cm(2.5)))
                .adjust(straightenSideSeams())
                .adjust(fitCapToArmhole(mm(6)))
                .adjust(frontPouch(cm(32), cm(19)).raisedBy(cm(2)))
                .adjust(hood(HoodShape.twoPiece()).lapped(cm(4)))
                .adjust(lineHood(cm(4), jersey));

        Path folder = Files.createDirectories(Path.of("two-piece-hood"));
        SvgSheet.pattern(hooded, KnitTop.allowances(hooded)).writeTo(folder.resolve("pattern.svg"));
        SvgSheet.flat(hooded).writeTo(folder.resolve("flat.svg"));
        System.out.print(hooded.walkSeams().text());
    }
}
