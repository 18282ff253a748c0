package org.oaktag.examples.gallery;

import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.skirt.SkirtFinishes.buttons;
import static org.oaktag.skirt.SkirtFinishes.centreBackSeam;
import static org.oaktag.skirt.SkirtFinishes.faceWaist;
import static org.oaktag.skirt.SkirtFinishes.lineSkirt;
import static org.oaktag.skirt.SkirtFinishes.straightWaistband;
import static org.oaktag.skirt.SkirtFinishes.vent;
import static org.oaktag.skirt.SkirtFinishes.zip;
import static org.oaktag.skirt.SkirtShapes.aLine;
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
import org.oaktag.skirt.SkirtEase;
import org.oaktag.skirt.SkirtOpening;
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
                                skirtLength(cm(62)),
                                pegSides(mm(6)),
                                centreBackSeam(),
                                zip(cm(18), SkirtOpening.CENTRE_BACK),
                                vent(mm(45)),
                                straightWaistband(mm(35)),
                                lineSkirt(Cloth.woven("viscose twill, rust").as(Cloth.LINING))),
                        crew.apply("Juno"),
                        "For the warden of the gate, who sits: straight, a little pegged, lined, with a vent."),
                GalleryStyle.of(
                        style(
                                "A-line skirt",
                                Cloth.woven("loden, pine"),
                                aLine(0.5),
                                skirtLength(cm(62)),
                                zip(cm(22), SkirtOpening.LEFT_SIDE),
                                straightWaistband(mm(35))),
                        crew.apply("Ines"),
                        "Half of each dart is closed into the hem: room enough for the ladder."),
                GalleryStyle.of(
                        style(
                                "Buttoned skirt",
                                Cloth.woven("wool twill, slate"),
                                aLine(0.4),
                                buttons(mm(30), 7),
                                faceWaist(mm(60), Cloth.woven("wool twill, slate"))),
                        crew.apply("Haldis"),
                        "Seven buttons that gloves can manage; the lowest is left open on the stairs."));
    }

    private static Style style(String name, Cloth cloth, Step... steps) {
        return new Style(StraightSkirt.BLOCK, SkirtEase.standard(), cloth, Recipe.of(name, steps));
    }
}
