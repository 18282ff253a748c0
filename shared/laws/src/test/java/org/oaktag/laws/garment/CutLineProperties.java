package org.oaktag.laws.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.mm;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import net.jqwik.api.domains.DomainContextBase;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.oaktag.garment.Allowance;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.CutLine;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Pressing;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.laws.adjust.PieceArbitraries;
import org.oaktag.measure.Percent;

/** Laws of the cut line on random pieces, with the JTS Topology Suite as an independent judge of strips and areas. */
class CutLineProperties {

    /** The tolerance of a cut line, that of the chords, and a little for the ends of the strips. */
    private static final double TOLERANCE = 0.03;

    /** A strip ends square to its last chord, not quite to its curve: 30 mm wide and up to 0.0005 mm, in mm². */
    private static final double SLIVER = 0.01;

    /** Allowances for up to five edges, with mitred and squared ends. */
    static final class Finishes extends DomainContextBase {
        @Provide
        Arbitrary<List<Allowance>> allowances() {
            Arbitrary<Allowance> one = Arbitraries.doubles()
                    .between(4, 30)
                    .flatMap(width -> Arbitraries.of(Allowance.mitred(mm(width)), Allowance.squared(mm(width))));
            return one.list().ofSize(5);
        }
    }

    @Property(tries = 150)
    @Domain(PieceArbitraries.class)
    @Domain(Finishes.class)
    void a_cut_line_is_nowhere_nearer_to_an_edge_than_its_allowance(
            @ForAll Piece piece, @ForAll List<Allowance> finishes) {
        Allowances allowances = Allowances.of("any", mm(10));
        for (int i = 0; i < piece.edges().size(); i++) {
            EdgeRef edge = EdgeRef.of(piece.name(), piece.edges().get(i).name());
            allowances = allowances.with(edge, finishes.get(i));
        }
        Polygon cut = Jts.polygon(CutLine.of(piece, allowances).outline());
        assertThat(cut.isValid()).isTrue();
        for (Edge edge : piece.edges()) {
            double width = allowances.on(piece, edge.name()).mm();
            Geometry strip = Jts.strip(edge.path(), width - TOLERANCE);
            assertThat(strip.difference(cut).getArea())
                    .as("what the cut line takes from the %s mm of edge %s", width, edge.name())
                    .isLessThan(SLIVER);
        }
    }

    @Property(tries = 150)
    @Domain(PieceArbitraries.class)
    @Domain(DomainContext.Global.class)
    void what_is_cut_has_the_area_of_the_grown_piece(
            @ForAll Piece piece, @ForAll @DoubleRange(min = 2, max = 30) double width) {
        double cut =
                CutLine.of(piece, Allowances.of("any", mm(width))).outline().area();
        double grown = Jts.mitred(Jts.polygon(piece.outline()), width, 3).getArea();
        double tolerance = TOLERANCE * piece.outline().perimeter();
        assertThat(cut).isCloseTo(grown, within(tolerance));
    }

    @Property(tries = 150)
    void a_folded_back_hem_folds_on_to_the_piece_exactly(
            @ForAll @DoubleRange(min = -60, max = 60) double leftLean,
            @ForAll @DoubleRange(min = -60, max = 60) double rightLean,
            @ForAll @DoubleRange(min = -20, max = 20) double bow,
            @ForAll @DoubleRange(min = 3, max = 20) double seam,
            @ForAll @DoubleRange(min = 5, max = 60) double hem,
            @ForAll @DoubleRange(min = -30, max = 30) double slope) {
        Piece tube = tapered(leftLean, rightLean, bow, slope);
        Allowances allowances = Allowances.of("any", mm(seam)).with(EdgeNames.HEM, Allowance.foldedBack(mm(hem)));
        Path fold = tube.path(EdgeNames.HEM);
        Geometry laid = levelled(fold)
                .transform(Jts.polygon(CutLine.of(tube, allowances).outline()));

        // Clockwise on paper the turning lies to the left of the hem: y is down, so at y < 0 once the hem runs along x.
        Geometry turning = band(-hem, 0).intersection(laid);
        Geometry above = band(0, hem).intersection(laid);
        Geometry folded = AffineTransformation.scaleInstance(1, -1).transform(turning);

        assertThat(turning.getArea()).isGreaterThan(hem * 100);
        // Either parallel of either side may lie 0.01 mm off, which is the tolerance of a cut line.
        assertThat(folded.symDifference(above).getArea()).isLessThan(2 * 0.01 * hem);
        assertThat(-laid.getEnvelopeInternal().getMinY())
                .as("nothing lies beyond the turning")
                .isCloseTo(hem, within(1e-6));
    }

    @Property(tries = 150)
    void allowances_pressed_to_one_side_end_where_the_piece_under_them_is_cut(
            @ForAll @DoubleRange(min = 12, max = 168) double angleAtTop,
            @ForAll @DoubleRange(min = 12, max = 168) double angleAtBottom,
            @ForAll @DoubleRange(min = 3, max = 12) double width,
            @ForAll @DoubleRange(min = 3, max = 12) double beside) {
        Piece a = leaning("a", -1, angleAtTop, angleAtBottom);
        Piece b = leaning("b", 1, 180 - angleAtTop, 180 - angleAtBottom);
        Seam seam = Seam.flat(
                Name.of("joint"),
                SeamSide.along(a.name(), EdgeNames.SIDE),
                SeamSide.against(b.name(), EdgeNames.SIDE),
                "");
        for (Pressing pressing : Pressing.values()) {
            Allowances allowances = Allowances.of("any", mm(beside)).pressed(seam, mm(width), pressing);
            Geometry cutA = Jts.polygon(CutLine.of(a, allowances).outline());
            Geometry cutB = Jts.polygon(CutLine.of(b, allowances).outline());
            // The seam lies at x = 0, a to its left, b to its right.
            Geometry onA = upright(-width, 0);
            Geometry onB = upright(0, width);
            AffineTransformation folded = AffineTransformation.scaleInstance(-1, 1);
            Geometry under = pressing == Pressing.TOWARDS_B ? cutB.intersection(onB) : cutA.intersection(onA);
            Geometry ofA =
                    pressing == Pressing.TOWARDS_B ? cutA.intersection(onB) : folded.transform(cutA.intersection(onB));
            Geometry ofB = switch (pressing) {
                case OPEN -> folded.transform(cutB.intersection(onA));
                case TOWARDS_A -> cutB.intersection(onA);
                case TOWARDS_B -> folded.transform(cutB.intersection(onA));
            };
            Geometry underB = pressing == Pressing.OPEN ? cutB.intersection(onB) : under;
            // What lies flat keeps its allowance of its own edge and corners as well, even where the piece under it
            // ends
            // sooner.
            Geometry own = Jts.line(a.path(EdgeNames.SIDE)).buffer(Math.max(width, beside) + TOLERANCE);
            double tolerance = 4 * 0.01 * width / Math.sin(Math.toRadians(12));
            assertThat(less(under, ofA).getArea()).as("a's lacks, %s", pressing).isLessThan(tolerance);
            assertThat(less(underB, ofB).getArea())
                    .as("b's lacks, %s", pressing)
                    .isLessThan(tolerance);
            assertThat(less(less(ofA, under), own).getArea())
                    .as("a's shows, %s", pressing)
                    .isLessThan(tolerance);
            assertThat(less(less(ofB, underB), own).getArea())
                    .as("b's shows, %s", pressing)
                    .isLessThan(tolerance);
        }
    }

    /** The overlay of JTS that also copes with lines that all but coincide, as these do. */
    private static Geometry less(Geometry one, Geometry other) {
        return OverlayNGRobust.overlay(one, other, OverlayNG.DIFFERENCE);
    }

    private static Geometry upright(double from, double to) {
        return new GeometryFactory().toGeometry(new Envelope(from, to, -4000, 4000));
    }

    /**
     * A panel 100 mm wide beside x = 0, its side there 900 mm long, upper and lower edge leaning at the given angles to
     * it.
     */
    private static Piece leaning(String name, int side, double angleAtTop, double angleAtBottom) {
        Point top = Point.of(0, 0);
        Point bottom = Point.of(0, 900);
        double reach = 40;
        Point outerTop = Point.of(side * reach, reach / Math.tan(Math.toRadians(angleAtTop)));
        Point outerBottom = Point.of(side * reach, 900 - reach / Math.tan(Math.toRadians(angleAtBottom)));
        List<Edge> edges = side < 0
                ? List.of(
                        Edge.straight(EdgeNames.TOP, outerTop, top),
                        Edge.straight(EdgeNames.SIDE, top, bottom),
                        Edge.straight(EdgeNames.HEM, bottom, outerBottom),
                        Edge.straight(EdgeNames.CENTRE, outerBottom, outerTop))
                : List.of(
                        Edge.straight(EdgeNames.TOP, top, outerTop),
                        Edge.straight(EdgeNames.CENTRE, outerTop, outerBottom),
                        Edge.straight(EdgeNames.HEM, outerBottom, bottom),
                        Edge.straight(EdgeNames.SIDE, bottom, top));
        return Piece.of(
                Name.of(name),
                edges,
                new Grainline(Point.of(side * 20, 300), Point.of(side * 20, 500)),
                Cut.single(),
                Cloth.knit("any cloth", Percent.percent(20)));
    }

    /** Lays a fold along the x axis, from x = 0 onwards. */
    private static AffineTransformation levelled(Path fold) {
        Point from = fold.start();
        Point to = fold.end();
        return AffineTransformation.translationInstance(-from.x(), -from.y())
                .rotate(-Math.atan2(to.y() - from.y(), to.x() - from.x()));
    }

    private static Geometry band(double from, double to) {
        return new GeometryFactory().toGeometry(new Envelope(-2000, 2000, from, to));
    }

    /** A panel of which one side is straight and one bowed, and the hem may slope. */
    private static Piece tapered(double leftLean, double rightLean, double bow, double slope) {
        Point a = Point.of(0, 0);
        Point b = Point.of(300, 0);
        Point c = Point.of(300 + rightLean, 400 + slope);
        Point d = Point.of(-leftLean, 400 - slope);
        Path right = Path.from(b)
                .curveTo(Point.of(300 + bow, 130), Point.of(c.x() + bow, 270), c)
                .build();
        List<Edge> edges = new ArrayList<>(List.of(
                Edge.straight(EdgeNames.TOP, a, b),
                new Edge(EdgeNames.SIDE, right),
                Edge.straight(EdgeNames.HEM, c, d),
                Edge.straight(EdgeNames.CENTRE, d, a)));
        return Piece.of(
                Name.of("tube"),
                edges,
                new Grainline(Point.of(150, 100), Point.of(150, 300)),
                Cut.single(),
                Cloth.knit("any cloth", Percent.percent(20)));
    }
}
