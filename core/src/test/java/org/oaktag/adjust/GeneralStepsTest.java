package org.oaktag.adjust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.adjust.SquareOfCloth.LEFT;
import static org.oaktag.adjust.SquareOfCloth.LOWER;
import static org.oaktag.adjust.SquareOfCloth.NAME;
import static org.oaktag.adjust.SquareOfCloth.RIGHT;
import static org.oaktag.adjust.SquareOfCloth.UPPER;
import static org.oaktag.measure.Length.mm;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.CutLine;
import org.oaktag.garment.Dart;
import org.oaktag.garment.DartCut;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.FoldedDart;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.garment.Wearer;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Percent;

class GeneralStepsTest {

    private static final Piece SQUARE = SquareOfCloth.cut(Cut.single());
    private static final Name DART = Name.of("dart");
    private static final LineAcross DOWN = LineAcross.straight(Place.share(UPPER, 0.5), Place.share(LOWER, 0.5));

    @Test
    void a_square_spread_by_30_mm_is_a_rectangle_of_four_straight_edges() {
        SpreadPiece spread = spread(SQUARE, DOWN, Spread.parallel(mm(30)));
        assertThat(spread.added(UPPER).mm()).isEqualTo(30);
        assertThat(spread.added(LOWER).mm()).isEqualTo(30);
        assertThat(spread.addedArea()).isCloseTo(6000, within(1e-9));
        assertThat(spread.piece().path(UPPER)).isEqualTo(Path.polyline(Point.of(0, 0), Point.of(230, 0)));
        assertThat(spread.piece().edges()).hasSize(4);
    }

    @Test
    void a_square_hinged_at_its_upper_edge_by_60_degrees_opens_by_the_length_of_the_slash() {
        SpreadPiece spread = spread(SQUARE, DOWN, Spread.hinged(End.START, Angle.degrees(60)));
        assertThat(spread.added(LOWER).mm()).isCloseTo(200, within(1e-9));
        assertThat(spread.added(UPPER).mm()).isZero();
        assertThat(spread.addedArea()).isCloseTo(10000 * Math.sqrt(3), within(1e-6));
    }

    @Test
    void a_seam_of_which_one_edge_is_much_shorter_is_not_notched_but_named_with_both_lengths_and_what_mends_it() {
        Piece other = SQUARE.renamed(Name.of("other"));
        Piece small = SQUARE.transformed(Transform.scale(0.3)).renamed(Name.of("small"));
        Garment sewn = Garment.of(
                "squares",
                Wearer.of("nobody", false, Map.of()),
                List.of(SQUARE, other, small),
                List.of(
                        Seam.flat(
                                Name.of("side"),
                                SeamSide.along(NAME, RIGHT),
                                SeamSide.along(small.name(), LEFT),
                                "cut the small square anew"),
                        Seam.flat(
                                Name.of("foot"), SeamSide.along(NAME, LOWER), SeamSide.along(other.name(), UPPER), "")),
                List.of());
        assertThatThrownBy(() -> sewn.adjust(new NotchSeams()))
                .isInstanceOf(PatternException.class)
                .hasMessage("seam 'side': must have two edges of like length for a notch to match them; got " + NAME
                        + ".right 200.0 mm and small.left 60.0 mm; cut the small square anew");
    }

    @Test
    void a_piece_cut_from_another_cloth_changes_nothing_else_and_says_so() {
        Garment before =
                Garment.of("square", Wearer.of("nobody", false, Map.of()), List.of(SQUARE), List.of(), List.of());
        Cloth other = Cloth.knit("another", Percent.percent(40)).as(Cloth.CONTRAST);
        Garment after = before.adjust(Pieces.cutFrom(NAME, other));
        assertThat(after.piece(NAME)).isEqualTo(SQUARE.withCloth(other));
        assertThat(after.history()).singleElement().satisfies(change -> {
            assertThat(change.title()).isEqualTo("cut the " + NAME + " from another cloth: cloth another");
            assertThat(change.pieces()).containsExactly(NAME);
            assertThat(change.moved()).isEmpty();
        });
    }

    /** A step of anyone's own, which lays the lower right corner beyond the left edge. */
    @Test
    void a_step_that_makes_an_outline_cross_itself_is_refused_whoever_wrote_it() {
        record Twist() implements Step {
            @Override
            public String name() {
                return "twist the square";
            }

            @Override
            public List<Amount> amounts() {
                return List.of();
            }

            @Override
            public Reshaped reshape(Garment garment) {
                Piece square = garment.piece(NAME);
                Point out = Point.of(-50, 100);
                return Reshaped.of(garment.withPiece(square.redrawn(Map.of(
                        RIGHT, Path.polyline(square.path(RIGHT).start(), out),
                        LOWER, Path.polyline(out, square.path(LOWER).end())))));
            }
        }
        Garment garment =
                Garment.of("square", Wearer.of("nobody", false, Map.of()), List.of(SQUARE), List.of(), List.of());
        assertThatThrownBy(() -> garment.adjust(new Twist()))
                .isInstanceOf(PatternException.class)
                .hasMessage("outline of the square: must not cross itself after a step; got one that does after"
                        + " 'twist the square'; take a smaller amount, or take the step before those that made the"
                        + " piece so narrow there");
    }

    @Test
    void the_fold_is_not_bent() {
        Piece folded = SquareOfCloth.cut(Cut.onFold(LEFT));
        LineAcross across = LineAcross.straight(Place.share(RIGHT, 0.5), Place.share(LEFT, 0.5));
        assertThat(spread(folded, across, Spread.parallel(mm(10))).added(LEFT).mm())
                .isEqualTo(10);
        assertThatThrownBy(() -> spread(folded, across, Spread.hinged(End.START, Angle.degrees(5))))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("must be straight, as it lies on the fold of the cloth");
    }

    @Test
    void amounts_out_of_range_are_refused_with_the_range() {
        assertThatThrownBy(() -> Spread.parallel(mm(-1)))
                .hasMessageContaining("must be 0.0 mm to 1000.0 mm; got -1.0 mm");
        assertThatThrownBy(() -> spread(SQUARE, DOWN, Spread.opened(End.START, mm(400))))
                .hasMessageContaining("it can be 0.0 mm to 282.8 mm")
                .hasMessageContaining("got 400.0 mm");
        assertThatThrownBy(() -> Closing.smooth(mm(150))
                        .across(
                                SQUARE.path(UPPER).sub(0, 100),
                                SQUARE.path(UPPER).sub(120, 200)))
                .hasMessageContaining("it can be 0.0 mm to 79.0 mm");
        assertThatThrownBy(() -> Darts.openDart(NAME, DART, Place.along(UPPER, End.START, mm(10)), mm(30), mm(50))
                        .on(SQUARE))
                .hasMessageContaining("up to 20.0 mm wide there; got 30.0 mm");
    }

    @Test
    void a_line_along_an_edge_is_no_line_across() {
        LineAcross along = LineAcross.straight(Place.share(UPPER, 0.2), Place.share(UPPER, 0.8));
        assertThatThrownBy(() -> spread(SQUARE, along, Spread.parallel(mm(10))))
                .hasMessageContaining("must not meet the outline between its ends");
    }

    @Test
    void a_drawn_line_may_reach_beyond_the_piece() {
        LaidLine line = LineAcross.drawn(Path.polyline(Point.of(-50, 100), Point.of(300, 100)))
                .on(SQUARE);
        assertThat(line.path().start()).isEqualTo(Point.of(0, 100));
        assertThat(line.from().edge()).isEqualTo(LEFT);
        assertThat(line.to().edge()).isEqualTo(RIGHT);
    }

    @Test
    void a_dart_parts_its_edge_in_two_and_lies_between_them() {
        Piece darted = Darts.openDart(NAME, DART, Place.share(UPPER, 0.5), mm(40), mm(80))
                .on(SQUARE);
        assertThat(darted.edges().stream().map(Edge::name))
                .containsExactly(UPPER, Dart.legA(DART), Dart.legB(DART), Dart.past(UPPER, DART), RIGHT, LOWER, LEFT);
        Dart dart = Dart.in(darted, DART);
        assertThat(dart.width().mm()).isEqualTo(40);
        assertThat(dart.apex().distanceTo(Point.of(100, 80))).isLessThan(1e-9);
        assertThat(Dart.all(darted)).containsExactly(dart);
    }

    @Test
    void a_dart_in_a_straight_edge_has_a_peak_that_stands_out_by_what_its_fold_is_longer() {
        Piece darted = Darts.openDart(NAME, DART, Place.share(UPPER, 0.5), mm(40), mm(80))
                .on(SQUARE);
        Piece trued = Darts.trueDartFold(NAME, DART, End.START).on(darted);
        Point tip = trued.lines().get(0).path().end();
        // Turned over along the leg, the edge leaves the mouth at twice the leg's slant: a triangle of half mouth 20
        // mm.
        double slant = Math.atan2(20, 80);
        assertThat(tip.x()).isCloseTo(100, within(1e-9));
        assertThat(tip.y()).isCloseTo(-20 * Math.tan(2 * slant), within(1e-6));
    }

    @Test
    void an_ordinary_dart_takes_an_ordinary_allowance_folded_and_not_slit() {
        Piece darted = Darts.openDart(NAME, DART, Place.share(UPPER, 0.5), mm(20), mm(110))
                .on(SQUARE);
        Allowances ten = Allowances.of("home", mm(10));
        assertThat(CutLine.of(darted, ten).outline().contains(Point.of(100, -9.9)))
                .isTrue();
        assertThatThrownBy(() -> CutLine.of(darted, ten.darts(DartCut.SLIT)))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("dart-leg");
    }

    @Test
    void the_cloth_of_a_dart_is_laid_down_or_towards_the_fold() {
        Piece onFold = SquareOfCloth.cut(Cut.onFold(RIGHT));
        Piece upright = Darts.openDart(NAME, DART, Place.share(UPPER, 0.5), mm(20), mm(110))
                .on(onFold);
        Piece level = Darts.openDart(NAME, DART, Place.share(LEFT, 0.5), mm(20), mm(110))
                .on(onFold);
        // Clockwise along the upper edge leg b is nearer to the right, and up the left edge leg a is the lower one.
        assertThat(FoldedDart.in(upright, DART).towards()).isEqualTo(End.END);
        assertThat(FoldedDart.in(level, DART).towards()).isEqualTo(End.START);
    }

    @Test
    void a_dart_of_unequal_legs_is_none() {
        assertThatThrownBy(() -> new Dart(DART, Point.of(0, 0), Point.of(10, 50), Point.of(30, 0)))
                .hasMessageContaining("must have legs of equal length; got 51.0 mm and 53.9 mm");
    }

    @Test
    void a_square_is_unfolded_to_a_rectangle() {
        Piece whole = Pieces.unfoldPiece(NAME).on(SquareOfCloth.cut(Cut.onFold(LEFT)));
        assertThat(whole.outline().signedArea()).isEqualTo(80000);
        assertThat(whole.edges().stream().map(edge -> edge.name().value()))
                .containsExactly("upper", "right", "lower", "lower mirrored", "right mirrored", "upper mirrored");
    }

    @Test
    void an_extended_square_grows_on_three_sides() {
        Piece longer = Pieces.extendEdge(EdgeRef.of(NAME, LOWER), mm(25)).on(SQUARE);
        assertThat(longer.path(RIGHT).length()).isCloseTo(225, within(1e-6));
        assertThat(longer.path(LEFT).length()).isCloseTo(225, within(1e-6));
        assertThat(longer.outline().signedArea()).isCloseTo(45000, within(1e-3));
    }

    private static SpreadPiece spread(Piece piece, LineAcross line, Spread spread) {
        return new SlashAndSpread(NAME, List.of(Slash.of(line, spread)), Closing.straight()).spread(piece);
    }
}
