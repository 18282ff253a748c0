package org.oaktag.laws.adjustments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.adjustments.Shoulders.moveShoulderForward;
import static org.oaktag.adjustments.Sleeves.batwingSleeve;
import static org.oaktag.adjustments.Sleeves.kimonoSleeve;
import static org.oaktag.measure.Length.mm;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.PatternException;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.measure.Angle;

/** What growing the sleeve on to the body keeps. */
@Domain(TopArbitraries.class)
@Domain(DomainContext.Global.class)
class GrownSleeveProperties {

    private static final double SOLVED = 1e-5;

    @Property(tries = 80)
    void a_sleeve_grown_on_keeps_the_way_from_the_side_neck_to_the_wrist_and_its_hem(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = 40, max = 90) double below,
            @ForAll @DoubleRange(min = 0, max = 15) double bend) {
        Garment grown = block.adjust(batwingSleeve(mm(below)).bentBy(Angle.degrees(bend)));
        assertTrue(grown);
        assertKept(block, grown, TopNames.NECK_TO_WRIST, TopNames.SLEEVE_LENGTH, TopNames.SLEEVE_HEM);
        assertKept(block, grown, TopNames.NECKLINE_GIRTH, TopNames.HEM_GIRTH, TopNames.BACK_LENGTH);
        assertThat(grown.piece(TopNames.BACK).path(TopEdges.UNDERARM))
                .as("one curve for front and back")
                .isEqualTo(grown.piece(TopNames.FRONT).path(TopEdges.UNDERARM));
        assertThat(grown.hasPiece(TopNames.SLEEVE)).isFalse();
    }

    @Property(tries = 50)
    void a_curve_that_ends_lower_makes_a_wider_sleeve(@ForAll Garment block) {
        double before = 0;
        for (double below : new double[] {40, 90, 150, 200}) {
            Garment grown = block.adjust(batwingSleeve(mm(below)));
            assertTrue(grown);
            double width = grown.finished(TopNames.SLEEVE_WIDTH).mm();
            assertThat(width).isGreaterThan(before);
            before = width;
        }
    }

    @Property(tries = 80)
    void underarm_seams_stay_equal_where_the_shoulder_seam_was_moved(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = -15, max = 15) double by,
            @ForAll @DoubleRange(min = 0, max = 20) double bend) {
        Garment moved = block.adjust(moveShoulderForward(mm(by)));
        Garment grown = moved.adjust(kimonoSleeve().bentBy(Angle.degrees(bend)));
        assertTrue(grown);
        assertKept(moved, grown, TopNames.NECK_TO_WRIST, TopNames.NECKLINE_GIRTH);
        assertThat(grown.finished(TopNames.SLEEVE_HEM).mm())
                .as("the hem slants a little")
                .isCloseTo(moved.finished(TopNames.SLEEVE_HEM).mm(), within(1.0));
    }

    @Property(tries = 50)
    void a_gusset_has_four_equal_sides_and_sews_into_its_slashes(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = 60, max = 110) double side,
            @ForAll @DoubleRange(min = 0, max = 15) double bend) {
        Garment grown = block.adjust(kimonoSleeve().bentBy(Angle.degrees(bend)).withGusset(mm(side)));
        assertTrue(grown);
        for (Edge edge : grown.piece(TopNames.GUSSET).edges()) {
            assertThat(edge.length().mm()).isCloseTo(side, within(SOLVED));
        }
        assertKept(block, grown, TopNames.NECK_TO_WRIST, TopNames.SLEEVE_HEM);
    }

    @Property(tries = 20)
    void a_curve_that_would_run_past_the_hem_is_refused_with_what_works(@ForAll Garment block) {
        double side = block.piece(TopNames.FRONT).path(EdgeNames.SIDE).length();
        assertThatThrownBy(() -> block.adjust(batwingSleeve(mm(side))))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining(mm(side - 40).roundedDown().text());
    }

    private static void assertTrue(Garment garment) {
        Sound.assertSound(garment);
        assertThat(garment.walkSeams().untrue()).isEmpty();
    }

    private static void assertKept(Garment before, Garment after, Name... measures) {
        for (Name measure : measures) {
            assertThat(after.finished(measure).mm())
                    .as("%s", measure)
                    .isCloseTo(before.finished(measure).mm(), within(SOLVED));
        }
    }
}
