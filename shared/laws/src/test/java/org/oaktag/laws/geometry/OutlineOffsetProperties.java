package org.oaktag.laws.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import net.jqwik.api.statistics.Statistics;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.oaktag.PatternException;
import org.oaktag.geometry.CornerStyle;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.OffsetPart;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.OutlineOffset;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.PathNearest;
import org.oaktag.geometry.Point;
import org.oaktag.testkit.curves.Curves;

/** Outlines moved outwards and inwards. */
@Domain(Curves.class)
@Domain(DomainContext.Global.class)
class OutlineOffsetProperties {
    private static final double TOLERANCE = 0.01;

    @Provide
    Arbitrary<CornerStyle> styles() {
        return Arbitraries.of(CornerStyle.mitre(3), CornerStyle.round(), CornerStyle.square());
    }

    @Provide
    Arbitrary<double[]> allowances() {
        return Arbitraries.of(0.0, 5.0, 6.0, 10.0, 15.0, 25.0)
                .array(double[].class)
                .ofSize(9);
    }

    @Property(tries = 300)
    void outward_offset_keeps_its_distance(
            @ForAll Outline outline,
            @ForAll @IntRange(min = 1, max = 30) int distance,
            @ForAll("styles") CornerStyle style) {
        OutlineOffset offset = OutlineOffset.outward(outline, distance, style, TOLERANCE);
        assertThat(offset.outline().area()).isGreaterThan(outline.area());
        assertThat(offset.outline().isClockwise()).isTrue();
        assertThat(offset.outline().selfCrossings()).isEmpty();
        for (Point place : places(offset.outline().path())) {
            assertThat(outline.path().nearest(place).distance()).isGreaterThanOrEqualTo(distance - TOLERANCE - 1e-9);
            assertThat(outline.contains(place)).isFalse();
        }
    }

    @Property(tries = 150)
    void round_outward_offset_agrees_with_a_fine_buffer_of_jts(
            @ForAll Outline outline, @ForAll @IntRange(min = 1, max = 30) int distance) {
        OutlineOffset offset = OutlineOffset.outward(outline, distance, CornerStyle.round(), TOLERANCE);
        Geometry buffer = BufferOp.bufferOp(Flattened.polygon(outline, 60), distance, fine());
        // JTS returns the holes as well; an outline has none.
        double theirs = Flattened.withoutHoles(buffer);
        assertThat(offset.outline().area())
                .isCloseTo(theirs, within(2 * TOLERANCE * offset.outline().perimeter()));
    }

    @Property(tries = 150)
    void inward_offset_agrees_with_a_fine_buffer_of_jts_or_is_refused_where_that_falls_apart(
            @ForAll Outline outline, @ForAll @IntRange(min = 1, max = 60) int distance) {
        Geometry buffer = BufferOp.bufferOp(Flattened.polygon(outline, 60), -distance, fine());
        try {
            OutlineOffset offset = OutlineOffset.outward(outline, -distance, CornerStyle.round(), TOLERANCE);
            double slack = 2 * TOLERANCE * offset.outline().perimeter() + 1;
            assertThat(offset.outline().area()).isCloseTo(buffer.getArea(), within(slack));
            for (Point place : places(offset.outline().path())) {
                assertThat(outline.path().nearest(place).distance())
                        .isGreaterThanOrEqualTo(distance - TOLERANCE - 1e-9);
                assertThat(outline.contains(place)).isTrue();
            }
        } catch (PatternException refusal) {
            boolean nothing = buffer.getArea() < 1;
            boolean apart = buffer.getNumGeometries() > 1;
            assertThat(nothing || apart)
                    .as("%s though JTS leaves %s", refusal.getMessage(), buffer.getNumGeometries())
                    .isTrue();
        }
    }

    private static BufferParameters fine() {
        return new BufferParameters(32, BufferParameters.CAP_ROUND, BufferParameters.JOIN_ROUND, 5);
    }

    @Property(tries = 300)
    void every_edge_has_its_own_distance(
            @ForAll Outline outline, @ForAll("allowances") double[] allowances, @ForAll("styles") CornerStyle style) {
        List<Path> edges = new ArrayList<>();
        for (Curve curve : outline.path().curves()) {
            edges.add(Path.of(curve));
        }
        double[] distances = Arrays.copyOf(allowances, edges.size());
        Optional<OutlineOffset> made = madeOrRefusedTruly(edges, distances, style);
        Statistics.label("outward with very different distances")
                .collect(made.isPresent() ? "made" : "refused")
                .coverage(cover -> cover.check("refused").percentage(share -> share < 2));
        if (made.isEmpty()) {
            return;
        }
        OutlineOffset offset = made.get();
        assertThat(offset.outline().isClockwise()).isTrue();
        assertThat(offset.outline().area()).isGreaterThanOrEqualTo(outline.area() - TOLERANCE * outline.perimeter());
        for (OffsetPart part : offset.parts()) {
            for (Point place : places(part.path())) {
                for (int i = 0; i < edges.size(); i++) {
                    if (isNeighbourEndingOnItsLine(edges, distances, part.edge(), i)) {
                        continue;
                    }
                    assertThat(edges.get(i).nearest(place).distance())
                            .isGreaterThanOrEqualTo(required(edges, distances, i, place) - TOLERANCE - 1e-9);
                }
            }
        }
    }

    /** Empty if the distances are refused; what the refusal says would work then does. */
    private static Optional<OutlineOffset> madeOrRefusedTruly(List<Path> edges, double[] distances, CornerStyle style) {
        try {
            return Optional.of(OutlineOffset.outward(edges, distances, style, TOLERANCE));
        } catch (PatternException refusal) {
            Matcher range = Pattern.compile("use at most ([0-9.]+) mm").matcher(String.valueOf(refusal.getMessage()));
            assertThat(range.find()).as(refusal.getMessage()).isTrue();
            double share = Double.parseDouble(range.group(1))
                    / Arrays.stream(distances).max().orElseThrow();
            assertThat(share).as(refusal.getMessage()).isBetween(0.1, 1.0);
            double[] less = Arrays.stream(distances).map(d -> d * share).toArray();
            assertThat(OutlineOffset.outward(edges, less, style, TOLERANCE).parts())
                    .isNotEmpty();
            return Optional.empty();
        }
    }

    /** The parallels beside an edge at distance 0 end on its prolongation, which keeps no distance from them. */
    private static boolean isNeighbourEndingOnItsLine(List<Path> edges, double[] distances, int edge, int other) {
        int apart = Math.floorMod(other - edge, edges.size());
        return distances[edge] == 0 && (apart == 1 || apart == edges.size() - 1);
    }

    /** Beyond the end of an edge the lesser of the two distances that meet there counts; across the piece none does. */
    private static double required(List<Path> edges, double[] distances, int i, Point place) {
        int count = distances.length;
        PathNearest foot = edges.get(i).nearest(place);
        double along = foot.distanceAlong();
        if (along <= 2 * TOLERANCE) {
            return Math.min(distances[i], distances[(i + count - 1) % count]);
        }
        if (along >= edges.get(i).length() - 2 * TOLERANCE) {
            return Math.min(distances[i], distances[(i + 1) % count]);
        }
        boolean onItsOwnSide = edges.get(i).directionAt(along).cross(place.minus(foot.point())) < 0;
        return onItsOwnSide ? distances[i] : 0;
    }

    private static List<Point> places(Path path) {
        List<Point> places = new ArrayList<>();
        for (Curve curve : path.curves()) {
            for (int i = 0; i < 8; i++) {
                places.add(curve.pointAt((i + 0.5) / 8));
            }
        }
        return places;
    }
}
