package org.oaktag.laws.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Path2D;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.locationtech.jts.geom.Polygon;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.testkit.curves.Curves;

/** Area, centroid, box, nearest point and containment. */
@Domain(Curves.class)
@Domain(DomainContext.Global.class)
class AreaProperties {
    /** A chord of a hundredth of a cubic misses at most the ten-thousandth part of what the curve bulges. */
    private static final int CHORDS = 200;

    @Property(tries = 300)
    void area_and_centroid_agree_with_a_fine_polygon_of_jts(@ForAll Outline outline) {
        Polygon polygon = Flattened.polygon(outline, CHORDS);
        double slack = 1e-5 * outline.area() + 1e-4 * outline.perimeter();
        assertThat(outline.area()).isCloseTo(polygon.getArea(), within(slack));
        assertThat(outline.centroid().x()).isCloseTo(polygon.getCentroid().getX(), within(0.01));
        assertThat(outline.centroid().y()).isCloseTo(polygon.getCentroid().getY(), within(0.01));
    }

    /** Flattening errs by the square of the step, so two polygons foretell the limit (Richardson). */
    @Property(tries = 200)
    void area_is_the_limit_of_finer_and_finer_polygons(@ForAll Outline outline) {
        double coarse = Flattened.polygon(outline, 100).getArea();
        double fine = Flattened.polygon(outline, 200).getArea();
        double limit = fine + (fine - coarse) / 3;
        assertThat(outline.area()).isCloseTo(limit, within(1e-7 * limit));
    }

    @Property
    void running_an_outline_backwards_negates_its_area(@ForAll Outline outline) {
        assertThat(outline.isClockwise()).isTrue();
        assertThat(outline.reversed().signedArea()).isCloseTo(-outline.signedArea(), within(1e-12 * outline.area()));
        assertThat(outline.reversed().centroid().isCloseTo(outline.centroid(), 1e-9))
                .isTrue();
    }

    @Property
    void areas_and_centroids_follow_rigid_maps(@ForAll Outline outline, @ForAll Transform rigid) {
        Outline image = outline.transformed(rigid);
        double sign = rigid.reverses() ? -1 : 1;
        assertThat(image.signedArea()).isCloseTo(sign * outline.signedArea(), within(1e-9 * outline.area()));
        assertThat(image.centroid().isCloseTo(outline.centroid().transformed(rigid), 1e-8))
                .isTrue();
    }

    @Property
    void areas_scale_with_the_square(@ForAll Outline outline, @ForAll @DoubleRange(min = 0.1, max = 10) double scale) {
        assertThat(outline.transformed(Transform.scale(scale)).area())
                .isCloseTo(scale * scale * outline.area(), within(1e-10 * scale * scale * outline.area()));
    }

    @Property
    void sweeps_of_parts_sum_to_the_whole(@ForAll Curve curve, @ForAll @DoubleRange(min = 0, max = 1) double t) {
        Bounds box = Bounds.of(
                Cubic.from(curve).start(),
                Cubic.from(curve).control1(),
                Cubic.from(curve).control2(),
                curve.end());
        double reach = box.width() + box.height() + Math.abs(box.minX()) + Math.abs(box.minY());
        assertThat(curve.sub(0, t).sweep() + curve.sub(t, 1).sweep())
                .isCloseTo(curve.sweep(), within(1e-13 * reach * reach));
        assertThat(curve.reversed().sweep()).isCloseTo(-curve.sweep(), within(1e-13 * reach * reach));
    }

    @Property
    void box_holds_the_curve_and_no_smaller_one_does(@ForAll Curve curve) {
        Bounds box = curve.bounds();
        double slack = LengthProperties.rounding(curve) + 1e-12;
        double minX = Double.POSITIVE_INFINITY;
        double maxX = Double.NEGATIVE_INFINITY;
        double minY = Double.POSITIVE_INFINITY;
        double maxY = Double.NEGATIVE_INFINITY;
        int steps = 500;
        for (int i = 0; i <= steps; i++) {
            Point p = curve.pointAt((double) i / steps);
            assertThat(box.expanded(slack).contains(p)).isTrue();
            minX = Math.min(minX, p.x());
            maxX = Math.max(maxX, p.x());
            minY = Math.min(minY, p.y());
            maxY = Math.max(maxY, p.y());
        }
        // Between two of the places an extremum rises by no more than the second derivative times the square of half
        // the step, halved.
        double sag = slack + LengthProperties.polygon(Cubic.from(curve)) * 12 / (8.0 * steps * steps);
        assertThat(minX - box.minX()).isLessThanOrEqualTo(sag);
        assertThat(box.maxX() - maxX).isLessThanOrEqualTo(sag);
        assertThat(minY - box.minY()).isLessThanOrEqualTo(sag);
        assertThat(box.maxY() - maxY).isLessThanOrEqualTo(sag);
    }

    @Property
    void no_place_on_the_curve_is_nearer_than_the_nearest(@ForAll Curve curve, @ForAll Point point) {
        double nearest = curve.nearest(point).distance();
        double slack = LengthProperties.rounding(curve) + 1e-11;
        assertThat(curve.pointAt(curve.nearest(point).t()).distanceTo(point)).isEqualTo(nearest);
        for (int i = 0; i <= 200; i++) {
            assertThat(curve.pointAt(i / 200.0).distanceTo(point)).isGreaterThanOrEqualTo(nearest - slack);
        }
    }

    @Property
    void nearest_of_a_place_on_the_path_is_that_place(
            @ForAll Path path, @ForAll @DoubleRange(min = 0, max = 1) double share) {
        Point place = path.pointAt(share * path.length());
        double slack =
                path.curves().stream().mapToDouble(LengthProperties::rounding).sum() + 1e-11;
        assertThat(path.nearest(place).distance()).isLessThanOrEqualTo(slack);
    }

    @Property
    void contains_what_is_wound_round(@ForAll Outline outline, @ForAll Point point) {
        assertThat(outline.contains(point))
                .isEqualTo(outline.windingNumber(point) != 0
                        || outline.path().nearest(point).distance() <= 1e-9);
        assertThat(outline.reversed().windingNumber(point)).isEqualTo(-outline.windingNumber(point));
    }

    @Property
    void contains_its_line_and_not_what_is_outside_its_box(
            @ForAll Outline outline, @ForAll @DoubleRange(min = 0, max = 1) double share) {
        assertThat(outline.contains(outline.path().pointAt(share * outline.perimeter())))
                .isTrue();
        Bounds box = outline.bounds();
        assertThat(outline.contains(new Point(box.maxX() + 1, box.center().y())))
                .isFalse();
        assertThat(outline.contains(new Point(box.minX() - 1, box.minY()))).isFalse();
    }

    @Property
    void containment_agrees_with_java_awt(@ForAll Outline outline, @ForAll Point point) {
        if (outline.path().nearest(point).distance() > 1e-6) {
            assertThat(outline.contains(point)).isEqualTo(awt(outline).contains(point.x(), point.y()));
        }
    }

    private static Path2D awt(Outline outline) {
        Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
        path.moveTo(outline.path().start().x(), outline.path().start().y());
        for (Curve curve : outline.path().curves()) {
            Cubic c = Cubic.from(curve);
            path.curveTo(
                    c.control1().x(),
                    c.control1().y(),
                    c.control2().x(),
                    c.control2().y(),
                    c.end().x(),
                    c.end().y());
        }
        path.closePath();
        return path;
    }
}
