package org.oaktag.laws.adjust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;

/** A piece that is moved, turned, scaled or slanted is that piece with everything on it. */
@Domain(PieceArbitraries.class)
@Domain(DomainContext.Global.class)
class PieceTransformProperties {

    private static final double ROUNDING = 1e-5;

    @Property(tries = 300)
    void every_notch_stays_at_its_point_of_the_cloth(
            @ForAll Piece piece,
            @ForAll @DoubleRange(min = 0.3, max = 3) double along,
            @ForAll @DoubleRange(min = 0.3, max = 3) double across,
            @ForAll @DoubleRange(min = -0.5, max = 0.5) double slant,
            @ForAll @DoubleRange(min = -3, max = 3) double turn) {
        Transform transform =
                new Transform(along, 0, slant, across, 20, -30).then(Transform.rotation(turn, Point.of(100, 50)));
        Piece transformed = piece.transformed(transform);
        for (int i = 0; i < piece.notches().size(); i++) {
            Notch notch = transformed.notches().get(i);
            assertThat(transformed
                            .pointOf(notch)
                            .distanceTo(transform.apply(
                                    piece.pointOf(piece.notches().get(i)))))
                    .isLessThanOrEqualTo(ROUNDING);
        }
    }

    @Property(tries = 300)
    void a_scaling_multiplies_the_distances_of_the_notches_and_a_move_leaves_them_to_the_last_bit(
            @ForAll Piece piece,
            @ForAll @DoubleRange(min = 0.2, max = 5) double factor,
            @ForAll @DoubleRange(min = -3, max = 3) double turn) {
        Piece scaled = piece.transformed(Transform.scale(factor));
        for (int i = 0; i < piece.notches().size(); i++) {
            assertThat(scaled.notches().get(i).distance())
                    .isCloseTo(piece.notches().get(i).distance() * factor, within(ROUNDING));
        }
        assertThat(piece.transformed(Transform.rotation(turn, Point.of(40, 60)).then(Transform.translation(3, 4)))
                        .notches())
                .isEqualTo(piece.notches());
    }
}
