package org.oaktag.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.oaktag.measure.Length.mm;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Percent;

/** Allowances of small pieces, of which plain reasoning gives what they are. */
class AllowancesTest {

    private static final Name NECKLINE = Name.of("neckline");
    private static final Name FRONT = Name.of("front");
    private static final Name COLLAR = Name.of("collar");
    private static final Name COLLAR_LINING = Name.of("collar lining");

    private static Piece piece(Name name, Name top, Name bottom, Cut cut) {
        Point a = Point.of(0, 0);
        Point b = Point.of(100, 0);
        Point c = Point.of(100, 100);
        Point d = Point.of(0, 100);
        return Piece.of(
                name,
                List.of(
                        Edge.straight(top, a, b),
                        Edge.straight(EdgeNames.SIDE, b, c),
                        bottom.equals(EdgeNames.HEM)
                                ? Edge.straight(bottom, c, d).withFinish(EdgeFinish.TURNED_BACK)
                                : Edge.straight(bottom, c, d),
                        Edge.straight(EdgeNames.CENTRE, d, a)),
                new Grainline(Point.of(50, 20), Point.of(50, 80)),
                cut,
                Cloth.knit("trial knit", Percent.percent(20)));
    }

    private static Seam flat(String name, SeamSide a, SeamSide b) {
        return Seam.flat(Name.of(name), a, b, "redraw it");
    }

    private static Garment collared() {
        Piece front = piece(FRONT, NECKLINE, EdgeNames.HEM, Cut.onFold(EdgeNames.CENTRE));
        Piece collar = piece(COLLAR, EdgeNames.TOP, EdgeNames.BOTTOM, Cut.single());
        Piece lining = piece(COLLAR_LINING, EdgeNames.TOP, EdgeNames.BOTTOM, Cut.single());
        return Garment.of(
                "collared",
                Wearer.of("nobody", false, Map.of()),
                List.of(front, collar, lining),
                List.of(
                        flat("collar", SeamSide.along(FRONT, NECKLINE), SeamSide.along(COLLAR, EdgeNames.BOTTOM)),
                        flat(
                                "collar lining",
                                SeamSide.along(COLLAR, EdgeNames.BOTTOM),
                                SeamSide.along(COLLAR_LINING, EdgeNames.BOTTOM))),
                List.of());
    }

    private static Allowances finished(Garment garment) {
        return Allowances.of("asked", mm(10)).finished(garment, mm(25));
    }

    private static Garment alone(Piece piece) {
        return Garment.of("panel", Wearer.of("nobody", false, Map.of()), List.of(piece), List.of(), List.of());
    }

    private static Piece withFinish(Piece piece, Name edge, EdgeFinish finish) {
        return piece.withEdges(piece.edges().stream()
                .map(each -> each.name().equals(edge) ? each.withFinish(finish) : each)
                .toList());
    }

    @Test
    void a_hem_has_a_turning_until_something_is_sewn_to_it() {
        Garment garment = collared();
        assertThat(finished(garment).of(garment.piece(FRONT), EdgeNames.HEM)).isEqualTo(Allowance.foldedBack(mm(25)));
        Garment banded = garment.withSeams(
                List.of(flat("band", SeamSide.along(FRONT, EdgeNames.HEM), SeamSide.against(COLLAR, EdgeNames.TOP))));
        assertThat(finished(banded).on(banded.piece(FRONT), EdgeNames.HEM)).isEqualTo(mm(10));
    }

    @Test
    void the_finish_of_an_edge_says_what_it_gets_and_its_name_says_nothing() {
        Piece plain = piece(FRONT, EdgeNames.TOP, EdgeNames.HEM, Cut.single());
        for (EdgeFinish finish : EdgeFinish.values()) {
            Piece piece = withFinish(withFinish(plain, EdgeNames.HEM, EdgeFinish.PLAIN), EdgeNames.SIDE, finish);
            Garment garment = alone(piece);
            Allowance expected = switch (finish) {
                case PLAIN, NEATENED, CLOSED, TAKEN_IN, FASTENED -> Allowance.mitred(mm(10));
                case TURNED_BACK -> Allowance.foldedBack(mm(25));
                case TURNED_BACK_SQUARE -> Allowance.foldedSquare(mm(25));
                case SLASHED, RAW -> Allowance.mitred(mm(0));
            };
            assertThat(finished(garment).of(piece, EdgeNames.SIDE)).isEqualTo(expected);
            assertThat(finished(garment).on(piece, EdgeNames.HEM)).isEqualTo(mm(10));
            assertThat(garment.turnedBack().contains(EdgeRef.of(FRONT, EdgeNames.SIDE)))
                    .isEqualTo(finish.isTurnedBack());
        }
    }

    @Test
    void interfacing_has_no_allowance() {
        Piece piece = piece(FRONT, EdgeNames.TOP, EdgeNames.HEM, Cut.single());
        Piece fused = piece.withCloth(piece.cloth().as(Cloth.INTERFACING));
        for (Edge edge : fused.edges()) {
            assertThat(finished(alone(fused)).on(fused, edge.name())).isEqualTo(mm(0));
        }
    }

    @Test
    void neighbours_of_one_finish_are_turned_back_in_one_until_a_part_of_them_is_sewn() {
        EdgeRef hem = EdgeRef.of(FRONT, EdgeNames.HEM);
        EdgeRef side = EdgeRef.of(FRONT, EdgeNames.SIDE);
        Garment garment = collared();
        Piece front = withFinish(garment.piece(FRONT), EdgeNames.SIDE, EdgeFinish.TURNED_BACK);
        Garment both = garment.withPiece(front);
        assertThat(both.turnedBack()).containsExactly(hem, side);
        assertThat(both.turnedBackWith(hem)).containsExactly(side, hem);
        assertThat(both.turnedBackWith(EdgeRef.of(FRONT, NECKLINE))).isEmpty();
        Garment banded = both.withSeams(
                List.of(flat("band", SeamSide.along(FRONT, EdgeNames.SIDE), SeamSide.against(COLLAR, EdgeNames.TOP))));
        assertThat(banded.turnedBack()).isEmpty();
        assertThat(banded.turnedBackWith(hem)).isEmpty();
        Garment square = garment.withPiece(withFinish(front, EdgeNames.SIDE, EdgeFinish.TURNED_BACK_SQUARE));
        assertThat(square.turnedBackWith(hem)).containsExactly(hem);
    }

    @Test
    void an_edge_on_the_fold_has_none_whatever_is_asked_for() {
        Garment garment = collared();
        Allowances asked = Allowances.of("asked", mm(15)).with(EdgeNames.CENTRE, mm(20));
        assertThat(asked.on(garment.piece(FRONT), EdgeNames.CENTRE)).isEqualTo(mm(0));
        assertThat(asked.on(garment.piece(COLLAR), EdgeNames.CENTRE)).isEqualTo(mm(20));
    }

    @Test
    void one_edge_of_one_piece_goes_before_its_name() {
        Garment garment = collared();
        Allowances asked = Allowances.of("asked", mm(15))
                .with(EdgeNames.SIDE, mm(20))
                .with(EdgeRef.of(COLLAR, EdgeNames.SIDE), mm(5));
        assertThat(asked.on(garment.piece(FRONT), EdgeNames.SIDE)).isEqualTo(mm(20));
        assertThat(asked.on(garment.piece(COLLAR), EdgeNames.SIDE)).isEqualTo(mm(5));
        assertThat(asked.on(garment.piece(COLLAR), EdgeNames.TOP)).isEqualTo(mm(15));
    }

    @Test
    void an_allowance_of_a_seam_is_left_on_both_its_sides() {
        Garment garment = collared();
        Allowances asked =
                Allowances.of("asked", mm(15)).with(garment.seam(Name.of("collar lining")), Allowance.squared(mm(8)));
        assertThat(asked.of(garment.piece(COLLAR), EdgeNames.BOTTOM)).isEqualTo(Allowance.squared(mm(8)));
        assertThat(asked.of(garment.piece(COLLAR_LINING), EdgeNames.BOTTOM)).isEqualTo(Allowance.squared(mm(8)));
        assertThat(asked.on(garment.piece(FRONT), NECKLINE)).isEqualTo(mm(15));
    }

    @Test
    void an_allowance_outside_its_range_is_refused() {
        assertThatThrownBy(() -> Allowances.of("asked", mm(-1)))
                .isInstanceOf(PatternException.class)
                .hasMessage("seam allowance: must be 0 to 100.0 mm; got -1.0 mm");
        assertThatThrownBy(() -> Allowances.of("asked", mm(10)).with(EdgeNames.HEM, mm(101)))
                .isInstanceOf(PatternException.class)
                .hasMessage("allowance of 'hem': must be 0 to 100.0 mm; got 101.0 mm");
    }
}
