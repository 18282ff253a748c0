package org.oaktag.laws.recipes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.oaktag.adjust.Pieces.movePoint;
import static org.oaktag.adjustments.Armholes.lowerArmhole;
import static org.oaktag.adjustments.Armholes.widenArmhole;
import static org.oaktag.adjustments.Bands.hemBand;
import static org.oaktag.adjustments.Bands.ribCuff;
import static org.oaktag.adjustments.Bodies.flareSideSeams;
import static org.oaktag.adjustments.Bodies.highLowHem;
import static org.oaktag.adjustments.Bodies.lengthenBody;
import static org.oaktag.adjustments.Bodies.straightenSideSeams;
import static org.oaktag.adjustments.Finishes.faceNeckline;
import static org.oaktag.adjustments.Finishes.frontPouch;
import static org.oaktag.adjustments.Finishes.interfacePiece;
import static org.oaktag.adjustments.Finishes.lineBody;
import static org.oaktag.adjustments.Finishes.patchPocket;
import static org.oaktag.adjustments.Finishes.ribNeckband;
import static org.oaktag.adjustments.Hoods.hood;
import static org.oaktag.adjustments.Hoods.lineHood;
import static org.oaktag.adjustments.Necklines.lowerBackNeckline;
import static org.oaktag.adjustments.Necklines.lowerFrontNeckline;
import static org.oaktag.adjustments.Necklines.widenNeckline;
import static org.oaktag.adjustments.Shoulders.dropShoulder;
import static org.oaktag.adjustments.Shoulders.extendShoulder;
import static org.oaktag.adjustments.Shoulders.moveShoulderForward;
import static org.oaktag.adjustments.Shoulders.slopeShoulder;
import static org.oaktag.adjustments.Sleeves.addToUpperArm;
import static org.oaktag.adjustments.Sleeves.fitCapToArmhole;
import static org.oaktag.adjustments.Sleeves.kimonoSleeve;
import static org.oaktag.adjustments.Sleeves.puffCap;
import static org.oaktag.adjustments.Sleeves.raglanSleeve;
import static org.oaktag.adjustments.Sleeves.taperSleeve;
import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.measure.Percent.percent;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.oaktag.adjust.Place;
import org.oaktag.adjust.Recipe;
import org.oaktag.adjust.Stale;
import org.oaktag.adjust.Step;
import org.oaktag.adjustments.HemBand;
import org.oaktag.blocks.BodyLine;
import org.oaktag.blocks.HoodShape;
import org.oaktag.blocks.TopNames;
import org.oaktag.draft.ClothStep;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Name;

/**
 * Every step that fits something, followed by every step that may move what it was fitted to: each seam that is left
 * behind is named, and each part whose place is, and doing what is said makes every seam true again.
 */
class StaleFittingsTest {

    private static final Cloth RIB = Cloth.rib("two by two rib", percent(80));
    private static final Cloth JERSEY = Cloth.knit("jersey", percent(40));
    private static final Cloth FUSIBLE = Cloth.knit("knit interfacing", percent(20));
    private static final int BODIES = 4;

    /** A cap that is refitted moves the notches of the armhole, so that a lining is to be refitted once more. */
    private static final int MOST_REFITS = 6;

    private static final List<Step> MOVING = List.of(
            widenNeckline(mm(8)),
            lowerFrontNeckline(mm(15)),
            lowerBackNeckline(mm(9)),
            moveShoulderForward(mm(10)),
            flareSideSeams(mm(20)),
            straightenSideSeams(),
            lengthenBody(mm(40)),
            lengthenBody(BodyLine.ARMHOLE, mm(10)),
            highLowHem(mm(20), mm(30)),
            lowerArmhole(mm(12)),
            widenArmhole(mm(8)),
            extendShoulder(mm(9)),
            slopeShoulder(mm(6)),
            dropShoulder(mm(12)),
            addToUpperArm(mm(12)),
            taperSleeve(mm(250)));

    private static final List<Name> GUSSET_SEAMS = List.of(Name.of("front gusset lower"), Name.of("back gusset lower"));

    /** What moves a corner to which a gusset is sewn. */
    private static final List<Step> MOVING_GUSSETS = List.of(
            movePoint(TopNames.FRONT, Place.corner(EdgeNames.SIDE, End.START), mm(4), mm(6), mm(30)),
            movePoint(TopNames.BACK, Place.corner(EdgeNames.SIDE, End.START), mm(4), mm(6), mm(30)));

    /** What fits something, each with the steps that must have gone before. */
    private static Map<Step, List<Step>> fitting() {
        Map<Step, List<Step>> fitting = new LinkedHashMap<>();
        fitting.put(hood(HoodShape.twoPiece()), List.of());
        fitting.put(hood(HoodShape.threePanel()).lapped(cm(5)), List.of());
        fitting.put(lineHood(mm(35), JERSEY), List.of(hood(HoodShape.threePanel())));
        fitting.put(ribNeckband(mm(25), RIB), List.of());
        fitting.put(faceNeckline(mm(50), JERSEY), List.of());
        fitting.put(lineBody(mm(15), JERSEY), List.of());
        fitting.put(interfacePiece(TopNames.FRONT, FUSIBLE), List.of());
        fitting.put(interfacePiece(TopNames.BACK, FUSIBLE), List.of());
        fitting.put(hemBand(mm(60), mm(30)), List.of());
        fitting.put(ribCuff(mm(70), RIB), List.of());
        fitting.put(fitCapToArmhole(mm(6)), List.of(lowerArmhole(mm(5))));
        fitting.put(puffCap(1.2), List.of());
        fitting.put(patchPocket(cm(11), cm(13), cm(3), cm(20)), List.of());
        fitting.put(frontPouch(cm(30), cm(18)).raisedBy(cm(2)), List.of());
        return fitting;
    }

    @Test
    void whatever_is_left_behind_is_named_and_mended_by_what_is_said() {
        int found = 0;
        List<Garment> blocks = new DoneSteps(5).blocks().subList(0, BODIES);
        for (Map.Entry<Step, List<Step>> fit : fitting().entrySet()) {
            int ofThis = 0;
            for (Step moving : MOVING) {
                for (Garment block : blocks) {
                    Recipe recipe = Recipe.of(
                                    "fitted, then moved", fit.getValue().toArray(Step[]::new))
                            .adding(fit.getKey())
                            .adding(moving);
                    ofThis += check(recipe, block, fit.getKey());
                }
            }
            assertThat(ofThis)
                    .as("seams that '%s' is left behind with", fit.getKey().name())
                    .isPositive();
            found += ofThis;
        }
        assertThat(found).isGreaterThan(fitting().size() * BODIES);
    }

    @Test
    void a_gusset_whose_corners_are_moved_is_named_and_where_the_corners_can_be_moved_before_that_mends_it() {
        for (Garment block : new DoneSteps(5).blocks().subList(0, BODIES)) {
            Recipe kimono = gusset(kimonoSleeve().withGusset(mm(70)), block);
            Step before = kimono.steps().get(0);
            assertThat(Recipe.of("corners first", MOVING_GUSSETS.get(0), MOVING_GUSSETS.get(1), before)
                            .stale(block))
                    .extracting(Stale::seam)
                    .doesNotContainAnyElementsOf(GUSSET_SEAMS);
            gusset(raglanSleeve().withGusset(mm(70)), block);
        }
    }

    private static Recipe gusset(Step fitting, Garment block) {
        Recipe recipe = Recipe.of("gusset", fitting, MOVING_GUSSETS.get(0), MOVING_GUSSETS.get(1));
        List<Stale> stale = recipe.stale(block);
        assertThat(stale)
                .extracting(Stale::seam)
                .containsExactlyInAnyOrderElementsOf(untrue(recipe.applyTo(block)))
                .containsAll(GUSSET_SEAMS);
        for (Stale each : stale) {
            assertThat(each.fitting()).contains(fitting.name());
            assertThat(each.refit()).contains("settled");
            assertThat(each.text())
                    .contains(each.refit())
                    .endsWith("or move '" + each.breaking() + "' before '" + fitting.name() + "'");
        }
        return recipe;
    }

    private static List<Name> untrue(Garment garment) {
        return garment.walkSeams().untrue().stream()
                .map(walked -> walked.seam().name())
                .toList();
    }

    /** Returns the part that a step laid on the front, where doing it again would lay it elsewhere. */
    private static List<Name> displaced(Step fitting, Garment left) {
        List<InnerLine> now = fitting.applyTo(left).piece(TopNames.FRONT).lines();
        return left.piece(TopNames.FRONT).lines().stream()
                .filter(line -> !now.contains(line))
                .map(InnerLine::name)
                .toList();
    }

    /** Checks that every seam that is not true is named, and mends each. Returns how many there were. */
    private static int check(Recipe recipe, Garment block, Step fitting) {
        List<Stale> stale = recipe.stale(block);
        Garment left = recipe.applyTo(block);
        assertThat(stale)
                .as(recipe.phrases().toString())
                .extracting(Stale::seam)
                .containsExactlyInAnyOrderElementsOf(Stream.concat(
                                untrue(left).stream(),
                                fitting instanceof ClothStep && !(fitting instanceof HemBand)
                                        ? displaced(fitting, left).stream()
                                        : Stream.empty())
                        .toList());
        Recipe refitted = recipe;
        for (Stale each : stale) {
            String what = recipe.phrases() + ": " + each;
            Told.assertReadable(each.text());
            assertThat(each.text()).as(what).contains(each.refit());
            if (each.fittedBy().isPresent()) {
                assertMended(each, each.reordered(recipe).orElseThrow().stale(block), what);
                assertMended(each, each.refitted(recipe).orElseThrow().stale(block), what);
            } else {
                assertThat(each.refit()).as(what).isEqualTo("refit the sleeve cap to the armhole");
            }
        }
        for (int i = 0; i < MOST_REFITS && !refitted.stale(block).isEmpty(); i++) {
            Stale first = refitted.stale(block).get(0);
            refitted = first.refitted(refitted).orElse(refitted.adding(fitCapToArmhole(mm(6))));
        }
        assertThat(refitted.applyTo(block).walkSeams().untrue())
                .as("%s, refitted as said: %s", recipe.phrases(), refitted.phrases())
                .isEmpty();
        return stale.size();
    }

    private static void assertMended(Stale stale, List<Stale> left, String what) {
        assertThat(left).as(what).extracting(Stale::seam).doesNotContain(stale.seam());
    }
}
