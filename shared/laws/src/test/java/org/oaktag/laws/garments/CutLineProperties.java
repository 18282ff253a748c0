package org.oaktag.laws.garments;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.blocks.KnitTop;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.examples.HoodedTop;
import org.oaktag.export.svg.SvgSheet;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.CutLine;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.PathNearest;
import org.oaktag.geometry.Point;
import org.oaktag.testkit.bodies.Adults;

/** What is cut and drawn of the hooded top, for grown bodies drawn from the 2012 survey (NATICK/TR-15/007). */
@Domain(Adults.class)
@Domain(DomainContext.Global.class)
class CutLineProperties {

    private static final int SAMPLES = 150;

    /** The tolerance of a cut line is 0.01 mm; a sample may lie as far off again on the flattened side of a curve. */
    private static final double TOLERANCE = 0.02;

    @Property(tries = 40)
    void the_cut_line_keeps_the_allowance_of_every_edge(@ForAll BodyMeasurements body) {
        Garment top = HoodedTop.recipe(false).applyTo(HoodedTop.block(body));
        Allowances allowances = KnitTop.allowances(top);
        for (Piece piece : top.pieces()) {
            CutLine cutLine = CutLine.of(piece, allowances);
            assertThat(cutLine.runs()).as("runs of %s", piece.name()).hasSize(1);
            assertThat(cutLine.outline().area()).isGreaterThan(piece.outline().area());
            assertThat(cutLine.outline().selfCrossings())
                    .as("crossings of %s", piece.name())
                    .isEmpty();
            for (Edge edge : piece.edges()) {
                keeps(
                        piece,
                        edge,
                        allowances.on(piece, edge.name()).mm(),
                        cutLine.runs().get(0));
            }
        }
    }

    private static void keeps(Piece piece, Edge edge, double allowance, Path run) {
        for (int i = 0; i <= SAMPLES; i++) {
            PathNearest nearest = edge.path().nearest(run.pointAt(run.length() * i / SAMPLES));
            if (!isAtAnEnd(nearest.point(), edge.path())) {
                assertThat(nearest.distance())
                        .as("%s of %s", edge.name(), piece.name())
                        .isGreaterThanOrEqualTo(allowance - TOLERANCE);
            }
        }
    }

    /** Beside the corner of two edges the narrower allowance counts. */
    private static boolean isAtAnEnd(Point point, Path edge) {
        return point.isCloseTo(edge.start(), 0.05) || point.isCloseTo(edge.end(), 0.05);
    }

    @Property(tries = 20)
    void every_top_can_be_drawn_on_its_sheets(@ForAll BodyMeasurements body) {
        Garment top = HoodedTop.recipe(false).applyTo(HoodedTop.block(body));
        String pattern = SvgSheet.pattern(top, KnitTop.allowances(top)).text();
        for (Piece piece : top.pieces()) {
            assertThat(pattern).contains("<g id=\"piece-" + piece.name().hyphenated() + "\"");
        }
        assertThat(SvgSheet.flat(top).text()).contains(">front<", ">back<");
    }
}
