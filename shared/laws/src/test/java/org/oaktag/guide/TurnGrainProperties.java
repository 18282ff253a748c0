package org.oaktag.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.guide.TurnGrain.turnGrain;

import java.util.List;
import java.util.Map;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.oaktag.PatternException;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Wearer;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Percent;

class TurnGrainProperties {
    private static final Name CUFF = Name.of("cuff");

    private final Garment garment = cuffOnly();

    @Property
    void turning_there_and_back_restores_the_grainline(@ForAll @DoubleRange(min = -90, max = 90) double degrees) {
        Garment back =
                garment.adjust(turnGrain(CUFF, Angle.degrees(degrees)).then(turnGrain(CUFF, Angle.degrees(-degrees))));
        Grainline grain = back.piece(CUFF).grainline();
        assertThat(grain.bottom().distanceTo(new Point(10, 50))).isCloseTo(0, within(1e-12));
        assertThat(grain.top()).isEqualTo(new Point(10, 10));
    }

    @Example
    void the_history_tells_the_step_and_its_caution() {
        Garment turned = garment.adjust(turnGrain(CUFF, Angle.degrees(45)));
        assertThat(turned.history()).singleElement().satisfies(change -> {
            assertThat(change.pieces()).containsExactly(CUFF);
            assertThat(change.moved()).isEmpty();
        });
        assertThat(turned.cautions())
                .containsExactly("let the cuff hang before it is hemmed: off the grain it grows longer");
    }

    @Example
    void more_than_a_right_angle_is_refused_with_the_range() {
        assertThatThrownBy(() -> turnGrain(CUFF, Angle.degrees(135)))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("-90.0° to 90.0°")
                .hasMessageContaining(Angle.degrees(135).text());
    }

    private static Garment cuffOnly() {
        Point[] corners = {new Point(0, 0), new Point(200, 0), new Point(200, 60), new Point(0, 60)};
        List<Edge> edges = List.of(
                side("top", corners[0], corners[1]),
                side("right", corners[1], corners[2]),
                side("bottom", corners[2], corners[3]),
                side("left", corners[3], corners[0]));
        Grainline grain = new Grainline(new Point(10, 10), new Point(10, 50));
        Piece cuff = Piece.of(CUFF, edges, grain, Cut.pair(), Cloth.rib("1 x 1 rib", Percent.percent(80)));
        return Garment.of("cuffs", Wearer.of("nobody", false, Map.of()), List.of(cuff), List.of(), List.of());
    }

    private static Edge side(String name, Point from, Point to) {
        return Edge.straight(Name.of(name), from, to);
    }
}
