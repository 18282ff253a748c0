package org.oaktag.skirt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.skirt.SkirtShapes.aLine;
import static org.oaktag.skirt.SkirtShapes.circleSkirt;
import static org.oaktag.skirt.SkirtShapes.gatherSkirt;
import static org.oaktag.skirt.SkirtShapes.goreSkirt;
import static org.oaktag.skirt.SkirtShapes.pleatSkirt;
import static org.oaktag.skirt.SkirtShapes.skirtLength;
import static org.oaktag.skirt.SkirtShapes.wrapSkirt;
import static org.oaktag.skirt.SkirtShapes.yokeSkirt;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.oaktag.PatternException;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.Ease;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Dart;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Fit;
import org.oaktag.garment.Garment;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Point;

/** The skirts that are drawn anew with the waist and the length of another, and those that are cut up. */
class NewSkirtsTest {

    private static final Garment SKIRT = Skirts.straight();
    private static final double WAIST = SKIRT.finished(SkirtNames.WAIST_GIRTH).mm();
    private static final double HIP = SKIRT.finished(SkirtNames.HIP_GIRTH).mm();

    private static double girth(Garment skirt, Name measure) {
        return skirt.finished(measure).mm();
    }

    /** The waist of the wearer alone, so that the figures worked by hand hold; 600 mm long. */
    private static Garment withoutEase() {
        return StraightSkirt.BLOCK
                .draft(Skirts.wearer(), Ease.none().with(BodyMeasure.HIP_GIRTH, mm(50)), Cloth.woven("grey flannel"))
                .adjust(skirtLength(mm(600)));
    }

    /**
     * Worked by hand from W = 725.5 mm, L = 600 mm: r = W / (2 pi f), hem = W + 2 pi f L, area = pi f L (2 r + L); cm
     * of radius and hem.
     */
    @ParameterizedTest
    @CsvSource({"1, 11.547, 449.5", "0.75, 15.396, 355.3", "0.5, 23.093, 261.1", "0.25, 46.187, 166.8"})
    void a_circle_skirt_has_the_radius_the_hem_and_the_cloth_of_its_sector(double share, double radius, double hem) {
        Garment circle = withoutEase().adjust(circleSkirt(share));
        Piece front = circle.piece(SkirtNames.FRONT);
        // A quarter of the skirt turns by a quarter of its angle, and its side is part of the radius.
        double middle = front.path(EdgeNames.SIDE).start().distanceTo(Point.of(0, -10 * radius));
        assertThat(middle).isCloseTo(10 * radius, within(0.01));
        assertThat(girth(circle, SkirtNames.WAIST_GIRTH)).isCloseTo(725.5, within(0.01));
        assertThat(girth(circle, SkirtNames.HEM_GIRTH) / 10).isCloseTo(hem, within(0.1));
        double area = 2
                * (front.outline().area()
                        + circle.piece(SkirtNames.BACK).outline().area());
        assertThat(area).isCloseTo(Math.PI * share * 600 * (2 * 10 * radius + 600), within(200.0));
        assertThat(girth(circle, SkirtNames.HIP_GIRTH)).isCloseTo(725.5 + 2 * Math.PI * share * 218, within(0.01));
        assertThat(circle.walkSeams().isTrue()).isTrue();
    }

    @Test
    void a_circle_skirt_made_shorter_is_the_sector_of_its_length() {
        Garment shorter = SKIRT.adjust(circleSkirt(1)).adjust(skirtLength(mm(500)));
        assertThat(girth(shorter, SkirtNames.HEM_GIRTH)).isCloseTo(WAIST + 2 * Math.PI * 500, within(0.05));
        assertThat(girth(shorter, SkirtNames.HIP_GIRTH)).isCloseTo(WAIST + 2 * Math.PI * 218, within(0.05));
    }

    @Test
    void a_circle_skirt_in_quarters_is_cut_in_two_pairs_with_seams_at_the_centres() {
        Garment quarters = SKIRT.adjust(circleSkirt(0.75).inQuarters());
        assertThat(quarters.pieces())
                .extracting(piece -> piece.cut().instruction())
                .containsExactly("cut 1 pair (mirrored)", "cut 1 pair (mirrored)");
        assertThat(quarters.seams()).hasSize(3);
        assertThat(quarters.walkSeams().isTrue()).isTrue();
    }

    @Test
    void a_sector_too_narrow_for_the_hip_fails_its_check() {
        // W + 2 pi f d at the hip: 741.5 + 2 pi 0.15 218 = 947 mm, less than the hip of 966.9 mm.
        assertThat(SKIRT.adjust(circleSkirt(0.15)).fit())
                .filteredOn(fit -> fit.check().equals(SkirtChecks.HIP))
                .extracting(Fit::verdict)
                .doesNotContain(Fit.Verdict.FITS);
        assertThatThrownBy(() -> circleSkirt(1.5)).hasMessageContaining("must be 0.15 to 1 of a whole circle; got 1.5");
    }

    /** Gores: their finished width at any level is the girth there divided by their number; spread d adds 2 n d. */
    @ParameterizedTest
    @EnumSource(GoreCount.class)
    void gores_share_waist_and_hip_and_their_spread_is_added_twice_for_each(GoreCount gores) {
        for (double spread : new double[] {0, 35, 110}) {
            Garment gored = SKIRT.adjust(goreSkirt(gores, mm(spread)));
            assertThat(girth(gored, SkirtNames.WAIST_GIRTH)).isCloseTo(WAIST, within(0.01));
            assertThat(girth(gored, SkirtNames.HIP_GIRTH)).isCloseTo(HIP, within(0.01));
            assertThat(girth(gored, SkirtNames.HEM_GIRTH)).isCloseTo(HIP + 2 * gores.count() * spread, within(0.001));
            assertThat(gored.finished(SkirtNames.LENGTH).text())
                    .isEqualTo(SKIRT.finished(SkirtNames.LENGTH).text());
            assertThat(gored.walkSeams().isTrue()).as("%s", gored.walkSeams()).isTrue();
            assertThat(gored.piece(SkirtShapeNames.GORE).cut().count()).isEqualTo(gores.count());
            assertThat(Fairly.corner(gored.piece(SkirtShapeNames.GORE), EdgeNames.SIDE))
                    .isLessThan(0.01);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.5, 2, 3})
    void a_gathered_skirt_takes_the_ratio_and_measures_its_waist_gathered(double ratio) {
        Garment gathered = SKIRT.adjust(gatherSkirt(ratio));
        assertThat(gathered.piece(SkirtNames.BACK).outline().area() * 4)
                .isCloseTo(WAIST * ratio * girth(SKIRT, SkirtNames.LENGTH), within(0.5));
        assertThat(girth(gathered, SkirtNames.WAIST_GIRTH)).isCloseTo(WAIST, within(1e-6));
        assertThat(girth(gathered, SkirtNames.HEM_GIRTH)).isCloseTo(WAIST * ratio, within(1e-6));
        assertThatThrownBy(() -> gatherSkirt(6)).hasMessageContaining("must be 1.1 to 4 times the waist; got 6.0");
    }

    /** Cut = finished + 2 x depth x number, box and inverted pleats having two folds each; full depth takes 3 : 1. */
    @ParameterizedTest
    @CsvSource({"KNIFE, 16, 30, 1", "BOX, 12, 25, 2", "INVERTED, 8, 40, 2"})
    void a_pleated_skirt_takes_twice_the_depth_of_every_fold(PleatKind kind, int number, double depth, int folds) {
        Garment pleated = SKIRT.adjust(pleatSkirt(kind, number, mm(depth)));
        assertThat(girth(pleated, SkirtNames.HEM_GIRTH)).isCloseTo(WAIST + 2 * depth * number * folds, within(1e-6));
        assertThat(girth(pleated, SkirtNames.WAIST_GIRTH)).isCloseTo(WAIST, within(1e-6));
        Garment full = SKIRT.adjust(pleatSkirt(kind, number, mm(WAIST / number / folds)));
        assertThat(girth(full, SkirtNames.HEM_GIRTH)).isCloseTo(3 * WAIST, within(1e-6));
    }

    /** Folded by hand: what is left of a quarter when every fold is laid on its line is a quarter of the waist. */
    @ParameterizedTest
    @EnumSource(PleatKind.class)
    void the_lines_of_the_pleats_fold_a_quarter_to_a_quarter_of_the_waist(PleatKind kind) {
        Garment pleated = SKIRT.adjust(pleatSkirt(kind, 8, mm(30)));
        Piece front = pleated.piece(SkirtNames.FRONT);
        double[] folds = at(front, InnerLine.Use.FOLD);
        double width = front.path(SkirtNames.WAIST).length();
        // The cloth turns over at each fold: it runs on, back, and on again, so what lies back counts twice.
        double back = 0;
        for (int i = 0; i + 1 < folds.length; i += 2) {
            back += folds[i + 1] - folds[i];
        }
        assertThat(folds.length).isEqualTo(2 * 2 * kind.folds());
        assertThat(width - 2 * back).isCloseTo(WAIST / 4, within(1e-6));
        assertThat(pleated.adjust(skirtLength(mm(500))).piece(SkirtNames.FRONT).lines())
                .allSatisfy(line -> assertThat(line.path().end().y()).isCloseTo(500, within(1e-9)));
    }

    private static double[] at(Piece piece, InnerLine.Use use) {
        return piece.lines().stream()
                .filter(line -> line.use() == use)
                .mapToDouble(line -> line.path().start().x())
                .sorted()
                .toArray();
    }

    @Test
    void pleats_that_would_lie_on_each_other_or_differ_from_quarter_to_quarter_are_refused() {
        assertThatThrownBy(() -> SKIRT.adjust(pleatSkirt(PleatKind.BOX, 12, mm(31))))
                .isInstanceOf(PatternException.class)
                .hasMessage(
                        "depth of the pleats: with 12 box pleats in a waist of 741.5 mm it must be 8.0 mm to 30.8 mm;"
                                + " got 31.0 mm");
        assertThatThrownBy(() -> pleatSkirt(PleatKind.KNIFE, 18, mm(20))).hasMessageContaining("a multiple of 4");
    }

    @ParameterizedTest
    @ValueSource(doubles = {40, 70, 95, 120, 165})
    void a_yoke_ends_as_long_as_what_hangs_from_it_and_its_waist_is_as_long_as_it_was(double depth) {
        Garment yoked = SKIRT.adjust(yokeSkirt(mm(depth)));
        assertThat(yoked.walkSeams().isTrue()).as("%s", yoked.walkSeams()).isTrue();
        assertThat(girth(yoked, SkirtNames.WAIST_GIRTH)).isCloseTo(WAIST, within(0.01));
        assertThat(girth(yoked, SkirtNames.HIP_GIRTH)).isCloseTo(HIP, within(0.01));
        assertThat(girth(yoked, SkirtNames.LENGTH)).isCloseTo(girth(SKIRT, SkirtNames.LENGTH), within(1e-6));
        assertThat(girth(yoked, SkirtNames.SIDE_LENGTH)).isCloseTo(girth(SKIRT, SkirtNames.SIDE_LENGTH), within(0.01));
        for (Name half : SkirtBody.HALVES) {
            Piece yoke = yoked.piece(SkirtShapeNames.yoke(half));
            assertThat(Dart.all(yoke)).isEmpty();
            // What the skirt measures at that level, its darts sewn: its width there less what the darts still take.
            Piece before = SKIRT.piece(half);
            double level = before.path(EdgeNames.SIDE).pointAt(depth).x();
            double taken = Dart.all(before).stream()
                    .mapToDouble(dart -> dart.width().mm()
                            * Math.max(
                                    0,
                                    1
                                            - depth
                                                    / dart.mouthA()
                                                            .midpoint(dart.mouthB())
                                                            .distanceTo(dart.apex())))
                    .sum();
            assertThat(yoke.edge(SkirtShapeNames.YOKE_LINE).length().mm())
                    .isCloseTo(level - taken, within(0.015 * level));
        }
    }

    @Test
    void what_is_left_of_the_darts_below_a_yoke_is_said() {
        assertThat(Skirts.notes(SKIRT.adjust(yokeSkirt(mm(70)))))
                .anyMatch(note -> note.startsWith("what is left of the front dart 1") && note.endsWith("at the side"))
                .anyMatch(note -> note.startsWith("what is left of the back dart 1") && note.endsWith("stays a dart"));
        assertThat(Skirts.notes(SKIRT.adjust(yokeSkirt(mm(150)))))
                .filteredOn(note -> note.endsWith("is closed in the yoke"))
                .hasSize(3);
        assertThatThrownBy(() -> SKIRT.adjust(yokeSkirt(mm(240)))).hasMessageContaining("got 240.0 mm");
    }

    @Test
    void the_fronts_of_a_wrap_skirt_lap_by_the_overlap_and_all_measures_stay() {
        Garment closed = SKIRT.adjust(aLine(1));
        for (double facing : new double[] {0, 50}) {
            Garment wrapped = closed.adjust(wrapSkirt(mm(240), mm(facing)));
            Piece front = wrapped.piece(SkirtNames.FRONT);
            assertThat(front.cut().instruction()).isEqualTo("cut 1 pair (mirrored)");
            assertThat(front.path(SkirtShapeNames.WAIST_LAP).bounds().minX()).isCloseTo(-120, within(1e-9));
            assertThat(front.outline().bounds().minX()).isCloseTo(-120 - facing, within(1e-9));
            for (Name measure : List.of(
                    SkirtNames.WAIST_GIRTH,
                    SkirtNames.HIP_GIRTH,
                    SkirtNames.HEM_GIRTH,
                    SkirtNames.LENGTH,
                    SkirtNames.SIDE_LENGTH)) {
                assertThat(girth(wrapped, measure)).isCloseTo(girth(closed, measure), within(1e-6));
            }
            assertThat(wrapped.fit()).extracting(Fit::verdict).containsOnly(Fit.Verdict.FITS);
            assertThat(wrapped.walkSeams().isTrue()).isTrue();
        }
    }

    /** Turned over on the centre front, the lap lies on the other front: every point of it is a point of that. */
    @Test
    void the_lap_of_one_front_runs_along_the_waist_and_the_hem_of_the_other() {
        Piece front = SKIRT.adjust(aLine(1)).adjust(wrapSkirt(mm(200), mm(0))).piece(SkirtNames.FRONT);
        for (List<Name> pair : List.of(
                List.of(SkirtShapeNames.WAIST_LAP, SkirtNames.WAIST),
                List.of(SkirtShapeNames.HEM_LAP, EdgeNames.HEM))) {
            Edge lap = front.edge(pair.get(0));
            Stream.of(0.1, 0.5, 0.9).forEach(share -> {
                Point point = lap.path().pointAt(share * lap.path().length());
                assertThat(front.path(pair.get(1))
                                .nearest(Point.of(-point.x(), point.y()))
                                .distance())
                        .isLessThan(1e-6);
            });
        }
    }

    @Test
    void a_wrap_past_the_darts_is_refused_with_what_works_and_a_small_one_is_a_caution() {
        assertThatThrownBy(() -> SKIRT.adjust(wrapSkirt(mm(240), mm(0))))
                .isInstanceOf(PatternException.class)
                .hasMessageStartingWith("overlap of the wrap skirt: short of the darts of the other front (close them"
                        + " first for more) it must be 40.0 mm to");
        assertThat(Skirts.notes(SKIRT.adjust(wrapSkirt(mm(100), mm(0))))).anyMatch(note -> note.contains("opens when"));
    }

    @Test
    void another_skirt_is_not_drawn_in_place_of_one_that_is_cut_up() {
        Garment yoked = SKIRT.adjust(yokeSkirt(mm(70)));
        assertThatThrownBy(() -> yoked.adjust(circleSkirt(1)))
                .hasMessageContaining("must have no pieces but a front and a back")
                .hasMessageEndingWith("take this step before those that cut the skirt up or finish it");
    }

    @Test
    void a_yoke_is_cut_before_the_skirt_is_gathered_pleated_or_a_circle() {
        for (Garment full : List.of(
                SKIRT.adjust(gatherSkirt(2)),
                SKIRT.adjust(pleatSkirt(PleatKind.BOX, 8, mm(30))),
                SKIRT.adjust(circleSkirt(1)))) {
            assertThatThrownBy(() -> full.adjust(yokeSkirt(mm(90))))
                    .hasMessageStartingWith(
                            "skirt: must be fitted from the waist to the hip; got one that is gathered");
        }
    }

    /** A side that is one straight line grows by that line. */
    @Test
    void an_oblong_is_made_longer_and_flared() {
        Garment gathered = SKIRT.adjust(gatherSkirt(2)).adjust(skirtLength(mm(800)));
        assertThat(girth(gathered, SkirtNames.SIDE_LENGTH)).isCloseTo(800, within(1e-9));
        Garment flared = gathered.adjust(SkirtShapes.flareSides(mm(50)));
        assertThat(girth(flared, SkirtNames.HIP_GIRTH)).isCloseTo(2 * WAIST, within(1e-6));
        assertThat(girth(flared, SkirtNames.HEM_GIRTH)).isGreaterThan(2 * WAIST + 190);
    }

    /** Gathers: the yoke seam is the gathered edge divided by the ratio (common practice). */
    @Test
    void a_skirt_below_a_yoke_is_gathered_to_the_yoke() {
        Garment yoked = SKIRT.adjust(yokeSkirt(mm(90)));
        Garment gathered = yoked.adjust(gatherSkirt(1.8));
        for (Name half : SkirtBody.HALVES) {
            double line = yoked.piece(SkirtShapeNames.yoke(half))
                    .path(SkirtShapeNames.YOKE_LINE)
                    .length();
            assertThat(gathered.piece(half).path(SkirtShapeNames.YOKE_LINE).length() / 1.8)
                    .isCloseTo(line, within(1e-6));
            assertThat(gathered.piece(SkirtShapeNames.yoke(half))).isEqualTo(yoked.piece(SkirtShapeNames.yoke(half)));
        }
        assertThat(gathered.walkSeams().isTrue()).isTrue();
        assertThat(girth(gathered, SkirtNames.WAIST_GIRTH)).isCloseTo(WAIST, within(0.01));
        assertThat(girth(gathered, SkirtNames.LENGTH)).isCloseTo(girth(SKIRT, SkirtNames.LENGTH), within(1e-6));
        Garment shorter = gathered.adjust(skirtLength(mm(500)));
        assertThat(girth(shorter, SkirtNames.SIDE_LENGTH)).isCloseTo(500, within(1e-6));
    }
}
