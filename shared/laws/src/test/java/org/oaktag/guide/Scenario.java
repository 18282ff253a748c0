package org.oaktag.guide;

import static org.oaktag.adjustments.Armholes.lowerArmhole;
import static org.oaktag.adjustments.Bodies.straightenSideSeams;
import static org.oaktag.adjustments.Necklines.widenNeckline;
import static org.oaktag.adjustments.Shoulders.dropShoulder;
import static org.oaktag.adjustments.Sleeves.fitCapToArmhole;
import static org.oaktag.adjustments.Sleeves.straightenSleeve;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.measure.Percent.percent;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.oaktag.adjust.Recipe;
import org.oaktag.block.Style;
import org.oaktag.blocks.KnitTop;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;
import org.oaktag.examples.HoodedTop;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.skirt.SkirtEase;
import org.oaktag.skirt.StraightSkirt;

/**
 * What every example of the API's documentation may take for granted: an observatory's night crew, the cloths on its
 * shelf, the block of one of them and what is made from it.
 */
public abstract class Scenario {

    /** Mira, who keeps the great mirror clean. */
    protected final BodyMeasurements mira = body("Mira", Figure.WOMAN, 940, 1680);

    /** Juno, who drives the dome. */
    protected final BodyMeasurements juno = body("Juno", Figure.WOMAN, 1040, 1740);

    /** Teo, who writes down what is seen. */
    protected final BodyMeasurements teo = body("Teo", Figure.MAN, 990, 1790);

    protected final List<BodyMeasurements> crew = List.of(mira, juno, teo);
    protected final BodyMeasurements body = mira;

    protected final Cloth shell =
            Cloth.knit("brushed fleece, night blue", percent(45)).weighing(Cloth.Weight.HEAVY);
    protected final Cloth contrast = Cloth.knit("brushed fleece, amber", percent(45))
            .weighing(Cloth.Weight.HEAVY)
            .as(Cloth.CONTRAST);
    protected final Cloth lining =
            Cloth.knit("single jersey, cream", percent(60)).as(Cloth.LINING);
    protected final Cloth rib = Cloth.rib("2 x 2 rib, dark blue", percent(90));

    protected final Recipe recipe = HoodedTop.recipe(false);
    protected final Style style = HoodedTop.style();

    /** Mira's block. */
    protected final Garment block = HoodedTop.block(mira);

    /** A plain, roomy top made from it, without bands or a hood. */
    protected final Garment top = block.adjust(widenNeckline(mm(8)))
            .adjust(dropShoulder(mm(25)))
            .adjust(lowerArmhole(mm(12)))
            .adjust(straightenSideSeams())
            .adjust(fitCapToArmhole(mm(6)))
            .adjust(straightenSleeve());

    /** The hooded top of the style. */
    protected final Garment hooded = recipe.applyTo(block);

    /** A straight skirt of hers, and one of a cloth that stretches. */
    protected final Garment skirt = StraightSkirt.BLOCK.draft(mira, SkirtEase.standard(), Cloth.woven("tweed, moss"));

    protected final Garment knitSkirt = StraightSkirt.BLOCK.draft(mira, SkirtEase.standard(), shell);

    protected final Piece front = block.piece(TopNames.FRONT);
    protected final Edge hem = front.edge(EdgeNames.HEM);
    protected final Allowances allowances = KnitTop.allowances(top);

    /** Runs the example, with an empty folder for what it writes. */
    public abstract void run() throws Exception;

    /** Returns a place for a file that an example writes. */
    protected static Path file(String name) throws IOException {
        Path folder = Files.createTempDirectory("example");
        folder.toFile().deleteOnExit();
        Path file = folder.resolve(name);
        file.toFile().deleteOnExit();
        return file;
    }

    /**
     * Compares what an example says that an expression is with what it is; a number with as many decimals as are said.
     */
    protected static <T> T said(String where, String said, T actual) {
        String shown = String.valueOf(actual);
        if (actual instanceof Double number && said.matches("-?[0-9]+(\\.[0-9]+)?(e-?[0-9]+)?")) {
            BigDecimal told = new BigDecimal(said);
            shown = new BigDecimal(number)
                    .setScale(told.scale(), RoundingMode.HALF_UP)
                    .toString();
            if (told.compareTo(new BigDecimal(shown)) == 0) {
                return actual;
            }
        }
        if (!shown.equals(said)) {
            throw new AssertionError(String.format(Locale.ROOT, "%s says \"%s\", it is \"%s\"", where, said, shown));
        }
        return actual;
    }

    private static BodyMeasurements body(String name, Figure figure, double bust, double height) {
        return BodyMeasurements.builder()
                .name(name)
                .figure(figure)
                .bustGirth(mm(bust))
                .height(mm(height))
                .build();
    }
}
