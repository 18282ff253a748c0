package org.oaktag.laws.garments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oaktag.PatternException;
import org.oaktag.body.BodyBuilder;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;
import org.oaktag.examples.HoodedTop;
import org.oaktag.garment.Garment;
import org.oaktag.measure.Length;

/** Chests of 50 to 170 cm, which is how far real people reach (common practice), all get the hooded top. */
class ChestsOfAllSizesTest {

    /** The child's measures are invented. */
    @Test
    void a_child_with_a_chest_of_50_cm_gets_a_top_whose_seams_are_true() {
        BodyMeasurements child = BodyMeasurements.builder()
                .name("small")
                .figure(Figure.GIRL)
                .ageYears(2)
                .bustGirth(Length.mm(500))
                .waistGirth(Length.mm(480))
                .hipGirth(Length.mm(510))
                .neckBaseGirth(Length.mm(260))
                .upperArmGirth(Length.mm(160))
                .wristGirth(Length.mm(112))
                .handGirth(Length.mm(130))
                .handGirthWithThumb(Length.mm(157))
                .headGirth(Length.mm(480))
                .shoulderLength(Length.mm(66))
                .acrossBack(Length.mm(210))
                .backWaistLength(Length.mm(212))
                .waistToHip(Length.mm(99))
                .napeToArmpit(Length.mm(95))
                .armLength(Length.mm(288))
                .height(Length.mm(884))
                .build();
        assertTrue(HoodedTop.style().on(child));
    }

    @ParameterizedTest
    @CsvSource({"WOMAN, 500", "WOMAN, 700", "WOMAN, 1400", "WOMAN, 1700", "MAN, 700", "MAN, 1400", "MAN, 1700"})
    void bust_and_height_are_enough_at_both_ends_for_a_top_whose_seams_are_true(Figure figure, int chest) {
        for (int height : new int[] {1450, 1650, 1900}) {
            assertTrue(HoodedTop.style().on(grown(figure, chest, height).build()));
        }
    }

    /** Beyond the bodies from which it was worked out a rule may give what no body has; it asks for the tape. */
    @Test
    void where_a_waist_cannot_be_derived_the_tape_is_asked_for() {
        BodyBuilder slight = grown(Figure.MAN, 500, 1650);
        assertThatThrownBy(slight::build)
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("waist girth of 'grown'")
                .hasMessageContaining("beyond the surveyed bust girth")
                .hasMessageContaining("take this measure");
        assertTrue(HoodedTop.style().on(slight.waistGirth(Length.mm(440)).build()));
    }

    private static void assertTrue(Garment top) {
        assertThat(top.walkSeams().untrue()).isEmpty();
        assertThat(top.pieces())
                .allSatisfy(piece -> assertThat(piece.outline().selfCrossings())
                        .as(piece.name().value())
                        .isEmpty());
    }

    private static BodyBuilder grown(Figure figure, int chest, int height) {
        return BodyMeasurements.builder()
                .name("grown")
                .figure(figure)
                .confirmed(BodyMeasure.BUST_GIRTH)
                .confirmed(BodyMeasure.HIP_GIRTH)
                .bustGirth(Length.mm(chest))
                .height(Length.mm(height));
    }
}
