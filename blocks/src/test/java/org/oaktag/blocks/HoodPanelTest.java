package org.oaktag.blocks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.mm;

import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;
import org.oaktag.measure.Length;

class HoodPanelTest {

    private static final Length HEAD = mm(560);
    private static final Length HALF_NECKLINE = mm(200);
    private static final Length BACK_NECKLINE = mm(85);
    private static final HoodShape SHAPE = HoodShape.threePanel();

    private static HoodPanel draw(HoodShape shape, Length lap) {
        return HoodPanel.draw(shape, HEAD, HALF_NECKLINE, BACK_NECKLINE, lap);
    }

    /** Common practice: the neck edge is half the neckline and half the overlap; here less the strip's share. */
    @Test
    void the_neck_edge_is_half_the_neckline_and_half_the_lap_less_half_the_strip() {
        assertThat(draw(SHAPE, mm(50)).neck().length()).isCloseTo(200 + 25 - 45, within(1e-6));
    }

    /** Common practice: half the tape from side neck point over the crown to the other, and 1 to 10 cm. */
    @Test
    void the_crown_lies_above_the_shoulder_by_half_the_tape_and_ease_less_half_the_strip() {
        HoodPanel panel = draw(SHAPE, mm(0));
        double shoulder = panel.neck().pointAt(panel.shoulder()).y();
        double halfTape = 1.15 * 560 / 2;
        assertThat(shoulder - panel.crown().start().y() + 45 - halfTape).isBetween(10.0, 100.0);
        assertThat(shoulder).isCloseTo(panel.height(), within(1e-6));
    }

    @Test
    void a_height_that_is_given_is_kept() {
        HoodPanel panel = draw(SHAPE.withHeight(mm(300)), mm(50));
        assertThat(panel.neck().pointAt(panel.shoulder()).y()).isCloseTo(300, within(1e-6));
    }

    @Test
    void a_depth_that_is_given_is_how_far_the_panel_reaches_back() {
        HoodPanel panel = draw(SHAPE.withDepth(mm(215)), mm(50));
        assertThat(panel.crown().bounds().maxX()).isCloseTo(215, within(1e-9));
    }

    @Test
    void a_wide_neckline_makes_a_deeper_panel_that_still_swings_in_to_the_nape() {
        HoodPanel panel = HoodPanel.draw(SHAPE, HEAD, mm(270), mm(110), mm(50));
        assertThat(panel.depth()).isGreaterThan(draw(SHAPE, mm(50)).depth());
        assertThat(panel.depth() - panel.crown().end().x()).isCloseTo(10, within(1e-9));
    }

    @Test
    void a_panel_no_deeper_than_its_neck_edge_falls_straight_to_the_nape() {
        double run = draw(SHAPE, mm(50)).neck().start().x();
        HoodPanel panel = draw(SHAPE.withDepth(mm(run)), mm(50));
        assertThat(panel.crown().bounds().maxX()).isEqualTo(panel.crown().end().x());
    }

    @Test
    void a_level_neck_edge_is_as_long_as_the_panel_is_deep_at_the_nape() {
        HoodPanel panel = draw(SHAPE.withRise(mm(0)), mm(50));
        assertThat(panel.neck().start().x()).isCloseTo(180, within(1e-6));
        assertThat(panel.neck().start().y()).isEqualTo(panel.neck().end().y());
    }

    @Test
    void every_size_comes_with_the_sum_by_which_it_was_reckoned() {
        assertThat(draw(SHAPE, mm(50)).rules())
                .containsExactly(
                        "neck edge of a side panel = half the neckline 200.0 mm + half the lap 25.0 mm"
                                + " - half the strip 45.0 mm = 180.0 mm",
                        "height of the top of the crown above the shoulder = half the tape from side neck point over the crown to"
                                + " the other, 322.0 mm (1.15 of the head girth 560.0 mm is the whole, common practice)"
                                + " + ease 40.0 mm - half the strip 45.0 mm = 317.0 mm",
                        "depth of a side panel from the face back = 0.4 of the head girth 560.0 mm + ease 25.0 mm"
                                + " - half the strip 45.0 mm = 204.0 mm");
        HoodPanel wide = HoodPanel.draw(SHAPE, HEAD, mm(270), mm(110), mm(50));
        assertThat(wide.rules())
                .contains("depth of a side panel from the face back = run of the neck edge "
                        + mm(wide.crown().end().x()).text() + " + 10.0 mm = "
                        + mm(wide.depth()).text() + ": the head alone would ask for 204.0 mm");
        assertThat(draw(SHAPE.withDepth(mm(210)).withHeight(mm(300)), mm(50)).rules())
                .filteredOn(rule -> rule.endsWith("as given"))
                .hasSize(2);
    }

    @Test
    void a_strip_that_reaches_the_shoulder_is_refused() {
        assertThatThrownBy(() -> draw(SHAPE.withStripWidth(mm(171)), mm(50)))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("strip of the hood")
                .hasMessageContaining("170.0 mm")
                .hasMessageContaining("171.0 mm");
        assertThat(draw(SHAPE.withStripWidth(mm(169)), mm(50)).shoulder()).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void a_neck_edge_too_short_for_its_rise_is_refused_and_what_is_advised_works() {
        HoodShape steep = SHAPE.withRise(mm(60));
        Length neckline = mm(220);
        assertThatThrownBy(() -> HoodPanel.draw(steep, HEAD, neckline, mm(85), mm(0)))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("at least 192.0 mm to rise by 60.0 mm")
                .hasMessageContaining("175.0 mm")
                .hasMessageContaining("widen the neckline by 34.0 mm in all")
                .hasMessageContaining("a strip narrower by 34.0 mm")
                .hasMessageContaining("a rise of at most 54.6 mm");
        HoodPanel narrower = HoodPanel.draw(steep.withStripWidth(mm(90 - 34)), HEAD, neckline, mm(85), mm(0));
        HoodPanel flatter = HoodPanel.draw(steep.withRise(mm(54.6)), HEAD, neckline, mm(85), mm(0));
        assertThat(narrower.neck().length()).isCloseTo(192, within(1e-6));
        assertThat(flatter.neck().length()).isCloseTo(175, within(1e-6));
    }

    @Test
    void a_height_unlike_the_head_is_refused_with_the_range() {
        assertThatThrownBy(() -> draw(SHAPE.withHeight(mm(150)), mm(50)))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("height of the hood")
                .hasMessageContaining("head girth, 560.0 mm")
                .hasMessageContaining("150.0 mm")
                .hasMessageContaining("take 179.0 mm to 459.0 mm");
    }

    @Test
    void a_depth_less_than_the_neck_edge_or_far_more_is_refused_with_the_range() {
        for (double depth : new double[] {150, 300}) {
            assertThatThrownBy(() -> draw(SHAPE.withDepth(mm(depth)), mm(50)))
                    .isInstanceOf(PatternException.class)
                    .hasMessageContaining("depth of the hood")
                    .hasMessageContaining(mm(depth).text())
                    .hasMessageContaining("take 176.");
        }
    }

    @Test
    void a_strip_or_a_rise_out_of_range_is_refused_by_the_shape() {
        assertThatThrownBy(() -> SHAPE.withStripWidth(mm(9)))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("30.0 mm to 200.0 mm")
                .hasMessageContaining("9.0 mm");
        assertThatThrownBy(() -> SHAPE.withRise(mm(-1)))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("0.0 mm to 60.0 mm")
                .hasMessageContaining("-1.0 mm");
    }
}
