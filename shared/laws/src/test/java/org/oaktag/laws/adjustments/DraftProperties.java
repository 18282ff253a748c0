package org.oaktag.laws.adjustments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.blocks.KnitTop;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Ease;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;

/** What every drafted block is. */
@Domain(TopArbitraries.class)
@Domain(DomainContext.Global.class)
class DraftProperties {

    @Property(tries = 400)
    void every_seam_of_a_block_is_true(@ForAll Garment block) {
        assertThat(block.walkSeams().untrue()).isEmpty();
    }

    @Property(tries = 200)
    void the_neckline_is_the_neck_base_girth_and_its_ease(@ForAll BodyMeasurements body, @ForAll Ease ease) {
        Garment block = KnitTop.draft(body, ease, TopArbitraries.CLOTH);
        assertThat(block.finished(TopNames.NECKLINE_GIRTH).mm())
                .isCloseTo(
                        body.measure(BodyMeasure.NECK_BASE_GIRTH)
                                .plus(ease.at(BodyMeasure.NECK_BASE_GIRTH))
                                .mm(),
                        within(1e-5));
    }

    @Property(tries = 200)
    void chest_and_sleeve_are_at_least_the_body_and_its_ease_or_the_draft_says_so(
            @ForAll BodyMeasurements body, @ForAll Ease ease) {
        Garment block = KnitTop.draft(body, ease, TopArbitraries.CLOTH);
        assertThat(block.finished(TopNames.CHEST_GIRTH).mm())
                .isCloseTo(
                        body.measure(BodyMeasure.BUST_GIRTH)
                                .plus(ease.at(BodyMeasure.BUST_GIRTH))
                                .mm(),
                        within(1e-6));
        if (block.cautions().stream().anyMatch(caution -> caution.contains("narrower than asked"))) {
            return;
        }
        assertThat(block.finished(TopNames.SLEEVE_WIDTH).mm())
                .isGreaterThan(body.measure(BodyMeasure.UPPER_ARM_GIRTH)
                                .plus(ease.at(BodyMeasure.UPPER_ARM_GIRTH))
                                .mm()
                        - 1);
    }

    @Property(tries = 200)
    void no_outline_crosses_itself_and_every_outline_runs_clockwise(@ForAll Garment block) {
        for (Piece piece : block.pieces()) {
            assertThat(piece.outline().isClockwise()).as("%s", piece.name()).isTrue();
            assertThat(piece.outline().selfCrossings()).as("%s", piece.name()).isEmpty();
        }
    }

    @Property(tries = 200)
    void corners_that_must_be_square_are_square(@ForAll Garment block) {
        for (Name name : List.of(TopNames.FRONT, TopNames.BACK)) {
            Piece piece = block.piece(name);
            for (Name edge :
                    List.of(TopEdges.NECKLINE, TopEdges.SHOULDER, TopEdges.ARMHOLE, EdgeNames.HEM, EdgeNames.CENTRE)) {
                for (End end : End.values()) {
                    assertThat(piece.cornerAngle(edge, end).degrees())
                            .as("%s of %s.%s", end, name, edge)
                            .isCloseTo(90, within(1e-5));
                }
            }
        }
    }

    @Property(tries = 100)
    void the_other_hand_of_a_piece_has_the_same_lengths_and_comes_back(@ForAll Garment block) {
        for (Piece piece : block.pieces()) {
            Piece other = piece.mirrored();
            assertThat(other.outline().isClockwise()).isTrue();
            assertThat(other.outline().area()).isCloseTo(piece.outline().area(), within(1e-6));
            piece.edges()
                    .forEach(edge -> assertThat(other.path(edge.name()).length())
                            .isCloseTo(edge.path().length(), within(1e-6)));
            assertThat(other.mirrored()).isEqualTo(piece);
        }
    }
}
