package org.oaktag.skirt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.skirt.SkirtFinishes.buttons;
import static org.oaktag.skirt.SkirtFinishes.centreBackSeam;
import static org.oaktag.skirt.SkirtFinishes.contouredWaistband;
import static org.oaktag.skirt.SkirtFinishes.elasticWaistband;
import static org.oaktag.skirt.SkirtFinishes.faceHem;
import static org.oaktag.skirt.SkirtFinishes.faceWaist;
import static org.oaktag.skirt.SkirtFinishes.inSeamPocket;
import static org.oaktag.skirt.SkirtFinishes.kickPleat;
import static org.oaktag.skirt.SkirtFinishes.lineSkirt;
import static org.oaktag.skirt.SkirtFinishes.patchPocket;
import static org.oaktag.skirt.SkirtFinishes.slantPocket;
import static org.oaktag.skirt.SkirtFinishes.straightWaistband;
import static org.oaktag.skirt.SkirtFinishes.vent;
import static org.oaktag.skirt.SkirtFinishes.zip;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Dart;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.Fit;
import org.oaktag.garment.Garment;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Mark;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Transform;
import org.oaktag.measure.Percent;
import org.oaktag.sewing.AssemblyOrder;
import org.oaktag.sewing.Operation;

/** What finishes a skirt, held against what is taught of it and what its own parts must agree in. */
class SkirtFinishesTest {

    private static final Cloth FLANNEL = Cloth.woven("grey flannel");
    private static final Cloth SATIN = Cloth.woven("satin");
    private static final Name BAND = SkirtFinishNames.WAISTBAND;

    private static Garment zipped() {
        return Skirts.straight().adjust(centreBackSeam()).adjust(zip(mm(180), SkirtOpening.CENTRE_BACK));
    }

    /** A skirt whose hip lies 160 mm below its waist, so that its darts are short. */
    private static Garment shortWaisted() {
        return StraightSkirt.BLOCK.draft(
                BodyMeasurements.builder()
                        .name("Bea")
                        .figure(Figure.WOMAN)
                        .waistGirth(mm(725))
                        .hipGirth(mm(900))
                        .waistToHip(mm(160))
                        .height(mm(1600))
                        .build(),
                SkirtEase.standard(),
                FLANNEL);
    }

    private static Fit fit(Garment skirt, Name check) {
        return skirt.fit().stream()
                .filter(each -> each.check().equals(check))
                .findFirst()
                .orElseThrow();
    }

    private static double length(Garment skirt, Name piece, Name edge) {
        return skirt.edge(EdgeRef.of(piece, edge)).path().length();
    }

    private static List<String> order(Garment skirt) {
        return AssemblyOrder.of(skirt).operations().stream()
                .map(Operation::name)
                .map(Name::value)
                .toList();
    }

    @Test
    void a_zip_lets_the_hip_through_where_waist_and_twice_its_length_reach_it() {
        Garment skirt = Skirts.straight();
        assertThat(fit(skirt, SkirtChecks.GETTING_IN).verdict()).isEqualTo(Fit.Verdict.FAILS);
        double lacks = 966.9 - skirt.finished(SkirtNames.WAIST_GIRTH).mm();
        for (SkirtOpening at : SkirtOpening.values()) {
            Garment seamed = skirt.adjust(centreBackSeam());
            assertThat(fit(seamed.adjust(zip(mm(lacks / 2 + 0.1), at)), SkirtChecks.GETTING_IN)
                            .verdict())
                    .isEqualTo(Fit.Verdict.FITS);
            assertThat(fit(seamed.adjust(zip(mm(lacks / 2 - 0.1), at)), SkirtChecks.GETTING_IN)
                            .verdict())
                    .isEqualTo(Fit.Verdict.FAILS);
        }
    }

    @Test
    void the_seam_begins_where_the_zip_ends() {
        Garment skirt = zipped();
        double whole =
                Skirts.straight().piece(SkirtNames.BACK).path(EdgeNames.CENTRE).length();
        assertThat(length(skirt, SkirtNames.BACK, SkirtFinishNames.ZIP)).isCloseTo(180, within(1e-6));
        assertThat(skirt.walkSeams().seams().stream()
                        .filter(walked -> walked.seam().name().equals(SkirtFinishNames.CENTRE_BACK_SEAM))
                        .findFirst()
                        .orElseThrow()
                        .lengthA()
                        .mm())
                .isCloseTo(whole - 180, within(1e-6));
        assertThat(skirt.piece(SkirtNames.BACK).notch(EdgeNames.CENTRE, SkirtFinishNames.ZIP_END))
                .isPresent();
        assertThat(skirt.piece(SkirtNames.BACK).cut()).isEqualTo(Cut.pair());
    }

    @Test
    void a_zip_that_would_end_below_its_seam_is_refused_with_the_length_that_works() {
        Garment skirt = Skirts.straight().adjust(centreBackSeam());
        double whole = length(skirt, SkirtNames.BACK, EdgeNames.CENTRE);
        String most = mm(whole - 30).roundedDown().text();
        assertThatThrownBy(() -> skirt.adjust(zip(mm(whole + 1), SkirtOpening.CENTRE_BACK)))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("100.0 mm to " + most);
        assertThatThrownBy(() -> Skirts.straight().adjust(zip(mm(180), SkirtOpening.CENTRE_BACK)))
                .hasMessageContaining("seam the centre back first");
        assertThatThrownBy(() -> skirt.adjust(centreBackSeam())).hasMessageContaining("on the fold of its centre");
    }

    /** The lowest button about 4 in above the hem, for the legs to move (common practice). */
    @Test
    void buttonholes_lie_at_even_distances_down_to_four_inches_above_the_hem() {
        Garment skirt = Skirts.straight().adjust(buttons(mm(20), 6));
        Piece front = skirt.piece(SkirtNames.FRONT);
        List<Mark> holes = front.marks().stream()
                .filter(mark -> mark.use() == Mark.Use.BUTTONHOLE)
                .toList();
        assertThat(holes).hasSize(6);
        double hem = front.corner(EdgeNames.HEM, End.END).y();
        double top = front.corner(SkirtNames.WAIST, End.START).y();
        assertThat(hem - holes.get(5).point().y()).isCloseTo(101.6, within(2.0));
        for (int i = 0; i < 6; i++) {
            double above = i == 0 ? top : holes.get(i - 1).point().y();
            assertThat(holes.get(i).point().y() - above)
                    .isCloseTo((holes.get(5).point().y() - top) / 6, within(1e-9));
            assertThat(holes.get(i).point().x())
                    .isEqualTo(front.corner(SkirtNames.WAIST, End.START).x());
        }
        assertThat(fit(skirt, SkirtChecks.GETTING_IN).verdict()).isEqualTo(Fit.Verdict.FITS);
        assertThatThrownBy(() -> Skirts.straight().adjust(buttons(mm(20), 2))).hasMessageContaining("must be 4 to 12");
    }

    /** Folded in along its fold, the facing of a button stand lies on the waist and on the hem. */
    @Test
    void the_facing_of_a_button_stand_folds_on_to_the_front() {
        Piece front = Skirts.straight().adjust(buttons(mm(20), 6)).piece(SkirtNames.FRONT);
        double fold = front.corner(SkirtFinishNames.STAND_TOP, End.START).x();
        var top = front.path(SkirtFinishNames.STAND_FACING_TOP);
        for (double share : new double[] {0, 0.3, 0.5}) {
            var folded = top.pointAt(share * top.length()).transformed(Transform.mirrorX(fold));
            double off = Stream.of(SkirtNames.WAIST, SkirtFinishNames.STAND_TOP)
                    .mapToDouble(edge -> front.path(edge).nearest(folded).distance())
                    .min()
                    .orElseThrow();
            assertThat(off).isLessThan(1e-6);
        }
    }

    @Test
    void a_vent_as_high_as_a_step_needs_frees_it_and_a_lower_one_does_not() {
        Garment maxi = Skirts.straight(SkirtLength.MAXI).adjust(centreBackSeam());
        assertThat(fit(maxi, SkirtChecks.STRIDE).verdict()).isEqualTo(Fit.Verdict.STRAINS);
        double needed = SkirtChecks.freedForStep(maxi).orElseThrow().mm();
        assertThat(fit(maxi.adjust(vent(mm(45))), SkirtChecks.STRIDE).verdict()).isEqualTo(Fit.Verdict.FITS);
        assertThat(fit(maxi.adjust(vent(mm(45)).high(mm(needed + 1))), SkirtChecks.STRIDE)
                        .verdict())
                .isEqualTo(Fit.Verdict.FITS);
        assertThat(fit(maxi.adjust(vent(mm(45)).high(mm(needed - 1))), SkirtChecks.STRIDE)
                        .verdict())
                .isEqualTo(Fit.Verdict.STRAINS);
    }

    /** 15 to 20 cm high with an extension of 4 to 5 cm (common practice), where a step asks for no more. */
    @Test
    void the_vent_of_a_skirt_to_the_knee_is_as_high_as_usual() {
        Garment skirt = zipped().adjust(vent(mm(45)));
        Piece back = skirt.piece(SkirtNames.BACK);
        double high = back.corner(EdgeNames.HEM, End.END).y()
                - back.corner(EdgeNames.CENTRE, End.START).y();
        assertThat(high).isBetween(150.0, 200.0);
        assertThat(back.edge(EdgeNames.VENT_HEM).length().mm()).isCloseTo(45, within(0.1));
        assertThatThrownBy(() -> vent(mm(10))).hasMessageContaining("30.0 mm to 120.0 mm");
    }

    /** Folded under along the centre, the hem of the extension lies on the hem of the back, curved or not. */
    @Test
    void the_hem_of_a_vent_lies_on_the_hem_it_is_folded_on() {
        Garment skirt = Skirts.straight()
                .adjust(SkirtShapes.aLine(1))
                .adjust(centreBackSeam())
                .adjust(vent(mm(50)));
        Piece back = skirt.piece(SkirtNames.BACK);
        var under = back.path(EdgeNames.VENT_HEM)
                .transformed(
                        Transform.mirrorX(back.corner(EdgeNames.HEM, End.END).x()));
        for (double share : new double[] {0.25, 0.5, 1}) {
            assertThat(back.path(EdgeNames.HEM)
                            .nearest(under.pointAt(share * under.length()))
                            .distance())
                    .isLessThan(1e-6);
        }
    }

    @Test
    void a_pleat_frees_a_step_only_where_it_is_deep_enough() {
        Garment maxi = Skirts.straight(SkirtLength.MAXI).adjust(centreBackSeam());
        double lacking = SkirtChecks.lackingForStep(maxi).orElseThrow().mm();
        assertThat(fit(maxi.adjust(kickPleat(mm(lacking / 4 + 1))), SkirtChecks.STRIDE)
                        .verdict())
                .isEqualTo(Fit.Verdict.FITS);
        assertThat(fit(maxi.adjust(kickPleat(mm(lacking / 4 - 1))), SkirtChecks.STRIDE)
                        .verdict())
                .isEqualTo(Fit.Verdict.STRAINS);
    }

    /** Waist and 0 to 2.5 cm, an under-lap of 2.5 to 4 cm, the skirt 0 to 2 cm longer (common practice). */
    @Test
    void a_straight_band_is_waist_ease_and_laps_and_the_skirt_is_eased_on_to_it() {
        Garment skirt = zipped().adjust(straightWaistband(mm(35)).eased(mm(5)).lapping(mm(35), mm(15)));
        Piece band = skirt.piece(BAND);
        assertThat(band.edge(EdgeNames.TOP).length().mm()).isCloseTo(725.5 + 5 + 35 + 15, within(1e-6));
        assertThat(band.edge(EdgeNames.BOTTOM).length().mm()).isCloseTo(725.5 + 5, within(1e-6));
        assertThat(skirt.finished(SkirtNames.WAIST_GIRTH).mm()).isCloseTo(730.5, within(1e-6));
        assertThat(Skirts.notes(skirt).get(1)).contains("11.0 mm longer and eased on");
        assertThat(band.lines()).anyMatch(line -> line.use() == InnerLine.Use.FOLD);
        assertThat(skirt.piece(SkirtFinishNames.WAISTBAND_INTERFACING).cloth().use())
                .isEqualTo(Cloth.INTERFACING);
        assertThat(skirt.walkSeams().isTrue()).isTrue();
    }

    /** The band's notches part it as the sides and centres part the waist. */
    @Test
    void the_notches_of_a_band_lie_where_sides_and_centres_come() {
        Garment skirt = zipped().adjust(straightWaistband(mm(35)).eased(mm(16)));
        Piece band = skirt.piece(BAND);
        double back = Shell.length(skirt, Shell.waist(skirt, SkirtNames.BACK));
        double front = Shell.length(skirt, Shell.waist(skirt, SkirtNames.FRONT));
        List<Double> along = Stream.of("right side", "centre front", "left side")
                .map(name -> band.notch(EdgeNames.BOTTOM, Name.of(name))
                        .orElseThrow()
                        .distance())
                .toList();
        assertThat(along.get(0)).isCloseTo(back, within(0.01));
        assertThat(along.get(1)).isCloseTo(back + front, within(0.01));
        assertThat(along.get(2)).isCloseTo(back + 2 * front, within(0.01));
    }

    @Test
    void an_ease_of_the_band_that_the_waist_of_the_skirt_does_not_allow_is_refused_with_what_works() {
        assertThatThrownBy(() -> zipped().adjust(straightWaistband(mm(35)).eased(mm(25))))
                .hasMessageContaining("0.0 mm to 16.0 mm")
                .hasMessageContaining("25.0 mm");
        assertThatThrownBy(() -> straightWaistband(mm(35)).eased(mm(26))).hasMessageContaining("0.0 mm to 25.0 mm");
    }

    /** A curved band is the skirt's own top: as long at its upper edge as the waist, its darts gone. */
    @Test
    void a_curved_band_is_the_top_of_the_skirt_with_its_darts_closed() {
        Garment before = zipped();
        Garment skirt = before.adjust(contouredWaistband(mm(45)));
        for (Name half : List.of(SkirtNames.FRONT, SkirtNames.BACK)) {
            Piece band = skirt.piece(SkirtFinishNames.waistband(half));
            assertThat(Dart.all(band)).isEmpty();
            assertThat(band.edge(EdgeNames.TOP).length().mm())
                    .isCloseTo(Shell.length(before, Shell.waist(before, half)), within(0.01));
            List<Dart> old = Dart.all(before.piece(half));
            List<Dart> left = Dart.all(skirt.piece(half));
            assertThat(left).hasSameSizeAs(old);
            for (int i = 0; i < old.size(); i++) {
                assertThat(left.get(i).apex()).isEqualTo(old.get(i).apex());
                assertThat(left.get(i).angle().degrees())
                        .isCloseTo(old.get(i).angle().degrees(), within(1e-6));
                assertThat(left.get(i).leg().mm()).isCloseTo(old.get(i).leg().mm() - 45, within(2.0));
            }
        }
        assertThat(skirt.walkSeams().isTrue()).isTrue();
        assertThat(skirt.finished(SkirtNames.LENGTH).mm())
                .isCloseTo(before.finished(SkirtNames.LENGTH).mm(), within(1e-6));
        assertThatThrownBy(() -> shortWaisted().adjust(contouredWaistband(mm(80))))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("above the apex");
    }

    /** The band, its lower edge eased by nothing, meets side and centre at right angles, so it runs on smoothly. */
    @Test
    void a_facing_of_the_waist_runs_on_smoothly_over_its_side_seam() {
        Garment skirt =
                Skirts.straight().adjust(zip(mm(180), SkirtOpening.LEFT_SIDE)).adjust(faceWaist(mm(60), FLANNEL));
        Piece facing = skirt.piece(SkirtFinishNames.waistFacing(SkirtNames.FRONT));
        assertThat(facing.cornerAngle(EdgeNames.SIDE, End.END).degrees()).isCloseTo(90, within(0.01));
        assertThat(facing.cornerAngle(FaceWaist.LOWER, End.END).degrees()).isCloseTo(90, within(0.5));
        assertThat(skirt.walkSeams().isTrue()).isTrue();
    }

    @Test
    void elastic_draws_in_a_skirt_without_darts_and_is_refused_on_one_with() {
        Garment knit = StraightSkirt.BLOCK.draft(
                Skirts.wearer(), SkirtEase.standard(), Cloth.knit("jersey", Percent.percent(40)));
        Garment skirt = knit.adjust(elasticWaistband(mm(30)).shorterBy(mm(25)));
        assertThat(Skirts.notes(skirt).get(0)).contains("725.5 mm - 25.0 mm = 700.5 mm");
        assertThat(length(skirt, BAND, EdgeNames.BOTTOM))
                .isCloseTo(knit.finished(SkirtNames.WAIST_GIRTH).mm(), within(1e-6));
        assertThat(skirt.walkSeams().isTrue()).isTrue();
        assertThatThrownBy(() -> Skirts.straight().adjust(elasticWaistband(mm(30))))
                .hasMessageContaining("needs a skirt without darts");
    }

    @Test
    void a_pocket_in_the_side_seam_leaves_the_side_as_long_and_its_bags_alike() {
        Garment before = zipped();
        Garment skirt = before.adjust(inSeamPocket(mm(60), mm(160)).cutFrom(SATIN));
        assertThat(skirt.finished(SkirtNames.SIDE_LENGTH).mm())
                .isCloseTo(before.finished(SkirtNames.SIDE_LENGTH).mm(), within(1e-6));
        assertThat(length(skirt, SkirtNames.FRONT, SkirtFinishNames.POCKET_OPENING))
                .isCloseTo(160, within(1e-6));
        assertThat(skirt.piece(SkirtFinishNames.FRONT_BAG).edges())
                .isEqualTo(skirt.piece(SkirtFinishNames.BACK_BAG).edges());
        assertThat(skirt.walkSeams().isTrue()).isTrue();
        assertThatThrownBy(() -> Skirts.straight()
                        .adjust(zip(mm(180), SkirtOpening.LEFT_SIDE))
                        .adjust(inSeamPocket(mm(60), mm(160))))
                .hasMessageContaining("set the zip at the centre back");
    }

    @Test
    void the_side_front_of_a_slanted_pocket_fills_the_corner_that_is_cut_away() {
        Garment before = zipped();
        Garment skirt = before.adjust(slantPocket(mm(40), mm(150)));
        Piece old = before.piece(SkirtNames.FRONT);
        Piece corner = skirt.piece(SkirtFinishNames.SIDE_FRONT);
        assertThat(corner.corner(EdgeNames.SIDE, End.START)).isEqualTo(old.corner(EdgeNames.SIDE, End.START));
        assertThat(corner.edge(SkirtNames.WAIST).length().mm()).isCloseTo(40, within(1e-6));
        for (Name measure : List.of(SkirtNames.WAIST_GIRTH, SkirtNames.HIP_GIRTH, SkirtNames.SIDE_LENGTH)) {
            assertThat(skirt.finished(measure).mm())
                    .isCloseTo(before.finished(measure).mm(), within(1e-6));
        }
        assertThat(skirt.walkSeams().isTrue()).isTrue();
        assertThatThrownBy(() -> shortWaisted().adjust(slantPocket(mm(40), mm(200))))
                .hasMessageContaining("above the hip");
    }

    @Test
    void a_patch_pocket_must_keep_off_the_darts() {
        Garment skirt = Skirts.straight().adjust(patchPocket(SkirtNames.FRONT, mm(120), mm(140)));
        assertThat(skirt.piece(SkirtNames.FRONT).marks())
                .filteredOn(mark -> mark.use() == Mark.Use.DRILL)
                .hasSize(4)
                .allMatch(mark -> skirt.piece(SkirtNames.FRONT).outline().contains(mark.point()));
        assertThatThrownBy(() -> Skirts.straight()
                        .adjust(patchPocket(SkirtNames.BACK, mm(120), mm(140)).at(mm(40), mm(60))))
                .hasMessageContaining("clear of its darts");
    }

    /** A lining is 2 to 3 cm shorter than its skirt (common practice). */
    @Test
    void a_lining_is_shorter_at_its_hem_and_wider_at_centre_back() {
        Garment skirt = zipped().adjust(vent(mm(45))).adjust(lineSkirt(SATIN));
        Piece front = skirt.piece(SkirtFinishNames.lining(SkirtNames.FRONT));
        Piece back = skirt.piece(SkirtFinishNames.lining(SkirtNames.BACK));
        Piece shell = skirt.piece(SkirtNames.FRONT);
        assertThat(shell.edge(EdgeNames.SIDE).length().mm()
                        - front.edge(EdgeNames.SIDE).length().mm())
                .isBetween(20.0, 30.0);
        assertThat(back.edge(EdgeNames.HEM).length().mm()
                        - skirt.piece(SkirtNames.BACK)
                                .edge(EdgeNames.HEM)
                                .length()
                                .mm())
                .isCloseTo(10, within(1e-6));
        assertThat(Dart.all(front)).isEmpty();
        assertThat(back.hasEdge(EdgeNames.VENT)).isTrue();
        assertThat(back.corner(EdgeNames.CENTRE, End.START).y())
                .isCloseTo(
                        skirt.piece(SkirtNames.BACK)
                                .corner(EdgeNames.CENTRE, End.START)
                                .y(),
                        within(1e-6));
        assertThat(skirt.walkSeams().isTrue()).isTrue();
    }

    @Test
    void the_lining_of_a_faced_skirt_begins_at_its_facing() {
        Garment skirt = zipped().adjust(faceWaist(mm(60), FLANNEL))
                .adjust(lineSkirt(SATIN).withDarts());
        Piece lining = skirt.piece(SkirtFinishNames.lining(SkirtNames.FRONT));
        assertThat(lining.corner(SkirtNames.WAIST, End.START).y()).isCloseTo(60, within(1e-6));
        assertThat(Dart.all(lining)).hasSize(1);
        assertThat(skirt.walkSeams().isTrue()).isTrue();
    }

    @Test
    void a_faced_hem_is_not_turned_up() {
        Garment skirt = zipped().adjust(faceHem(mm(50), FLANNEL));
        assertThat(skirt.turnedBack()).isEmpty();
        assertThat(length(skirt, SkirtFinishNames.hemFacing(SkirtNames.FRONT), EdgeNames.HEM))
                .isEqualTo(length(skirt, SkirtNames.FRONT, EdgeNames.HEM));
    }

    /** Interfacing lies flat, ends are closed before a band is turned, and a ring is sewn when its sides are closed. */
    @Test
    void hands_can_sew_in_the_order_that_comes_out() {
        List<String> banded = order(zipped().adjust(inSeamPocket(mm(60), mm(160)))
                .adjust(straightWaistband(mm(35)))
                .adjust(lineSkirt(SATIN)));
        assertThat(banded)
                .containsSubsequence("back dart 1", "side seam", "lining waist", "waistband seam")
                .containsSubsequence("front pocket bag", "side seam")
                .containsSubsequence(
                        "waistband interfacing", "waistband left end", "waistband fold", "front hem and back hem")
                .containsSubsequence("lining side", "lining waist");
        List<String> curved = order(zipped().adjust(contouredWaistband(mm(45))));
        assertThat(curved)
                .containsSubsequence(
                        "front waistband interfacing", "waistband side", "waistband seam", "waistband facing lower")
                .containsSubsequence("waistband facing side", "waistband facing top", "waistband facing lower");
        List<String> faced = order(
                Skirts.straight().adjust(zip(mm(180), SkirtOpening.LEFT_SIDE)).adjust(faceWaist(mm(60), FLANNEL)));
        assertThat(faced)
                .containsSubsequence("front waist facing interfacing", "waist facing side", "waist facing")
                .containsSubsequence("side seam", "waist facing");
    }

    @Test
    void the_usual_allowances_turn_up_the_hem_and_whatever_goes_on_from_it() {
        Garment skirt = zipped().adjust(vent(mm(45))).adjust(lineSkirt(SATIN));
        var usual = SkirtAllowances.woven(skirt);
        Piece back = skirt.piece(SkirtNames.BACK);
        for (Name hem : List.of(EdgeNames.HEM, EdgeNames.VENT_HEM)) {
            assertThat(usual.of(back, hem).isFoldedBack()).isTrue();
            assertThat(usual.on(back, hem)).isEqualTo(mm(40));
        }
        assertThat(usual.on(back, SkirtNames.WAIST)).isEqualTo(mm(15));
        assertThat(usual.on(skirt.piece(SkirtFinishNames.lining(SkirtNames.BACK)), EdgeNames.HEM))
                .isEqualTo(mm(20));
    }

    @Test
    void what_is_cut_to_the_waist_is_refused_where_that_is_gathered_or_pleated() {
        for (Garment drawnIn : List.of(
                Skirts.straight().adjust(SkirtShapes.gatherSkirt(1.8)),
                Skirts.straight().adjust(SkirtShapes.pleatSkirt(PleatKind.KNIFE, 16, mm(30))))) {
            assertThatThrownBy(() -> drawnIn.adjust(straightWaistband(mm(35))))
                    .isInstanceOf(PatternException.class)
                    .hasMessageContaining("gathered or pleated from")
                    .hasMessageContaining("set an elastic waistband");
            assertThatThrownBy(() -> drawnIn.adjust(contouredWaistband(mm(40))))
                    .hasMessageContaining("gathered or pleated from");
            assertThatThrownBy(() -> drawnIn.adjust(faceWaist(mm(60), FLANNEL)))
                    .hasMessageContaining("gathered or pleated from");
        }
    }
}
