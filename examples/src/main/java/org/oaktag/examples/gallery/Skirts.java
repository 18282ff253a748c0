package org.oaktag.examples.gallery;

import static org.oaktag.skirt.SkirtShapes.aLine;
import static org.oaktag.skirt.SkirtShapes.flareSides;
import static org.oaktag.skirt.SkirtShapes.pegSides;
import static org.oaktag.skirt.SkirtShapes.skirtLength;

import java.util.List;
import java.util.function.Function;
import org.oaktag.adjust.Recipe;
import org.oaktag.adjust.Step;
import org.oaktag.block.Style;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.export.gallery.GalleryStyle;
import org.oaktag.garment.Cloth;
import org.oaktag.measure.Length;
import org.oaktag.skirt.SkirtEase;
import org.oaktag.skirt.StraightSkirt;

/** The skirts of the night crew, worn over leggings. */
public final class Skirts {

    private Skirts() {}

    /**
     * Returns every style.
     *
     * @param crew the body of a name
     */
    public static List<GalleryStyle> of(Function<String, BodyMeasurements> crew) {
        return List.of(
                GalleryStyle.of(
                        style(
                                "Tweed skirt",
                                Cloth.woven("tweed, moss"),
                                skirtLength(Length.cm(56)),
                                pegSides(Length.mm(6))),
                        crew.apply("Juno"),
                        "For the warden of the gate, who sits: straight, a little pegged."),
                GalleryStyle.of(
                        style("A-line skirt", Cloth.woven("loden, pine"), aLine(0.5), skirtLength(Length.cm(62))),
                        crew.apply("Ines"),
                        "Half of each dart is closed into the hem: room enough for the ladder."),
                GalleryStyle.of(
                        style("Flared skirt", Cloth.woven("wool twill, slate"), aLine(1), flareSides(Length.cm(4))),
                        crew.apply("Haldis"),
                        "No dart is left, and the sides are flared besides."));
    }

    private static Style style(String name, Cloth cloth, Step... steps) {
        return new Style(StraightSkirt.BLOCK, SkirtEase.standard(), cloth, Recipe.of(name, steps));
    }
}
