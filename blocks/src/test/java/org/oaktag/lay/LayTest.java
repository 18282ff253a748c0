package org.oaktag.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.measure.Percent.percent;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.CutList;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Point;

/** Lays whose best length is known from plain geometry. */
class LayTest {

    private static final Cloth CLOTH = Cloth.knit("trial cloth", percent(20));
    private static final CutList.Owner OWNER = new CutList.Owner("trial", "Mira");
    private static final Allowances NONE = Allowances.of("none", mm(0));

    private static Piece piece(String name, Cut cut, Point... corners) {
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < corners.length; i++) {
            edges.add(Edge.straight(Name.of("edge " + (i + 1)), corners[i], corners[(i + 1) % corners.length]));
        }
        return Piece.of(Name.of(name), edges, new Grainline(Point.of(0, 0), Point.of(0, 50)), cut, CLOTH);
    }

    private static Piece rectangle(String name, Cut cut, double width, double height) {
        return piece(name, cut, Point.of(0, 0), Point.of(width, 0), Point.of(width, height), Point.of(0, height));
    }

    private static Lay lay(Spread spread, Piece... pieces) {
        List<CutList.Item> items = new ArrayList<>();
        for (Piece piece : pieces) {
            items.add(new CutList.Item(OWNER, items.size() + 1, pieces.length, piece));
        }
        return Lay.of(new CutList(items), CLOTH, NONE, spread.withGap(mm(0)), Effort.tries(300));
    }

    @Test
    void rectangles_that_tile_the_cloth_leave_nothing_over() {
        Lay lay = lay(
                Spread.single(mm(1000)),
                rectangle("tall", new Cut.Single(2), 300, 600),
                rectangle("wide", new Cut.Single(2), 400, 300));
        assertThat(lay.length().mm()).isCloseTo(600, within(1e-9));
        assertThat(lay.use().percent()).isCloseTo(100, within(1e-9));
        assertThat(lay.lowerBound().mm()).isLessThanOrEqualTo(lay.length().mm());
    }

    @Test
    void two_triangles_lie_in_one_square_where_one_may_be_turned() {
        Piece triangle = piece("gusset", new Cut.Single(2), Point.of(0, 0), Point.of(200, 200), Point.of(0, 200));
        assertThat(lay(Spread.single(mm(202)), triangle).length().mm()).isCloseTo(200, within(2.0));
        assertThat(lay(Spread.single(mm(202)).withNap(), triangle).length().mm())
                .isGreaterThan(350);
    }

    @Test
    void a_small_piece_lies_in_the_hollow_of_a_large_one() {
        Piece frame = piece(
                "frame",
                Cut.single(),
                Point.of(0, 0),
                Point.of(500, 0),
                Point.of(500, 100),
                Point.of(100, 100),
                Point.of(100, 400),
                Point.of(500, 400),
                Point.of(500, 500),
                Point.of(0, 500));
        Lay lay = lay(Spread.single(mm(510)), frame, rectangle("pocket", Cut.single(), 390, 290));
        assertThat(lay.length().mm()).isCloseTo(500, within(1e-6));
    }

    @Test
    void a_half_lies_on_the_fold_and_a_pair_is_cut_through_both_layers() {
        Piece half = rectangle("back", Cut.onFold(Name.of("edge 4")), 200, 400);
        Piece sleeve = rectangle("sleeve", Cut.pair(), 250, 300);
        Lay folded = lay(Spread.folded(mm(1000)), half, sleeve);
        assertThat(folded.pieces()).hasSize(2);
        assertThat(folded.length().mm()).isCloseTo(400, within(1e-6));
        assertThat(folded.area()).isCloseTo(2 * 200 * 400 + 2 * 250 * 300, within(1e-6));
        LaidPiece onFold = find(folded, "back");
        assertThat(onFold.through()).isEqualTo(LaidPiece.Through.ON_FOLD);
        assertThat(onFold.outline().bounds().minX()).isCloseTo(0, within(1e-9));

        Lay single = lay(Spread.single(mm(1000)), half, sleeve);
        assertThat(single.pieces()).hasSize(3);
        assertThat(find(single, "back").outline().bounds().width()).isCloseTo(400, within(1e-9));
        assertThat(single.area()).isCloseTo(folded.area(), within(1e-6));
        assertThat(single.pieces().stream()
                        .filter(laid -> laid.item().piece().name().value().equals("sleeve"))
                        .map(laid -> laid.motion().reverses()))
                .containsExactlyInAnyOrder(true, false);
    }

    @Test
    void a_half_drawn_to_the_left_of_its_fold_lies_on_the_fold_too() {
        Piece half = rectangle("back", Cut.onFold(Name.of("edge 2")), 200, 400);
        LaidPiece laid = find(lay(Spread.folded(mm(600)), half), "back");
        assertThat(laid.outline().bounds().minX()).isCloseTo(0, within(1e-9));
        assertThat(laid.outline().bounds().maxX()).isCloseTo(200, within(1e-9));
    }

    @Test
    void a_piece_without_a_mirror_is_cut_from_the_upper_layer_alone() {
        Lay lay = lay(Spread.folded(mm(1000)), rectangle("label", Cut.single(), 100, 50));
        assertThat(lay.pieces()).singleElement().satisfies(laid -> {
            assertThat(laid.through()).isEqualTo(LaidPiece.Through.ONE_LAYER);
            assertThat(laid.copies()).isEqualTo(1);
        });
    }

    /**
     * A square grown by half the gap is no smaller than a disc of its area grown by as much: A + 2 r sqrt(pi A) + pi
     * r^2.
     */
    @Test
    void the_lower_bound_counts_the_gap_and_lies_below_every_lay() {
        Piece square = rectangle("tile", new Cut.Single(8), 100, 100);
        CutList list = new CutList(List.of(new CutList.Item(OWNER, 1, 1, square)));
        Lay tight = Lay.of(list, CLOTH, NONE, Spread.single(mm(430)).withGap(mm(10)), Effort.tries(50));
        assertThat(tight.length().mm()).isCloseTo(210, within(1e-9));
        double grown = 8 * (100 * 100 + 4 * 100 * 5 * Math.sqrt(Math.PI) / 2 + Math.PI * 25);
        assertThat(tight.lowerBound().mm()).isCloseTo(grown / 440 - 10, within(1e-6));
        assertThat(tight.lowerBound().mm()).isBetween(8 * 100 * 100 / 430.0, 210.0);
    }

    @Test
    void what_does_not_fit_is_refused_with_the_room_that_there_is() {
        Piece wide = rectangle("cape", Cut.onFold(Name.of("edge 4")), 400, 600);
        assertThatThrownBy(() -> lay(Spread.single(mm(700)), wide))
                .isInstanceOf(PatternException.class)
                .hasMessage("lay of piece 'cape': must fit between the selvages, 700.0 mm; got 800.0 mm;"
                        + " take a wider cloth");
        Piece across = rectangle("cape", Cut.onFold(Name.of("edge 1")), 300, 300);
        assertThatThrownBy(() -> lay(Spread.folded(mm(1500)), across))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("edge 'edge 1' must run with the grain")
                .hasMessageContaining("spread the cloth in a single layer");
        assertThat(lay(Spread.single(mm(700)), across).length().mm()).isCloseTo(600, within(1e-6));
    }

    /**
     * Beside each other the first two fill the width, but not where both lie at whole steps of the grid from its edge.
     */
    @Test
    void what_fits_to_the_last_millimetre_does_not_lie_over_the_selvage() {
        Lay lay = lay(
                Spread.single(mm(1000)),
                rectangle("left", new Cut.Single(1), 501.2, 500),
                rectangle("right", new Cut.Single(1), 498.8, 500),
                rectangle("tall", new Cut.Single(1), 300, 480),
                rectangle("wide", new Cut.Single(2), 700, 200));
        assertThat(lay.length().mm()).isLessThanOrEqualTo(1180);
        assertThat(lay.pieces())
                .allSatisfy(laid -> assertThat(laid.outline().bounds().maxX()).isLessThanOrEqualTo(1000 + 1e-9));
    }

    @Test
    void a_cloth_that_is_not_in_the_list_is_refused() {
        CutList list = new CutList(List.of(new CutList.Item(OWNER, 1, 1, rectangle("cuff", Cut.pair(), 100, 100))));
        assertThatThrownBy(() -> Lay.of(list, CLOTH.as(Cloth.LINING), NONE, Spread.single(cm(150)), Effort.standard()))
                .isInstanceOf(PatternException.class)
                .hasMessage("lay of 'lining': must have at least one piece; got none; lay one of [shell]");
    }

    @Test
    void what_shrinks_is_bought_longer_and_laid_narrower() {
        Spread plain = Spread.single(cm(150)).soldBy(mm(1));
        assertThat(plain.toBuy(mm(950)).mm()).isCloseTo(950, within(1e-9));
        assertThat(plain.shrinking(percent(5), percent(4)).toBuy(mm(950)).mm()).isCloseTo(1000, within(1e-9));
        assertThat(plain.shrinking(percent(5), percent(4)).shrunkWidth().mm()).isCloseTo(1440, within(1e-9));
        assertThat(plain.repeating(mm(300)).toBuy(mm(900)).mm()).isCloseTo(1200, within(1e-9));
        assertThat(plain.repeating(mm(300)).toBuy(mm(901)).mm()).isCloseTo(1500, within(1e-9));
        assertThat(Spread.folded(cm(150)).toBuy(mm(901)).mm()).isCloseTo(1000, within(1e-9));
        assertThat(Spread.folded(cm(150)).tableWidth().mm()).isCloseTo(750, within(1e-9));
    }

    @Test
    void a_lay_tells_to_buy_what_it_takes_before_the_cloth_shrinks_in_whole_repeats_and_one_more() {
        Piece[] tiles = {rectangle("tall", new Cut.Single(2), 300, 600), rectangle("wide", new Cut.Single(2), 400, 300)
        };
        // 600 mm are left of 640 that shrink by 6.25 %; 1000 mm are left of 1250 that shrink by 20 %.
        Spread shrinking = Spread.single(mm(1250)).shrinking(percent(6.25), percent(20));
        assertThat(lay(shrinking.soldBy(mm(1)), tiles).lengthToBuy().mm()).isCloseTo(640, within(1e-6));
        assertThat(lay(shrinking, tiles).lengthToBuy().mm()).isCloseTo(700, within(1e-6));
        assertThat(lay(shrinking.soldBy(mm(10)).repeating(mm(320)), tiles)
                        .lengthToBuy()
                        .mm())
                .isCloseTo(960, within(1e-6));
        assertThat(lay(shrinking.repeating(mm(250)), tiles).lengthToBuy().mm()).isCloseTo(1000, within(1e-6));
    }

    @Test
    void amounts_out_of_range_are_refused() {
        assertThatThrownBy(() -> Spread.single(mm(50)))
                .hasMessage("width of the cloth: must be 100.0 mm to 5000.0 mm; got 50.0 mm");
        assertThatThrownBy(() -> Spread.single(cm(150)).shrinking(percent(50), percent(0)))
                .hasMessageStartingWith("shrinkage along the cloth: must be 0 to 30 %");
        assertThatThrownBy(() -> Effort.tries(0)).hasMessage("effort of a lay: must be 1 to 1000000 tries; got 0");
    }

    @Test
    void more_effort_is_never_worse() {
        Piece[] pieces = {
            rectangle("a", new Cut.Single(3), 310, 520),
            rectangle("b", new Cut.Single(4), 170, 230),
            rectangle("c", new Cut.Single(2), 440, 130)
        };
        List<CutList.Item> items = Arrays.stream(pieces)
                .map(piece -> new CutList.Item(OWNER, 1, 3, piece))
                .toList();
        double before = Double.POSITIVE_INFINITY;
        for (int tries : new int[] {1, 4, 40, 400, 1500, 3000, 5000}) {
            double length = Lay.of(new CutList(items), CLOTH, NONE, Spread.single(cm(100)), Effort.tries(tries))
                    .length()
                    .mm();
            assertThat(length).isLessThanOrEqualTo(before);
            before = length;
        }
    }

    private static LaidPiece find(Lay lay, String name) {
        return lay.pieces().stream()
                .filter(laid -> laid.item().piece().name().value().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
