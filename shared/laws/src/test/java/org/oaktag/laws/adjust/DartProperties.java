package org.oaktag.laws.adjust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.mm;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.adjust.Darts;
import org.oaktag.adjust.Place;
import org.oaktag.garment.Dart;
import org.oaktag.garment.Edge;
import org.oaktag.garment.End;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.laws.adjust.PieceArbitraries.Crossed;

/** What a dart takes out, wherever it is moved. */
@Domain(PieceArbitraries.class)
@Domain(DomainContext.Global.class)
class DartProperties {

    private static final double LENGTH = 1e-5;
    private static final Name ONE = Name.of("one");
    private static final Name TWO = Name.of("two");
    private static final Name THREE = Name.of("three");
    private static final Name DART = Name.of("dart");
    private static final Name SECOND = Name.of("second dart");

    @Property(tries = 150)
    void a_moved_dart_keeps_its_angle_the_cloth_and_the_sewn_length_of_every_edge(
            @ForAll Piece plain,
            @ForAll @DoubleRange(min = 15, max = 50) double width,
            @ForAll @DoubleRange(min = 70, max = 130) double depth,
            @ForAll @DoubleRange(min = 0.15, max = 0.85) double to) {
        Piece before = darted(plain, width, depth);
        Piece after =
                Darts.moveDart(before.name(), DART, Place.share(THREE, to)).on(before);
        assertThat(Dart.in(after, DART).angle().degrees())
                .isCloseTo(Dart.in(before, DART).angle().degrees(), within(1e-9));
        assertThat(after.outline().signedArea()).isCloseTo(before.outline().signedArea(), within(1e-4));
        for (Edge edge : plain.edges()) {
            assertThat(sewn(after, edge.name()))
                    .as("%s", edge.name())
                    .isCloseTo(sewn(before, edge.name()), within(LENGTH));
        }
        assertThat(after.hasEdge(Dart.past(ONE, DART))).isFalse();
        assertThat(after.hasEdge(Dart.past(THREE, DART))).isTrue();
        assertThat(after.notches()).hasSameSizeAs(before.notches());
    }

    @Property(tries = 150)
    void moving_a_dart_there_and_back_restores_the_piece(
            @ForAll Piece plain,
            @ForAll @DoubleRange(min = 15, max = 50) double width,
            @ForAll @DoubleRange(min = 70, max = 130) double depth,
            @ForAll @DoubleRange(min = 0.15, max = 0.85) double to) {
        Piece before = darted(plain, width, depth);
        Piece there =
                Darts.moveDart(before.name(), DART, Place.share(THREE, to)).on(before);
        Piece back = Darts.moveDart(
                        before.name(),
                        DART,
                        Place.along(ONE, End.START, mm(before.path(ONE).length())))
                .on(there);
        assertThat(back.edges().stream().map(Edge::name).toList())
                .isEqualTo(before.edges().stream().map(Edge::name).toList());
        for (Edge edge : before.edges()) {
            samePlace(back.path(edge.name()), edge.path());
        }
        for (Notch notch : before.notches()) {
            Notch now = back.notch(notch.edge(), notch.name()).orElseThrow();
            assertThat(now.distance()).as("%s", notch).isCloseTo(notch.distance(), within(LENGTH));
        }
    }

    @Property(tries = 150)
    void a_dart_can_be_moved_along_its_own_edge_to_either_side(
            @ForAll Piece plain, @ForAll @DoubleRange(min = 15, max = 30) double width, @ForAll boolean past) {
        Piece before = darted(plain, width, 60);
        Name stretch = past ? Dart.past(ONE, DART) : ONE;
        Piece after =
                Darts.moveDart(before.name(), DART, Place.share(stretch, 0.5)).on(before);
        assertThat(sewn(after, ONE)).isCloseTo(sewn(before, ONE), within(LENGTH));
        double shareBefore = (past ? 1.5 : 0.5) * before.path(stretch).length();
        double first = past ? before.path(ONE).length() + before.path(stretch).length() / 2 : shareBefore;
        assertThat(after.path(ONE).length()).isCloseTo(first, within(LENGTH));
        assertThat(Dart.all(after)).hasSize(1);
    }

    @Property(tries = 150)
    void a_split_dart_shares_its_angle_and_moving_the_rest_after_it_moves_it_whole(
            @ForAll Piece plain,
            @ForAll @DoubleRange(min = 15, max = 40) double width,
            @ForAll @DoubleRange(min = 0.1, max = 0.9) double share) {
        Piece before = darted(plain, width, 90);
        double whole = Dart.in(before, DART).angle().degrees();
        Piece split = Darts.splitDart(before.name(), DART, Place.share(THREE, 0.5), share, SECOND)
                .on(before);
        assertThat(Dart.in(split, SECOND).angle().degrees()).isCloseTo(share * whole, within(1e-9));
        assertThat(Dart.in(split, DART).angle().degrees()).isCloseTo((1 - share) * whole, within(1e-9));
        for (Name edge : plain.edges().stream().map(Edge::name).toList()) {
            assertThat(sewn(split, edge)).isCloseTo(sewn(before, edge), within(LENGTH));
        }
        Piece rest = Darts.moveDart(before.name(), DART, Place.share(TWO, 0.5)).on(split);
        assertThat(Dart.all(rest).stream()
                        .mapToDouble(dart -> dart.angle().degrees())
                        .sum())
                .isCloseTo(whole, within(1e-9));
    }

    @Property(tries = 150)
    void a_dart_that_is_eased_in_gives_back_what_its_mouth_took(
            @ForAll Piece plain, @ForAll @DoubleRange(min = 15, max = 50) double width) {
        Piece before = darted(plain, width, 90);
        Piece eased = Darts.easeDart(before.name(), DART).on(before);
        double ease = eased.path(ONE).length() - sewn(before, ONE);
        assertThat(ease)
                .isGreaterThanOrEqualTo(Dart.in(before, DART).width().mm() - LENGTH)
                .isLessThan(1.1 * width);
        assertThat(eased.edges().stream().map(Edge::name).toList())
                .isEqualTo(plain.edges().stream().map(Edge::name).toList());
        samePlace(eased.path(TWO), plain.path(TWO));
    }

    @Property(tries = 150)
    void the_peak_of_a_dart_lies_on_the_edge_when_it_is_folded_and_laid_over(
            @ForAll Piece plain,
            @ForAll @DoubleRange(min = 15, max = 50) double width,
            @ForAll @DoubleRange(min = 70, max = 130) double depth,
            @ForAll End towards) {
        Piece before = darted(plain, width, depth);
        Piece trued = Darts.trueDartFold(before.name(), DART, towards).on(before);
        Dart dart = Dart.in(trued, DART);
        Path peak = line(trued, "dart peak");
        Path fold = line(trued, "dart fold");
        boolean toA = towards == End.START;
        Transform overLeg = Transform.mirror(dart.apex(), toA ? dart.mouthA() : dart.mouthB());
        Transform overFold = Transform.mirror(fold.start(), fold.end());
        Path edge = before.path(toA ? ONE : Dart.past(ONE, DART));
        assertThat(peak.start()).isEqualTo(dart.mouthA());
        assertThat(peak.end()).isEqualTo(dart.mouthB());
        for (int i = 0; i <= 20; i++) {
            Point point = peak.pointAt(peak.length() * i / 20);
            boolean besideA = i <= 10;
            // The half that is not next to the leg is folded first, then both are laid over along the leg.
            Point folded = besideA == toA ? point : overFold.apply(point);
            assertThat(edge.nearest(overLeg.apply(folded)).distance())
                    .as("at %d of 20", i)
                    .isLessThan(1e-5);
        }
    }

    @Property(tries = 50)
    void a_dart_may_not_be_moved_onto_its_own_leg(@ForAll Crossed crossed) {
        Piece before = darted(crossed.piece(), 20, 90);
        for (Name leg : new Name[] {Dart.legA(DART), Dart.legB(DART)}) {
            assertThatThrownBy(() -> Darts.moveDart(before.name(), DART, Place.share(leg, 0.5))
                            .on(before))
                    .hasMessageContaining("must lie on an edge that is no leg of a dart");
        }
    }

    private static Piece darted(Piece plain, double width, double depth) {
        return Darts.openDart(plain.name(), DART, Place.share(ONE, 0.5), mm(width), mm(depth))
                .on(plain);
    }

    private static double sewn(Piece piece, Name edge) {
        return piece.edges().stream()
                .filter(each -> each.name().equals(edge) || each.name().value().startsWith(edge.value() + " past "))
                .mapToDouble(each -> each.path().length())
                .sum();
    }

    private static Path line(Piece piece, String name) {
        return piece.lines().stream()
                .filter(line -> line.name().equals(Name.of(name)))
                .map(InnerLine::path)
                .findFirst()
                .orElseThrow();
    }

    private static void samePlace(Path actual, Path expected) {
        assertThat(actual.length()).isCloseTo(expected.length(), within(LENGTH));
        for (int i = 0; i <= 10; i++) {
            double share = i / 10.0;
            assertThat(actual.pointAt(share * actual.length()).distanceTo(expected.pointAt(share * expected.length())))
                    .as("at %s", share)
                    .isLessThan(LENGTH);
        }
    }
}
