package org.oaktag.laws.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Length.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.oaktag.blocks.KnitTop;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.examples.HoodedTop;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.CutLine;
import org.oaktag.garment.CutList;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Crossing;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.lay.Effort;
import org.oaktag.lay.LaidPiece;
import org.oaktag.lay.Lay;
import org.oaktag.lay.Spread;
import org.oaktag.testkit.bodies.Adults;
import org.oaktag.testkit.lay.ColumnBound;
import org.oaktag.testkit.lay.Shelves;

/** Lays of the hooded top for surveyed bodies. JTS (org.locationtech.jts) is the independent judge of overlaps. */
@Domain(Adults.class)
@Domain(DomainContext.Global.class)
class LayProperties {

    private static final GeometryFactory JTS = new GeometryFactory();

    /** Chords of a curve cut into so many parts lie within 0.01 mm of it, for every curve of these pieces. */
    private static final int PARTS = 60;

    private static final double CHORD = 0.02;

    /** Outlines further apart than this, mm, are not asked for crossings, which takes long for hundreds of pairs. */
    private static final double NEAR = 10;

    private record Laid(CutList list, Allowances allowances, Cloth cloth, Lay lay) {}

    private static List<Laid> lays(BodyMeasurements body, boolean folded, boolean nap, double gap, int tries) {
        Garment top = HoodedTop.recipe(false).applyTo(HoodedTop.block(body));
        CutList list = CutList.of(top);
        Allowances allowances = KnitTop.allowances(top);
        Spread plain = folded ? Spread.folded(cm(190)) : Spread.single(cm(150));
        Spread spread = (nap ? plain.withNap() : plain).withGap(mm(gap));
        return list.cloths().stream()
                .map(cloth ->
                        new Laid(list, allowances, cloth, Lay.of(list, cloth, allowances, spread, Effort.tries(tries))))
                .toList();
    }

    /** A few moves only, or enough for the search to begin anew with another order. */
    @Provide
    Arbitrary<Integer> efforts() {
        return Arbitraries.frequencyOf(
                Tuple.of(1, Arbitraries.integers().between(1, 20)),
                Tuple.of(1, Arbitraries.integers().between(1100, 1400)));
    }

    @Property(tries = 12)
    void no_two_pieces_overlap_or_come_nearer_than_the_gap(
            @ForAll BodyMeasurements body,
            @ForAll boolean folded,
            @ForAll boolean nap,
            @ForAll @DoubleRange(max = 12) double gap,
            @ForAll("efforts") int tries) {
        for (Laid laid : lays(body, folded, nap, gap, tries)) {
            List<Outline> outlines =
                    laid.lay().pieces().stream().map(LaidPiece::outline).toList();
            List<Geometry> polygons =
                    outlines.stream().map(LayProperties::polygon).toList();
            double width = laid.lay().spread().tableWidth().mm();
            for (int i = 0; i < outlines.size(); i++) {
                Envelope box = polygons.get(i).getEnvelopeInternal();
                assertThat(box.getMinX()).isGreaterThanOrEqualTo(-1e-6);
                assertThat(box.getMaxX()).isLessThanOrEqualTo(width + 1e-6);
                assertThat(box.getMinY()).isGreaterThanOrEqualTo(-1e-6);
                assertThat(box.getMaxY())
                        .isLessThanOrEqualTo(laid.lay().length().mm() + 1e-6);
                for (int j = i + 1; j < outlines.size(); j++) {
                    double apart = IndexedFacetDistance.distance(polygons.get(i), polygons.get(j));
                    assertThat(apart).isGreaterThanOrEqualTo(gap - CHORD);
                    if (apart < NEAR) {
                        assertThat(overlap(outlines.get(i), outlines.get(j))).isFalse();
                    }
                    assertThat(outlines.get(i).contains(outlines.get(j).path().start()))
                            .isFalse();
                    assertThat(outlines.get(j).contains(outlines.get(i).path().start()))
                            .isFalse();
                }
            }
        }
    }

    /** On the curves themselves. */
    private static boolean overlap(Outline a, Outline b) {
        return Crossings.between(a.path(), b.path()).stream()
                .anyMatch(crossing -> crossing.kind() == Crossing.Kind.CROSS);
    }

    @Property(tries = 10)
    void everything_in_the_cut_list_lies_there_once_in_its_right_hands(
            @ForAll BodyMeasurements body, @ForAll boolean folded, @ForAll boolean nap) {
        for (Laid laid : lays(body, folded, nap, 3, 6)) {
            double area = 0;
            for (CutList.Item item : laid.list().from(laid.cloth())) {
                List<LaidPiece> copies = laid.lay().pieces().stream()
                        .filter(each -> each.item().equals(item))
                        .toList();
                assertThat(copies.stream().mapToInt(LaidPiece::copies).sum())
                        .as("%s", item.piece().name())
                        .isEqualTo(item.count());
                if (item.isMirrored() && !folded) {
                    assertThat(copies.stream().filter(copy -> copy.motion().reverses()))
                            .hasSize(item.count() / 2);
                }
                double once =
                        CutLine.of(item.piece(), laid.allowances()).outline().area();
                area += once * item.count() * (item.isOnFold() ? 2 : 1);
            }
            assertThat(laid.lay().pieces())
                    .allMatch(each -> laid.list().from(laid.cloth()).contains(each.item()));
            assertThat(laid.lay().area()).isCloseTo(area, within(1e-6 * area));
            assertThat(laid.lay().length().mm())
                    .isGreaterThanOrEqualTo(laid.lay().lowerBound().mm());
            assertThat(laid.lay().use().percent()).isBetween(0.0, 100.0);
        }
    }

    @Property(tries = 10)
    void every_piece_is_moved_rigidly_and_keeps_its_grain(
            @ForAll BodyMeasurements body, @ForAll boolean folded, @ForAll boolean nap) {
        for (Laid laid : lays(body, folded, nap, 3, 6)) {
            for (LaidPiece piece : laid.lay().pieces()) {
                assertThat(piece.motion().isRigid()).isTrue();
                Grainline grain = piece.item().piece().grainline();
                Vector up =
                        piece.motion().apply(grain.top().minus(grain.bottom())).unit();
                assertThat(up.x()).isCloseTo(0, within(1e-12));
                assertThat(piece.isTurned()).isEqualTo(up.y() > 0);
                if (nap) {
                    assertThat(piece.isTurned()).isFalse();
                }
                Piece drawn = piece.item().piece();
                if (drawn.cut() instanceof Cut.OnFold fold && folded) {
                    Path onCloth = drawn.path(fold.edge()).transformed(piece.motion());
                    assertThat(onCloth.start().x()).isCloseTo(0, within(1e-9));
                    assertThat(onCloth.end().x()).isCloseTo(0, within(1e-9));
                }
                Outline cut = CutLine.of(drawn, laid.allowances()).outline().transformed(piece.motion());
                assertThat(JTS.createGeometryCollection(new Geometry[] {polygon(piece.outline())})
                                .buffer(CHORD)
                                .covers(polygon(cut)))
                        .isTrue();
            }
        }
    }

    @Property(tries = 2)
    void every_thread_finds_the_same_lay(
            @ForAll BodyMeasurements body, @ForAll boolean nap, @ForAll("efforts") int tries) {
        List<List<Laid>> found = IntStream.range(0, 4)
                .parallel()
                .mapToObj(i -> lays(body, false, nap, 3, tries))
                .toList();
        for (List<Laid> lays : found) {
            for (int i = 0; i < lays.size(); i++) {
                assertThat(lays.get(i).lay()).isEqualTo(found.get(0).get(i).lay());
            }
        }
    }

    @Property(tries = 12)
    void a_lay_takes_no_more_than_boxes_on_shelves(
            @ForAll BodyMeasurements body,
            @ForAll boolean folded,
            @ForAll boolean nap,
            @ForAll @DoubleRange(max = 12) double gap,
            @ForAll @IntRange(min = 1, max = 40) int tries) {
        for (Laid laid : lays(body, folded, nap, gap, tries)) {
            assertThat(laid.lay().length().mm()).isLessThanOrEqualTo(Shelves.length(laid.lay()) + 1e-6);
        }
    }

    /**
     * A proof that nothing is shorter is wrong where a lay is: {@link ColumnBound} has to allow each one that was
     * found.
     */
    @Property(tries = 6)
    void no_lay_is_shorter_than_its_columns_allow(
            @ForAll BodyMeasurements body,
            @ForAll boolean folded,
            @ForAll boolean nap,
            @ForAll @DoubleRange(max = 12) double gap,
            @ForAll("efforts") int tries) {
        for (Laid laid : lays(body, folded, nap, gap, tries)) {
            assertThat(ColumnBound.allows(laid.lay(), laid.lay().length().mm(), 25))
                    .isTrue();
        }
    }

    @Property(tries = 2)
    void more_effort_is_never_worse(@ForAll BodyMeasurements body, @ForAll boolean nap) {
        double before = Double.POSITIVE_INFINITY;
        for (int tries : new int[] {4, 900, 1300, 2600}) {
            double length =
                    lays(body, false, nap, 3, tries).get(0).lay().length().mm();
            assertThat(length).isLessThanOrEqualTo(before);
            before = length;
        }
    }

    private static Geometry polygon(Outline outline) {
        List<Coordinate> corners = new ArrayList<>();
        for (Curve curve : outline.path().curves()) {
            int parts = curve instanceof Line ? 1 : PARTS;
            for (int i = 0; i < parts; i++) {
                Point point = curve.pointAt((double) i / parts);
                corners.add(new Coordinate(point.x(), point.y()));
            }
        }
        corners.add(corners.get(0));
        return JTS.createPolygon(corners.toArray(new Coordinate[0]));
    }
}
