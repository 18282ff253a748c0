package org.oaktag.adjust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.oaktag.adjust.SquareOfCloth.LEFT;
import static org.oaktag.adjust.SquareOfCloth.LOWER;
import static org.oaktag.adjust.SquareOfCloth.NAME;
import static org.oaktag.adjust.SquareOfCloth.RIGHT;
import static org.oaktag.adjust.SquareOfCloth.UPPER;
import static org.oaktag.measure.Length.mm;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Dart;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeFinish;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Wearer;
import org.oaktag.measure.Angle;

/** Whatever a step makes of an edge that is turned back is turned back, and nothing else is. */
class FinishOfStretchesTest {

    private static final Name DART = Name.of("dart");
    private static final LineAcross DOWN = LineAcross.straight(Place.share(UPPER, 0.5), Place.share(LOWER, 0.5));
    private static final EdgeRef SIDE = EdgeRef.of(NAME, RIGHT);
    private static final EdgeRef HEM = EdgeRef.of(NAME, LOWER);

    private static Piece hemmed(Cut cut) {
        Piece square = SquareOfCloth.cut(cut);
        return square.withEdges(square.edges().stream()
                .map(edge -> edge.name().equals(LOWER) ? edge.withFinish(EdgeFinish.TURNED_BACK) : edge)
                .toList());
    }

    private static Garment garment(Cut cut) {
        return Garment.of("square", Wearer.of("nobody", false, Map.of()), List.of(hemmed(cut)), List.of(), List.of());
    }

    static Stream<Step> steps() {
        return Stream.of(
                Pieces.slashAndSpread(NAME, Slash.of(DOWN, Spread.parallel(mm(30)))),
                Pieces.slashAndSpread(NAME, Slash.of(DOWN, Spread.hinged(End.START, Angle.degrees(20)))),
                Pieces.splitPiece(NAME, DOWN, Part.of(Name.of("one"), LEFT), Part.of(NAME, RIGHT), Name.of("joint")),
                Pieces.mirrorPiece(NAME),
                Pieces.movePoint(NAME, Place.share(LOWER, 0.5), mm(0), mm(10), mm(60)),
                Pieces.extendEdge(HEM, mm(20)),
                Pieces.extendEdge(SIDE, mm(20)),
                Pieces.cutOnFacing(SIDE, mm(30)),
                Darts.openDart(NAME, DART, Place.share(LOWER, 0.5), mm(40), mm(80)));
    }

    @ParameterizedTest
    @MethodSource("steps")
    void what_comes_of_a_hem_is_a_hem(Step step) {
        Garment after = garment(Cut.single()).adjust(step);
        after.pieces().forEach(FinishOfStretchesTest::assertFoot);
    }

    @Test
    void both_halves_of_an_unfolded_hem_are_hems() {
        assertFoot(garment(Cut.onFold(LEFT)).adjust(Pieces.unfoldPiece(NAME)).piece(NAME));
    }

    @Test
    void a_hem_that_was_split_and_joined_is_one_hem() {
        Name one = Name.of("one");
        Name other = Name.of("other");
        Garment split = garment(Cut.single())
                .adjust(Pieces.splitPiece(
                        NAME,
                        DOWN,
                        Part.of(one, Name.of("joint one")),
                        Part.of(other, Name.of("joint other")),
                        Name.of("joint")));
        Garment joined = split.adjust(Pieces.joinPieces(
                EdgeRef.of(one, Name.of("joint one")), EdgeRef.of(other, Name.of("joint other")), NAME));
        assertFoot(joined.piece(NAME));
    }

    @Test
    void a_dart_that_moves_to_a_hem_and_away_leaves_it_a_hem() {
        Garment moved = garment(Cut.single())
                .adjust(Darts.openDart(NAME, DART, Place.share(UPPER, 0.5), mm(20), mm(100)))
                .adjust(Darts.moveDart(NAME, DART, Place.share(LOWER, 0.5)));
        Piece parted = moved.piece(NAME);
        assertThat(parted.edge(LOWER).finish()).isEqualTo(EdgeFinish.TURNED_BACK);
        assertThat(parted.edge(Dart.past(LOWER, DART)).finish()).isEqualTo(EdgeFinish.TURNED_BACK);
        assertThat(parted.edge(Dart.legA(DART)).finish()).isEqualTo(EdgeFinish.PLAIN);
        Piece eased = moved.adjust(Darts.easeDart(NAME, DART)).piece(NAME);
        assertThat(eased.edge(LOWER).finish()).isEqualTo(EdgeFinish.TURNED_BACK);
        assertThat(eased.edge(UPPER).finish()).isEqualTo(EdgeFinish.PLAIN);
    }

    @Test
    void a_facing_of_its_own_begins_and_ends_as_the_edges_beside_it() {
        Piece facing = Pieces.separateFacing(
                        SIDE, mm(40), Name.of("facing"), hemmed(Cut.single()).cloth())
                .facing(hemmed(Cut.single()));
        assertFoot(facing);
    }

    /**
     * The foot of the square is what lies below 150 mm at both ends and is no leg of a dart. The loose edge of a facing is
     * neatened.
     */
    private static void assertFoot(Piece piece) {
        for (Edge edge : piece.edges()) {
            boolean low = edge.path().start().y() > 150 && edge.path().end().y() > 150;
            boolean expected = low || edge.name().value().startsWith(LOWER.value());
            boolean loose = edge.name().equals(CutOnFacing.facing(RIGHT));
            assertThat(edge.finish())
                    .as("%s of %s", edge.name(), piece.name())
                    .isEqualTo(expected ? EdgeFinish.TURNED_BACK : loose ? EdgeFinish.NEATENED : EdgeFinish.PLAIN);
        }
        assertThat(piece.edges()).anyMatch(edge -> edge.finish() == EdgeFinish.TURNED_BACK);
    }
}
