package org.oaktag.skirt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.skirt.SkirtShapes.aLine;
import static org.oaktag.skirt.SkirtShapes.curveSidesOut;
import static org.oaktag.skirt.SkirtShapes.flareSides;
import static org.oaktag.skirt.SkirtShapes.pegSides;
import static org.oaktag.skirt.SkirtShapes.skirtLength;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.oaktag.PatternException;
import org.oaktag.body.BodyMeasure;
import org.oaktag.garment.Dart;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Fit;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

class SkirtShapesTest {

    private static final Garment SKIRT = Skirts.straight();

    private static double girth(Garment skirt, Name measure) {
        return skirt.finished(measure).mm();
    }

    @ParameterizedTest
    @EnumSource(SkirtLength.class)
    void a_straight_skirt_made_longer_or_shorter_is_the_block_drafted_so_long(SkirtLength length) {
        Length asked = length.on(Skirts.wearer());
        Garment made = Skirts.straight(SkirtLength.MIDI).adjust(skirtLength(asked));
        Garment drafted = Skirts.straight(length);
        assertThat(made.finished(SkirtNames.LENGTH).text()).isEqualTo(asked.text());
        for (Name half : SkirtBody.HALVES) {
            assertThat(made.piece(half).outline().area())
                    .isCloseTo(drafted.piece(half).outline().area(), within(1e-3));
            assertThat(made.piece(half).outline().bounds().maxY())
                    .isCloseTo(drafted.piece(half).outline().bounds().maxY(), within(1e-9));
        }
        assertThat(made.walkSeams().isTrue()).isTrue();
    }

    @Test
    void a_length_above_the_hip_or_below_the_floor_is_refused_with_the_range() {
        assertThatThrownBy(() -> SKIRT.adjust(skirtLength(mm(250))))
                .isInstanceOf(PatternException.class)
                .hasMessageStartingWith(
                        "length of the skirt: from its waist to between the hip and the floor it must be 318")
                .hasMessageEndingWith(" to 1057.2 mm; got 250.0 mm");
        assertThatThrownBy(() -> SKIRT.adjust(skirtLength(mm(1100)))).hasMessageContaining("got 1100.0 mm");
    }

    /**
     * The chord of a turn: what lies beyond the one dart of the front turns about its apex by the angle between its
     * legs, taken here from its width and depth, so each point of it moves by twice its distance from the apex and the
     * sine of half the angle.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.25, 0.5, 1})
    void a_dart_closed_into_the_hem_opens_it_by_the_chord_of_its_angle(double share) {
        Piece before = SKIRT.piece(SkirtNames.FRONT);
        Dart dart = Dart.in(before, SkirtNames.dart(SkirtNames.FRONT, 1));
        double depth = dart.mouthA().midpoint(dart.mouthB()).distanceTo(dart.apex());
        double angle = share * 2 * Math.atan(dart.width().mm() / 2 / depth);
        Piece after = SKIRT.adjust(aLine(share)).piece(SkirtNames.FRONT);
        Point corner = before.path(EdgeNames.SIDE).start();
        assertThat(after.path(EdgeNames.SIDE).start().distanceTo(corner))
                .isCloseTo(2 * corner.distanceTo(dart.apex()) * Math.sin(angle / 2), within(1e-6));
        double toHem = before.path(EdgeNames.CENTRE).start().y() - dart.apex().y();
        String opens = Length.mm(2 * toHem * Math.sin(angle / 2)).text();
        assertThat(Skirts.notes(SKIRT.adjust(aLine(share))).get(0)).endsWith(" = " + opens);
    }

    @Test
    void an_a_line_of_all_darts_has_none_and_its_waist_runs_on_smoothly() {
        Garment made = SKIRT.adjust(aLine(1));
        assertThat(made.seams()).extracting(seam -> seam.name()).containsExactly(SkirtNames.SIDE_SEAM);
        for (Piece half : SkirtBody.halves(made)) {
            assertThat(half.edges()).hasSize(4);
            assertThat(Fairly.corner(half, SkirtNames.WAIST)).isLessThan(0.01);
            assertThat(half.lines()).isEmpty();
        }
        assertThat(girth(made, SkirtNames.WAIST_GIRTH)).isCloseTo(girth(SKIRT, SkirtNames.WAIST_GIRTH), within(0.001));
    }

    @Test
    void an_a_line_of_half_the_darts_twice_over_is_as_wide_as_of_all_but_for_its_smoothing() {
        Garment half = SKIRT.adjust(aLine(0.5));
        assertThat(Dart.in(half.piece(SkirtNames.FRONT), SkirtNames.dart(SkirtNames.FRONT, 1))
                        .angle()
                        .degrees())
                .isCloseTo(
                        Dart.in(SKIRT.piece(SkirtNames.FRONT), SkirtNames.dart(SkirtNames.FRONT, 1))
                                        .angle()
                                        .degrees()
                                / 2,
                        within(1e-9));
        assertThat(half.piece(SkirtNames.BACK).lines()).hasSize(4);
        double all = girth(SKIRT.adjust(aLine(1)), SkirtNames.HEM_GIRTH);
        assertThat(girth(half.adjust(aLine(1)), SkirtNames.HEM_GIRTH)).isCloseTo(all, within(0.01 * all));
    }

    @Test
    void front_and_back_of_an_a_line_lean_alike_and_it_is_said_what_was_done() {
        Garment made = SKIRT.adjust(aLine(1));
        double front =
                made.piece(SkirtNames.FRONT).path(EdgeNames.SIDE).endDirection().x();
        assertThat(made.piece(SkirtNames.BACK)
                        .path(EdgeNames.SIDE)
                        .endDirection()
                        .x())
                .isCloseTo(front, within(1e-9));
        assertThat(Skirts.notes(made)).anyMatch(note -> note.startsWith("the side of the front leans by"));
    }

    @Test
    void a_share_of_nothing_or_more_than_all_is_refused_and_so_is_a_skirt_without_darts() {
        assertThatThrownBy(() -> aLine(0)).hasMessageContaining("must be above 0 and at most 1; got 0.0");
        assertThatThrownBy(() -> aLine(1.2)).hasMessageContaining("got 1.2");
        Garment closed = SKIRT.adjust(aLine(1));
        assertThatThrownBy(() -> closed.adjust(aLine(1)))
                .hasMessage("A-line of the skirt: must have darts to close; got front and back without one; flare the"
                        + " sides");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-60, -20, 15, 40, 120})
    void the_sides_go_out_by_the_amount_and_stay_as_long_as_they_were(double out) {
        for (boolean curved : new boolean[] {false, true}) {
            Garment made = SKIRT.adjust(new FlareSkirt(mm(out), curved));
            for (Name half : SkirtBody.HALVES) {
                double was = SKIRT.piece(half).path(EdgeNames.SIDE).end().x();
                SideLine side = SkirtBody.side(made.piece(half));
                Point end = side.path().end();
                double longer = side.path().length()
                        - SKIRT.piece(half).path(EdgeNames.SIDE).length();
                // What a pegged side is longer goes on in its direction.
                assertThat(end.x() - longer * side.path().endDirection().x() - was)
                        .isCloseTo(out, within(1e-3));
                assertThat(longer).isBetween(out < 0 ? 0.0 : -1e-6, out < 0 ? 40.0 : 1e-6);
            }
            assertThat(made.walkSeams().isTrue()).isTrue();
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.04, 1e-3, 1e-6, 1e-9})
    void amounts_that_nobody_sees_there_and_back_leave_a_sound_skirt(double out) {
        Garment made = SKIRT.adjust(pegSides(mm(out))).adjust(flareSides(mm(out)));
        assertThat(girth(made, SkirtNames.HEM_GIRTH)).isCloseTo(girth(SKIRT, SkirtNames.HEM_GIRTH), within(0.01));
        assertThat(made.walkSeams().isTrue()).isTrue();
    }

    @Test
    void flaring_and_pegging_by_as_much_gives_the_straight_sides_back() {
        Garment back = SKIRT.adjust(flareSides(mm(35))).adjust(pegSides(mm(35)));
        for (Name half : SkirtBody.HALVES) {
            assertThat(back.piece(half).outline().area())
                    .isCloseTo(SKIRT.piece(half).outline().area(), within(1.0));
        }
        assertThat(girth(back, SkirtNames.HEM_GIRTH)).isCloseTo(girth(SKIRT, SkirtNames.HEM_GIRTH), within(0.01));
    }

    /**
     * A narrower hem frees less of a step (Baldt, "To draft skirt", has narrow skirts tested for it): the check says
     * so, with the figures of the stride at the level of the hem.
     */
    @Test
    void a_pegged_skirt_strains_where_its_hem_is_narrower_than_a_step() {
        Garment pegged = SKIRT.adjust(pegSides(mm(30)));
        Stride stride = Stride.of(
                Skirts.wearer().measure(BodyMeasure.HEIGHT), Skirts.wearer().measure(BodyMeasure.HIP_GIRTH));
        Length level = mm(0.649 * 1629).minus(pegged.finished(SkirtNames.LENGTH));
        assertThat(girth(pegged, SkirtNames.HEM_GIRTH))
                .isLessThan(stride.girthAt(level).mm());
        assertThat(pegged.fit())
                .filteredOn(fit -> fit.check().equals(SkirtChecks.STRIDE))
                .extracting(Fit::verdict)
                .isEqualTo(List.of(Fit.Verdict.STRAINS));
        assertThat(SKIRT.adjust(curveSidesOut(mm(40))).fit())
                .filteredOn(fit -> fit.check().equals(SkirtChecks.STRIDE))
                .extracting(Fit::verdict)
                .isEqualTo(List.of(Fit.Verdict.FITS));
    }

    @Test
    void more_than_a_side_can_do_is_refused_with_the_range() {
        assertThatThrownBy(() -> SKIRT.adjust(flareSides(mm(400))))
                .isInstanceOf(PatternException.class)
                .hasMessageStartingWith("sides of the front: with 389.6 mm below the hip they can go out at the hem by")
                .hasMessageEndingWith("got 400.0 mm");
        assertThatThrownBy(() -> SKIRT.adjust(pegSides(mm(100)))).hasMessageContaining("got -100.0 mm");
    }
}
