package org.oaktag.adjustments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.oaktag.adjustments.Hoods.hood;
import static org.oaktag.adjustments.Hoods.lineHood;
import static org.oaktag.adjustments.Tops.JERSEY;
import static org.oaktag.adjustments.Tops.observersTop;
import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Length.mm;

import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;
import org.oaktag.blocks.HoodNames;
import org.oaktag.blocks.HoodShape;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Change;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.SeamRule;

class HoodsTest {

    private static final FitHood HOOD = hood(HoodShape.threePanel()).lapped(cm(5));

    private static Change last(Garment garment) {
        return garment.history().get(garment.history().size() - 1);
    }

    @Test
    void the_history_tells_what_was_asked_and_by_which_rule_it_was_done() {
        Change change = last(observersTop().adjust(HOOD));
        assertThat(change.title()).isEqualTo("fit a hood: strip 90.0 mm, rise 30.0 mm, lap 50.0 mm");
        assertThat(change.notes())
                .extracting(Note::text)
                .anyMatch(text -> text.contains(
                        "half the neckline 190.0 mm + half the lap 25.0 mm" + " - half the strip 45.0 mm = 170.0 mm"));
        assertThat(change.pieces()).containsExactly(TopNames.HOOD_SIDE, TopNames.HOOD_CENTRE);
        assertThat(change.untrue()).isEmpty();
        assertThat(change.dimensions()).hasSize(4);
    }

    @Test
    void an_amount_that_was_not_asked_for_is_not_told() {
        assertThat(hood(HoodShape.threePanel().withHeight(mm(310)).withDepth(mm(210)))
                        .amounts())
                .extracting(Amount::name)
                .containsExactly("strip", "height", "depth", "rise", "lap");
    }

    @Test
    void a_hood_that_meets_edge_to_edge_is_sewn_flat_and_has_no_centre_front_notch() {
        Garment top = observersTop().adjust(hood(HoodShape.threePanel()));
        assertThat(top.seam(HoodNames.NECK_SEAM).rule()).isEqualTo(SeamRule.flat());
        assertThat(top.piece(TopNames.HOOD_SIDE).notches())
                .extracting(Notch::name)
                .doesNotContain(HoodNames.CENTRE_FRONT_NOTCH);
        assertThat(top.walkSeams().isTrue()).isTrue();
    }

    @Test
    void the_side_panels_are_a_mirrored_pair_and_the_strip_lies_on_the_fold() {
        Garment top = observersTop().adjust(HOOD).adjust(lineHood(cm(4), JERSEY));
        assertThat(top.piece(TopNames.HOOD_SIDE).cut().instruction()).isEqualTo("cut 1 pair (mirrored)");
        assertThat(top.piece(TopNames.HOOD_SIDE_LINING).cut().instruction()).isEqualTo("cut 1 pair (mirrored)");
        assertThat(top.piece(TopNames.HOOD_CENTRE).cut().instruction()).isEqualTo("cut 1 on fold");
        assertThat(top.piece(TopNames.HOOD_CENTRE_LINING).cut().instruction()).isEqualTo("cut 1 on fold");
    }

    @Test
    void the_outlines_of_all_panels_run_clockwise_edge_by_edge() {
        Garment top = observersTop().adjust(HOOD).adjust(lineHood(cm(4), JERSEY));
        for (Name name : new Name[] {
            TopNames.HOOD_SIDE, TopNames.HOOD_CENTRE, TopNames.HOOD_SIDE_LINING, TopNames.HOOD_CENTRE_LINING
        }) {
            assertThat(top.piece(name).outline().isClockwise()).as(name.value()).isTrue();
        }
        assertThat(top.piece(TopNames.HOOD_SIDE).edges())
                .extracting(Edge::name)
                .containsExactly(
                        HoodNames.FACING_EDGE,
                        HoodNames.FACING_CROWN,
                        HoodNames.CROWN,
                        HoodNames.NECK,
                        HoodNames.FACING_NECK);
        assertThat(top.piece(TopNames.HOOD_CENTRE).edges())
                .extracting(Edge::name)
                .containsExactly(
                        HoodNames.FACING_EDGE,
                        HoodNames.FACING_CROWN,
                        HoodNames.CROWN,
                        HoodNames.NECK,
                        EdgeNames.CENTRE);
    }

    @Test
    void the_fold_of_the_facing_is_where_the_face_was() {
        Garment hooded = observersTop().adjust(HOOD);
        Piece faced = hooded.adjust(lineHood(cm(4), JERSEY)).piece(TopNames.HOOD_SIDE);
        assertThat(faced.lines()).singleElement().satisfies(line -> {
            assertThat(line.name()).isEqualTo(HoodNames.FOLD);
            assertThat(line.path()).isEqualTo(hooded.piece(TopNames.HOOD_SIDE).path(HoodNames.FACE));
        });
    }

    @Test
    void the_notch_of_the_lap_lies_on_the_facing_too() {
        Piece faced =
                observersTop().adjust(HOOD).adjust(lineHood(cm(4), JERSEY)).piece(TopNames.HOOD_SIDE);
        double onShell = faced.notch(HoodNames.NECK, HoodNames.CENTRE_FRONT_NOTCH)
                .orElseThrow()
                .distance();
        double onFacing = faced.notch(HoodNames.FACING_NECK, HoodNames.CENTRE_FRONT_NOTCH)
                .orElseThrow()
                .distance();
        assertThat(onFacing).isEqualTo(onShell).isEqualTo(25);
    }

    @Test
    void the_steps_before_the_hood_stay_as_they_were() {
        Garment top = observersTop();
        Garment hooded = top.adjust(HOOD).adjust(lineHood(cm(4), JERSEY));
        assertThat(hooded.pieces()).startsWith(top.pieces().toArray(Piece[]::new));
        assertThat(hooded.seams()).containsAll(top.seams());
        assertThat(hooded.measures()).containsAll(top.measures());
    }

    @Test
    void a_lap_below_nothing_or_beyond_the_shoulder_is_refused() {
        assertThatThrownBy(() -> HOOD.lapped(mm(-1)))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("lap of the hood")
                .hasMessageContaining("-1.0 mm");
        Garment top = observersTop();
        assertThatThrownBy(() -> top.adjust(HOOD.lapped(mm(200))))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("lap of the hood")
                .hasMessageContaining(top.piece(TopNames.FRONT)
                        .edge(TopEdges.NECKLINE)
                        .length()
                        .roundedDown()
                        .text())
                .hasMessageContaining("200.0 mm");
    }

    @Test
    void a_lining_without_a_hood_is_refused() {
        assertThatThrownBy(() -> observersTop().adjust(lineHood(cm(4), JERSEY)))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("fit a hood first");
    }

    @Test
    void a_facing_too_narrow_or_too_wide_is_refused_with_the_range() {
        assertThatThrownBy(() -> lineHood(mm(14), JERSEY))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("at least 15.0 mm wide")
                .hasMessageContaining("14.0 mm");
        Garment hooded = observersTop().adjust(HOOD);
        double most =
                hooded.piece(TopNames.HOOD_SIDE).path(HoodNames.NECK).start().x() / 2;
        assertThatThrownBy(() -> hooded.adjust(lineHood(mm(most + 1), JERSEY)))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining(mm(most).roundedDown().text())
                .hasMessageContaining(mm(most + 1).text());
        assertThat(hooded.adjust(lineHood(mm(most), JERSEY)).walkSeams().isTrue())
                .isTrue();
    }
}
