package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CubicPieceTest {
    private static final Cubic WHOLE = CubicTest.cubic(0, 0, 30, 180, 120, 240, 260, 250);
    private static final CubicPiece PIECE = new CubicPiece(WHOLE, 0.2, 0.6);

    private static CubicPiece piece(double... c) {
        return new CubicPiece(CubicTest.cubic(c), 0, 1);
    }

    @Test
    void halves_are_those_of_the_curve() {
        CubicPiece first = PIECE.firstHalf();
        CubicPiece second = PIECE.secondHalf();
        assertThat(first.from()).isEqualTo(0.2);
        assertThat(first.to()).isEqualTo(0.4).isEqualTo(second.from());
        assertThat(second.to()).isEqualTo(0.6);
        for (double t = 0; t <= 1; t += 0.25) {
            assertThat(first.cubic().pointAt(t).distanceTo(WHOLE.pointAt(t / 2)))
                    .isLessThan(1e-12);
            assertThat(second.cubic().pointAt(t).distanceTo(WHOLE.pointAt(0.5 + t / 2)))
                    .isLessThan(1e-12);
        }
        assertThat(first.cubic().end()).isEqualTo(second.cubic().start());
    }

    @Test
    void piece_holds_its_stretch_and_a_share_beyond() {
        assertThat(PIECE.holds(0.2, 0)).isTrue();
        assertThat(PIECE.holds(0.6, 0)).isTrue();
        assertThat(PIECE.holds(0.19, 0)).isFalse();
        assertThat(PIECE.holds(0.61, 0)).isFalse();
        assertThat(PIECE.holds(0.01, 0.5)).isTrue();
        assertThat(PIECE.holds(0.79, 0.5)).isTrue();
        assertThat(PIECE.holds(-0.01, 0.5)).isFalse();
        assertThat(PIECE.holds(0.81, 0.5)).isFalse();
    }

    @Test
    void size_is_the_length_of_the_control_polygon() {
        assertThat(piece(0, 0, 3, 4, 3, 9, 15, 9).size()).isCloseTo(5 + 5 + 12, within(1e-13));
    }

    @Test
    void straight_is_told_by_the_distance_of_the_controls_from_the_chord() {
        assertThat(piece(0, 0, 3, 0.9, 6, -0.9, 9, 0).isStraight(1)).isTrue();
        assertThat(piece(0, 0, 3, 1.1, 6, 0, 9, 0).isStraight(1)).isFalse();
        assertThat(piece(0, 0, 3, 0, 6, -1.1, 9, 0).isStraight(1)).isFalse();
        assertThat(piece(0, 0, 0.2, 0, 0, 0.2, 0, 0).isStraight(1)).isTrue();
        assertThat(piece(0, 0, 2, 0, 0, 2, 0, 0).isStraight(1)).isFalse();
    }

    @Test
    void boxes_and_strips_tell_pieces_apart() {
        CubicPiece flat = piece(0, 0, 1, 0, 2, 0, 3, 0);
        assertThat(flat.isApartFrom(piece(4.1, 0, 5, 0, 6, 0, 7, 0), 1)).isTrue();
        assertThat(flat.isApartFrom(piece(-7, 0, -6, 0, -5, 0, -1.1, 0), 1)).isTrue();
        assertThat(flat.isApartFrom(piece(3.9, 0, 5, 0, 6, 0, 7, 0), 1)).isFalse();
        assertThat(flat.isApartFrom(piece(0, 1.1, 1, 2, 2, 2, 3, 2), 1)).isTrue();
        assertThat(flat.isApartFrom(piece(0, -2, 1, -2, 2, -2, 3, -1.1), 1)).isTrue();
        assertThat(flat.isApartFrom(piece(0, 0.9, 1, 2, 2, 2, 3, 2), 1)).isFalse();
        // Boxes of slanted pieces overlap where their strips do not.
        CubicPiece slanted = piece(0, 0, 10, 10, 20, 20, 30, 30);
        assertThat(slanted.isApartFrom(piece(4, 0, 14, 10, 24, 20, 34, 30), 1)).isTrue();
        assertThat(slanted.isApartFrom(piece(1, 0, 11, 10, 21, 20, 31, 30), 1)).isFalse();
        assertThat(slanted.isApartFrom(piece(0, 4, 10, 14, 20, 24, 30, 34), 1)).isTrue();
        assertThat(piece(5, 5, 5, 5, 5, 5, 5, 5).isApartFrom(slanted, 1)).isFalse();
        assertThat(piece(9, 5, 9, 5, 9, 5, 9, 5).isApartFrom(slanted, 1)).isTrue();
    }

    @Test
    void aslant_means_every_tangent_to_every_other() {
        CubicPiece right = piece(0, 0, 1, 0.1, 2, -0.1, 3, 0);
        assertThat(right.isAslantTo(piece(0, -3, 0, -1, 0.1, 1, 0, 3))).isTrue();
        assertThat(piece(0, -3, 0, -1, 0.1, 1, 0, 3).isAslantTo(right)).isTrue();
        assertThat(right.isAslantTo(right)).isFalse();
        assertThat(right.isAslantTo(piece(0, 0, 1, 1, 2, 1, 3, 0))).isFalse();
        assertThat(right.isAslantTo(piece(0, 0, 0, 0, 0, 1, 0, 3))).isFalse();
        assertThat(right.isAslantTo(piece(0, 0, 0, 1, 0, 1, 0, 3))).isFalse();
    }
}
