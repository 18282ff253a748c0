package org.oaktag.adjust;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.oaktag.measure.Length.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Length;

class RangeTest {

    private static final Piece WIDE = SquareOfCloth.cut(Cut.single());
    private static final Piece NARROW = SquareOfCloth.cut(Cut.single()).renamed(Name.of("narrow"));

    @Test
    void the_quoted_ends_lie_inside_and_are_taken() {
        assertThatThrownBy(() -> Range.check("pleat", "it can be", mm(9), mm(1.23), mm(4.56)))
                .isInstanceOf(PatternException.class)
                .hasMessage("pleat: it can be 1.3 mm to 4.5 mm; got 9.0 mm");
        for (double quoted : new double[] {1.3, 4.5}) {
            assertThatCode(() -> Range.check("pleat", "it can be", mm(quoted), mm(1.23), mm(4.56)))
                    .doesNotThrowAnyException();
        }
    }

    @Test
    void what_rounding_adds_is_taken() {
        assertThatCode(() -> Range.check("pleat", "it can be", mm(0.1 + 0.2), Length.ZERO, mm(0.3)))
                .doesNotThrowAnyException();
        assertThatThrownBy(() -> Range.check("pleat", "it can be", mm(0.30001), Length.ZERO, mm(0.3)))
                .isInstanceOf(PatternException.class);
    }

    @Test
    void an_angle_is_refused_in_degrees() {
        assertThatThrownBy(() ->
                        Range.check("turn", "must be", Angle.degrees(-90.1), Angle.degrees(-90), Angle.degrees(90)))
                .hasMessage("turn: must be -90.0° to 90.0°; got -90.1°");
    }

    @Test
    void of_several_pieces_the_one_that_forbids_is_named_with_what_works_on_all() {
        assertThatThrownBy(() -> Range.checkAll("hem", List.of(WIDE, NARROW), mm(70), RangeTest::limits))
                .hasMessage("hem of the narrow: it can rise by 20.0 mm to 60.0 mm; got 70.0 mm");
        assertThatCode(() -> Range.checkAll("hem", List.of(WIDE, NARROW), mm(60), RangeTest::limits))
                .doesNotThrowAnyException();
    }

    private static Range.Limits limits(Piece piece) {
        return piece.name().equals(NARROW.name())
                ? new Range.Limits("it can rise by", mm(10), mm(60))
                : new Range.Limits("it can rise by", mm(20), mm(90));
    }
}
