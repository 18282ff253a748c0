package org.oaktag.examples.lessons;

import static org.oaktag.adjustments.Bands.hemBand;
import static org.oaktag.adjustments.Bands.ribCuff;
import static org.oaktag.adjustments.Bodies.straightenSideSeams;
import static org.oaktag.adjustments.Hoods.hood;
import static org.oaktag.adjustments.Necklines.widenNeckline;
import static org.oaktag.adjustments.Sleeves.fitCapToArmhole;
import static org.oaktag.adjustments.Sleeves.straightenSleeve;
import static org.oaktag.examples.lessons.Terms.after;
import static org.oaktag.examples.lessons.Terms.before;
import static org.oaktag.examples.lessons.Terms.edgeAfter;
import static org.oaktag.examples.lessons.Terms.number;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.measure.Percent.percent;

import org.oaktag.adjustments.FitHood;
import org.oaktag.adjustments.HemBand;
import org.oaktag.adjustments.RibCuff;
import org.oaktag.blocks.HoodNames;
import org.oaktag.blocks.HoodShape;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasure;
import org.oaktag.export.lesson.Formula;
import org.oaktag.export.lesson.Lesson;
import org.oaktag.export.lesson.Slider;
import org.oaktag.export.lesson.Term;
import org.oaktag.export.lesson.Trial;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;

/** What is fitted to an edge: cuffs, bands and hoods. */
final class BandLessons {

    private static final Cloth RIB = Cloth.rib("2 x 2 rib, dark blue", percent(90));

    private BandLessons() {}

    static Lesson cuff(Garment block) {
        Garment straight = block.adjust(fitCapToArmhole(mm(6))).adjust(straightenSleeve());
        return Lesson.of(
                        "Gather the sleeve onto a rib cuff",
                        Slider.lengths("depth of the cuff", mm(20), mm(160), mm(10), mm(70)),
                        depth -> new Trial(straight, ribCuff(mm(depth), RIB)))
                .saying("The cuff is as long as the wrist and its ease, whatever the sleeve is; the sleeve's hem is"
                        + " gathered onto it. It is cut twice as deep as it is seen, and folded.")
                .saying("The sleeve gives way by the depth of the cuff, so that the whole keeps its length.")
                .showing(TopNames.SLEEVE, TopNames.CUFF)
                .computing(Formula.exact(
                        after("cuff", TopNames.CUFF_GIRTH),
                        Term.length(
                                        "wrist",
                                        played -> played.after().wearer().measure(BodyMeasure.WRIST_GIRTH.asName()))
                                .plus(Term.length("ease", mm(15)))))
                .computing(Formula.exact(
                        edgeAfter("underarm edge", TopNames.SLEEVE, TopEdges.UNDERARM_FRONT),
                        Terms.edgeBefore("underarm edge before", TopNames.SLEEVE, TopEdges.UNDERARM_FRONT)
                                .minus(Term.length("depth", played -> ((RibCuff) played.step()).depth()))))
                .computing(Formula.exact(
                        after("sleeve length", TopNames.SLEEVE_LENGTH),
                        before("sleeve length before", TopNames.SLEEVE_LENGTH)));
    }

    static Lesson band(Garment block) {
        Garment straight = block.adjust(straightenSideSeams()).adjust(fitCapToArmhole(mm(6)));
        return Lesson.of(
                        "Band the hem, with a lap at the sides",
                        Slider.lengths("lap", mm(0), mm(80), mm(5), mm(30)),
                        lap -> new Trial(straight, hemBand(mm(60), mm(lap))))
                .saying(
                        "Front and back each get a band, folded along its lower edge. At the side seams the two bands lap"
                                + " over each other, so each is longer than its hem by the lap: half of it at either end.")
                .saying("The band is measured on the seam line of the hem, never on the cut line.")
                .showing(TopNames.FRONT, TopNames.HEM_BAND_FRONT, TopNames.HEM_BAND_BACK)
                .computing(Formula.exact(
                        edgeAfter("half of the front band", TopNames.HEM_BAND_FRONT, EdgeNames.TOP),
                        edgeAfter("half of the front hem", TopNames.FRONT, EdgeNames.HEM)
                                .plus(lap().over(number(2)))))
                .computing(Formula.exact(
                        edgeAfter("half of the back band", TopNames.HEM_BAND_BACK, EdgeNames.TOP),
                        edgeAfter("half of the back hem", TopNames.BACK, EdgeNames.HEM)
                                .plus(lap().over(number(2)))));
    }

    private static Term lap() {
        return Term.length("lap", played -> ((HemBand) played.step()).lap());
    }

    static Lesson threePanelHood(Garment block) {
        Garment widened = block.adjust(widenNeckline(mm(8)));
        return Lesson.of(
                        "Fit a three-panel hood to the neckline",
                        Slider.lengths("lap at centre front", mm(0), mm(160), mm(10), mm(50)),
                        lap -> new Trial(widened, hood(HoodShape.threePanel()).lapped(mm(lap))))
                .saying("The neck edge of the hood is as long as the neckline, plus the lap by which its fronts cross."
                        + " Two side panels meet a strip over the middle of the head; the strip is as long as the crown"
                        + " edge of a side panel, whatever the shape of that curve.")
                .saying(
                        "A hood is fitted to the neckline as it is now. If a later step moves the neckline, the walk says"
                                + " that the hood no longer fits.")
                .showing(TopNames.HOOD_SIDE, TopNames.HOOD_CENTRE)
                .computing(Formula.exact(
                        Term.length(
                                "half of the hood's neck edge",
                                played -> Terms.edge(played.after(), TopNames.HOOD_SIDE, HoodNames.NECK)
                                        .plus(Terms.edge(played.after(), TopNames.HOOD_CENTRE, HoodNames.NECK))),
                        after("neckline", TopNames.NECKLINE_GIRTH)
                                .plus(Term.length("lap", played -> ((FitHood) played.step()).lap()))
                                .over(number(2))))
                .computing(Formula.exact(
                        edgeAfter("long edge of the strip", TopNames.HOOD_CENTRE, HoodNames.CROWN),
                        edgeAfter("crown of a side panel", TopNames.HOOD_SIDE, HoodNames.CROWN)));
    }
}
