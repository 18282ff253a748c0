package org.oaktag.examples.figures;

import java.util.LinkedHashMap;
import java.util.Map;
import org.oaktag.export.svg.SvgSheet;
import org.oaktag.garment.Garment;

/** Every figure of the guides. */
public final class GuideFigures {

    private GuideFigures() {}

    /**
     * Draws the figures.
     *
     * @param block a knit top as it was drafted
     * @param skirt a straight skirt as it was drafted, with darts
     * @return each by the name of its file below {@code docs/figures}, without its ending
     */
    public static Map<String, SvgSheet> of(Garment block, Garment skirt) {
        Map<String, SvgSheet> all = new LinkedHashMap<>();
        all.putAll(CapFigures.of(block));
        AdjustmentFigures.of(block, skirt).forEach((name, sheet) -> all.put("step-" + name, sheet));
        all.putAll(GussetFigure.of(block));
        GlossaryFigures.of(block).forEach((name, sheet) -> all.put("term-" + name, sheet));
        return all;
    }
    /**
     * Draws the lines of a block with their curvature combs.
     *
     * @param block a knit top as it was drafted
     * @return the figure by the name of its file, likewise
     */
    public static Map<String, SvgSheet> lines(Garment block) {
        return CombFigure.of(block);
    }
}
