package org.oaktag.laws.adjust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.mm;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.PatternException;
import org.oaktag.adjust.LineAcross;
import org.oaktag.adjust.Part;
import org.oaktag.adjust.PieceSplit;
import org.oaktag.adjust.Pieces;
import org.oaktag.adjust.Place;
import org.oaktag.adjust.SplitPiece;
import org.oaktag.adjust.Step;
import org.oaktag.adjustments.Armholes;
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
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.laws.adjust.PieceArbitraries.Crossed;
import org.oaktag.laws.adjustments.TopArbitraries;
import org.oaktag.testkit.laws.StepLaws;

/** Joining undoes splitting; mirroring and unfolding keep every length. */
@Domain(PieceArbitraries.class)
@Domain(TopArbitraries.class)
@Domain(DomainContext.Global.class)
class JoinProperties {

    private static final double LENGTH = 1e-5;
    private static final Name LINE = Name.of("line");
    private static final Name OTHER = Name.of("other");

    @Property(tries = 150)
    void joining_the_parts_of_a_split_piece_restores_it_wherever_one_of_them_was_laid(
            @ForAll Crossed crossed,
            @ForAll @DoubleRange(min = -20, max = 20) double bow,
            @ForAll @DoubleRange(min = -3, max = 3) double turn) {
        Piece whole = crossed.piece();
        PieceSplit split = new SplitPiece(
                        whole.name(),
                        LineAcross.bowed(crossed.from(), crossed.to(), mm(bow)),
                        Part.of(OTHER, LINE),
                        Part.of(whole.name(), LINE),
                        LINE)
                .split(whole);
        Piece strayed = split.left()
                .transformed(Transform.rotation(turn, Point.of(20, -40)).then(Transform.translation(500, 70)));
        Piece joined = Pieces.joinPieces(EdgeRef.of(whole.name(), LINE), EdgeRef.of(OTHER, LINE), whole.name())
                .join(split.right(), strayed);
        assertThat(joined.edges().stream().map(Edge::name).toList())
                .isEqualTo(whole.edges().stream().map(Edge::name).toList());
        for (Edge edge : whole.edges()) {
            samePlace(joined.path(edge.name()), edge.path());
        }
        assertThat(joined.notches()).hasSameSizeAs(whole.notches());
        for (Notch notch : whole.notches()) {
            assertThat(joined.notch(notch.edge(), notch.name()).orElseThrow().distance())
                    .isCloseTo(notch.distance(), within(LENGTH));
        }
    }

    @Property(tries = 60)
    void a_garment_that_is_split_and_joined_again_is_what_it_was(
            @ForAll Garment block, @ForAll @DoubleRange(min = 0.45, max = 0.7) double hem) {
        Name side = Name.of("front side");
        Garment split = block.adjust(Pieces.splitPiece(
                TopNames.FRONT,
                LineAcross.straight(Place.share(TopEdges.ARMHOLE, 0.65), Place.share(EdgeNames.HEM, hem)),
                Part.of(side, LINE),
                Part.of(TopNames.FRONT, LINE),
                LINE));
        Garment joined = split.adjust(
                Pieces.joinPieces(EdgeRef.of(TopNames.FRONT, LINE), EdgeRef.of(side, LINE), TopNames.FRONT));
        assertThat(joined.seams().stream().map(Seam::name).toList())
                .isEqualTo(block.seams().stream().map(Seam::name).toList());
        for (Seam seam : block.seams()) {
            assertThat(joined.seam(seam.name())).isEqualTo(seam);
        }
        assertThat(joined.walkSeams().untrue()).isEmpty();
        for (FinishedMeasure measure : block.measures()) {
            assertThat(joined.finished(measure.name()).mm())
                    .as("%s", measure.name())
                    .isCloseTo(measure.of(block).mm(), within(LENGTH));
        }
        assertThat(joined.piece(TopNames.FRONT).cut()).isEqualTo(Cut.onFold(EdgeNames.CENTRE));
        for (Edge edge : block.piece(TopNames.FRONT).edges()) {
            samePlace(joined.piece(TopNames.FRONT).path(edge.name()), edge.path());
        }
    }

    @Property(tries = 60)
    void a_sleeve_split_across_and_joined_again_has_its_length(
            @ForAll Garment block, @ForAll @DoubleRange(min = 0.3, max = 0.7) double down) {
        Garment split = block.adjust(Pieces.splitPiece(
                TopNames.SLEEVE,
                LineAcross.straight(
                        Place.share(TopEdges.UNDERARM_FRONT, down), Place.share(TopEdges.UNDERARM_BACK, 1 - down)),
                Part.of(OTHER, EdgeNames.TOP),
                Part.of(TopNames.SLEEVE, EdgeNames.BOTTOM),
                LINE));
        assertThat(split.walkSeams().untrue()).isEmpty();
        Garment joined = split.adjust(Pieces.joinPieces(
                EdgeRef.of(TopNames.SLEEVE, EdgeNames.BOTTOM), EdgeRef.of(OTHER, EdgeNames.TOP), TopNames.SLEEVE));
        assertThat(joined.walkSeams().untrue()).isEmpty();
        assertThat(joined.seams()).isEqualTo(block.seams());
        assertThat(joined.measures()).isEqualTo(block.measures());
        assertThat(joined.finished(TopNames.SLEEVE_LENGTH).mm())
                .isCloseTo(block.finished(TopNames.SLEEVE_LENGTH).mm(), within(LENGTH));
    }

    @Property(tries = 60)
    void edges_that_are_not_congruent_are_refused_with_what_parts_them(@ForAll Garment block) {
        double front = block.piece(TopNames.FRONT).path(TopEdges.ARMHOLE).length();
        double back = block.piece(TopNames.BACK).path(TopEdges.ARMHOLE).length();
        assertThatThrownBy(() -> Pieces.joinPieces(
                                EdgeRef.of(TopNames.FRONT, TopEdges.ARMHOLE),
                                EdgeRef.of(TopNames.BACK, TopEdges.ARMHOLE),
                                OTHER)
                        .join(block.piece(TopNames.FRONT), block.piece(TopNames.BACK)))
                .hasMessageContaining("must be congruent to be joined")
                .hasMessageContaining("lengths of " + mm(front).text() + " and " + mm(back).text());
    }

    @Property(tries = 40)
    void front_and_back_unfolded_and_joined_along_a_shoulder_are_sewn_and_measured_as_before(
            @ForAll Garment block, @ForAll boolean frontLiesStill) {
        StepLaws laws = new StepLaws();
        Name lies = frontLiesStill ? TopNames.FRONT : TopNames.BACK;
        Name moves = frontLiesStill ? TopNames.BACK : TopNames.FRONT;
        Step join = Pieces.joinPieces(
                EdgeRef.of(lies, TopEdges.SHOULDER), EdgeRef.of(moves, TopEdges.SHOULDER), Name.of("body"));
        assertThatThrownBy(() -> block.adjust(join))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("unfold the piece");
        Garment joined = laws.assertKept(
                block.adjust(Pieces.unfoldPiece(TopNames.FRONT)).adjust(Pieces.unfoldPiece(TopNames.BACK)), join);
        assertThat(joined.walkSeams().untrue()).isEmpty();
        for (FinishedMeasure measure : block.measures()) {
            assertThat(joined.finished(measure.name()).mm())
                    .as("%s", measure.name())
                    .isCloseTo(measure.of(block).mm(), within(LENGTH));
        }
    }

    @Property(tries = 40)
    void an_armhole_that_was_parted_anywhere_and_joined_again_takes_the_steps_of_an_armhole(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = 0.1, max = 0.9) double at,
            @ForAll boolean yokeLiesStill) {
        Name line = Name.of("line");
        Name yoke = Name.of("yoke");
        Garment parted = block.adjust(new SplitPiece(
                TopNames.FRONT,
                LineAcross.straight(Place.share(TopEdges.ARMHOLE, at), Place.share(EdgeNames.CENTRE, 0.5)),
                Part.of(yoke, line),
                Part.of(TopNames.FRONT, line),
                Name.of("yoke line")));
        EdgeRef first = EdgeRef.of(yokeLiesStill ? yoke : TopNames.FRONT, line);
        EdgeRef second = EdgeRef.of(yokeLiesStill ? TopNames.FRONT : yoke, line);
        Garment again = parted.adjust(Pieces.joinPieces(first, second, TopNames.FRONT));
        assertThat(again.piece(TopNames.FRONT).path(TopEdges.ARMHOLE).curves())
                .hasSameSizeAs(
                        block.piece(TopNames.FRONT).path(TopEdges.ARMHOLE).curves());
        for (Step step : List.of(Armholes.lowerArmhole(mm(8)), Armholes.scoopFrontArmhole(mm(-3)))) {
            Garment stepped = again.adjust(step);
            Garment expected = block.adjust(step);
            for (FinishedMeasure measure : block.measures()) {
                assertThat(stepped.finished(measure.name()).mm())
                        .as("%s after %s", measure.name(), step.name())
                        .isCloseTo(expected.finished(measure.name()).mm(), within(1e-5));
            }
        }
    }

    @Property(tries = 60)
    void a_mirrored_piece_is_sewn_and_measured_as_before_and_twice_is_never(@ForAll Garment block) {
        for (Name piece : new Name[] {TopNames.FRONT, TopNames.SLEEVE}) {
            Garment mirrored = block.adjust(Pieces.mirrorPiece(piece));
            assertThat(mirrored.walkSeams().untrue()).isEmpty();
            assertThat(mirrored.piece(piece).outline().signedArea())
                    .isCloseTo(block.piece(piece).outline().signedArea(), within(1e-6));
            for (FinishedMeasure measure : block.measures()) {
                assertThat(mirrored.finished(measure.name()).mm())
                        .as("%s", measure.name())
                        .isCloseTo(measure.of(block).mm(), within(LENGTH));
            }
            Garment back = mirrored.adjust(Pieces.mirrorPiece(piece));
            assertThat(back.pieces()).isEqualTo(block.pieces());
            assertThat(back.seams()).isEqualTo(block.seams());
            assertThat(back.measures()).isEqualTo(block.measures());
        }
    }

    @Property(tries = 60)
    void an_unfolded_piece_is_twice_its_half_and_its_own_mirror_image(@ForAll Garment block) {
        Garment whole = block.adjust(Pieces.unfoldPiece(TopNames.FRONT));
        Piece half = block.piece(TopNames.FRONT);
        Piece front = whole.piece(TopNames.FRONT);
        assertThat(front.outline().signedArea()).isCloseTo(2 * half.outline().signedArea(), within(1e-6));
        assertThat(front.outline().selfCrossings()).isEmpty();
        assertThat(front.cut()).isEqualTo(Cut.single());
        for (Edge edge : half.edges()) {
            if (!edge.name().equals(EdgeNames.CENTRE)) {
                assertThat(front.path(edge.name())).isEqualTo(edge.path());
                samePlace(
                        front.path(edge.name().with("mirrored")),
                        edge.path().transformed(Transform.mirrorX(0)).reversed());
            }
        }
        assertThat(front.cornerAngle(EdgeNames.HEM, End.END).degrees())
                .as("the hem runs on across the middle")
                .isCloseTo(180, within(1e-6));
        assertThat(whole.walkSeams().untrue()).isEmpty();
        for (FinishedMeasure measure : block.measures()) {
            assertThat(whole.finished(measure.name()).mm())
                    .as("%s", measure.name())
                    .isCloseTo(measure.of(block).mm(), within(LENGTH));
        }
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
