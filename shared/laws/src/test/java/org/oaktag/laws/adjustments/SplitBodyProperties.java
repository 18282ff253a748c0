package org.oaktag.laws.adjustments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.adjustments.Bodies.splitBody;
import static org.oaktag.adjustments.Bodies.straightenSideSeams;
import static org.oaktag.measure.Length.mm;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.PatternException;
import org.oaktag.blocks.TopBody;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.measure.Percent;

/** What a style line across front and back keeps. */
@Domain(TopArbitraries.class)
@Domain(DomainContext.Global.class)
class SplitBodyProperties {

    private static final Cloth BELOW =
            Cloth.knit("trial knit", Percent.percent(30)).as(Cloth.CONTRAST);

    @Property(tries = 60)
    void the_parts_sew_true_and_make_up_the_whole(
            @ForAll Garment block, @ForAll boolean straight, @ForAll @DoubleRange(min = 60, max = 250) double above) {
        Garment start = straight ? block.adjust(straightenSideSeams()) : block;
        Garment split = start.adjust(splitBody(mm(above), BELOW));
        Sound.assertSound(split);
        Sound.assertBodySewsTrue(split);
        for (Name half : TopBody.HALVES) {
            Name lower = TopNames.lower(half);
            assertThat(split.walkSeams().seam(half.with("style line")).isTrue()).isTrue();
            assertThat(split.piece(half).outline().area()
                            + split.piece(lower).outline().area())
                    .isCloseTo(start.piece(half).outline().area(), within(1e-6));
            assertThat(split.piece(lower).path(EdgeNames.SIDE).length()).isCloseTo(above, within(1e-6));
            assertThat(split.piece(lower).cloth()).isEqualTo(BELOW);
            assertThat(split.piece(half).cloth()).isEqualTo(start.piece(half).cloth());
        }
        start.measures()
                .forEach(measure -> assertThat(split.finished(measure.name()).mm())
                        .as(measure.name().value())
                        .isCloseTo(measure.of(start).mm(), within(1e-6)));
    }

    @Property(tries = 20)
    void the_style_line_meets_centre_and_side_squarely(@ForAll Garment block) {
        Garment split = block.adjust(splitBody(mm(150), BELOW));
        for (Name half : TopBody.HALVES) {
            split.piece(half).edges().stream()
                    .filter(edge -> edge.name().equals(EdgeNames.BOTTOM))
                    .forEach(edge -> {
                        for (org.oaktag.garment.End end : org.oaktag.garment.End.values()) {
                            assertThat(split.piece(half)
                                            .cornerAngle(edge.name(), end)
                                            .degrees())
                                    .isCloseTo(90, within(1e-6));
                        }
                    });
        }
    }

    @Property(tries = 20)
    void a_line_above_the_underarm_and_a_second_split_are_refused(@ForAll Garment block) {
        assertThatThrownBy(() -> block.adjust(splitBody(mm(600), BELOW)))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("between hem and underarm it can lie above the hem by 20.0 mm to");
        assertThatThrownBy(() -> block.adjust(splitBody(mm(150), BELOW)).adjust(splitBody(mm(60), BELOW)))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("must have")
                .hasMessageContaining("'split the body' (step 1)");
    }
}
