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

    /** Just as far as allowed is straight, and just as far as asked for is not apart: these numbers are exact. */
    @Test
    void bounds_are_part_of_what_they_bound() {
        assertThat(piece(0, 0, 2, 1, 6, 0, 8, 0).isStraight(1)).isTrue();
        assertThat(piece(0, 0, 2, 0, 6, -1, 8, 0).isStraight(1)).isTrue();
        // Hardly a chord: a polygon of 4 is as good as a point, one of 4.5 is not; nor is a longer chord.
        assertThat(piece(0, 0, 0, 1.5, 1, 1.5, 1, 0).isStraight(1)).isTrue();
        assertThat(piece(0, 0, 0, 1.75, 1, 1.75, 1, 0).isStraight(1)).isFalse();
        assertThat(piece(0, 0, 0, 1.25, 1.25, 1.25, 1.25, 0).isStraight(1)).isFalse();
        assertThat(piece(0, 0, 0, 3, 2, 3, 2, 0).isStraight(2)).isTrue();
        assertThat(piece(0, 0, 0, 3.5, 2, 3.5, 2, 0).isStraight(2)).isFalse();
        CubicPiece flat = piece(0, 0, 1, 0, 2, 0, 3, 0);
        assertThat(flat.isApartFrom(piece(4, 0, 5, 0, 6, 0, 7, 0), 1)).isFalse();
        assertThat(piece(4, 0, 5, 0, 6, 0, 7, 0).isApartFrom(flat, 1)).isFalse();
        assertThat(PIECE.holds(0.2 - 1e-15, 0)).isTrue();
        assertThat(PIECE.holds(0.6 + 1e-15, 0)).isTrue();
    }

    /** A slanted pair a little more than 1 apart across, whose boxes overlap, wherever on the table it lies. */
    @Test
    void apart_is_told_wherever_the_two_lie() {
        for (double[] at : new double[][] {{0, 0}, {900, -300}, {-700, 800}, {1e5, 1e5}}) {
            Transform moved = Transform.translation(at[0], at[1]);
            for (double across : new double[] {1.01, 0.99, -0.99, -1.01}) {
                double shift = across * Math.sqrt(2);
                Cubic one = CubicTest.cubic(0, 0, 10, 10, 20, 20, 30, 30);
                Cubic other = CubicTest.cubic(shift + 4, 4, shift + 14, 14, shift + 24, 24, shift + 34, 34);
                CubicPiece a = new CubicPiece(one.transformed(moved), 0, 1);
                CubicPiece b = new CubicPiece(other.transformed(moved), 0, 1);
                assertThat(a.isApartFrom(b, 1)).isEqualTo(Math.abs(across) > 1);
                assertThat(b.isApartFrom(a, 1)).isEqualTo(Math.abs(across) > 1);
            }
        }
    }

    /** Of two pieces it is enough that the strip of one keeps the other out. */
    @Test
    void either_strip_will_do() {
        CubicPiece slanted = piece(0, 0, 10, 10, 20, 20, 30, 30);
        CubicPiece bow = piece(12, 0, 22, 10, 26, 8, 36, 18);
        assertThat(slanted.isApartFrom(bow, 1)).isTrue();
        assertThat(bow.isApartFrom(slanted, 1)).isTrue();
        // Closed pieces have no chord, and so no strip; boxes alone decide.
        CubicPiece closed = piece(20, 2, 24, 2, 24, 6, 20, 2);
        assertThat(closed.isApartFrom(slanted, 1)).isTrue();
        assertThat(closed.isApartFrom(piece(21, 3, 22, 5, 23, 2, 21, 3), 1)).isFalse();
    }
}
