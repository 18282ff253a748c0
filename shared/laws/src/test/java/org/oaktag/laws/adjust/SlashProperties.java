package org.oaktag.laws.adjust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.mm;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.adjust.Closing;
import org.oaktag.adjust.LineAcross;
import org.oaktag.adjust.Place;
import org.oaktag.adjust.Slash;
import org.oaktag.adjust.SlashAndSpread;
import org.oaktag.adjust.Spread;
import org.oaktag.adjust.SpreadPiece;
import org.oaktag.garment.Edge;
import org.oaktag.garment.End;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.laws.adjust.PieceArbitraries.Crossed;
import org.oaktag.measure.Angle;

/** What slashing and spreading adds, and what it leaves alone. */
@Domain(PieceArbitraries.class)
@Domain(DomainContext.Global.class)
class SlashProperties {

    private static final double LENGTH = 5e-6;
    private static final double AREA = 1e-4;
    private static final Name ONE = Name.of("one");
    private static final Name THREE = Name.of("three");

    @Property(tries = 200)
    void a_parallel_spread_by_d_adds_d_to_both_crossed_edges_and_d_times_the_slash_to_the_area(
            @ForAll Crossed crossed, @ForAll @DoubleRange(min = 0, max = 60) double d) {
        Piece piece = crossed.piece();
        SpreadPiece spread = spread(crossed, Spread.parallel(mm(d)), Closing.straight());
        assertThat(spread.added(ONE).mm()).isCloseTo(d, within(LENGTH));
        assertThat(spread.added(THREE).mm()).isCloseTo(d, within(LENGTH));
        assertThat(spread.addedArea()).isCloseTo(d * length(crossed), within(AREA));
        othersAreAsLongAsTheyWere(piece, spread.piece());
    }

    @Property(tries = 200)
    void a_hinged_slash_adds_the_chord_to_the_open_edge_and_leaves_the_hinge_edge_as_long_as_it_was(
            @ForAll Crossed crossed, @ForAll @DoubleRange(min = 0, max = 20) double degrees, @ForAll End hinge) {
        double slash = length(crossed);
        double t = Math.toRadians(degrees);
        SpreadPiece spread = spread(crossed, Spread.hinged(hinge, Angle.degrees(degrees)), Closing.straight());
        Name open = hinge == End.END ? ONE : THREE;
        Name shut = hinge == End.END ? THREE : ONE;
        assertThat(spread.added(open).mm()).isCloseTo(2 * slash * Math.sin(t / 2), within(LENGTH));
        assertThat(spread.added(shut).mm()).isCloseTo(0, within(LENGTH));
        assertThat(spread.addedArea()).isCloseTo(slash * slash * Math.sin(t) / 2, within(AREA));
        othersAreAsLongAsTheyWere(crossed.piece(), spread.piece());
    }

    @Property(tries = 100)
    void an_opening_is_the_chord_of_its_angle(
            @ForAll Crossed crossed, @ForAll @DoubleRange(min = 0, max = 60) double opening, @ForAll End hinge) {
        SpreadPiece spread = spread(crossed, Spread.opened(hinge, mm(opening)), Closing.straight());
        assertThat(spread.added(hinge == End.END ? ONE : THREE).mm()).isCloseTo(opening, within(LENGTH));
    }

    @Property(tries = 100)
    void a_smooth_closing_has_no_corner_where_it_joins_the_edge(
            @ForAll Crossed crossed,
            @ForAll @DoubleRange(min = 1, max = 15) double degrees,
            @ForAll @DoubleRange(min = 0, max = 8) double reach) {
        SpreadPiece spread = spread(crossed, Spread.hinged(End.END, Angle.degrees(degrees)), Closing.smooth(mm(reach)));
        Path open = spread.piece().path(ONE);
        for (int i = 1; i < open.curves().size(); i++) {
            double turn = open.curves()
                    .get(i - 1)
                    .directionAt(1)
                    .angleTo(open.curves().get(i).directionAt(0));
            assertThat(turn).as("corner before curve %d", i).isCloseTo(0, within(1e-6));
        }
        assertThat(spread.piece().outline().selfCrossings()).isEmpty();
    }

    @Property(tries = 100)
    void two_slashes_add_what_each_adds(
            @ForAll Crossed crossed,
            @ForAll @DoubleRange(min = 0, max = 30) double first,
            @ForAll @DoubleRange(min = 0, max = 30) double second) {
        LineAcross one = LineAcross.straight(placeAt(ONE, 0.3), placeAt(THREE, 0.7));
        LineAcross other = LineAcross.straight(placeAt(ONE, 0.7), placeAt(THREE, 0.3));
        SpreadPiece both = new SlashAndSpread(
                        crossed.piece().name(),
                        List.of(
                                Slash.of(one, Spread.parallel(mm(first))),
                                Slash.of(other, Spread.opened(End.END, mm(second)))),
                        Closing.straight())
                .spread(crossed.piece());
        assertThat(both.added(ONE).mm()).isCloseTo(first + second, within(LENGTH));
        assertThat(both.added(THREE).mm()).isCloseTo(first, within(LENGTH));
    }

    @Property(tries = 100)
    void notches_keep_their_distance_from_their_own_end(
            @ForAll Crossed crossed, @ForAll @DoubleRange(min = 0, max = 20) double degrees) {
        SpreadPiece spread = spread(crossed, Spread.hinged(End.END, Angle.degrees(degrees)), Closing.straight());
        assertThat(spread.piece().notches()).hasSameSizeAs(crossed.piece().notches());
        for (Notch notch : crossed.piece().notches()) {
            Notch now = spread.piece().notch(notch.edge(), notch.name()).orElseThrow();
            assertThat(now.distance()).as("%s", notch).isCloseTo(notch.distance(), within(1e-5));
        }
    }

    private static Place placeAt(Name edge, double share) {
        return Place.share(edge, share);
    }

    private static void othersAreAsLongAsTheyWere(Piece before, Piece after) {
        for (Edge edge : before.edges()) {
            if (!edge.name().equals(ONE) && !edge.name().equals(THREE)) {
                assertThat(after.path(edge.name()).length())
                        .isCloseTo(edge.path().length(), within(LENGTH));
            }
        }
    }

    private static double length(Crossed crossed) {
        return crossed.from().on(crossed.piece()).distanceTo(crossed.to().on(crossed.piece()));
    }

    private static SpreadPiece spread(Crossed crossed, Spread spread, Closing closing) {
        return new SlashAndSpread(
                        crossed.piece().name(),
                        List.of(Slash.of(LineAcross.straight(crossed.from(), crossed.to()), spread)),
                        closing)
                .spread(crossed.piece());
    }
}
