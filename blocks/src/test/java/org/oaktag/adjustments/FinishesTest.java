package org.oaktag.adjustments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.adjust.Pieces.notchSeams;
import static org.oaktag.adjustments.Bodies.straightenSideSeams;
import static org.oaktag.adjustments.Finishes.faceNeckline;
import static org.oaktag.adjustments.Finishes.frontPouch;
import static org.oaktag.adjustments.Finishes.interfacePiece;
import static org.oaktag.adjustments.Finishes.lineBody;
import static org.oaktag.adjustments.Finishes.patchPocket;
import static org.oaktag.adjustments.Finishes.ribNeckband;
import static org.oaktag.adjustments.Necklines.growStand;
import static org.oaktag.adjustments.Necklines.widenNeckline;
import static org.oaktag.adjustments.Sleeves.raglanSleeve;
import static org.oaktag.adjustments.Tops.JERSEY;
import static org.oaktag.adjustments.Tops.RIB;
import static org.oaktag.adjustments.Tops.observersTop;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.measure.Percent.percent;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.FinishNames;
import org.oaktag.blocks.KnitTop;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Allowance;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.CutLine;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.WalkedSeam;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;

/** Facings, linings, neckbands and pockets: invariants, and numbers worked out beside the check. */
class FinishesTest {

    private static List<String> untrue(Garment garment) {
        return garment.walkSeams().untrue().stream()
                .map(seam -> seam.seam().name().value())
                .toList();
    }

    @Test
    void facing_and_lining_together_are_the_shell_and_its_pleat() {
        Garment top = observersTop().adjust(faceNeckline(mm(60), JERSEY)).adjust(lineBody(mm(15), JERSEY));
        assertThat(untrue(top)).isEmpty();
        assertThat(area(top, FinishNames.FRONT_FACING) + area(top, FinishNames.FRONT_LINING))
                .isCloseTo(area(top, TopNames.FRONT), within(1e-3));
        // The pleat is a rectangle as long as the centre of the lining.
        double pleat =
                15 * top.piece(FinishNames.BACK_LINING).path(EdgeNames.CENTRE).length();
        assertThat(area(top, FinishNames.BACK_FACING) + area(top, FinishNames.BACK_LINING))
                .isCloseTo(area(top, TopNames.BACK) + pleat, within(1e-3));
    }

    /** On a half of the back that is 15 mm wider, all of the 15 mm lies at the centre. */
    @Test
    void the_lining_is_sewn_flat_beyond_a_double_notch_up_to_which_its_pleat_reaches() {
        Garment top = observersTop().adjust(faceNeckline(mm(60), JERSEY)).adjust(lineBody(mm(15), JERSEY));
        for (Garment lined : List.of(top, observersTop().adjust(lineBody(mm(15), JERSEY)), top.adjust(notchSeams()))) {
            WalkedSeam neck = lined.walkSeams().seam(Name.of("back lining neck"));
            assertThat(neck.spans()).hasSize(2);
            assertThat(neck.spans().get(0).to()).isEqualTo("pleat");
            assertThat(neck.spans().get(0).difference().mm()).isCloseTo(15, within(1e-6));
            assertThat(neck.spans().get(1).difference().mm()).isCloseTo(0, within(1e-6));
            assertThat(neck.isTrue()).isTrue();
            assertThat(lined.piece(FinishNames.BACK_LINING)
                            .notch(TopEdges.NECKLINE, Name.of("pleat"))
                            .map(Notch::count))
                    .contains(2);
        }
    }

    @Test
    void a_facing_is_as_wide_as_asked_all_along_the_neckline() {
        Garment top = observersTop().adjust(faceNeckline(mm(60), JERSEY));
        Piece facing = top.piece(FinishNames.BACK_FACING);
        var neckline = facing.path(TopEdges.NECKLINE);
        var inner = facing.path(FaceNeckline.INNER);
        for (int i = 0; i <= 20; i++) {
            assertThat(neckline.nearest(inner.pointAt(inner.length() * i / 20)).distance())
                    .isCloseTo(60, within(1.0));
        }
    }

    @Test
    void a_facing_is_stale_when_the_neckline_moves_and_true_once_faced_again() {
        Garment faced = observersTop().adjust(faceNeckline(mm(60), JERSEY)).adjust(lineBody(mm(15), JERSEY));
        Garment wider = faced.adjust(widenNeckline(mm(10)));
        assertThat(untrue(wider)).contains("front neck facing", "back neck facing");
        assertThat(wider.walkSeams().untrue().stream().map(each -> each.seam().refit()))
                .contains("face the neckline again");
        assertThatThrownBy(() -> wider.adjust(lineBody(mm(15), JERSEY)))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("face the neckline again first");
        assertThat(untrue(wider.adjust(faceNeckline(mm(60), JERSEY)).adjust(lineBody(mm(15), JERSEY))))
                .isEmpty();
    }

    @Test
    void a_lining_without_a_facing_meets_the_neckline_itself() {
        Garment top = observersTop().adjust(lineBody(mm(0), JERSEY));
        assertThat(untrue(top)).isEmpty();
        assertThat(area(top, FinishNames.BACK_LINING)).isEqualTo(area(top, TopNames.BACK));
    }

    @Test
    void a_neckband_is_shorter_the_further_its_rib_stretches() {
        // 80 % lies at 55/75 of the way from 25 to 100 %: 90 - 15 x 55/75 = 79 %.
        assertThat(new RibNeckband(mm(20), RIB).share()).isCloseTo(0.79, within(1e-12));
        assertThat(new RibNeckband(mm(20), Cloth.rib("stable", percent(20))).share())
                .isEqualTo(0.9);
        assertThat(new RibNeckband(mm(20), Cloth.rib("lively", percent(150))).share())
                .isEqualTo(0.75);
        Garment top = observersTop().adjust(ribNeckband(mm(20), RIB));
        assertThat(untrue(top)).isEmpty();
        assertThat(top.finished(FinishNames.NECKBAND_GIRTH).mm())
                .isCloseTo(0.79 * top.finished(TopNames.NECKLINE_GIRTH).mm(), within(0.01));
    }

    @Test
    void a_neckband_says_whether_the_head_goes_through() {
        // Neckband 0.79 of the neckline; it opens until the shell, which stretches by 35 %, is at its end.
        Garment top = observersTop().adjust(ribNeckband(mm(20), RIB));
        double reach = top.finished(TopNames.NECKLINE_GIRTH).mm() * 1.35;
        boolean passes = reach >= 560;
        assertThat(top.cautions().stream().anyMatch(text -> text.contains("head")))
                .isEqualTo(!passes);
    }

    @Test
    void interfacing_has_the_seam_line_of_its_piece() {
        Garment top = observersTop()
                .adjust(faceNeckline(mm(60), JERSEY))
                .adjust(interfacePiece(FinishNames.FRONT_FACING, JERSEY));
        Name interfacing = InterfacePiece.interfacing(FinishNames.FRONT_FACING);
        assertThat(top.piece(interfacing).outline())
                .isEqualTo(top.piece(FinishNames.FRONT_FACING).outline());
        assertThat(top.piece(interfacing).cloth().use()).isEqualTo(Cloth.INTERFACING);
        assertThat(untrue(top)).isEmpty();
    }

    @Test
    void a_pouch_lies_where_the_front_is_marked() {
        Garment top = observersTop().adjust(frontPouch(mm(320), mm(200)));
        Piece pouch = top.piece(FinishNames.POUCH);
        // Half a pouch: a rectangle of 160 x 200 less the triangle above its opening, 60.8 wide and 110 high.
        assertThat(pouch.outline().area()).isCloseTo(160 * 200 - 60.8 * 110 / 2, within(1e-6));
        Piece front = top.piece(TopNames.FRONT);
        assertThat(front.lines()).anyMatch(line -> line.name().equals(FinishNames.POUCH));
        // An eighth of an inch and the drill inside the corner, under the pouch (common practice).
        assertThat(front.marks()).hasSize(3).allSatisfy(mark -> {
            assertThat(pouch.outline().contains(mark.point())).isTrue();
            assertThat(pouch.edges().stream()
                            .mapToDouble(edge -> edge.path().start().distanceTo(mark.point()))
                            .min()
                            .orElseThrow())
                    .isCloseTo(4, within(1e-9));
        });
        assertThatThrownBy(() -> observersTop().adjust(patchPocket(mm(100), mm(120), mm(250), mm(200))))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("pocket on the front: must lie inside the piece");
    }

    @Test
    void a_pocket_lies_below_the_side_neck_point_also_where_a_stand_is_grown_on_and_not_where_a_raglan_took_it() {
        Garment funnel = observersTop().adjust(widenNeckline(mm(15))).adjust(growStand(mm(60)));
        Step pocket = patchPocket(mm(110), mm(130), mm(50), mm(200));
        Piece front = funnel.adjust(pocket).piece(TopNames.FRONT);
        double sideNeck = funnel.piece(TopNames.FRONT)
                .corner(TopEdges.SHOULDER, End.START)
                .y();
        assertThat(front.lines().get(0).path().start().y()).isEqualTo(sideNeck + 200);
        assertThat(front.marks().get(0).point().y()).isCloseTo(sideNeck + 200 + 4 / Math.sqrt(2), within(1e-9));
        Garment raglan = observersTop().adjust(raglanSleeve());
        assertThatThrownBy(() -> raglan.adjust(pocket))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("must have edge 'shoulder' for this step")
                .hasMessageContaining("take this step before 'make a raglan sleeve'");
    }

    @Test
    void a_pouch_follows_the_hem_and_its_opening_is_turned_back_square() {
        Garment top = observersTop().adjust(straightenSideSeams()).adjust(frontPouch(mm(340), mm(230)));
        Piece front = top.piece(TopNames.FRONT);
        Piece pouch = top.piece(FinishNames.POUCH);
        Path hem = front.edge(EdgeNames.HEM).path();
        Path bottom = pouch.edge(EdgeNames.BOTTOM).path();
        assertThat(bottom.bounds().height()).as("a hem that rises").isGreaterThan(0.1);
        for (int i = 0; i <= 10; i++) {
            Point on = bottom.pointAt(bottom.length() * i / 10);
            assertThat(hem.nearest(on).distance()).isLessThan(1e-6);
        }
        assertThat(front.edge(EdgeNames.CENTRE).path().start().x() + 170)
                .isCloseTo(bottom.start().x(), within(1e-6));
        Allowance opening = KnitTop.allowances(top).of(pouch, EdgeNames.OPENING);
        assertThat(opening).isEqualTo(Allowance.foldedSquare(mm(25)));
        // Both corners are wider than a right angle, so that what is folded back square lies on the pouch.
        Path edge = pouch.edge(EdgeNames.OPENING).path();
        Vector outwards = edge.endDirection().perpendicular().times(-1);
        Outline cut = CutLine.of(pouch, KnitTop.allowances(top)).outline();
        List<Point> beyond = IntStream.range(0, 2000)
                .mapToObj(i -> cut.path().pointAt(cut.path().length() * i / 2000))
                .filter(point -> point.minus(edge.start()).dot(outwards) > 0)
                .toList();
        assertThat(beyond)
                .hasSizeGreaterThan(50)
                .allMatch(point ->
                        cut.contains(Transform.mirror(edge.start(), edge.end()).apply(point)));
    }

    @Test
    void a_pouch_kept_off_the_sides_is_made_smaller_in_its_shape_and_says_so() {
        Garment top = observersTop().adjust(straightenSideSeams());
        Path hem = top.piece(TopNames.FRONT).edge(EdgeNames.HEM).path();
        double half = hem.start().x() - hem.end().x();
        Garment kept = top.adjust(frontPouch(mm(500), mm(230)).keptOffSides(mm(40)));
        Piece pouch = kept.piece(FinishNames.POUCH);
        assertThat(pouch.edge(EdgeNames.BOTTOM).path().start().x())
                .isCloseTo(hem.start().x() - 40, within(1e-6));
        assertThat(pouch.outline().bounds().height()).isCloseTo(230 * (half - 40) / 250, within(1e-6));
        assertThat(kept.history().get(kept.history().size() - 1).notes())
                .anyMatch(note -> note.kind() == Note.Kind.DONE && note.text().startsWith("made smaller"));
        Garment fits = top.adjust(frontPouch(mm(320), mm(200)).keptOffSides(mm(40)));
        assertThat(fits.pieces())
                .isEqualTo(top.adjust(frontPouch(mm(320), mm(200))).pieces());
    }

    private static double area(Garment garment, Name piece) {
        return garment.piece(piece).outline().area();
    }
}
