package org.oaktag.laws.adjust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.mm;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.adjust.CutOnFacing;
import org.oaktag.adjust.LineAcross;
import org.oaktag.adjust.Pieces;
import org.oaktag.adjust.Place;
import org.oaktag.adjust.Slash;
import org.oaktag.adjust.Spread;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.PathNearest;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;
import org.oaktag.laws.adjustments.TopArbitraries;

/** What the steps that redraw an edge move, and what they leave to the last bit. */
@Domain(PieceArbitraries.class)
@Domain(TopArbitraries.class)
@Domain(DomainContext.Global.class)
class EdgeProperties {

    private static final double DRAWN = 2e-3;
    private static final Name ONE = Name.of("one");
    private static final Name TWO = Name.of("two");

    @Property(tries = 150)
    void a_moved_point_takes_along_what_is_within_reach_and_nothing_else(
            @ForAll Piece piece,
            @ForAll @DoubleRange(min = -15, max = 15) double right,
            @ForAll @DoubleRange(min = -15, max = 15) double down,
            @ForAll @DoubleRange(min = 40, max = 90) double reach) {
        Piece moved = Pieces.movePoint(piece.name(), Place.corner(ONE, End.END), mm(right), mm(down), mm(reach))
                .on(piece);
        Point corner = piece.corner(ONE, End.END);
        assertThat(moved.corner(ONE, End.END).distanceTo(corner.plus(Vector.of(right, down))))
                .isLessThan(1e-9);
        Path before = piece.path(ONE);
        Path after = moved.path(ONE);
        for (double at = 0; at < before.length() - reach; at += 10) {
            assertThat(after.pointAt(at).distanceTo(before.pointAt(at))).isLessThan(1e-6);
        }
        assertThat(after.endDirection().minus(before.endDirection()).length())
                .as("arrives as it did")
                .isLessThan(1e-9);
        assertThat(moved.path(TWO)
                        .startDirection()
                        .minus(piece.path(TWO).startDirection())
                        .length())
                .as("leaves as it did")
                .isLessThan(1e-9);
        hasNoCornerInside(after);
        hasNoCornerInside(moved.path(TWO));
    }

    @Property(tries = 150)
    void a_point_inside_an_edge_is_moved_without_a_corner(
            @ForAll Piece piece,
            @ForAll @DoubleRange(min = 0.35, max = 0.65) double share,
            @ForAll @DoubleRange(min = -12, max = 12) double right,
            @ForAll @DoubleRange(min = -12, max = 12) double down) {
        Piece moved = Pieces.movePoint(piece.name(), Place.share(ONE, share), mm(right), mm(down), mm(60))
                .on(piece);
        Point to = Place.share(ONE, share).on(piece).plus(Vector.of(right, down));
        assertThat(moved.path(ONE).nearest(to).distance()).isLessThan(1e-6);
        hasNoCornerInside(moved.path(ONE));
        for (Edge edge : piece.edges()) {
            if (!edge.name().equals(ONE)) {
                assertThat(moved.edge(edge.name())).isEqualTo(edge);
            }
        }
    }

    @Property(tries = 150)
    void an_extended_edge_lies_everywhere_at_its_width_and_taking_it_off_restores_the_piece(
            @ForAll Piece piece, @ForAll @DoubleRange(min = 1, max = 15) double by) {
        Assume.that(piece.cornerAngle(ONE, End.START).degrees() < 150
                && piece.cornerAngle(ONE, End.END).degrees() < 150);
        EdgeRef edge = EdgeRef.of(piece.name(), ONE);
        Piece extended = Pieces.extendEdge(edge, mm(by)).on(piece);
        Path old = piece.path(ONE);
        Path now = extended.path(ONE);
        assertThat(extended.outline().signedArea())
                .isGreaterThan(piece.outline().signedArea());
        distancesAre(by, now, old, 0);
        // At an obtuse corner the parallel of a curved edge is cut short, and comes back straight there.
        int ends = old.curves().get(0) instanceof Line ? 0 : 5;
        distancesAre(0, Pieces.extendEdge(edge, mm(-by)).on(extended).path(ONE), old, ends);
    }

    /**
     * Points of a path that lie square off another one lie at this distance from it; what lies beyond its ends does not
     * count.
     */
    private static void distancesAre(double expected, Path path, Path from, int leftOut) {
        int counted = 0;
        for (int i = leftOut; i <= 20 - leftOut; i++) {
            PathNearest nearest = from.nearest(path.pointAt(path.length() * i / 20));
            if (nearest.distanceAlong() > 1e-3 && nearest.distanceAlong() < from.length() - 1e-3) {
                assertThat(nearest.distance()).as("at %d of 20", i).isCloseTo(expected, within(DRAWN));
                counted++;
            }
        }
        assertThat(counted).isGreaterThan(6);
    }

    @Property(tries = 60)
    void an_extended_hem_adds_its_width_to_what_is_square_to_it(
            @ForAll Garment block, @ForAll @DoubleRange(min = 1, max = 200) double by) {
        Garment longer = block.adjust(Pieces.extendEdge(EdgeRef.of(TopNames.BACK, EdgeNames.HEM), mm(by)));
        assertThat(longer.piece(TopNames.BACK).path(EdgeNames.CENTRE).length())
                .isCloseTo(block.piece(TopNames.BACK).path(EdgeNames.CENTRE).length() + by, within(1e-6));
        assertThat(longer.piece(TopNames.BACK).outline().selfCrossings()).isEmpty();
    }

    @Property(tries = 60)
    void a_cut_on_facing_lies_on_the_piece_when_it_is_folded_in(
            @ForAll Garment block, @ForAll @DoubleRange(min = 10, max = 60) double width) {
        Garment open = block.withPiece(block.piece(TopNames.FRONT).withCut(Cut.pair()));
        Garment faced = open.adjust(Pieces.cutOnFacing(EdgeRef.of(TopNames.FRONT, EdgeNames.CENTRE), mm(width)));
        Piece front = faced.piece(TopNames.FRONT);
        Transform fold = Transform.mirrorX(0);
        for (Name neighbour : new Name[] {TopEdges.NECKLINE, EdgeNames.HEM}) {
            assertThat(front.path(neighbour))
                    .isEqualTo(block.piece(TopNames.FRONT).path(neighbour));
            Path facing = front.path(CutOnFacing.facing(neighbour));
            for (int i = 0; i <= 10; i++) {
                Point folded = fold.apply(facing.pointAt(facing.length() * i / 10));
                assertThat(front.path(neighbour).nearest(folded).distance()).isLessThan(1e-6);
            }
        }
        Path edge = front.path(CutOnFacing.facing(EdgeNames.CENTRE));
        assertThat(edge.start().x()).isCloseTo(-width, within(1e-6));
        assertThat(edge.end().x()).isCloseTo(-width, within(1e-6));
        for (FinishedMeasure measure : block.measures()) {
            assertThat(faced.finished(measure.name()).mm())
                    .as("%s", measure.name())
                    .isCloseTo(measure.of(block).mm(), within(1e-9));
        }
        assertThat(faced.walkSeams().untrue()).isEmpty();
    }

    @Property(tries = 60)
    void a_separate_facing_is_the_edge_itself_and_of_an_even_width(
            @ForAll Garment block, @ForAll @DoubleRange(min = 20, max = 50) double width) {
        Name facing = Name.of("back neck facing");
        Garment faced = block.adjust(Pieces.separateFacing(
                EdgeRef.of(TopNames.BACK, TopEdges.NECKLINE), mm(width), facing, TopArbitraries.CLOTH));
        Piece made = faced.piece(facing);
        assertThat(made.path(TopEdges.NECKLINE))
                .isEqualTo(block.piece(TopNames.BACK).path(TopEdges.NECKLINE));
        assertThat(made.cut()).isEqualTo(Cut.onFold(EdgeNames.CENTRE));
        assertThat(made.path(EdgeNames.CENTRE).length()).isCloseTo(width, within(DRAWN));
        Path inner = made.path(CutOnFacing.facing(TopEdges.NECKLINE));
        for (int i = 1; i < 10; i++) {
            Point on = inner.pointAt(inner.length() * i / 10);
            assertThat(made.path(TopEdges.NECKLINE).nearest(on).distance())
                    .as("at %d tenths", i)
                    .isGreaterThan(width - DRAWN);
        }
        assertThat(made.outline().selfCrossings()).isEmpty();
        assertThat(faced.walkSeams().untrue()).isEmpty();
        assertThat(faced.walkSeams().seam(facing).difference().mm()).isEqualTo(0);
    }

    @Property(tries = 60)
    void a_trued_corner_runs_on_smoothly_and_truing_twice_is_truing_once(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = -12, max = 12) double right,
            @ForAll @DoubleRange(min = 30, max = 60) double reach) {
        Garment bent = block.adjust(Pieces.slashAndSpread(
                TopNames.FRONT,
                Slash.of(
                        LineAcross.straight(Place.share(EdgeNames.HEM, 0.5), Place.share(TopEdges.SHOULDER, 0.5)),
                        Spread.opened(End.END, mm(20 + right)))));
        Garment trued = bent.adjust(Pieces.trueCorner(TopNames.SIDE_SEAM, End.END, mm(reach)));
        assertThat(trued.walkSeams().seam(TopNames.SIDE_SEAM).angleAt(End.END).degrees())
                .isCloseTo(180, within(1e-6));
        for (Name piece : new Name[] {TopNames.FRONT, TopNames.BACK}) {
            assertThat(trued.piece(piece).path(EdgeNames.SIDE))
                    .as("the sewn edge")
                    .isEqualTo(bent.piece(piece).path(EdgeNames.SIDE));
            hasNoCornerInside(trued.piece(TopNames.BACK).path(EdgeNames.HEM));
        }
        assertThat(trued.adjust(Pieces.trueCorner(TopNames.SIDE_SEAM, End.END, mm(reach)))
                        .walkSeams()
                        .seam(TopNames.SIDE_SEAM)
                        .angleAt(End.END)
                        .degrees())
                .isCloseTo(180, within(1e-6));
    }

    @Property(tries = 20)
    void amounts_that_do_not_work_are_refused_with_the_range_that_does(@ForAll Piece piece) {
        double length = Math.min(piece.path(ONE).length(), piece.path(TWO).length());
        assertThatThrownBy(
                        () -> Pieces.movePoint(piece.name(), Place.corner(ONE, End.END), mm(5), mm(5), mm(length + 1))
                                .on(piece))
                .hasMessageContaining("at most " + mm(length).roundedDown().text());
        assertThatThrownBy(() -> Place.along(ONE, End.START, mm(1e4)).on(piece))
                .hasMessageContaining(
                        "0 to " + piece.edge(ONE).length().roundedDown().text());
        assertThatThrownBy(() -> Pieces.unfoldPiece(piece.name()).on(piece))
                .hasMessageContaining("must be cut on the fold");
    }

    private static void hasNoCornerInside(Path path) {
        for (int i = 1; i < path.curves().size(); i++) {
            double turn = path.curves()
                    .get(i - 1)
                    .directionAt(1)
                    .angleTo(path.curves().get(i).directionAt(0));
            assertThat(turn).as("before curve %d", i).isCloseTo(0, within(1e-6));
        }
    }
}
