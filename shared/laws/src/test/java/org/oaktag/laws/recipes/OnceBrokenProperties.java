package org.oaktag.laws.recipes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.oaktag.adjustments.Finishes.faceNeckline;
import static org.oaktag.adjustments.Necklines.boatNeckline;
import static org.oaktag.adjustments.Necklines.insetNecklineForBand;
import static org.oaktag.adjustments.Necklines.lowerBackNeckline;
import static org.oaktag.adjustments.Necklines.narrowNeckline;
import static org.oaktag.adjustments.Necklines.reshapeBackNeckline;
import static org.oaktag.adjustments.Necklines.widenNeckline;
import static org.oaktag.adjustments.Shoulders.dropShoulder;
import static org.oaktag.adjustments.Shoulders.moveShoulderBack;
import static org.oaktag.adjustments.Sleeves.kimonoSleeve;
import static org.oaktag.measure.Angle.degrees;
import static org.oaktag.measure.Length.mm;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.PatternException;
import org.oaktag.adjust.Pieces;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.NeckStyle;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.laws.adjustments.TopArbitraries;
import org.oaktag.measure.Percent;

/** Recipes of the kinds that once broke the law in a long run, on bodies of every size. */
@Domain(TopArbitraries.class)
@Domain(DomainContext.Global.class)
class OnceBrokenProperties {

    private static final Cloth JERSEY = Cloth.knit("facing jersey", Percent.percent(40));

    @Property(tries = 40)
    void a_neckline_narrowed_across_a_seam_moved_by_a_hair(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = 0.01, max = 2) double back,
            @ForAll @DoubleRange(min = 1, max = 10) double along) {
        assertKept(block, moveShoulderBack(mm(back)), narrowNeckline(mm(along)));
    }

    @Property(tries = 40)
    void a_neckline_moved_in_twice_and_widened_and_the_shoulder_dropped_between(@ForAll Garment block) {
        assertKept(
                block,
                insetNecklineForBand(mm(24.6)),
                widenNeckline(mm(17.4)),
                dropShoulder(mm(29.5), degrees(26)),
                Pieces.extendEdge(EdgeRef.of(TopNames.FRONT, EdgeNames.SIDE), mm(45.3)),
                insetNecklineForBand(mm(11)));
    }

    @Property(tries = 40)
    void a_deep_back_neckline_moved_in(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = 40, max = 120) double down,
            @ForAll @DoubleRange(min = 5, max = 40) double width) {
        assertKept(block, lowerBackNeckline(mm(down)), insetNecklineForBand(mm(width)));
    }

    @Property(tries = 40)
    void a_square_back_neckline_moved_in_until_it_ends_on_the_shoulder(
            @ForAll Garment block, @ForAll @DoubleRange(min = 28.2, max = 28.8) double width) {
        assertKept(block, reshapeBackNeckline(NeckStyle.SQUARE), insetNecklineForBand(mm(width)));
    }

    @Property(tries = 40)
    void a_facing_that_would_take_the_whole_shoulder_is_refused_with_the_width_that_works(
            @ForAll Garment block, @ForAll @DoubleRange(min = 30, max = 60) double shoulder) {
        double left = Math.round(Math.min(
                                shoulder,
                                0.6 * block.finished(TopNames.SHOULDER_LENGTH).mm())
                        * 10)
                / 10.0;
        Garment boat = block.adjust(boatNeckline(mm(left), mm(45)));
        double most = mostTold(boat, left);
        // The front quotes its own end, and the back, which is tried after it, may leave less.
        double both = fits(boat, most) ? most : mostTold(boat, most);
        assertThat(both).isLessThan(left).isGreaterThan(left - 3);
        assertThatCode(() -> boat.adjust(faceNeckline(mm(both), JERSEY))).doesNotThrowAnyException();
    }

    private static boolean fits(Garment garment, double width) {
        try {
            garment.adjust(faceNeckline(mm(width), JERSEY));
            return true;
        } catch (PatternException refused) {
            return false;
        }
    }

    /** Returns the width that a refusal says is the most. */
    private static double mostTold(Garment garment, double width) {
        PatternException refused =
                catchThrowableOfType(PatternException.class, () -> garment.adjust(faceNeckline(mm(width), JERSEY)));
        Told.assertReadable(refused);
        assertThat(refused.remedy()).matches("it can lie [0-9.]+ mm away at the most");
        return Double.parseDouble(refused.remedy().replaceAll("[^0-9.]", ""));
    }

    @Property(tries = 40)
    void a_boat_neckline_that_meets_the_slash_of_a_gusset(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = 120, max = 150) double gusset,
            @ForAll @DoubleRange(min = 20, max = 60) double left) {
        assertKept(
                block,
                dropShoulder(mm(58.8), degrees(5.2)),
                kimonoSleeve().bentBy(degrees(23.6)).withGusset(mm(gusset)),
                boatNeckline(mm(left), mm(48.2)));
    }

    private static void assertKept(Garment block, Step... steps) {
        RecipeLaw law = new RecipeLaw();
        law.check(block, List.of(steps));
        assertThat(law.done() + law.refusals().total()).isEqualTo(steps.length);
        assertThat(law.done()).as("steps done").isPositive();
    }
}
