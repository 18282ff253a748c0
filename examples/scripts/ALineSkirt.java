import static org.oaktag.skirt.SkirtFinishes.*;
import static org.oaktag.skirt.SkirtShapes.*;
import static org.oaktag.measure.Length.*;

import java.nio.file.*;
import org.oaktag.adjust.*;
import org.oaktag.block.*;
import org.oaktag.body.*;
import org.oaktag.export.svg.*;
import org.oaktag.garment.*;
import org.oaktag.skirt.*;

/** An A-line skirt for Ines, half of each dart closed into the hem, drawn step by step. */
class ALineSkirt {
    public static void main(String[] args) throws Exception {
        var ines = BodyMeasurements.builder().name("Ines").figure(Figure.WOMAN)
                .waistGirth(cm(74)).hipGirth(cm(112)).waistToHip(cm(21.5)).height(cm(160.5)).build();

        var style = new Style(StraightSkirt.BLOCK, SkirtEase.standard(), Cloth.woven("loden, pine"),
                Recipe.of("A-line skirt", aLine(0.5), skirtLength(cm(62)),
                        zip(cm(22), SkirtOpening.LEFT_SIDE), straightWaistband(mm(35))));

        Path folder = Files.createDirectories(Path.of("a-line-skirt"));
        var played = style.play(ines);
        for (int i = 0; i < played.size(); i++) {
            SvgSheet.step(i + 1, played.get(i)).writeTo(folder.resolve("step-" + (i + 1) + ".svg"));
        }
        Garment skirt = style.on(ines);
        SvgSheet.pattern(skirt, style.block().allowances(skirt)).writeTo(folder.resolve("pattern.svg"));
        SvgSheet.flat(skirt).writeTo(folder.resolve("flat.svg"));
        System.out.print(skirt.walkSeams().text());
    }
}
