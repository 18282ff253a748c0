package org.oaktag.laws.adjustments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.adjustments.Shoulders.extendShoulder;
import static org.oaktag.adjustments.Shoulders.moveShoulderBack;
import static org.oaktag.adjustments.Shoulders.moveShoulderForward;
import static org.oaktag.adjustments.Shoulders.shortenShoulder;
import static org.oaktag.adjustments.Shoulders.slopeShoulder;
import static org.oaktag.adjustments.Shoulders.squareShoulder;
import static org.oaktag.adjustments.Sleeves.fitCapToArmhole;
import static org.oaktag.measure.Length.mm;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.adjustments.Necklines;
import org.oaktag.blocks.TopBody;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Edge;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.measure.Angle;

/** What the steps of the shoulder keep, and what they move which way. */
@Domain(TopArbitraries.class)
@Domain(DomainContext.Global.class)
class ShoulderProperties {

    private static final double ROUNDING = 1e-9;
    private static final List<Name> ARMHOLE_SEAMS = List.of(TopNames.FRONT_ARMHOLE_SEAM, TopNames.BACK_ARMHOLE_SEAM);

    @Property(tries = 60)
    void extending_then_shortening_by_the_same_amount_restores_the_shoulder(
            @ForAll Garment block, @ForAll @DoubleRange(min = 0, max = 25) double by) {
        Garment longer = block.adjust(extendShoulder(mm(by)));
        Sound.assertSound(longer);
        Sound.assertBodySewsTrue(longer);
        assertThat(longer.finished(TopNames.SHOULDER_LENGTH).mm())
                .isCloseTo(block.finished(TopNames.SHOULDER_LENGTH).mm() + by, within(ROUNDING));
        assertThat(longer.piece(TopNames.SLEEVE)).isEqualTo(block.piece(TopNames.SLEEVE));
        Garment back = longer.adjust(shortenShoulder(mm(by)));
        for (Name piece : TopBody.HALVES) {
            Near.assertSame(
                    piece + " shoulder",
                    back.piece(piece).path(TopEdges.SHOULDER),
                    block.piece(piece).path(TopEdges.SHOULDER),
                    ROUNDING);
        }
    }

    @Property(tries = 60)
    void a_neckline_can_be_narrowed_or_widened_across_a_seam_that_moved_by_a_hair(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = -3, max = 3) double forward,
            @ForAll @DoubleRange(min = -10, max = 20) double along) {
        Garment moved = block.adjust(moveShoulderForward(mm(forward)));
        Garment redrawn = moved.adjust(Necklines.widenNeckline(mm(along)));
        Sound.assertSound(redrawn);
        Garment plain = block.adjust(Necklines.widenNeckline(mm(along)));
        double girth = plain.finished(TopNames.NECKLINE_GIRTH).mm();
        assertThat(redrawn.finished(TopNames.NECKLINE_GIRTH).mm()).isCloseTo(girth, within(1 + 2 * Math.abs(forward)));
    }

    @Property(tries = 60)
    void squaring_undoes_sloping_by_an_angle_or_by_a_length(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = -8, max = 8) double degrees,
            @ForAll @DoubleRange(min = -15, max = 15) double down) {
        Angle angle = Angle.degrees(degrees);
        for (Garment back : List.of(
                block.adjust(slopeShoulder(angle)).adjust(squareShoulder(angle)),
                block.adjust(slopeShoulder(mm(down))).adjust(squareShoulder(mm(down))))) {
            for (Name piece : TopBody.HALVES) {
                for (Name edge : List.of(TopEdges.NECKLINE, TopEdges.SHOULDER)) {
                    Near.assertSame(
                            piece + " " + edge,
                            back.piece(piece).path(edge),
                            block.piece(piece).path(edge),
                            ROUNDING);
                }
            }
        }
    }

    @Property(tries = 60)
    void a_turned_shoulder_keeps_its_length_and_stays_square_to_neckline_and_armhole(
            @ForAll Garment block, @ForAll @DoubleRange(min = -15, max = 15) double down) {
        Garment sloped = block.adjust(slopeShoulder(mm(down)));
        Sound.assertSound(sloped);
        Sound.assertBodySewsTrue(sloped);
        for (Name name : TopBody.HALVES) {
            Piece piece = sloped.piece(name);
            assertThat(piece.path(TopEdges.SHOULDER).length())
                    .isCloseTo(block.piece(name).path(TopEdges.SHOULDER).length(), within(ROUNDING));
            assertThat(piece.corner(TopEdges.SHOULDER, End.END).y()
                            - block.piece(name)
                                    .corner(TopEdges.SHOULDER, End.END)
                                    .y())
                    .isCloseTo(down, within(ROUNDING));
            for (End end : End.values()) {
                assertThat(piece.cornerAngle(TopEdges.SHOULDER, end).degrees()).isCloseTo(90, within(1e-6));
            }
        }
    }

    @Property(tries = 100)
    void a_shoulder_seam_moved_takes_from_one_piece_what_it_gives_the_other(
            @ForAll Garment block, @ForAll @DoubleRange(min = -12, max = 25) double forward) {
        Garment moved = block.adjust(moveShoulderForward(mm(forward)));
        Sound.assertSound(moved);
        Sound.assertBodySewsTrue(moved);
        for (Name edge : List.of(TopEdges.NECKLINE, TopEdges.ARMHOLE)) {
            double front = length(moved, TopNames.FRONT, edge) - length(block, TopNames.FRONT, edge);
            double back = length(moved, TopNames.BACK, edge) - length(block, TopNames.BACK, edge);
            assertThat(front).as("%s", edge).isCloseTo(-back, within(1e-6));
            assertThat(-front * Math.signum(forward)).as("%s", edge).isGreaterThanOrEqualTo(0);
        }
        assertThat(area(moved, TopNames.FRONT) + area(moved, TopNames.BACK))
                .isCloseTo(area(block, TopNames.FRONT) + area(block, TopNames.BACK), within(1e-3));
        assertThat(area(moved, TopNames.SLEEVE)).isCloseTo(area(block, TopNames.SLEEVE), within(1e-6));
        assertThat(moved.walkSeams().untrue()).isEmpty();
    }

    @Property(tries = 60)
    void the_shoulder_point_of_the_sleeve_follows_a_shoulder_seam_that_moves(
            @ForAll Garment block, @ForAll @DoubleRange(min = 1, max = 20) double forward) {
        Garment moved = block.adjust(moveShoulderForward(mm(forward)));
        double lost = length(block, TopNames.FRONT, TopEdges.ARMHOLE) - length(moved, TopNames.FRONT, TopEdges.ARMHOLE);
        assertThat(length(block, TopNames.SLEEVE, TopEdges.CAP_FRONT)
                        - length(moved, TopNames.SLEEVE, TopEdges.CAP_FRONT))
                .isCloseTo(lost, within(1e-6));
        Piece sleeve = moved.piece(TopNames.SLEEVE);
        assertThat(sleeve.pointOf(sleeve.notch(TopEdges.CAP_FRONT, TopNames.SHOULDER_NOTCH)
                        .orElseThrow()))
                .isEqualTo(sleeve.corner(TopEdges.CAP_BACK, End.END));
    }

    @Property(tries = 60)
    void a_cap_fitted_after_the_shoulder_seam_moved_keeps_its_height_and_tops_at_the_seam(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = 0.1, max = 20) double forward,
            @ForAll @DoubleRange(min = 0, max = 12) double ease) {
        Garment fitted = block.adjust(moveShoulderForward(mm(forward))).adjust(fitCapToArmhole(mm(ease)));
        assertThat(fitted.walkSeams().untrue()).isEmpty();
        assertThat(length(fitted, TopNames.SLEEVE, TopEdges.CAP_FRONT))
                .as("from the front underarm point to the shoulder notch")
                .isCloseTo(length(fitted, TopNames.FRONT, TopEdges.ARMHOLE) + ease / 2, within(1e-6));
        Path front = fitted.piece(TopNames.SLEEVE).path(TopEdges.CAP_FRONT);
        assertThat(front.startDirection().y()).isCloseTo(0, within(ROUNDING));
        boolean asHigh = fitted.history().get(2).notes().stream().noneMatch(note -> note.kind() == Note.Kind.DONE);
        if (!asHigh) {
            return;
        }
        Piece sleeve = block.piece(TopNames.SLEEVE);
        double highest = Math.min(
                sleeve.path(TopEdges.CAP_FRONT).bounds().minY(),
                sleeve.path(TopEdges.CAP_BACK).bounds().minY());
        double height = sleeve.corner(TopEdges.CAP_FRONT, End.END).y() - highest;
        assertThat(front.end().y() - front.start().y()).isCloseTo(height, within(1e-6));
    }

    @Property(tries = 60)
    void moving_the_seam_forward_and_back_restores_every_length(
            @ForAll Garment block, @ForAll @DoubleRange(min = 0, max = 20) double by) {
        Garment back = block.adjust(moveShoulderForward(mm(by))).adjust(moveShoulderBack(mm(by)));
        for (Piece piece : block.pieces()) {
            for (Edge edge : piece.edges()) {
                assertThat(length(back, piece.name(), edge.name()))
                        .as("%s.%s", piece.name(), edge.name())
                        .isCloseTo(edge.path().length(), within(1e-5));
            }
        }
    }

    @Property(tries = 60)
    void a_shoulder_step_that_leaves_the_sleeve_names_the_refit(
            @ForAll Garment block, @ForAll @DoubleRange(min = 5, max = 15) double by) {
        Garment sloped = block.adjust(slopeShoulder(mm(by)));
        for (Name seam : ARMHOLE_SEAMS) {
            assertThat(sloped.walkSeams().seam(seam).mend().orElse(""))
                    .as("%s", seam)
                    .contains("refit the sleeve cap to the armhole");
        }
    }

    private static double length(Garment garment, Name piece, Name edge) {
        return garment.piece(piece).path(edge).length();
    }

    private static double area(Garment garment, Name piece) {
        return garment.piece(piece).outline().area();
    }
}
