package org.oaktag.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.oaktag.PatternException;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.PathNearest;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Percent;

/** Cut lines: invariants, and values that plain geometry gives. */
class CutLineTest {

    private static final Name NECKLINE = Name.of("neckline");
    private static final Name SHOULDER = Name.of("shoulder");
    private static final Name ARMHOLE = Name.of("armhole");
    private static final Cloth CLOTH = Cloth.knit("trial knit", Percent.percent(20));
    private static final Grainline GRAIN = new Grainline(Point.of(50, 100), Point.of(50, 300));

    /** The half of a back whose armhole bends more tightly at the underarm than the allowance is wide. */
    private static Piece tightlyBentBack() {
        Path neckline = Path.from(Point.of(0, 20))
                .curveTo(
                        Point.of(52.14341407974334, 20.0),
                        Point.of(81.67022821685876, 12.20757508345822),
                        Point.of(85.11754096628727, 2.7361611466053493))
                .build();
        Point shoulderPoint = Point.of(247.2849949984154, 61.760287381032626);
        Path armhole = Path.from(shoulderPoint)
                .curveTo(
                        Point.of(235.78715087487072, 93.35035448288068),
                        Point.of(216.725, 116.38255275919074),
                        Point.of(216.725, 150.0))
                .curveTo(
                        Point.of(216.725, 231.84),
                        Point.of(233.98802460630301, 281.8654200705903),
                        Point.of(251.25, 282.0))
                .build();
        Point sideHem = Point.of(247.1806254708587, 803.9607656050262);
        Path hem = Path.from(sideHem)
                .curveTo(
                        Point.of(164.787082066663, 803.3183989579736),
                        Point.of(82.39354340419571, 802.996),
                        Point.of(0.0, 802.996))
                .build();
        return Piece.of(
                Name.of("back"),
                List.of(
                        new Edge(NECKLINE, neckline),
                        Edge.straight(SHOULDER, neckline.end(), shoulderPoint),
                        new Edge(ARMHOLE, armhole),
                        Edge.straight(EdgeNames.SIDE, armhole.end(), sideHem),
                        new Edge(EdgeNames.HEM, hem),
                        Edge.straight(EdgeNames.CENTRE, hem.end(), neckline.start())),
                GRAIN,
                Cut.onFold(EdgeNames.CENTRE),
                CLOTH);
    }

    private static Piece rectangle(Cut cut) {
        Point a = Point.of(0, 0);
        Point b = Point.of(200, 0);
        Point c = Point.of(200, 400);
        Point d = Point.of(0, 400);
        return Piece.of(
                Name.of("panel"),
                List.of(
                        Edge.straight(EdgeNames.TOP, a, b),
                        Edge.straight(EdgeNames.SIDE, b, c),
                        Edge.straight(EdgeNames.HEM, c, d),
                        Edge.straight(EdgeNames.CENTRE, d, a)),
                GRAIN,
                cut,
                CLOTH);
    }

    private static final Allowances TEN = Allowances.of("ten", mm(10)).with(NECKLINE, mm(6));

    @Test
    void a_hem_in_two_edges_that_run_on_is_folded_back_as_one_is() {
        Piece whole = rectangle(Cut.single());
        Path hem = whole.path(EdgeNames.HEM);
        List<Edge> edges = new ArrayList<>(whole.edges());
        edges.set(2, new Edge(EdgeNames.HEM, hem.sub(0, 80), EdgeFinish.TURNED_BACK));
        edges.add(3, new Edge(Name.of("hem mirrored"), hem.sub(80, hem.length()), EdgeFinish.TURNED_BACK));
        Piece parted = whole.withEdges(edges);
        Allowance turned = Allowance.foldedBack(mm(25));
        Allowances allowances =
                Allowances.of("hems", mm(10)).with(EdgeNames.HEM, turned).with(Name.of("hem mirrored"), turned);
        assertThat(CutLine.of(parted, allowances).outline().area())
                .isCloseTo(CutLine.of(whole, allowances).outline().area(), within(1e-6));
        // 10 mm on three sides, 25 mm below.
        assertThat(CutLine.of(parted, allowances).outline().area()).isCloseTo(220 * 435, within(1e-6));
        Garment garment =
                Garment.of("panel", Wearer.of("nobody", false, Map.of()), List.of(parted), List.of(), List.of());
        Allowances usual = Allowances.of("usual", mm(10)).finished(garment, mm(25));
        assertThat(usual.of(parted, Name.of("hem mirrored"))).isEqualTo(usual.of(parted, EdgeNames.HEM));
        assertThat(usual.on(parted, EdgeNames.CENTRE)).isEqualTo(mm(10));
    }

    @Test
    void a_cut_line_keeps_the_allowance_of_every_edge() {
        Piece piece = tightlyBentBack();
        CutLine cutLine = CutLine.of(piece, TEN);
        List<Point> samples = new ArrayList<>();
        for (Path run : cutLine.runs()) {
            for (int i = 0; i <= 2000; i++) {
                samples.add(run.pointAt(run.length() * i / 2000));
            }
        }
        for (Edge edge : piece.edges()) {
            double allowance = TEN.on(piece, edge.name()).mm();
            for (Point sample : samples) {
                PathNearest nearest = edge.path().nearest(sample);
                boolean atEnd = nearest.point().isCloseTo(edge.path().start(), 0.05)
                        || nearest.point().isCloseTo(edge.path().end(), 0.05);
                if (!atEnd) {
                    assertThat(nearest.distance())
                            .as("distance of %s from %s", sample, edge.name())
                            .isGreaterThanOrEqualTo(allowance - 0.02);
                }
            }
        }
    }

    @Test
    void a_cut_line_begins_and_ends_on_the_fold_and_leaves_it_out() {
        CutLine cutLine = CutLine.of(tightlyBentBack(), TEN);
        assertThat(cutLine.runs()).hasSize(1);
        Path run = cutLine.runs().get(0);
        assertThat(run.start().x()).isCloseTo(0, within(1e-9));
        assertThat(run.start().y()).isCloseTo(14, within(1e-9));
        assertThat(run.end().x()).isCloseTo(0, within(1e-9));
        assertThat(run.end().y()).isCloseTo(812.996, within(1e-6));
    }

    @Test
    void without_a_fold_the_cut_line_runs_all_the_way_round() {
        CutLine cutLine =
                CutLine.of(rectangle(Cut.pair()), Allowances.of("wide", mm(15)).with(EdgeNames.HEM, mm(40)));
        assertThat(cutLine.runs()).hasSize(1);
        assertThat(cutLine.runs().get(0).isClosed()).isTrue();
        // 200 + 2 x 15 wide, 400 + 15 + 40 high, its corners mitred.
        assertThat(cutLine.outline().area()).isCloseTo(230.0 * 455, within(1e-6));
    }

    @Test
    void a_single_edge_may_have_an_allowance_where_its_neighbours_have_none() {
        Piece back = tightlyBentBack();
        Allowances sideOnly = Allowances.of("none", mm(0)).with(EdgeNames.SIDE, mm(10));
        double added =
                CutLine.of(back, sideOnly).outline().area() - back.outline().area();
        // The side is straight and square to the armhole, so that the allowance is very nearly a rectangle.
        assertThat(added).isCloseTo(10 * back.path(EdgeNames.SIDE).length(), within(1.0));
    }

    /** Where along a path its point lies, by the chords of so many parts, which are short by less than 1e-3 mm here. */
    private static double alongBy(Path path, Point place) {
        int parts = 20_000;
        double best = Double.POSITIVE_INFINITY;
        double along = 0;
        double at = 0;
        Point before = path.start();
        for (int i = 1; i <= parts; i++) {
            Point next = path.pointAt(path.length() * i / parts);
            along += before.distanceTo(next);
            if (next.distanceTo(place) < best) {
                best = next.distanceTo(place);
                at = along;
            }
            before = next;
        }
        return at;
    }

    /** The cuts of a multiple notch lie 3 to 6 mm apart: common practice. */
    @ParameterizedTest
    @EnumSource(NotchCut.class)
    void a_notch_is_cut_as_often_as_it_counts_about_its_place_and_square_to_its_seam(NotchCut shape) {
        Map<Name, Double> places = Map.of(Name.of("one"), 90.0, Name.of("two"), 150.0, Name.of("three"), 60.0);
        Piece back = tightlyBentBack()
                .withNotch(new Notch(Name.of("one"), ARMHOLE, End.START, 90, 1))
                .withNotch(new Notch(Name.of("two"), EdgeNames.SIDE, End.END, 150, 2))
                .withNotch(new Notch(Name.of("three"), EdgeNames.HEM, End.START, 60, 3));
        List<Snip> snips = CutLine.of(back, TEN.notched(shape)).snips();
        int from = 0;
        for (Notch notch : back.notches()) {
            Path edge = back.path(notch.edge());
            double sum = 0;
            double last = 0;
            for (int i = 0; i < notch.count(); i++) {
                Snip snip = snips.get(from + i);
                double along = alongBy(edge, snip.seam());
                sum += along;
                if (i > 0) {
                    assertThat(along - last)
                            .as("between two cuts of %s", notch.name())
                            .isBetween(3.0, 6.0);
                }
                last = along;
                // Square to the chord of 0.2 mm about its foot, and as long as the allowance is wide.
                Point before = edge.pointAt(along - 0.1);
                Point after = edge.pointAt(along + 0.1);
                double slant = snip.cut()
                        .minus(snip.seam())
                        .unit()
                        .dot(after.minus(before).unit());
                assertThat(slant).as("%s leans", notch.name()).isCloseTo(0, within(1e-3));
                assertThat(snip.seam().distanceTo(snip.cut())).isCloseTo(10, within(0.02));
                assertThat(snip.path().start()).isEqualTo(snip.seam());
                assertThat(snip.path().nearest(snip.cut()).distance())
                        .as("the mark of %s comes to the edge of the cloth", notch.name())
                        .isCloseTo(0, within(1e-9));
            }
            from += notch.count();
            double place = places.getOrDefault(notch.name(), 0.0);
            double expected = notch.from() == End.START ? place : edge.length() - place;
            assertThat(sum / notch.count()).as("place of %s", notch.name()).isCloseTo(expected, within(0.05));
        }
        // All others are those at the ends of the fold.
        assertThat(snips.subList(from, snips.size()))
                .allMatch(snip -> Math.abs(snip.seam().x()) < 1e-9)
                .hasSize(2);
    }

    @Test
    void no_allowance_leaves_the_seam_line() {
        Piece panel = rectangle(Cut.single());
        assertThat(CutLine.of(panel, Allowances.of("none", mm(0))).outline().area())
                .isCloseTo(panel.outline().area(), within(1e-9));
    }

    /**
     * A panel whose upper edge is one run that dips in between, 30 mm wide with a round bottom: a keyhole without a
     * corner.
     */
    private static Piece keyhole(double depth) {
        Path top = Path.from(Point.of(0, 0))
                .lineTo(Point.of(70, 0))
                .curveTo(Point.of(80, 0), Point.of(85, 5), Point.of(85, 15))
                .lineTo(Point.of(85, depth - 15))
                .curveTo(Point.of(85, depth + 5), Point.of(115, depth + 5), Point.of(115, depth - 15))
                .lineTo(Point.of(115, 15))
                .curveTo(Point.of(115, 5), Point.of(120, 0), Point.of(130, 0))
                .lineTo(Point.of(200, 0))
                .build();
        return Piece.of(
                Name.of("yoke"),
                List.of(
                        new Edge(EdgeNames.TOP, top),
                        Edge.straight(EdgeNames.SIDE, top.end(), Point.of(200, 300)),
                        Edge.straight(EdgeNames.HEM, Point.of(200, 300), Point.of(0, 300)),
                        Edge.straight(EdgeNames.CENTRE, Point.of(0, 300), Point.of(0, 0))),
                GRAIN,
                Cut.single(),
                CLOTH);
    }

    /** The allowance of either side of the keyhole is 15 mm wide before both meet: nobody could cut out its bottom. */
    @Test
    void an_allowance_that_closes_a_bend_of_its_own_edge_is_refused_with_the_greatest_that_works() {
        Piece yoke = keyhole(120);
        for (double width : new double[] {15.5, 20, 35}) {
            assertThatThrownBy(() -> CutLine.of(yoke, Allowances.of("wide", mm(width))))
                    .isInstanceOf(PatternException.class)
                    .hasMessageContaining("allowance of 'yoke.top'")
                    .hasMessageContaining("the allowances meet in front of its hollow")
                    .hasMessageContaining(mm(width).text())
                    .hasMessageMatching("(?s).*use at most 1[45]\\.[0-9] mm.*");
        }
        assertThatThrownBy(() -> CutLine.of(yoke, Allowances.of("wide", mm(20))))
                .satisfies(refused -> {
                    String message = String.valueOf(refused.getMessage());
                    double quoted = Double.parseDouble(message.replaceAll("(?s).*use at most ([0-9.]+) mm.*", "$1"));
                    CutLine works = CutLine.of(yoke, Allowances.of("quoted", mm(quoted)));
                    // It dips in nearly to the bottom.
                    assertThat(works.outline()
                                    .path()
                                    .nearest(Point.of(100, 100))
                                    .distance())
                            .isLessThan(10);
                });
    }

    @Test
    void a_bend_no_deeper_than_the_allowance_is_gone_round() {
        // Its bottom lies no further from the cut line than twice the allowance.
        Piece yoke = keyhole(30);
        for (double width : new double[] {10, 14, 30, 40}) {
            assertThat(CutLine.of(yoke, Allowances.of("wide", mm(width))).runs())
                    .hasSize(1);
        }
    }

    /** A panel with a slot in its upper edge, 30 mm wide and 100 mm deep. */
    private static Piece slotted() {
        Point[] at = {
            Point.of(0, 0),
            Point.of(85, 0),
            Point.of(85, 100),
            Point.of(115, 100),
            Point.of(115, 0),
            Point.of(200, 0),
            Point.of(200, 300),
            Point.of(0, 300)
        };
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < at.length; i++) {
            edges.add(Edge.straight(Name.of("edge " + i), at[i], at[(i + 1) % at.length]));
        }
        return Piece.of(Name.of("slotted"), edges, GRAIN, Cut.single(), CLOTH);
    }

    @Test
    void allowances_that_meet_in_front_of_an_edge_are_refused_with_the_greatest_that_works() {
        assertThat(CutLine.of(slotted(), Allowances.of("narrow", mm(14.9)))
                        .outline()
                        .area())
                // 229.8 x 329.8 less a slot 0.2 wide and 100 deep, whose floor and mouth rise alike.
                .isCloseTo(229.8 * 329.8 - 0.2 * 100, within(0.1));
        assertThatThrownBy(() -> CutLine.of(slotted(), Allowances.of("wide", mm(20))))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("allowance of 'slotted.edge-1'")
                .hasMessageContaining("got 20.0 mm")
                .hasMessageContaining("use at most 14.9 mm");
    }

    /** Slots of all sizes with narrow allowances among wide ones, whose mitres meet in front of the mouth of some. */
    @Test
    void each_edge_of_a_slot_is_cut_somewhere_at_its_own_allowance_or_the_slot_is_refused() {
        Random random = new Random(5);
        int refused = 0;
        for (int i = 0; i < 970; i++) {
            double left = 80;
            double right = left + 4 + 36 * random.nextDouble();
            double floor = 5 + 60 * random.nextDouble();
            double slant = 10 * random.nextDouble() - 5;
            double narrow = 2 + 6 * random.nextDouble();
            double wide = narrow + 20 * random.nextDouble();
            Point[] at = {
                Point.of(0, 0),
                Point.of(left, 0),
                Point.of(left + slant, floor),
                Point.of(right + slant, floor),
                Point.of(right, 0),
                Point.of(200, 0),
                Point.of(200, 300),
                Point.of(0, 300)
            };
            List<Edge> edges = new ArrayList<>();
            Allowances allowances = Allowances.of("wide", mm(wide));
            for (int k = 0; k < at.length; k++) {
                edges.add(Edge.straight(Name.of("edge " + k), at[k], at[(k + 1) % at.length]));
            }
            for (int k = 1; k <= 3; k++) {
                allowances = allowances.with(Name.of("edge " + k), mm(narrow));
            }
            try {
                Path cut = CutLine.of(Piece.of(Name.of("slotted"), edges, GRAIN, Cut.single(), CLOTH), allowances)
                        .outline()
                        .path();
                for (int k = 1; k <= 3; k++) {
                    assertThat(isSomewhereBeside(edges.get(k).path(), narrow, cut))
                            .as("slot %s, edge %s", i, k)
                            .isTrue();
                }
            } catch (PatternException none) {
                refused++;
            }
        }
        assertThat(refused).isBetween(97, 485);
    }

    private static boolean isSomewhereBeside(Path edge, double width, Path cut) {
        Vector out = edge.startDirection().leftNormal().times(width);
        for (int k = 1; k < 400; k++) {
            Point parallel = edge.pointAt(edge.length() * k / 400).plus(out);
            if (cut.nearest(parallel).distance() < 0.02) {
                return true;
            }
        }
        return false;
    }

    @Test
    void a_squared_allowance_ends_square_where_its_seam_line_leaves_the_neighbour() {
        // Edges at 45 degrees: the shoulder from (0, 0) to (100, 0) meets an edge that runs back to (0, 100).
        Point tip = Point.of(100, 0);
        Point low = Point.of(0, 100);
        Piece triangle = Piece.of(
                Name.of("triangle"),
                List.of(
                        Edge.straight(SHOULDER, Point.ORIGIN, tip),
                        Edge.straight(ARMHOLE, tip, low),
                        Edge.straight(EdgeNames.CENTRE, low, Point.ORIGIN)),
                GRAIN,
                Cut.single(),
                CLOTH);
        Allowances squared = Allowances.of("ten", mm(10)).with(SHOULDER, Allowance.squared(mm(10)));
        Path run = CutLine.of(triangle, squared).runs().get(0);
        double meeting = 100 + 10 * Math.sqrt(2);
        assertThat(run.nearest(Point.of(meeting, 0)).distance()).isCloseTo(0, within(1e-9));
        assertThat(run.nearest(Point.of(meeting, -10)).distance()).isCloseTo(0, within(1e-9));
        assertThat(run.bounds().maxX()).isCloseTo(meeting, within(1e-9));
    }

    @Test
    void a_hem_deeper_than_the_side_beside_it_is_refused_with_the_greatest_that_works() {
        Point a = Point.of(0, 0);
        Point b = Point.of(200, 0);
        Point c = Point.of(190, 30);
        Point d = Point.of(10, 30);
        Piece low = Piece.of(
                Name.of("low"),
                List.of(
                        Edge.straight(EdgeNames.TOP, a, b),
                        Edge.straight(EdgeNames.SIDE, b, c),
                        Edge.straight(EdgeNames.HEM, c, d),
                        Edge.straight(EdgeNames.CENTRE, d, a)),
                GRAIN,
                Cut.single(),
                CLOTH);
        Allowances deep = Allowances.of("deep", mm(10)).with(EdgeNames.HEM, Allowance.foldedBack(mm(40)));
        assertThatThrownBy(() -> CutLine.of(low, deep))
                .isInstanceOf(PatternException.class)
                .hasMessage(
                        "allowance of 'low.hem': must not be deeper than the side that is mirrored beside it; got a side"
                                + " that ends before it; use at most 30.0 mm, or mitre it");
    }

    @Test
    void a_folded_back_hem_runs_straight_on_along_the_fold_of_the_cloth() {
        Piece back = tightlyBentBack();
        CutLine cutLine = CutLine.of(back, TEN.with(EdgeNames.HEM, Allowance.foldedBack(mm(25))));
        assertThat(cutLine.runs()).hasSize(1);
        Path run = cutLine.runs().get(0);
        assertThat(run.end().x()).isCloseTo(0, within(1e-9));
        assertThat(run.end().y()).isCloseTo(802.996 + 25, within(1e-6));
    }

    @Test
    void an_outline_that_runs_the_wrong_way_is_refused() {
        Piece panel = rectangle(Cut.single());
        List<Edge> turned = new ArrayList<>();
        for (int i = panel.edges().size() - 1; i >= 0; i--) {
            Edge edge = panel.edges().get(i);
            turned.add(edge.withPath(edge.path().reversed()));
        }
        assertThatThrownBy(() -> CutLine.of(panel.withEdges(turned), TEN))
                .isInstanceOf(PatternException.class)
                .hasMessage(
                        "cut line of piece 'panel': needs an outline that runs clockwise round an area; got an area of"
                                + " -80000.0 mm²");
    }
}
