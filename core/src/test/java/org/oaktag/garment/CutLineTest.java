package org.oaktag.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.mm;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.PathNearest;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Percent;

/** Cut lines: invariants, and values that plain geometry gives. */
class CutLineTest {

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
                        new Edge(EdgeNames.NECKLINE, neckline),
                        new Edge(EdgeNames.SHOULDER, Path.polyline(neckline.end(), shoulderPoint)),
                        new Edge(EdgeNames.ARMHOLE, armhole),
                        new Edge(EdgeNames.SIDE, Path.polyline(armhole.end(), sideHem)),
                        new Edge(EdgeNames.HEM, hem),
                        new Edge(EdgeNames.CENTRE, Path.polyline(hem.end(), neckline.start()))),
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
                        new Edge(EdgeNames.TOP, Path.polyline(a, b)),
                        new Edge(EdgeNames.SIDE, Path.polyline(b, c)),
                        new Edge(EdgeNames.HEM, Path.polyline(c, d)),
                        new Edge(EdgeNames.CENTRE, Path.polyline(d, a))),
                GRAIN,
                cut,
                CLOTH);
    }

    private static final Allowances TEN = Allowances.of("ten", mm(10)).with(EdgeNames.NECKLINE, mm(6));

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

    @Test
    void no_allowance_leaves_the_seam_line() {
        Piece panel = rectangle(Cut.single());
        assertThat(CutLine.of(panel, Allowances.of("none", mm(0))).outline().area())
                .isCloseTo(panel.outline().area(), within(1e-9));
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
