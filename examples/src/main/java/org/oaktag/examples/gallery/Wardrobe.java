package org.oaktag.examples.gallery;

import static org.oaktag.adjust.Pieces.cutFrom;
import static org.oaktag.adjust.Pieces.turnBack;
import static org.oaktag.adjustments.Armholes.lowerArmhole;
import static org.oaktag.adjustments.Bands.armholeBand;
import static org.oaktag.adjustments.Bands.ribCuff;
import static org.oaktag.adjustments.Bodies.flareSideSeams;
import static org.oaktag.adjustments.Bodies.highLowHem;
import static org.oaktag.adjustments.Bodies.lengthenBody;
import static org.oaktag.adjustments.Bodies.shortenBody;
import static org.oaktag.adjustments.Bodies.splitBody;
import static org.oaktag.adjustments.Bodies.squareSideSeams;
import static org.oaktag.adjustments.Bodies.straightenSideSeams;
import static org.oaktag.adjustments.Finishes.faceNeckline;
import static org.oaktag.adjustments.Finishes.frontPouch;
import static org.oaktag.adjustments.Finishes.patchPocket;
import static org.oaktag.adjustments.Finishes.ribNeckband;
import static org.oaktag.adjustments.Hoods.hood;
import static org.oaktag.adjustments.Hoods.lineHood;
import static org.oaktag.adjustments.Necklines.boatNeckline;
import static org.oaktag.adjustments.Necklines.growStand;
import static org.oaktag.adjustments.Necklines.insetNecklineForBand;
import static org.oaktag.adjustments.Necklines.lowerFrontNeckline;
import static org.oaktag.adjustments.Necklines.widenNeckline;
import static org.oaktag.adjustments.Shoulders.dropShoulder;
import static org.oaktag.adjustments.Sleeves.batwingSleeve;
import static org.oaktag.adjustments.Sleeves.bellSleeve;
import static org.oaktag.adjustments.Sleeves.fitCapToArmhole;
import static org.oaktag.adjustments.Sleeves.raglanSleeve;
import static org.oaktag.adjustments.Sleeves.shortSleeve;
import static org.oaktag.adjustments.Sleeves.sleeveless;
import static org.oaktag.adjustments.Sleeves.splitSleeve;
import static org.oaktag.adjustments.Sleeves.straightenSleeve;
import static org.oaktag.adjustments.Sleeves.taperSleeve;
import static org.oaktag.adjustments.Sleeves.threeQuarterSleeve;
import static org.oaktag.blocks.TopNames.SLEEVE_BACK;
import static org.oaktag.blocks.TopNames.SLEEVE_FRONT;
import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.measure.Percent.percent;

import java.util.List;
import java.util.function.Function;
import org.oaktag.adjust.Recipe;
import org.oaktag.adjust.Step;
import org.oaktag.block.Style;
import org.oaktag.blocks.HoodShape;
import org.oaktag.blocks.KnitTop;
import org.oaktag.blocks.TopEase;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Ease;
import org.oaktag.body.EaseCategory;
import org.oaktag.export.gallery.GalleryStyle;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Name;
import org.oaktag.measure.Percent;

/** What the night crew wear under, over and instead of the hooded top. */
public final class Wardrobe {

    private static final Ease STANDARD = TopEase.standard();
    private static final Ease CLOSE = TopEase.of(EaseCategory.CLOSE);
    private static final Ease LOOSE = TopEase.of(EaseCategory.LOOSE);
    private static final EdgeRef[] NECKLINES = {
        EdgeRef.of(TopNames.FRONT, TopEdges.NECKLINE), EdgeRef.of(TopNames.BACK, TopEdges.NECKLINE)
    };
    private static final Cloth FINE_RIB = Cloth.rib("1 x 1 rib", percent(80));
    private static final Cloth RIB = Cloth.rib("2 x 2 rib", percent(90));

    private Wardrobe() {}

    /**
     * Returns every style but the hooded top.
     *
     * @param crew the body of a name
     */
    public static List<GalleryStyle> of(Function<String, BodyMeasurements> crew) {
        return List.of(
                GalleryStyle.of(tee(), crew.apply("Juno"), "What Juno wears under everything else."),
                GalleryStyle.of(boatNeck(), crew.apply("Mira"), "For reading charts by red light."),
                GalleryStyle.of(
                        raglan(),
                        crew.apply("Oskar"),
                        "For hauling on the shutter ropes, with sleeves of another colour."),
                GalleryStyle.of(batwing(), crew.apply("Ines"), "For sitting at the console with folded arms."),
                GalleryStyle.of(aLine(), crew.apply("Haldis"), "Keys in one pocket, pencils in the other."),
                GalleryStyle.of(cropped(), crew.apply("Mira"), "A box to pull over a dress when the dome is opened."),
                GalleryStyle.of(highLow(), crew.apply("Juno"), "Covers the back of whoever bends over the eyepiece."),
                GalleryStyle.of(twoPieceHood(), crew.apply("Bram"), "A light hood for when the wind gets up."),
                GalleryStyle.of(
                        funnelNeck(), crew.apply("Soren"), "Instead of a scarf, which has no business near gears."),
                GalleryStyle.of(colourBlock(), crew.apply("Teodor"), "So that the crew find him in the dark."),
                GalleryStyle.of(bareArms(), crew.apply("Mira"), "For carrying mirrors up the stairs in July."));
    }

    private static Style style(String name, Ease ease, Cloth cloth, Step... steps) {
        return new Style(KnitTop.BLOCK, ease, cloth, Recipe.of(name, steps));
    }

    /** A cloth of a use of its own is shown by a paint that no other claims. */
    private static Cloth rust(String description, Percent stretch) {
        return Cloth.knit(description, stretch).as(Name.of("main"));
    }

    private static Style bareArms() {
        return style(
                "Sleeveless top",
                CLOSE,
                Cloth.knit("single jersey", percent(40)),
                widenNeckline(cm(4)),
                lowerFrontNeckline(cm(5)),
                lowerArmhole(mm(-12)),
                dropShoulder(mm(-15)),
                sleeveless(),
                armholeBand(mm(18), FINE_RIB),
                ribNeckband(mm(18), FINE_RIB));
    }

    private static Style tee() {
        return style(
                "Tee",
                CLOSE,
                Cloth.knit("single jersey, night blue", percent(40)),
                straightenSideSeams(),
                fitCapToArmhole(mm(5)),
                widenNeckline(mm(15)),
                lowerFrontNeckline(mm(20)),
                shortSleeve(),
                insetNecklineForBand(mm(20)),
                ribNeckband(mm(20), FINE_RIB));
    }

    private static Style boatNeck() {
        Cloth interlock = Cloth.knit("interlock", percent(30));
        return style(
                "Boat-neck top",
                STANDARD,
                interlock,
                boatNeckline(cm(6), cm(4)),
                dropShoulder(cm(2)),
                lowerArmhole(cm(1.5)).withSleeve(),
                straightenSideSeams(),
                fitCapToArmhole(mm(5)),
                straightenSleeve(),
                faceNeckline(cm(4), interlock));
    }

    private static Style raglan() {
        Cloth amber = Cloth.knit("heavy jersey, amber", percent(35)).as(Cloth.CONTRAST);
        return style(
                "Raglan top",
                STANDARD,
                Cloth.knit("heavy jersey, night blue", percent(35)),
                widenNeckline(cm(2.5)),
                lowerFrontNeckline(cm(2.5)),
                straightenSideSeams(),
                taperSleeve(cm(24)),
                fitCapToArmhole(mm(4)),
                raglanSleeve(mm(35), mm(25)),
                cutFrom(SLEEVE_FRONT, amber),
                cutFrom(SLEEVE_BACK, amber),
                ribNeckband(mm(25), RIB));
    }

    private static Style batwing() {
        return style(
                "Batwing",
                LOOSE,
                rust("viscose jersey, rust", percent(50)),
                widenNeckline(cm(2.5)),
                lowerFrontNeckline(cm(3)),
                lengthenBody(cm(8)),
                batwingSleeve(cm(20)),
                turnBack(NECKLINES));
    }

    private static Style aLine() {
        Cloth doubleKnit = Cloth.knit("double knit", percent(25));
        return style(
                "A-line long top",
                STANDARD,
                doubleKnit,
                widenNeckline(cm(3)),
                lowerFrontNeckline(cm(4)),
                lengthenBody(cm(26)),
                flareSideSeams(cm(6)),
                fitCapToArmhole(mm(5)),
                bellSleeve(cm(50)),
                patchPocket(cm(14), cm(16), cm(7), cm(48)),
                faceNeckline(cm(5), doubleKnit));
    }

    private static Style cropped() {
        return style(
                "Cropped boxy top",
                LOOSE,
                rust("loop terry, rust", percent(25)),
                widenNeckline(cm(3)),
                lowerFrontNeckline(cm(4)),
                dropShoulder(cm(2)),
                lowerArmhole(cm(2)).withSleeve(),
                squareSideSeams(),
                shortenBody(cm(16)),
                fitCapToArmhole(mm(5)),
                threeQuarterSleeve(),
                ribNeckband(mm(20), FINE_RIB));
    }

    private static Style highLow() {
        return style(
                "High-low top",
                STANDARD,
                Cloth.knit("slub jersey", percent(30)),
                widenNeckline(cm(3)),
                lowerFrontNeckline(cm(3)),
                straightenSideSeams(),
                fitCapToArmhole(mm(5)),
                lengthenBody(cm(6)),
                highLowHem(cm(4), cm(7)),
                shortSleeve(),
                ribNeckband(mm(18), FINE_RIB));
    }

    private static Style twoPieceHood() {
        return style(
                "Two-piece hood",
                STANDARD,
                Cloth.knit("light fleece", percent(35)),
                widenNeckline(cm(2.5)),
                lowerFrontNeckline(cm(2.5)),
                straightenSideSeams(),
                fitCapToArmhole(mm(6)),
                frontPouch(cm(32), cm(19)).raisedBy(cm(2)),
                hood(HoodShape.twoPiece()).lapped(cm(4)),
                lineHood(cm(4), Cloth.knit("single jersey", percent(40)).as(Cloth.LINING)));
    }

    private static Style funnelNeck() {
        return style(
                "Funnel neck",
                STANDARD,
                Cloth.knit("brushed fleece", percent(45)),
                straightenSideSeams(),
                fitCapToArmhole(mm(5)),
                widenNeckline(cm(6)),
                lowerFrontNeckline(cm(2)),
                growStand(cm(8)),
                turnBack(NECKLINES),
                ribCuff(cm(7), RIB));
    }

    private static Style colourBlock() {
        Cloth amber = Cloth.knit("fleece, amber", percent(30)).as(Cloth.CONTRAST);
        return style(
                "Colour-block sweatshirt",
                STANDARD,
                Cloth.knit("fleece, night blue", percent(30)),
                widenNeckline(mm(30)),
                lowerFrontNeckline(mm(30)),
                straightenSideSeams(),
                fitCapToArmhole(mm(6)),
                taperSleeve(cm(26)),
                splitBody(cm(24), amber),
                ribCuff(cm(6), RIB),
                splitSleeve(cm(12), amber),
                ribNeckband(mm(22), RIB));
    }
}
