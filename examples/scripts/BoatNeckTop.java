import static org.oaktag.adjustments.Armholes.*;
import static org.oaktag.adjustments.Bodies.*;
import static org.oaktag.adjustments.Finishes.*;
import static org.oaktag.adjustments.Necklines.*;
import static org.oaktag.adjustments.Shoulders.*;
import static org.oaktag.adjustments.Sleeves.*;
import static org.oaktag.measure.Length.*;
import static org.oaktag.measure.Percent.*;

import java.nio.file.*;
import org.oaktag.blocks.*;
import org.oaktag.body.*;
import org.oaktag.export.svg.*;
import org.oaktag.garment.*;

/** Mira reads charts by red light, in a boat neck with dropped shoulders, faced in its own cloth. */
class BoatNeckTop {
    public static void main(String[] args) throws Exception {
        var mira = BodyMeasurements.builder().name("Mira").figure(Figure.WOMAN)
                .bustGirth(cm(86.5)).hipGirth(cm(94)).shoulderLength(inches(5.25)).height(cm(178)).build();
        var interlock = Cloth.knit("interlock", percent(30));

        Garment top = KnitTop.draft(mira, TopEase.standard(), interlock).titled("Boat-neck top")
                .adjust(boatNeckline(cm(6), cm(4)))
                .adjust(dropShoulder(cm(2)))
                .adjust(lowerArmhole(cm(1.5)).withSleeve())
                .adjust(straightenSideSeams())
                .adjust(fitCapToArmhole(mm(5)))
                .adjust(straightenSleeve())
                .adjust(faceNeckline(cm(4), interlock));

        Path folder = Files.createDirectories(Path.of("boat-neck-top"));
        SvgSheet.pattern(top, KnitTop.allowances(top)).writeTo(folder.resolve("pattern.svg"));
        SvgSheet.flat(top).writeTo(folder.resolve("flat.svg"));
        System.out.print(top.walkSeams().text());
    }
}
