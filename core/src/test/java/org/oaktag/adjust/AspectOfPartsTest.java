package org.oaktag.adjust;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.oaktag.garment.Aspect;
import org.oaktag.garment.Cut;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Wearer;
import org.oaktag.geometry.Transform;
import org.oaktag.measure.Length;

/** A back stays a back, whatever becomes of it and whatever its parts are called. */
class AspectOfPartsTest {

    private static final Name SEAM = Name.of("joint");
    private static final Piece BACK = SquareOfCloth.cut(Cut.onFold(SquareOfCloth.LEFT))
            .withAspect(Aspect.BACK)
            .withEdgeAt(SquareOfCloth.RIGHT, Aspect.FRONT);

    private static final SplitPiece IN_TWO = new SplitPiece(
            SquareOfCloth.NAME,
            LineAcross.straight(Place.share(SquareOfCloth.UPPER, 0.5), Place.share(SquareOfCloth.LOWER, 0.5)),
            Part.of(Name.of("one"), SEAM),
            Part.of(Name.of("other"), SEAM),
            SEAM);

    @Test
    void it_is_kept_by_whatever_moves_mirrors_unfolds_or_renames_it() {
        for (Piece now : List.of(
                BACK.transformed(Transform.translation(3, 4)),
                BACK.mirrored(),
                BACK.renamed(Name.of("rear")),
                garment().adjust(new UnfoldPiece(SquareOfCloth.NAME)).piece(SquareOfCloth.NAME))) {
            assertThat(now.aspect()).contains(Aspect.BACK);
            assertThat(now.aspect(SquareOfCloth.RIGHT)).contains(Aspect.FRONT);
            assertThat(now.aspect(SquareOfCloth.UPPER)).contains(Aspect.BACK);
        }
    }

    @Test
    void the_parts_of_a_back_have_the_double_notch_of_one() {
        Garment split = garment().adjust(IN_TWO);
        for (Name part : List.of(Name.of("one"), Name.of("other"))) {
            assertThat(split.piece(part).aspect()).contains(Aspect.BACK);
            assertThat(split.piece(part).notches()).allMatch(notch -> notch.count() == 2);
        }
        assertThat(split.pieces().stream()
                        .filter(part -> part.hasEdge(SquareOfCloth.RIGHT))
                        .map(part -> part.aspect(SquareOfCloth.RIGHT)))
                .containsOnly(Optional.of(Aspect.FRONT));
    }

    @Test
    void its_facing_is_one() {
        Name facing = Name.of("facing");
        Garment faced = garment()
                .adjust(new SeparateFacing(
                        EdgeRef.of(SquareOfCloth.NAME, SquareOfCloth.UPPER), Length.mm(30), facing, BACK.cloth()));
        assertThat(faced.piece(facing).aspect()).contains(Aspect.BACK);
    }

    @Test
    void a_piece_at_another_side_is_another_piece() {
        assertThat(BACK.withAspect(Aspect.FRONT)).isNotEqualTo(BACK);
        assertThat(BACK.withAspect(Aspect.FRONT).withAspectOf(BACK)).isEqualTo(BACK);
    }

    private static Garment garment() {
        return Garment.of("any", Wearer.of("nobody", false, Map.of()), List.of(BACK), List.of(), List.of());
    }
}
