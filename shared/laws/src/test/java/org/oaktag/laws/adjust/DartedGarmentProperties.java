package org.oaktag.laws.adjust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.mm;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.adjust.Closing;
import org.oaktag.adjust.Darts;
import org.oaktag.adjust.Place;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.SeamRule;
import org.oaktag.garment.WalkedSeam;
import org.oaktag.laws.adjustments.TopArbitraries;

/** Darts in a body: what its seams and finished measures make of them. */
@Domain(TopArbitraries.class)
@Domain(DomainContext.Global.class)
class DartedGarmentProperties {

    private static final Name BUST = Name.of("bust dart");
    private static final Name BUST_SEAM = Name.of("front bust dart");

    @Property(tries = 60)
    void a_seam_leaves_the_dart_out_wherever_it_is_moved(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = 15, max = 35) double width,
            @ForAll @DoubleRange(min = 0.3, max = 0.7) double to) {
        Garment darted = opened(block, width);
        Garment moved = darted.adjust(Darts.moveDart(TopNames.FRONT, BUST, Place.share(TopEdges.SHOULDER, to)));
        for (Garment garment : new Garment[] {darted, moved}) {
            assertThat(garment.walkSeams().seam(BUST_SEAM).isTrue()).isTrue();
            assertThat(garment.walkSeams().seam(TopNames.SIDE_SEAM).error().mm())
                    .as("the back is longer by what the dart takes out")
                    .isCloseTo(width, within(1e-5));
            assertThat(garment.walkSeams().seam(TopNames.SHOULDER_SEAM).isTrueInLength())
                    .isTrue();
            assertThat(garment.walkSeams().seam(TopNames.FRONT_ARMHOLE_SEAM).isTrueInLength())
                    .isTrue();
        }
        assertThat(darted.seam(TopNames.SIDE_SEAM).a().runs()).hasSize(2);
        assertThat(moved.seam(TopNames.SIDE_SEAM).a().runs()).hasSize(1);
        assertThat(moved.seam(TopNames.SHOULDER_SEAM).a().runs()).hasSize(2);
        for (FinishedMeasure measure : block.measures()) {
            if (!measure.name().equals(TopNames.CHEST_GIRTH)) {
                assertThat(moved.finished(measure.name()).mm())
                        .as("%s", measure.name())
                        .isCloseTo(darted.finished(measure.name()).mm(), within(1e-5));
            }
        }
    }

    @Property(tries = 60)
    void a_dart_that_is_eased_in_leaves_the_seam_eased_by_it_and_true(
            @ForAll Garment block, @ForAll @DoubleRange(min = 15, max = 35) double width) {
        Garment before =
                opened(block, width).adjust(Darts.moveDart(TopNames.FRONT, BUST, Place.share(TopEdges.SHOULDER, 0.5)));
        Garment eased = before.adjust(Darts.easeDart(TopNames.FRONT, BUST, Closing.straight()));
        WalkedSeam shoulder = eased.walkSeams().seam(TopNames.SHOULDER_SEAM);
        assertThat(shoulder.isTrueInLength()).isTrue();
        assertThat(shoulder.seam().rule()).isInstanceOf(SeamRule.Eased.class);
        assertThat(shoulder.difference().mm()).isGreaterThan(0);
        assertThat(eased.seams().stream().noneMatch(seam -> seam.name().equals(BUST_SEAM)))
                .isTrue();
    }

    private static Garment opened(Garment block, double width) {
        return block.adjust(Darts.openDart(
                TopNames.FRONT, BUST, Place.along(EdgeNames.SIDE, End.START, mm(70)), mm(width), mm(90)));
    }
}
