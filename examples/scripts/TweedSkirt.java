import static org.oaktag.measure.Length.*;
import static org.oaktag.skirt.SkirtFinishes.*;
import static org.oaktag.skirt.SkirtShapes.*;

import java.nio.file.*;
import org.oaktag.body.*;
import org.oaktag.export.pdf.*;
import org.oaktag.export.sheet.*;
import org.oaktag.export.svg.*;
import org.oaktag.garment.*;
import org.oaktag.skirt.*;

/** The straight skirt that Juno wears at the gate, a little pegged, lined, with a zip and a vent. */
class TweedSkirt {
    public static void main(String[] args) throws Exception {
        var juno = BodyMeasurements.builder().name("Juno").figure(Figure.WOMAN)
                .waistGirth(cm(76)).hipGirth(cm(101.5)).waistToHip(cm(22)).height(cm(165)).build();
        var tweed = Cloth.woven("tweed, moss");

        Garment skirt = StraightSkirt.BLOCK.draft(juno, SkirtEase.standard(), tweed).titled("Tweed skirt")
                .adjust(skirtLength(cm(62)))
                .adjust(pegSides(mm(6)))
                .adjust(centreBackSeam())
                .adjust(zip(cm(18), SkirtOpening.CENTRE_BACK))
                .adjust(vent(mm(45)))
                .adjust(straightWaistband(mm(35)))
                .adjust(lineSkirt(Cloth.woven("viscose twill, rust").as(Cloth.LINING)));

        Path folder = Files.createDirectories(Path.of("tweed-skirt"));
        Allowances allowances = StraightSkirt.BLOCK.allowances(skirt);
        SvgSheet.pattern(skirt, allowances).writeTo(folder.resolve("pattern.svg"));
        SvgSheet.flat(skirt).writeTo(folder.resolve("flat.svg"));
        PdfPages.of(Printout.tiled(skirt, allowances, Tiling.on(Paper.A4))).writeTo(folder.resolve("pattern-a4.pdf"));
        System.out.print(skirt.walkSeams().text());
    }
}
